/** The words of `days`. */

import { type CommandSpec, jsonOption } from './command.ts';

export const daysCommands: readonly CommandSpec[] = [
  {
    name: 'days',
    summary: 'what to type on day 0, day 1 and day 7',
    about: 'From an empty folder to the first drink, one line after the other. It only shows them.',
    group: 'Look up',
    words: [{ name: 'DAY', help: '0, 1 or 7; all of them if left out' }],
    options: [jsonOption],
    examples: [
      { line: 'days', says: 'the whole week' },
      { line: 'days 1', says: 'what to type on the day after' },
    ],
    load: async () => (await import('./days.ts')).runDays,
  },
];
