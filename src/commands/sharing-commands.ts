/** The words of passing a recipe on and of tables that come and go. */

import { type CommandSpec, dryRunOption, jsonOption, type OptionSpec, yesOption } from './command.ts';

const replaceOption: OptionSpec = { name: 'replace', help: 'write over a file that is there' };

export const sharingCommands: readonly CommandSpec[] = [
  {
    name: 'give',
    summary: 'one formula or trial to pass on, as a card to read or a file to take in',
    about:
      'The ingredients of your own that are in it and the stages of other trials go along. Lots, prices, names, sources, notes about the shelf, and what was seen stay out unless asked for; comments always do. A card is Markdown; a file that ends in .yaml is for neckring take.',
    group: 'Keeping and sharing',
    words: [
      {
        name: 'WHAT',
        help: 'a formula by its name, a trial by its number; @REVISION as it was in git',
        required: true,
        takes: ['formula', 'trial'],
      },
    ],
    options: [
      {
        name: 'as',
        placeholder: 'FORM',
        help: 'markdown or yaml; by the ending of the file if left out',
        choices: ['markdown', 'yaml'],
      },
      { name: 'to', placeholder: 'FILE', help: 'the file to write; shown here if left out' },
      {
        name: 'with',
        placeholder: 'WORDS',
        help: 'give along: lots, prices, names, sources, notes, looks, or all',
        choices: ['lots', 'prices', 'names', 'sources', 'notes', 'looks', 'all'],
        many: true,
      },
      {
        name: 'batch',
        placeholder: 'AMOUNT',
        help: 'of a card: the masses for so much of the drink, or of the last stage',
        isAmount: true,
      },
      replaceOption,
      yesOption,
      jsonOption,
    ],
    examples: [
      { line: 'give "orange cardamom" --batch 10 L', says: 'a card with the masses for ten litres' },
      { line: 'give 17 --as yaml', says: 'a trial, with the emulsion that it uses' },
    ],
    load: async () => (await import('./give.ts')).runGive,
  },
  {
    name: 'take',
    summary: 'takes in a recipe that somebody gave, after checking it',
    about:
      'Nothing in the file is run. Trials get the next free numbers, and what refers to them follows. A name that is here already and means something else is asked about on a terminal; elsewhere --rename or --keep settles it. Everything is written or nothing is.',
    group: 'Keeping and sharing',
    words: [{ name: 'FILE', help: 'a file that neckring give wrote with --as yaml', required: true }],
    options: [
      { name: 'rename', help: 'take what clashes under a new name' },
      {
        name: 'keep',
        placeholder: 'WHOSE',
        help: 'of what clashes: mine leaves mine as it is, theirs replaces it',
        choices: ['mine', 'theirs'],
      },
      dryRunOption,
      jsonOption,
    ],
    examples: [
      { line: 'take cassis-water.yaml --dry-run', says: 'what it would add' },
      { line: 'take cassis-water.yaml --rename', says: 'beside what has the same name here' },
    ],
    load: async () => (await import('./take.ts')).runTake,
  },
  {
    name: 'export',
    summary: 'observations, results or compositions as comma-separated values',
    about:
      'Comma-separated values by RFC 4180, with the unit in the head of each column, the same in every row. A text that a spreadsheet would take for a formula (it begins with = + - @ or a tab) gets an apostrophe before it; numbers never do.',
    group: 'Keeping and sharing',
    words: [
      {
        name: 'WHAT',
        help: 'observations, results or compositions',
        required: true,
        choices: ['observations', 'results', 'compositions'],
      },
      {
        name: 'NAME',
        help: 'trials, series, batches or formulas; all if left out',
        many: true,
        takes: ['series', 'formula', 'batch', 'trial'],
      },
    ],
    options: [
      { name: 'to', placeholder: 'FILE', help: 'the file to write; shown here if left out' },
      {
        name: 'separator',
        placeholder: 'WORD',
        help: 'comma, semicolon or tab; comma if left out',
        choices: ['comma', 'semicolon', 'tab'],
      },
      {
        name: 'bom',
        help: 'begin with a byte order mark, for a spreadsheet that shows accents wrong without it',
      },
      replaceOption,
      jsonOption,
    ],
    examples: [
      { line: 'export observations "orange ladder"', says: 'every look at the rungs' },
      { line: 'export compositions 17 --json', says: 'what is in the stages of one trial' },
    ],
    load: async () => (await import('./export.ts')).runExport,
  },
  {
    name: 'import',
    summary: 'old notes from a spreadsheet, a trial each row',
    about:
      'The mapping is a YAML file with a line for each column, "column: path". Paths: title, made, by, why, concluded, note, series; stages.STAGE.ITEM, with "in g" where the cells are bare numbers, and ", made up", ", weighed", ", lot" or ", note" after it; stages.STAGE, process; observations look at 7 d, and so with ph, note, turbidity in NTU or taste soapy; leave out. What is the same in every row stands under "always" as "path: text". Trials get the next free numbers in the order of the rows. A row that can\'t be read is named with its line; then nothing is written, unless --skip leaves such rows out.',
    group: 'Keeping and sharing',
    words: [{ name: 'FILE', help: 'comma-separated values with a head line, in UTF-8', required: true }],
    options: [
      { name: 'map', placeholder: 'FILE', help: 'which column is what' },
      { name: 'skip', help: 'write the rows that can be read, and name the others' },
      {
        name: 'separator',
        placeholder: 'WORD',
        help: 'comma, semicolon or tab; told from the head line if left out',
        choices: ['comma', 'semicolon', 'tab'],
      },
      dryRunOption,
      jsonOption,
    ],
    examples: [
      { line: 'import notes.csv --map notes-map.yaml --dry-run', says: 'what would become of each row' },
      { line: 'import notes.csv --map notes-map.yaml --skip', says: 'the rows that can be read' },
    ],
    load: async () => (await import('./import.ts')).runImport,
  },
];
