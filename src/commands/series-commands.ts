/** The words of `series`. */

import { type CommandSpec, jsonOption } from './command.ts';

export const seriesCommands: readonly CommandSpec[] = [
  {
    name: 'series',
    summary: 'the rungs of a ladder, where it breaks, and what to work at',
    about:
      'Every rung with its looks, whether all were made the same way, the break with its 90 % interval, and the amount to work at. Without a name: all series. Exits 1 where all held, all failed, or something else needs a look.',
    group: 'Ladders',
    words: [{ name: 'SERIES', help: 'its name or its file; all series if left out', many: true }],
    options: [
      { name: 'against', placeholder: 'SERIES', help: 'another series, to compare the two breaks' },
      {
        name: 'head',
        placeholder: 'RANGE',
        help: 'of a series over antifoam: the wanted head, such as "5 to 15 mm"',
        isAmount: true,
      },
      {
        name: 'explain',
        help: 'show what is believed before the first beaker, the formulas and the sources',
      },
      jsonOption,
    ],
    examples: [
      { line: 'series', says: 'all series' },
      { line: 'series "orange ladder"', says: 'one, from the first rung to the decision' },
      { line: 'series "orange ladder" --explain', says: 'and what the estimate rests on' },
    ],
    load: async () => (await import('./series.ts')).runSeries,
  },
];
