/** The words of the command for the schemas of the ledger's files. */

import { type CommandSpec, dryRunOption, jsonOption } from './command.ts';

export const schemaCommand: CommandSpec = {
  name: 'schema',
  summary: 'the JSON Schema of each kind of file, for editors that complete and check',
  about:
    'Alone it lists the kinds of file; with a kind it prints the schema of one. With --write it writes them into schema/ of the ledger, or renews those that are of another version. New files then begin with a line that editors understand; files that are there are not changed.',
  group: 'Ledger',
  words: [
    {
      name: 'KIND',
      help: 'bench, ingredients, trial, series, formula or batch',
      choices: ['trial', 'series', 'formula', 'batch', 'bench', 'ingredients'],
    },
  ],
  options: [
    { name: 'write', help: 'write the schemas into schema/ of this ledger' },
    { name: 'replace', help: 'with --write, also over a file there that neckring did not write' },
    dryRunOption,
    jsonOption,
  ],
  examples: [
    { line: 'schema trial', says: 'what may stand in a trial' },
    { line: 'schema --write', says: 'written into the ledger, or renewed' },
  ],
  load: async () => (await import('./schema.ts')).runSchema,
};
