/** The words of `due`. */

import { type CommandSpec, explainOption, jsonOption } from './command.ts';

export const dueCommands: readonly CommandSpec[] = [
  {
    name: 'due',
    summary: 'which samples need a look now, and what comes',
    about:
      'By the schedule of the bench, or of the sample where it has its own; the longest missed first. Says nothing of what was seen. Bottles kept back of a batch count too. With --ics the schedule goes into a calendar file.',
    group: 'Ledger',
    words: [],
    options: [
      { name: 'days', placeholder: 'N', help: 'what comes in so many days too' },
      { name: 'all', help: 'everything that comes' },
      {
        name: 'ics',
        placeholder: 'FILE',
        help: 'write the schedule as iCalendar, up to --days or all of it',
      },
      { name: 'replace', help: 'write over a file that is not one of ours' },
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'due', says: 'what to look at today' },
      { line: 'due --days 7 --ics looks.ics', says: 'the week, also for your calendar' },
    ],
    load: async () => (await import('./due.ts')).runDue,
  },
];
