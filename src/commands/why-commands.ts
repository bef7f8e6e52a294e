/** The words of `why`. */

import { type CommandSpec, explainOption, jsonOption } from './command.ts';

export const whyCommands: readonly CommandSpec[] = [
  {
    name: 'why',
    summary: 'what the look of a sample can mean, likeliest first',
    about:
      'Takes the look at which it failed, or its newest, and everything that the ledger knows: how it was made beside the others, control and blank, the ratio, the dose, the droplets that the haze implies, what could crystallise. Each cause with the next thing to try and its source.',
    group: 'Ledger',
    words: [{ name: 'TRIAL', help: 'its number or its file', required: true }],
    options: [
      { name: 'sample', placeholder: 'SAMPLE', help: 'which sample; the one that failed if left out' },
      {
        name: 'at',
        placeholder: 'DAY',
        help: 'the look of this day, such as 4; the one that failed if left out',
      },
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'why 14', says: 'the look at which it failed' },
      { line: 'why 17 --sample "cold glass" --at 1', says: 'one sample on one day' },
    ],
    load: async () => (await import('./why.ts')).runWhy,
  },
];
