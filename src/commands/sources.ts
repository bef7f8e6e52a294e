/** `sources`: the bibliography, what each work is used for, and what is from memory. */

import { makeBook } from '../calc/book.ts';
import { envelope } from '../output/answer-json.ts';
import { bibliography, type Work } from '../reference/bibliography.ts';
import { builtIn } from '../reference/built-in.ts';
import { normaliseName } from '../reference/name.ts';
import type { Use } from '../reference/uses/use.ts';
import type { Call, Outcome } from './command.ts';
import { allCommands } from './families.ts';
import { sourcesPage } from './sources-page.ts';

export async function runSources(call: Call): Promise<Outcome> {
  const words = call.words.join(' ').trim();
  const isMemory = call.flags.has('from-memory');
  const isCommand = (await allCommands()).some(({ name }) => name === words);
  const works = asked(bibliography(), { words, isCommand, isMemory });
  return {
    exitCode: works.length === 0 ? 1 : 0,
    page: sourcesPage({ works, words, isMemory, isCommand }),
    json: envelope({
      schema: 'sources@1',
      given: { words, fromMemory: isMemory },
      found: {
        works: leaf(works.length),
        figures: leaf(countOf(works, () => true)),
        figuresFromMemory: leaf(countOf(works, ({ fromMemory }) => fromMemory)),
        sources: works.map(workJson),
      },
    }),
  };
}

interface Asked {
  readonly words: string;
  /** The words are the name of a command: then what rests on it is meant, and no title that holds the word. */
  readonly isCommand: boolean;
  readonly isMemory: boolean;
}

/** Works with those of their uses that are asked for; a work whose own words match keeps all. */
function asked(works: readonly Work[], { words, isCommand, isMemory }: Asked): readonly Work[] {
  const wanted = [words, nameHere(words)].map(normaliseName);
  const holds = (text: string): boolean => wanted.some((one) => normaliseName(text).includes(one));
  return works.flatMap((work) => {
    const isNamed = !isCommand && (holds(work.text) || holds(work.key));
    const uses = work.uses.filter(
      (use) =>
        (!isMemory || use.fromMemory) &&
        (words === '' || isNamed || (isCommand ? use.by.includes(words) : isAbout(use, holds))),
    );
    return uses.length > 0 ? [{ ...work, uses }] : [];
  });
}

/** The name that an ingredient has here, where another of its names was typed. */
const nameHere = (words: string): string => makeBook({ builtIn, own: [] }).book.find(words)?.name ?? words;

const isAbout = ({ what, locator = '' }: Use, holds: (text: string) => boolean): boolean =>
  holds(what) || holds(locator);

export const countOf = (works: readonly Work[], isCounted: (use: Use) => boolean): number =>
  works.reduce((sum, { uses }) => sum + uses.filter(isCounted).length, 0);

const leaf = (value: number) => ({ value, unit: '' });

const workJson = ({ key, text, shelf, uses }: Work): object => ({
  key,
  reference: text,
  shelf,
  figures: leaf(uses.length),
  figuresFromMemory: leaf(uses.filter(({ fromMemory }) => fromMemory).length),
  usedBy: [...new Set(uses.flatMap(({ by }) => by))].sort(),
  usedFor: uses.map(({ what, locator, range, fromMemory, by }) => ({
    figure: what,
    place: locator ?? '',
    range: range ?? 'not stated by the source',
    fromMemory,
    usedBy: by,
  })),
});
