import type { Book, BookEntry } from '../calc/book.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { Io } from '../io.ts';
import { envelope } from '../output/answer-json.ts';
import { partsText } from '../output/leaf-text.ts';
import type { Block, Page } from '../output/view.ts';
import { type Figure, type FigureName, figureUnits, roles } from '../reference/ingredient.ts';
import { nearestNames, normaliseName } from '../reference/name.ts';
import { searchIngredients } from '../reference/search.ts';
import type { Source } from '../reference/sources.ts';
import type { Call, Outcome } from './command.ts';
import { openBook } from './open-book.ts';
import { sourceWords } from './worded-sources.ts';

type Sources = Readonly<Record<string, Source>>;

export async function runIngredient(call: Call, io: Io): Promise<Outcome> {
  const { book, sources } = await openBook(io);
  const words = call.words.join(' ').trim();
  const found = words === '' ? book.entries : matches(words, book.entries, book.find(words));
  const near = found.length === 0 ? nearTo(words, book) : [];
  return {
    exitCode: found.length === 0 ? 1 : 0,
    page: pageOf(words, found, near, sources),
    json: envelope({
      schema: 'ingredient@1',
      given: { words: printableWords(words, found) },
      found: { ingredients: found.map((one) => entryJson(one, sources)) },
    }),
  };
}

/** The one that is named exactly, with the person's own of that word; else all that match. */
function matches(
  words: string,
  entries: readonly BookEntry[],
  exact: BookEntry | undefined,
): readonly BookEntry[] {
  const wanted = normaliseName(words);
  if (exact && normaliseName(exact.name) === wanted) return [exact];
  const own = entries.filter((entry) => entry.own && normaliseName(entry.name).includes(wanted));
  if (exact) return [...own, exact];
  const ownNames = new Set(own.map((entry) => entry.name));
  const builtIn = searchIngredients(words).flatMap((record) =>
    entries.filter((entry) => entry.name === record.name),
  );
  return [...own, ...builtIn.filter((entry) => !ownNames.has(entry.name))];
}

/** The words as typed; where they are a brand word, the plain name that they found. */
function printableWords(words: string, found: readonly BookEntry[]): string {
  const wanted = normaliseName(words);
  const isIn = (name: string): boolean => normaliseName(name).includes(wanted);
  const branded = found.find(({ record }) => record.searchWords?.some(isIn));
  if (!branded || found.some(({ name, record }) => [name, ...(record.aliases ?? [])].some(isIn)))
    return words;
  return branded.name;
}

/** Names that look like the words; else those that hold a word like it. */
function nearTo(words: string, book: Book): readonly string[] {
  const near = book.nearest(words, 3);
  if (near.length > 0 || words.length < 4) return near;
  const holds = ({ name }: BookEntry): boolean => nearestNames(words, name.split(' '), 1).length > 0;
  return book.entries
    .filter(holds)
    .slice(0, 3)
    .map(({ name }) => name);
}

function pageOf(words: string, found: readonly BookEntry[], near: readonly string[], sources: Sources): Page {
  const [first] = found;
  if (!first) {
    const hint =
      near.length > 0 ? `Did you mean ${near.join(', ')}?` : 'neckring ingredient alone lists every name.';
    return [{ kind: 'text', text: `Nothing is known by "${words}". ${hint}` }];
  }
  if (found.length === 1) return recordPage(first, sources);
  if (words === '') return byRole(found);
  return [
    {
      kind: 'table',
      columns: [
        { head: 'name', align: 'left' },
        { head: 'role', align: 'left' },
        { head: 'also called', align: 'left' },
      ],
      rows: found.map(listRow),
    },
  ];
}

const listRow = (entry: BookEntry): readonly string[] => [
  entry.name,
  entry.record.role,
  (entry.record.aliases ?? []).slice(0, 2).join(', '),
];

function byRole(entries: readonly BookEntry[]): Page {
  return roles.flatMap((role): readonly Block[] => {
    const names = entries.filter((entry) => entry.record.role === role).map((entry) => entry.name);
    return names.length === 0 ? [] : [{ kind: 'notes', mark: `${role}:`, notes: [names.join(', ')] }];
  });
}

