/** The words of the daily round. */

import { type CommandSpec, dryRunOption, jsonOption, type OptionSpec } from './command.ts';

const atOption: OptionSpec = {
  name: 'at',
  placeholder: 'TIME',
  help: '09:10, "yesterday 18:00" or a full time; now if left out',
};
const sampleOption: OptionSpec = {
  name: 'sample',
  placeholder: 'SAMPLE',
  help: 'which sample; not needed where there is one',
};
const viewedOption: OptionSpec = {
  name: 'viewed',
  placeholder: 'HOW',
  help: 'against what, in which light, where it was not as usual',
  takes: [],
};
const noteOption: OptionSpec = { name: 'note', placeholder: 'TEXT', help: 'anything else' };
const byOption: OptionSpec = { name: 'by', placeholder: 'WHO', help: 'who looked' };
const closing = [noteOption, byOption, dryRunOption, jsonOption];

export const lookingCommands: readonly CommandSpec[] = [
  {
    name: 'look',
    summary: 'the daily round: what was seen in which sample',
    about:
      'Trials or ranges, then what was seen of them: clear, bluish, hazy, cloudy, specks, ring, sediment, gel or broken. Alone on a terminal it asks for every sample that is due, in shuffled order. All of a line is written, or nothing. To take a look back, delete its lines in the file of the trial; git keeps the old one.',
    group: 'Ledger',
    words: [{ name: 'TRIALS-AND-LOOKS', help: '14-17 clear 18 bluish 19 "clear, ring"', many: true }],
    options: [sampleOption, atOption, viewedOption, ...closing],
    examples: [
      { line: 'look 11-13 clear 14 hazy', says: 'four beakers in one line' },
      { line: 'look 14 "hazy, ring" --note "only a thread"', says: 'two things at once' },
      { line: 'look', says: 'what is due, one at a time' },
    ],
    load: async () => (await import('./with-writing.ts')).runLook,
  },
  {
    name: 'same',
    summary: 'the last look of a sample once more',
    about: 'Of a trial with several samples each one repeats its own last look.',
    group: 'Ledger',
    words: [{ name: 'TRIALS', help: 'numbers or ranges, such as 14 or 14-17', many: true, required: true }],
    options: [sampleOption, atOption, viewedOption, ...closing],
    examples: [
      { line: 'same 11-13', says: 'nothing has changed' },
      { line: 'same 15 16 --note "cold room"', says: 'two beakers, with a note' },
    ],
    load: async () => (await import('./with-writing.ts')).runSame,
  },
  {
    name: 'end',
    summary: 'stop looking at a sample, and say why',
    about: 'What was seen before still counts; later looks at this sample are refused.',
    group: 'Ledger',
    words: [{ name: 'TRIALS', help: 'numbers or ranges, such as 14 or 14-17', many: true, required: true }],
    options: [
      { name: 'why', placeholder: 'WHY', help: 'spilled, drunk, mould, "thrown away" …' },
      sampleOption,
      atOption,
      ...closing,
    ],
    examples: [
      { line: 'end 14 --why spilled', says: 'the beaker fell over' },
      { line: 'end 15 16 --why "mould on top"', says: 'two beakers at once' },
    ],
    load: async () => (await import('./with-writing.ts')).runEnd,
  },
];
