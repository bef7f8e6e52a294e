/** What `next` says before the table: how well the break is known, and what is in doubt. */

import type { NextBeakers } from '../calc/ladder/next-beakers.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';
import { percent } from './ladder-words.ts';
import type { NextAsked } from './next.ts';
import { countRungs, seriesNotes } from './series-notes.ts';
import { counted, valueWords } from './series-words.ts';

/** What needs attention; where one side is missing, the table says what to make. */
export function attention({ rungs }: NextAsked): readonly Problem[] {
  const counts = countRungs(rungs.rungs);
  return seriesNotes({ series: rungs, counts }).map((note) =>
    note.hint.startsWith('make next') ? { ...note, hint: 'make those below' } : note,
  );
}

interface NextShown extends NextAsked {
  readonly next: NextBeakers;
  readonly notes: readonly Problem[];
}

export const nextPage = (shown: NextShown): Page => {
  const { notes, opened } = shown;
  return [
    { kind: 'heading', text: `Next beakers of ${visible(opened.card.name)}` },
    ...(notes.length === 0
      ? []
      : [
          {
            kind: 'notes',
            mark: '!',
            notes: notes.map(({ message, hint }) => `${message}; ${hint}`),
            tone: 'warn',
          } as const,
        ]),
    { kind: 'text', text: knownWords(shown) },
    ...valueBlocks(shown),
    ...(shown.next.enough
      ? [
          {
            kind: 'lines',
            lines: [
              `neckring series "${visible(opened.card.name)}"   the ratio to work at`,
              `neckring decide "${visible(opened.card.name)}" "…" --ratio RATIO   writes down what you decide`,
            ],
          } as const,
        ]
      : []),
  ];
};

const times = ['', '', ', twice', ', three times'];

/** A value that is to be made more than once stands there once, and is said to be meant. */
function valueBlocks({ rungs, next }: NextShown): Page {
  const counts = new Map<string, number>();
  for (const value of next.ratios) {
    const words = valueWords(rungs.scales[0], value);
    counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  const lines = [...counts].map(
    ([words, count]) => `  ${visible(words)}${times[count] ?? `, ${count} times`}`,
  );
  const repeats =
    'These are repeats, and meant: two beakers alike at the break tell more than one further off.';
  return [
    { kind: 'text', text: lines.join('\n') },
    ...(counts.size < next.ratios.length ? [{ kind: 'text', text: repeats } as const] : []),
  ];
}

function knownWords({ rungs, next, within, count }: NextShown): string {
  const { held, failed, watching } = countRungs(rungs.rungs);
  const seen = `${held} held, ${failed} failed${watching > 0 ? `, ${watching} still watched` : ''}.`;
  if (next.enough) {
    return `${seen} The break is known within ${percent(next.precisionNow)} with a chance of 90 %: well enough for ${percent(within)}. No more beakers are needed; should you make ${count} more all the same, these tell most:`;
  }
  const left = counted(Math.max(1, Math.ceil(next.expectedBeakersLeft)), 'beaker');
  const make = count === 1 ? 'Make this one' : `Make these ${count} at once`;
  if (held === 0 || failed === 0)
    return `${seen} About ${left} more until the break is known within ${percent(within)}. ${make}:`;
  return `${seen} The break is known within ${percent(next.precisionNow)} with a chance of 90 %, and ${percent(within)} is wanted: about ${left} more. ${make}; after them it is expected to be within ${percent(next.precisionAfter)}:`;
}
