/** The words of the commands on the finished drink. */

import { type CommandSpec, explainOption, jsonOption, yesOption } from './command.ts';

export const drinkCommands: readonly CommandSpec[] = [
  {
    name: 'drink',
    summary: 'the finished drink: sour, sweet, pH, what falls out, aims',
    about:
      'Reckons the stage named drink from what was planned or weighed, on the water of the bench, with every stage that leads to it. Published figures stand beside the drink, of the authorities that bench.yaml names under limits. Exits 1 where an aim is missed.',
    group: 'Ledger',
    words: [
      {
        name: 'DESIGN',
        help: 'a trial by its number or file, a formula or batch by its name or file; @REVISION as it was',
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
      { name: 'all', help: 'every stage in full, and each published figure with its food and source' },
      {
        name: 'warmed-to',
        placeholder: 'TEMP',
        help: 'the closed bottle of a carbonated drink, such as 30 C; 40 C if left out',
        isAmount: true,
      },
      {
        name: 'headspace',
        placeholder: 'SHARE',
        help: 'of that bottle, such as 5 %; 5 % if left out',
        isAmount: true,
      },
      {
        name: 'with-offset',
        help: 'add what three measured drinks or more read above what was reckoned: pH, acid, Brix',
      },
      { name: 'label', help: 'ingredients in descending order, energy, sugar, sodium per 100 mL' },
      explainOption,
      yesOption,
      jsonOption,
    ],
    examples: [
      { line: 'drink "orange cardamom"', says: 'a formula, with its aims' },
      { line: 'drink 17', says: 'a trial, with what was measured' },
    ],
    load: async () => (await import('./drink.ts')).runDrink,
  },
];