function recordPage(entry: BookEntry, sources: Sources): Page {
  const { record } = entry;
  const facts: (readonly [string, string])[] = [['role', record.role]];
  if (record.aliases?.length) facts.push(['also called', record.aliases.join(', ')]);
  if (record.cas) facts.push(['CAS number', record.cas]);
  if (record.eNumber) facts.push(['E number', record.eNumber]);
  if (record.fold) facts.push(['fold', String(record.fold)]);
  if (record.polymer) facts.push(['HLB', 'means nothing for a polymer']);
  if (record.potent) facts.push(['potent', 'works at parts per billion: handle as a stock dilution']);
  if (entry.lot) facts.push(['lot', entry.lot]);
  const contents = entry.composition.length > 1 ? entry.composition : [];
  return [
    { kind: 'heading', text: entry.name },
    { kind: 'pairs', pairs: facts },
    ...(contents.length === 0
      ? []
      : [
          {
            kind: 'pairs',
            pairs: contents.map((one) => [`  ${one.substance.name}`, partsText(one.massFraction)] as const),
          } as const,
        ]),
    ...figureBlocks(record.figures, sources),
    ...(record.notes?.length ? [{ kind: 'notes', mark: '-', notes: record.notes } as const] : []),
  ];
}

function figureBlocks(figures: BookEntry['record']['figures'], sources: Sources): Page {
  const shown = Object.entries(figures).flatMap(([name, figure]) =>
    figure && isFigureName(name) ? [{ name, figure }] : [],
  );
  if (shown.length === 0) return [];
  const notes = shown.flatMap(({ name, figure }) => [
    `${name}: ${sourceText(figure, sources)}`,
    ...(figure.others ?? []).map(
      (other) => `${name}, not used: ${figureText(name, other)}, ${sourceText(other, sources)}`,
    ),
  ]);
  return [
    { kind: 'pairs', pairs: shown.map(({ name, figure }) => [name, figureText(name, figure)]) },
    { kind: 'notes', mark: ' -', notes },
  ];
}

const isFigureName = (name: string): name is FigureName => Object.hasOwn(figureUnits, name);

function figureText(name: FigureName, figure: Figure): string {
  const unit = figureUnits[name];
  const range =
    figure.low !== undefined && figure.high !== undefined ? ` (${figure.low} to ${figure.high})` : '';
  const at = figure.temperatureCelsius === undefined ? '' : ` at ${figure.temperatureCelsius} C`;
  return `${trimmedNumber(figure.value, 8)}${unit === '' ? '' : ` ${unit}`}${range}${at}`;
}

function sourceText(figure: Figure, sources: Sources): string {
  const words = sourceWords(figure.locator ? `${figure.source}#${figure.locator}` : figure.source, sources);
  return [words, ...(figure.fromMemory ? ['from memory'] : []), ...(figure.note ? [figure.note] : [])].join(
    '; ',
  );
}

function entryJson(entry: BookEntry, sources: Sources): object {
  const { record } = entry;
  return {
    name: entry.name,
    role: record.role,
    own: entry.own,
    ...(record.aliases ? { aliases: record.aliases } : {}),
    ...(record.cas ? { cas: record.cas } : {}),
    ...(record.eNumber ? { eNumber: record.eNumber } : {}),
    ...(record.fold ? { fold: record.fold } : {}),
    ...(record.polymer ? { polymer: true } : {}),
    ...(record.potent ? { potent: true } : {}),
    contains: entry.composition.map((one) => ({
      substance: one.substance.name,
      massFraction: { value: one.massFraction, unit: '' },
    })),
    figures: Object.entries(record.figures).flatMap(([name, figure]) =>
      figure && isFigureName(name) ? [{ figure: name, ...figureJson(name, figure, sources) }] : [],
    ),
  };
}

function figureJson(name: FigureName, figure: Figure, sources: Sources): object {
  return {
    value: { value: figure.value, unit: figureUnits[name] },
    ...(figure.low === undefined ? {} : { low: { value: figure.low, unit: figureUnits[name] } }),
    ...(figure.high === undefined ? {} : { high: { value: figure.high, unit: figureUnits[name] } }),
    ...(figure.temperatureCelsius === undefined
      ? {}
      : { temperature: { value: figure.temperatureCelsius, unit: 'C' } }),
    source: sourceWords(figure.locator ? `${figure.source}#${figure.locator}` : figure.source, sources),
    fromMemory: figure.fromMemory ?? false,
    ...(figure.note ? { note: figure.note } : {}),
  };
}
