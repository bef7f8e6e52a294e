/** The words of the tastings; what they do is loaded when one is asked for. */

import { type CommandSpec, explainOption, jsonOption, type OptionSpec } from './command.ts';

const countOptions: readonly OptionSpec[] = [
  { name: 'right', placeholder: 'N', help: 'how many were right' },
  { name: 'of', placeholder: 'N', help: 'of how many tastings' },
];

const shareOptions: readonly OptionSpec[] = [
  {
    name: 'risk',
    placeholder: 'SHARE',
    help: 'chance of seeing a difference where there is none; 5 % if left out',
    isAmount: true,
  },
  {
    name: 'find',
    placeholder: 'SHARE',
    help: 'a difference that such a share can tell, to be found; 30 % if left out',
    isAmount: true,
  },
  {
    name: 'power',
    placeholder: 'SHARE',
    help: 'the chance with which it is to be found; 90 % if left out',
    isAmount: true,
  },
];

const closing: readonly OptionSpec[] = [
  { name: 'plan', placeholder: 'N', help: 'a serving sheet for so many tastings, with codes' },
  { name: 'sheet', placeholder: 'FILE', help: 'the sheet into a file instead' },
  { name: 'key', placeholder: 'FILE', help: 'where the key of the codes goes; a new file if left out' },
  { name: 'replace', help: 'write over files that are there' },
  { name: 'trial', placeholder: 'TRIAL', help: 'the trial that was tasted' },
  { name: 'against', placeholder: 'TRIAL', help: 'what it was tasted against' },
  { name: 'record', help: 'write the answer into the trial of --trial' },
  explainOption,
  jsonOption,
];

export const tastingCommands: readonly CommandSpec[] = [
  {
    name: 'triangle',
    summary: 'whether two drinks can be told apart: which glass of three is the odd one',
    about:
      'Says neither in what they differ nor which is better: that is a pair. Exact, one in three by guessing. With --plan it writes the serving sheet and, apart from it, the key.',
    group: 'Tasting',
    words: [],
    options: [...countOptions, ...shareOptions, ...closing],
    examples: [
      { line: 'triangle --right 9 --of 15', says: 'nine of fifteen found the odd glass' },
      { line: 'triangle --plan 12 --trial 17 --against 13', says: 'a serving sheet, and its key in a file' },
    ],
    load: async () => (await import('./tasting.ts')).runTriangle,
  },
  {
    name: 'pair',
    summary: 'which of two drinks has more of something, or is preferred',
    about:
      'Exact, one in two by guessing. With --more the expected answer counts as right and the test is one-sided; a preference, or --two-sided, could go either way.',
    group: 'Tasting',
    words: [],
    options: [
      {
        name: 'more',
        placeholder: 'WORD',
        help: 'what was asked: which one is more of this; the expected answer counts as right',
        takes: ['taste word'],
      },
      { name: 'prefer', help: 'which one was preferred; --right is how many chose one of the two' },
      { name: 'two-sided', help: 'nobody knew beforehand which one it would be' },
      ...countOptions,
      ...shareOptions,
      ...closing,
    ],
    examples: [
      { line: 'pair --more soapy --right 11 --of 14', says: 'eleven called the expected one more soapy' },
      { line: 'pair --prefer --right 11 --of 14', says: 'eleven chose the same one' },
    ],
    load: async () => (await import('./tasting.ts')).runPair,
  },
];
