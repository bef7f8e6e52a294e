/** The bibliography on the screen. */

import type { Block, Page } from '../output/view.ts';
import type { Work } from '../reference/bibliography.ts';
import type { Use } from '../reference/uses/use.ts';
import { countOf } from './sources.ts';

interface Shown {
  readonly works: readonly Work[];
  readonly words: string;
  readonly isMemory: boolean;
  readonly isCommand: boolean;
}

export function sourcesPage(shown: Shown): Page {
  const { works, isMemory } = shown;
  if (works.length === 0) return [{ kind: 'text', text: nothingWords(shown) }];
  return [
    { kind: 'text', text: headWords(shown), tone: 'strong' },
    ...(isMemory ? memoryBlocks(works) : workBlocks(works, shown)),
    { kind: 'text', text: closingWords(shown), tone: 'faint' },
  ];
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

function headWords({ works, words, isMemory }: Shown): string {
  const about = words === '' ? '' : ` on ${words}`;
  if (isMemory)
    return `From memory${about}: ${counted(
      countOf(works, () => true),
      'figure',
    )}`;
  const remembered = countOf(works, ({ fromMemory }) => fromMemory);
  return `${counted(works.length, 'source')}${about}, ${counted(
    countOf(works, () => true),
    'figure',
  )}, ${remembered} of them from memory`;
}

function nothingWords({ words, isMemory }: Shown): string {
  const what = isMemory ? 'Nothing from memory' : 'No source';
  return words === ''
    ? `${what} is known.`
    : `${what} has to do with "${words}". Name an ingredient, a command such as ring, or an author; neckring sources alone lists all.`;
}

const closingWords = ({ words, isMemory }: Shown): string => {
  if (isMemory)
    return 'No copy of a source could be read for these: look them up before you rely on them. neckring sources WORD shows the source that each is remembered from.';
  return words === ''
    ? 'neckring sources WORD shows the figures one by one; --from-memory those for which no source could be read.'
    : 'An answer with --explain shows those that it used.';
};

/** Shelf by shelf; in short, or every figure on its line. */
function workBlocks(works: readonly Work[], { words, isCommand }: Shown): Page {
  const shelves = [...new Set(works.map(({ shelf }) => shelf))];
  return shelves.flatMap((shelf): readonly Block[] => [
    { kind: 'heading', text: shelf },
    {
      kind: 'notes',
      mark: ' -',
      notes: works
        .filter((work) => work.shelf === shelf)
        .map((work) => (words === '' ? shortNote(work) : fullNote(work, isCommand))),
    },
  ]);
}

const mostNamed = 3;

function shortNote({ text, uses }: Work): string {
  return `${text}\nfor ${shortly(kindsOf(uses))}${memoryWords(uses)}\nused by ${commandsOf(uses)}`;
}

const shortly = (names: readonly string[]): string =>
  names.length <= mostNamed + 1
    ? names.join('; ')
    : `${names.slice(0, mostNamed).join('; ')}; and ${names.length - mostNamed} more`;

/** Figures of ingredients drawn together: `density of 12 ingredients`, `density, hlb of polysorbate 80`. */
function kindsOf(uses: readonly Use[]): readonly string[] {
  const others = uses.flatMap(({ figure, what }) => (figure ? [] : [what]));
  const figures = uses.flatMap(({ figure }) => figure ?? []);
  const [first] = figures;
  const names = [...new Set(figures.map(({ name }) => name))];
  if (first && figures.every(({ of }) => of === first.of))
    return [...new Set(others), `${names.join(', ')} of ${first.of}`];
  const kinds = names.map((name) => {
    const of = [...new Set(figures.filter((one) => one.name === name).map((one) => one.of))];
    return `${name} of ${of.length > 2 ? `${of.length} ingredients` : of.join(' and ')}`;
  });
  return [...new Set([...others, ...kinds])];
}

const commandsOf = (uses: readonly Use[]): string => [...new Set(uses.flatMap(({ by }) => by))].join(', ');

/** Every figure on its line; of a command those of ingredients are drawn together, since any may stand in its answer. */
function fullNote({ text, uses }: Work, isCommand: boolean): string {
  const own = isCommand ? uses.filter(({ figure }) => !figure) : uses;
  const drawn = isCommand ? uses.filter(({ figure }) => figure) : [];
  const lines = own.map((use) => figureLine(use, isCommand));
  const together = drawn.length === 0 ? [] : [`${kindsOf(drawn).join('; ')}${memoryWords(drawn)}`];
  return [text, ...[...lines, ...together].map((line) => `* ${line}`)].join('\n');
}

function figureLine({ what, locator, range, fromMemory, by, figure }: Use, isCommand: boolean): string {
  const facts = [
    range === undefined ? 'range not stated by the source' : `${figure ? '' : 'range: '}${range}`,
    ...(locator === undefined ? [] : [`see ${locator}`]),
    ...(figure || isCommand ? [] : [`used by ${by.join(', ')}`]),
  ];
  return `${what}${fromMemory ? ' (from memory)' : ''}: ${facts.join('; ')}`;
}

function memoryWords(uses: readonly Use[]): string {
  const remembered = uses.filter(({ fromMemory }) => fromMemory).length;
  if (remembered === 0) return '';
  return remembered === uses.length ? ' (from memory)' : ` (${remembered} from memory)`;
}

/** Laws and tables first, then the figures of each ingredient in one line. */
function memoryBlocks(works: readonly Work[]): Page {
  const laws = works.flatMap(({ text, uses: all }) => {
    const names = [...new Set(all.filter(({ figure }) => !figure).map(({ what }) => what))];
    return names.length === 0 ? [] : [`${text}\nfor ${names.join('; ')}`];
  });
  const byIngredient = new Map<string, string[]>();
  for (const use of works.flatMap((work) => work.uses)) {
    if (!use.figure) continue;
    const names = byIngredient.get(use.figure.of) ?? [];
    byIngredient.set(use.figure.of, [
      ...names,
      use.what.includes('another value') ? `another ${use.figure.name}` : use.figure.name,
    ]);
  }
  return [
    ...notesUnder('Laws, tables and published figures', laws),
    ...notesUnder(
      'Ingredients',
      [...byIngredient]
        .sort(([one], [other]) => (one < other ? -1 : 1))
        .map(([name, figures]) => `${name}: ${figures.join(', ')}`),
    ),
  ];
}

const notesUnder = (heading: string, notes: readonly string[]): Page =>
  notes.length === 0
    ? []
    : [
        { kind: 'heading', text: heading },
        { kind: 'notes', mark: ' -', notes },
      ];
