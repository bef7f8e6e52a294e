/** The words of the commands on stock dilutions: from the neat compound to a trace in the batch. */

import { type CommandSpec, dryRunOption, explainOption, jsonOption, type OptionSpec } from './command.ts';

const benchOptions: readonly OptionSpec[] = [
  {
    name: 'balance',
    placeholder: 'BALANCE',
    help: 'such as "0.01 g up to 600 g", instead of the bench\'s own',
    many: true,
  },
  {
    name: 'vessel',
    placeholder: 'VESSEL',
    help: 'such as "100 mL" or "100 mL of 62 g", instead of the bench\'s own',
    many: true,
  },
  {
    name: 'weighing',
    placeholder: 'SHARE',
    help: "the relative error accepted, such as 1 %; the bench's own if left out",
    isAmount: true,
  },
  {
    name: 'largest',
    placeholder: '1:N',
    help: "the largest dilution in one step; the bench's own, or 1:100",
  },
];

export const stockCommands: readonly CommandSpec[] = [
  {
    name: 'dilute',
    summary: 'the chain of stock dilutions for a trace in a batch',
    about:
      "The fewest steps that the bench can weigh, then the surest, then the least wasteful; stocks on the shelf are used. Shares are by mass and as dosed. In a ledger the bench's balances and vessels count; elsewhere give --balance.",
    group: 'Batches',
    words: [],
    options: [
      { name: 'of', placeholder: 'COMPOUND', help: 'what is diluted' },
      {
        name: 'to',
        placeholder: 'SHARE',
        help: 'what the batch shall hold, such as 0.5 ppb',
        isAmount: true,
      },
      { name: 'in', placeholder: 'AMOUNT', help: 'the batch, such as 20 kg or 20 L', isAmount: true },
      { name: 'density', placeholder: 'DENSITY', help: 'of the batch; 1 g/mL if left out', isAmount: true },
      {
        name: 'from',
        placeholder: 'STOCK',
        help: 'start from this only: a name on the shelf, a strength such as "100 ppm", or neat',
        many: true,
      },
      { name: 'solvent', placeholder: 'NAME', help: 'what the stocks are made in', takes: ['ingredient'] },
      { name: 'expired', help: 'use stocks that are past their keeping, too' },
      {
        name: 'drop',
        placeholder: 'MASS',
        help: 'mass of a drop, to give the last step in drops too',
        isAmount: true,
      },
      {
        name: 'check',
        placeholder: 'STEPS',
        help: 'check your own chain: "0.1 g in 10 g; 0.1 g in 10 g; 0.05 g in 1 kg"; in: made up to, +: added to',
      },
      ...benchOptions,
      explainOption,
      jsonOption,
    ],
    examples: [
      {
        line: 'dilute --of "cassis thiol" --to 0.5 ppb --in 20 kg --balance "0.01 g up to 600 g"',
        says: 'which stocks to make, and how sure the last is',
      },
      {
        line: 'dilute --check "1 g in 100 g; 1 g in 100 g; 0.5 g in 10 kg" --balance "0.01 g up to 600 g"',
        says: 'what your own chain comes to',
      },
    ],
    load: async () => (await import('./with-stocks.ts')).runDilute,
  },
  {
    name: 'stocks',
    summary: 'the stock dilutions on the shelf, and a new one',
    about:
      "Lists strength, age and the end of keeping (the owner's own estimate), what is left and what was used since. stocks new NAME writes one into ingredients.yaml.",
    group: 'Batches',
    words: [
      { name: 'new', help: 'write a stock on the shelf' },
      { name: 'NAME', help: 'of the new stock', takes: [] },
    ],
    options: [
      {
        name: 'contains',
        placeholder: 'ITEM',
        help: 'with new: what is in it, such as "100 ppm cassis thiol"',
        many: true,
        isAmount: true,
      },
      {
        name: 'from',
        placeholder: 'STEP',
        help: 'with new: what was weighed instead, such as "2 g cassis stock in 100 g"',
      },
      { name: 'in', placeholder: 'NAME', help: 'with new: what the rest of it is', takes: ['ingredient'] },
      {
        name: 'keep',
        placeholder: 'TIME',
        help: 'with new: how long it keeps, as you think',
        isAmount: true,
      },
      { name: 'left', placeholder: 'AMOUNT', help: 'with new: how much there is', isAmount: true },
      { name: 'drop', placeholder: 'MASS', help: 'with new: mass of a drop of it', isAmount: true },
      { name: 'made', placeholder: 'DAY', help: 'with new: such as 2026-03-09; today if left out' },
      { name: 'note', placeholder: 'TEXT', help: 'with new: anything else' },
      dryRunOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'stocks', says: 'what stands on the shelf' },
      {
        line: 'stocks new "cassis 100 ppm" --contains "100 ppm cassis thiol" --in "propylene glycol" --keep "90 d"',
        says: 'a stock from its strength',
      },
    ],
    load: async () => (await import('./with-stocks.ts')).runStocks,
  },
  {
    name: 'dropper',
    summary: 'the mass of a drop, its spread and its confidence interval',
    about:
      'Weigh counted drops of the liquid itself, three times or more: a drop of another liquid, or of the same warm, is another drop.',
    group: 'Batches',
    words: [],
    options: [
      {
        name: 'weighings',
        placeholder: 'MASS/DROPS',
        help: 'such as "0.612 g / 20"',
        many: true,
      },
      { name: 'liquid', placeholder: 'NAME', help: 'what was dropped', takes: ['ingredient'] },
      { name: 'temperature', placeholder: 'TEMP', help: 'of the liquid, such as 20 C', isAmount: true },
      {
        name: 'record',
        placeholder: 'WHERE',
        help: 'write it to the bench, or to an ingredient of your own by its name',
        takes: ['ingredient'],
      },
      dryRunOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      {
        line: 'dropper --weighings "0.612 g / 20" --weighings "0.604 g / 20" --weighings "0.608 g / 20"',
        says: 'a drop, and how far to trust it',
      },
      {
        line: 'dropper --weighings "0.421 g / 20; 0.417 g / 20; 0.424 g / 20" --liquid "cassis stock" --temperature 20 C --record "cassis stock"',
        says: 'the same, written to the ingredient',
      },
    ],
    load: async () => (await import('./with-stocks.ts')).runDropper,
  },
];
