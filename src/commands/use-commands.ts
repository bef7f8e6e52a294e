/** The words of the commands that follow an ingredient through the ledger. */

import { type CommandSpec, explainOption, jsonOption } from './command.ts';

export const useCommands: readonly CommandSpec[] = [
  {
    name: 'uses',
    summary: 'everything that holds an ingredient or a lot',
    about:
      'Lists trials, batches, formulas and own solutions with the amount in each, through all stages and other trials. Own ingredients that are like the named one count as it.',
    group: 'Ledger',
    words: [
      {
        name: 'INGREDIENT',
        help: 'its name, or a lot',
        many: true,
        required: true,
        takes: ['ingredient', 'lot'],
      },
    ],
    options: [explainOption, jsonOption],
    examples: [
      { line: 'uses "orange oil lot 2231"', says: 'where that drum went' },
      { line: 'uses lot 7', says: 'whatever is of lot 7' },
    ],
    load: async () => (await import('./with-picture.ts')).runUses,
  },
];
