/** The words of the commands at the balance. */

import { type CommandSpec, dryRunOption, explainOption, jsonOption } from './command.ts';

export const weighingCommands: readonly CommandSpec[] = [
  {
    name: 'weigh',
    summary: 'write down what the balance said, item by item',
    about:
      'On a terminal it goes through the items in the order of addition. In one line, give the figures in that order, or an item by name. It only adds lines to the file.',
    group: 'Ledger',
    words: [
      { name: 'TRIAL', help: 'its number or its file', required: true },
      {
        name: 'FIGURES',
        help: 'grams in the order of addition, or part of a name and its figure',
        many: true,
      },
    ],
    options: [
      { name: 'readings', help: 'the figures are running readings on one tare' },
      { name: 'stage', placeholder: 'STAGE', help: 'begin at this stage, and weigh only it' },
      { name: 'again', help: 'replace what was weighed before' },
      dryRunOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'weigh 17 90.02 4.51 0.60', says: 'the first three items as the balance showed them' },
      { line: 'weigh 17 "citric acid" 4.51', says: 'one item by name' },
    ],
    load: async () => (await import('./with-writing.ts')).runWeigh,
  },
  {
    name: 'overpoured',
    summary: 'too much of one item went in: what the others must become',
    about:
      'Keeps every ratio of the plan by making the stage larger; with --same batch it says what it comes to if nothing is added.',
    group: 'Ledger',
    words: [
      { name: 'TRIAL', help: 'its number or its file', required: true },
      { name: 'ITEM', help: 'part of its name', required: true, takes: ['ingredient'] },
      { name: 'FIGURE', help: 'what the balance said, in grams', required: true },
    ],
    options: [
      { name: 'same', placeholder: 'ratios|batch', help: 'what to keep; the ratios if left out' },
      { name: 'stage', placeholder: 'STAGE', help: 'the stage, where the item stands in several' },
      { name: 'write', help: 'write the weighing and the new plan into the trial' },
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'overpoured 14 "polysorbate 80" 6.62', says: 'what the rest must become' },
      { line: 'overpoured 14 "polysorbate 80" 6.62 --same batch', says: 'what it comes to as it is' },
    ],
    load: async () => (await import('./with-writing.ts')).runOverpoured,
  },
];
