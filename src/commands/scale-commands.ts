/** The words of the commands that make a batch of a design: scale, cost, swap. */

import {
  type CommandSpec,
  dryRunOption,
  explainOption,
  jsonOption,
  type OptionSpec,
  yesOption,
} from './command.ts';

const design = {
  name: 'DESIGN',
  help: 'a trial by its number or file, a formula by its name or file',
  required: true,
} as const;

const designThen = { ...design, help: `${design.help}; @REVISION as it was in git` };

const sizeOptions: readonly OptionSpec[] = [
  {
    name: 'to',
    placeholder: 'TARGET',
    help: 'what there is to be in the end: "20 L syrup", "500 x 330 mL", "1.2 kg emulsion"',
    isAmount: true,
  },
  {
    name: 'loss',
    placeholder: 'SHARE',
    help: 'what stays in every vessel, such as 3 %; nothing if left out',
    isAmount: true,
  },
  {
    name: 'bottle',
    placeholder: 'VOLUME',
    help: 'the bottle, where --to is no number of bottles; the serving that is aimed at if left out',
    isAmount: true,
  },
];

export const scaleCommands: readonly CommandSpec[] = [
  {
    name: 'scale',
    summary: 'a formula or trial as a batch: what to weigh, on which balance, with a sheet',
    about:
      'Every stage in the order in which it is made, rounded to the divisions of your balances, the rounding taken up by what the stage is made up with. Stages of other trials are made anew. Balances, vessels and the accepted error of a weighing are those of the bench.',
    group: 'Batches',
    words: [designThen],
    options: [
      ...sizeOptions,
      { name: 'fill', help: 'bottles get syrup and carbonated water: what goes into each' },
      {
        name: 'keg',
        placeholder: 'VOLUME',
        help: 'the same for a keg, such as "19 L"; one keg where --to is left out',
        isAmount: true,
      },
      {
        name: 'co2',
        placeholder: 'VOLUMES',
        help: 'in the drink, such as "3.5 vol"; the aim of the formula if left out',
        isAmount: true,
      },
      {
        name: 'temperature',
        placeholder: 'TEMP',
        help: 'of the water when it is carbonated; 4 C if left out',
        isAmount: true,
      },
      {
        name: 'strength',
        placeholder: 'TIMES',
        help: 'a stronger syrup for another throw, such as 1.2; the drink stays the same',
      },
      {
        name: 'vessel',
        placeholder: 'VOLUME',
        help: 'a vessel for this batch, beside those of the bench, such as "50 L"',
        many: true,
        isAmount: true,
      },
      {
        name: 'sheet',
        placeholder: 'FILE',
        help: 'write the batch sheet: FILE.html to print, FILE.md',
        many: true,
      },
      {
        name: 'batch',
        placeholder: 'NAME',
        help: 'the number of the batch; the day and a count if left out',
        takes: [],
      },
      { name: 'replace', help: 'write over a file that is no sheet of ours' },
      yesOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'scale "orange cardamom" --to "20 L syrup" --loss 3 %', says: 'what to weigh for 20 litres' },
      {
        line: 'scale "orange cardamom" --to "500 x 330 mL" --fill --co2 "3.5 vol" --sheet batch.html',
        says: 'a sheet to print, with what goes into each bottle',
      },
      { line: 'scale 17 --keg "19 L"', says: 'one keg of the drink of a trial' },
      {
        line: 'scale "orange cardamom" --to "10 L syrup" --strength 1.2',
        says: 'a stronger syrup, and whether it holds',
      },
    ],
    load: async () => (await import('./scale.ts')).runScale,
  },
  {
    name: 'cost',
    summary: 'what a formula or trial costs: a batch, a litre, a bottle',
    about:
      'From the prices in ingredients.yaml, in whatever currency they are; nothing is converted. What has no price is listed. Without --to, the amounts as they are written.',
    group: 'Batches',
    words: [designThen],
    options: [...sizeOptions, explainOption, jsonOption],
    examples: [
      { line: 'cost "orange cardamom"', says: 'as written' },
      { line: 'cost "orange cardamom" --to "500 x 330 mL" --loss 3 %', says: 'with what stays behind' },
    ],
    load: async () => (await import('./cost.ts')).runCost,
  },
  {
    name: 'swap',
    summary: 'the same formula or trial with another hydrate, lot, fold or emulsifier',
    about:
      'Says the new lines and what changes in the drink. Equal moles for hydrates, acidity for acids, flavour for folded oils and mass for the rest, unless --equal says otherwise.',
    group: 'Batches',
    words: [design],
    options: [
      { name: 'out', placeholder: 'INGREDIENT', help: 'the ingredient to take out' },
      { name: 'in', placeholder: 'INGREDIENT', help: 'the ingredient to put in for it' },
      {
        name: 'equal',
        placeholder: 'WHAT',
        help: 'moles, acidity, mass or flavour (by fold)',
        choices: ['moles', 'acidity', 'mass', 'flavour'],
      },
      { name: 'write', help: 'write the new lines into the formula' },
      dryRunOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      {
        line: 'swap "orange cardamom" --out "citric acid" --in "citric acid monohydrate"',
        says: 'at equal moles',
      },
      {
        line: 'swap "orange cardamom" --out "polysorbate 80" --in "polysorbate 20" --equal mass',
        says: 'another emulsifier',
      },
    ],
    load: async () => (await import('./swap.ts')).runSwap,
  },
];
