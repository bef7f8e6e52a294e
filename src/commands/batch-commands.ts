/** The words of the commands from beaker to batch; what they do is loaded with the ledger. */

import {
  type CommandSpec,
  dryRunOption,
  explainOption,
  jsonOption,
  type OptionSpec,
  type Run,
} from './command.ts';
import { observationOptions } from './observation-options.ts';

type Ledger = typeof import('./with-ledger.ts');

const withLedger =
  (pick: (ledger: Ledger) => Run): (() => Promise<Run>) =>
  async () =>
    pick(await import('./with-ledger.ts'));

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

/** What is read of a tank on the day. */
const batchReadings: readonly string[] = [
  ...['look', 'temperature', 'turbidity', 'ph', 'acid', 'brix', 'density', 'co2'],
  ...['smell', 'colour', 'viewed', 'by', 'note'],
];

export const batchCommands: readonly CommandSpec[] = [
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
      { name: 'solvent', placeholder: 'NAME', help: 'what the stocks are made in' },
      { name: 'expired', help: 'use stocks that are past their keeping, too' },
      {
        name: 'drop',
        placeholder: 'MASS',
        help: 'mass of a drop, to say the last take in drops',
        isAmount: true,
      },
      {
        name: 'check',
        placeholder: 'STEPS',
        help: 'verify your own chain: "0.1 g in 10 g; 0.1 g in 10 g; 0.05 g in 1 kg"; in: made up to, +: added to',
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
    load: withLedger((ledger) => ledger.runDilute),
  },
  {
    name: 'stocks',
    summary: 'the stock dilutions on the shelf, and a new one',
    about:
      "Lists strength, age and the end of keeping (the owner's own estimate), what is left and what was used since. stocks new NAME writes one into ingredients.yaml.",
    group: 'Batches',
    words: [
      { name: 'new', help: 'write a stock on the shelf' },
      { name: 'NAME', help: 'of the new stock' },
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
      { name: 'in', placeholder: 'NAME', help: 'with new: what the rest of it is' },
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
      jsonOption,
    ],
    examples: [
      { line: 'stocks', says: 'what stands on the shelf' },
      {
        line: 'stocks new "cassis 100 ppm" --contains "100 ppm cassis thiol" --in "propylene glycol" --keep "90 d"',
        says: 'a stock from its strength',
      },
    ],
    load: withLedger((ledger) => ledger.runStocks),
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
      { name: 'liquid', placeholder: 'NAME', help: 'what was dropped' },
      { name: 'temperature', placeholder: 'TEMP', help: 'of the liquid, such as 20 C', isAmount: true },
      {
        name: 'record',
        placeholder: 'WHERE',
        help: 'write it to the bench, or to an ingredient of your own by its name',
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
    load: withLedger((ledger) => ledger.runDropper),
  },
  {
    name: 'batch',
    summary: 'the batches that were made; batch record files one',
    about:
      'batch alone lists them. batch record DESIGN files one under batches/: what was weighed, in the order of addition or by name, what was read of the tank, the bottles filled and kept back, and says what the drink came to. Kept-back bottles come up on 30, 90, 180 and 365 days. observe NAME adds a later reading, show NAME shows it.',
    group: 'Batches',
    words: [
      { name: 'record', help: 'file a batch' },
      { name: 'DESIGN', help: 'of what: a formula by its name, a trial by its number' },
      {
        name: 'FIGURES',
        help: 'grams in the order of addition, or part of a name and its figure',
        many: true,
      },
    ],
    options: [
      {
        name: 'to',
        placeholder: 'TARGET',
        help: 'how much was made, as for scale: "20 L syrup", "500 x 330 mL"; as the design is written if left out',
        isAmount: true,
      },
      {
        name: 'loss',
        placeholder: 'SHARE',
        help: 'what was reckoned to stay in the vessels',
        isAmount: true,
      },
      { name: 'name', placeholder: 'NAME', help: 'its number; the day and a count if left out' },
      { name: 'made', placeholder: 'TIME', help: '09:10, "yesterday 18:00" or a full time; now if left out' },
      {
        name: 'yield',
        placeholder: 'AMOUNT',
        help: 'what there was in the end, such as "19.4 kg"',
        isAmount: true,
      },
      { name: 'bottles', placeholder: 'COUNT', help: 'bottles filled' },
      { name: 'bottle', placeholder: 'VOLUME', help: 'of one, such as 330 mL', isAmount: true },
      { name: 'retained', placeholder: 'COUNT', help: 'bottles kept back to be looked at' },
      { name: 'title', placeholder: 'TEXT', help: 'what it is' },
      { name: 'readings', help: 'the figures are running readings on one tare' },
      ...observationOptions.filter(({ name }) => batchReadings.includes(name)),
      dryRunOption,
      jsonOption,
    ],
    examples: [
      {
        line: 'batch record "orange cardamom" --to "20 L syrup" --yield "24 kg" --brix 40.1 --acid "22.4 g/L"',
        says: 'a batch with what was read of the tank',
      },
      {
        line: 'batch record 17 sucrose 90.2 "citric acid" 4.48 --bottles 3 --retained 1',
        says: 'a trial made once more, two items as weighed, a bottle kept back',
      },
    ],
    load: withLedger((ledger) => ledger.runBatch),
  },
  {
    name: 'correct',
    summary: 'the tank came out wrong: what to add',
    about:
      'Takes what was read of the tank, works out what must be in it, says which single slip of the balance would explain it, and what to add so that everything is as planned; and what sugar, acid and water alone would do. Exits 1 where it can not be mended by adding.',
    group: 'Batches',
    words: [{ name: 'BATCH', help: 'a batch by its name, a trial by its number', required: true }],
    options: [
      {
        name: 'brix',
        placeholder: 'BRIX',
        help: 'as read; what was filed with the batch if nothing is given',
      },
      {
        name: 'acid',
        placeholder: 'ACID',
        help: 'titratable acid as citric, as read, in g/L',
        isAmount: true,
      },
      {
        name: 'tank',
        placeholder: 'AMOUNT',
        help: 'what is in the tank now, such as "19.4 kg"; the yield of the batch if left out',
        isAmount: true,
      },
      {
        name: 'stage',
        placeholder: 'STAGE',
        help: 'what the tank holds; what fits the readings if left out',
      },
      { name: 'aim-brix', placeholder: 'BRIX', help: 'the aim; that of the plan if left out' },
      {
        name: 'aim-acid',
        placeholder: 'ACID',
        help: 'the aim; that of the plan if left out',
        isAmount: true,
      },
      {
        name: 'vessel',
        placeholder: 'VOLUME',
        help: 'what the tank holds at most, such as "25 L"',
        isAmount: true,
      },
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'correct 17 --brix 9.6 --acid 4.9', says: 'the drink of trial 17 read too strong' },
      {
        line: 'correct 17 --stage syrup --brix 36.2 --acid 20.4 --tank "19.4 kg"',
        says: 'its syrup, in a tank of 19.4 kg',
      },
    ],
    load: withLedger((ledger) => ledger.runCorrect),
  },
];
