/** The words of the commands from beaker to batch; what they do is loaded with the ledger. */

import { type CommandSpec, dryRunOption, explainOption, jsonOption, yesOption } from './command.ts';
import { observationOptions } from './observation-options.ts';
import { stockCommands } from './stock-commands.ts';

/** What is read of a tank on the day. */
const batchReadings: readonly string[] = [
  ...['look', 'temperature', 'turbidity', 'ph', 'acid', 'brix', 'density', 'co2'],
  ...['smell', 'colour', 'viewed', 'by', 'note'],
];

export const batchCommands: readonly CommandSpec[] = [
  ...stockCommands,
  {
    name: 'batch',
    summary: 'the batches that were made; batch record files one',
    about:
      'batch alone lists them. batch record DESIGN files one under batches/: what was weighed, in the order of addition or by name, what was read of the tank, the bottles filled and kept back, and says what the drink came to. Bottles kept back come up in due after 30, 90, 180 and 365 days. observe NAME adds a later reading, show NAME shows it.',
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
        help: 'how much was made, as for scale: "20 L syrup", "500 x 330 mL"; as much as is written if left out',
        isAmount: true,
      },
      {
        name: 'loss',
        placeholder: 'SHARE',
        help: 'what was reckoned to stay in the vessels',
        isAmount: true,
      },
      {
        name: 'strength',
        placeholder: 'TIMES',
        help: 'as for scale, where the syrup was made stronger',
      },
      { name: 'name', placeholder: 'NAME', help: 'its number; the day and a count if left out', takes: [] },
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
      yesOption,
      dryRunOption,
      explainOption,
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
    load: async () => (await import('./with-stocks.ts')).runBatch,
  },
  {
    name: 'correct',
    summary: 'the tank came out wrong: what to add',
    about:
      'Takes what was read of the tank, works out what must be in it, says which single slip of the balance would explain it, and what to add so that everything is as planned; and what sugar, acid and water alone would do. Exits 1 where adding does not mend it.',
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
      { name: 'ph', placeholder: 'PH', help: 'as read; moves the buffer salt where nothing else tells it' },
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
        name: 'aim-ph',
        placeholder: 'PH',
        help: 'the aim, by the buffer salt; that of the plan if left out',
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
    load: async () => (await import('./with-stocks.ts')).runCorrect,
  },
];
