/** The words of the commands on the finished drink. */

import { type CommandSpec, explainOption, jsonOption } from './command.ts';

export const drinkCommands: readonly CommandSpec[] = [
  {
    name: 'drink',
    summary: 'the finished drink: sour, sweet, pH, what falls out, aims',
    about:
      'Reckons the stage named drink from what was planned or weighed, on the water of the bench, with every stage that leads to it. Exits 1 where an aim is missed.',
    group: 'Ledger',
    words: [
      {
        name: 'DESIGN',
        help: 'a trial by its number or file, a formula by its name or file',
        required: true,
      },
    ],
    options: [
      {
        name: 'temperature',
        placeholder: 'TEMP',
        help: 'such as 4 C; that of the bench if left out',
        isAmount: true,
      },
      { name: 'label', help: 'ingredients in descending order, energy, sugar, sodium per 100 mL' },
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'drink "orange cardamom"', says: 'a formula, with its aims' },
      { line: 'drink 17', says: 'a trial, with what was measured' },
    ],
    load: async () => (await import('./with-ledger.ts')).runDrink,
  },
];
