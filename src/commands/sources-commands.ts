/** The words of `sources`. */

import { type CommandSpec, jsonOption } from './command.ts';

export const sourcesCommands: readonly CommandSpec[] = [
  {
    name: 'sources',
    summary: 'where the figures are from, what each source is used for, what is from memory',
    about:
      'Every work that a figure of the tool rests on, with its full reference and the commands that use it. With a word only what has to do with it: an ingredient, a command, an author, a year. Figures from memory had no copy to be read: look them up before you rely on them.',
    group: 'Look up',
    words: [
      {
        name: 'WORD',
        help: 'an ingredient, a command such as ring, an author, or part of a title',
        takes: ['ingredient'],
        many: true,
      },
    ],
    options: [
      { name: 'from-memory', help: 'only the figures for which no source could be read' },
      jsonOption,
    ],
    examples: [
      { line: 'sources "sweet orange oil"', says: 'every figure of it, with its source and range' },
      { line: 'sources --from-memory ring', says: 'what ring takes from memory' },
    ],
    load: async () => (await import('./sources.ts')).runSources,
  },
];
