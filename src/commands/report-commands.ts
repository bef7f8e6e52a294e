/** The words of what is written to be looked at: the report. */

import { type CommandSpec, jsonOption, yesOption } from './command.ts';

export const reportCommands: readonly CommandSpec[] = [
  {
    name: 'report',
    summary: 'a series, a formula, a batch, a trial or the whole ledger as one page to look at and to print',
    about:
      'One HTML file that needs nothing else: no network, nothing in it runs. It shows the board of beakers, the chance to hold with the ratio to work at, the map of oil, emulsifier and water, tastes, foam, the drink with its aims, what changed through git, photos of the ledger up to 1.5 MB each, cautions and sources. Every picture has its table beside it. Without a word it shows every series of the ledger in short, the newest first.',
    group: 'Keeping and sharing',
    words: [
      {
        name: 'WHAT',
        help: 'a series, a formula or a batch by its name, a trial by its number; @REVISION as it was in git',
        many: true,
        takes: ['series', 'formula', 'batch', 'trial'],
      },
    ],
    options: [
      { name: 'html', placeholder: 'FILE', help: 'the file to write' },
      { name: 'replace', help: 'write over a file that is there and not one of ours' },
      yesOption,
      jsonOption,
    ],
    examples: [
      { line: 'report "orange ladder" --html ladder.html', says: 'the ladder, to look at in a browser' },
      { line: 'report --html ledger.html', says: 'everything in short' },
    ],
    load: async () => (await import('./report.ts')).runReport,
  },
];
