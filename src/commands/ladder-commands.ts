/** The words of ladders: planned, looked at, carried on, decided. */

import { type CommandSpec, explainOption, jsonOption, type OptionSpec } from './command.ts';

const writeOption: OptionSpec = {
  name: 'write',
  help: 'write the trials; without it the plan is only shown, and asked about on a terminal',
};

export const ladderCommands: readonly CommandSpec[] = [
  {
    name: 'ladder',
    summary: 'plan a ladder: one trial for each rung, and the series',
    about:
      'From a trial or formula, one thing is varied and all else kept. Shows the rungs in the shuffled order of making, what each weighs out to and what rounding does to it. Without rungs it begins where such emulsions break.',
    group: 'Ladders',
    words: [
      {
        name: 'TRIAL',
        help: 'a trial or formula to start from',
        required: true,
        takes: ['trial', 'formula'],
      },
    ],
    options: [
      {
        name: 'vary',
        placeholder: 'WHAT',
        help: '"oil per emulsifier" (if left out), "blend HLB", or an item such as "propylene glycol"',
        takes: ['ingredient'],
      },
      {
        name: 'rungs',
        placeholder: 'LIST',
        help: '"1:4, 1:3, 1:2" (oil first), or amounts such as "2 g, 4 g, 6 g"',
      },
      { name: 'range', placeholder: 'ENDS', help: '"1:4 to 1:1", with --count' },
      { name: 'count', placeholder: 'N', help: 'how many rungs; 6 if left out' },
      {
        name: 'same',
        placeholder: 'WHAT',
        help: 'what keeps its mass: emulsifier (if left out), oil, or batch for both together',
        choices: ['emulsifier', 'oil', 'batch'],
        many: true,
      },
      {
        name: 'making',
        placeholder: 'HOW',
        help: 'stirred or homogenised, where the steps of the trial do not tell',
        choices: ['stirred', 'homogenised'],
      },
      {
        name: 'control',
        placeholder: 'WHAT',
        help: 'remake what is known to hold: "1:4", "trial 12" or "series orange ladder"',
        takes: [],
        isAmount: true,
      },
      { name: 'blank', help: 'one beaker with everything but the oil' },
      {
        name: 'series',
        placeholder: 'NAME',
        help: 'its name; to a series that is there the beakers are added',
        takes: ['series'],
      },
      { name: 'question', placeholder: 'TEXT', help: 'the question that the series asks' },
      { name: 'judge', placeholder: 'SAMPLE', help: 'the sample that decides; the first if left out' },
      {
        name: 'made',
        placeholder: 'TIME',
        help: '2026-03-02, 09:10, "yesterday 18:00" or a full time; now if left out',
      },
      writeOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'ladder 13', says: 'where such emulsions break, nothing written' },
      {
        line: 'ladder 13 --rungs "1:4, 1:3, 1:2.5, 1:2" --control 1:8 --blank --write',
        says: 'four rungs, a control and a blank, written',
      },
      { line: 'ladder 13 --vary "propylene glycol" --range "2 g to 8 g" --count 4', says: 'the carrier' },
    ],
    load: async () => (await import('./ladder.ts')).runLadder,
  },
  {
    name: 'next',
    summary: 'which beakers to make next, so that few are needed',
    about:
      'Chooses ratios to be made at once, those that should tell most about where the break lies. Says when it is known well enough, and how many beakers are left till then.',
    group: 'Ladders',
    words: [{ name: 'SERIES', help: 'its name or its file', many: true, required: true }],
    options: [
      { name: 'beakers', placeholder: 'K', help: 'how many at once; 4 if left out' },
      {
        name: 'within',
        placeholder: 'SHARE',
        help: 'how well the break is to be known; 10 % if left out',
        isAmount: true,
      },
      writeOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'next "orange ladder" --beakers 4', says: 'the next four, with what they weigh out to' },
      { line: 'next "orange ladder" --within 15% --write', says: 'known less well, and the trials written' },
    ],
    load: async () => (await import('./next.ts')).runNext,
  },
  {
    name: 'decide',
    summary: 'write what was decided into the series',
    about:
      'Text, date, and where given the ratio and why. A decision that stands is replaced only with --again.',
    group: 'Ladders',
    words: [
      { name: 'SERIES', help: 'its name or its file', required: true },
      { name: 'TEXT', help: 'what was decided, in your own words', required: true },
    ],
    options: [
      {
        name: 'ratio',
        placeholder: 'RATIO',
        help: 'what was decided on: 1:3, 0.333, or an amount',
        isAmount: true,
      },
      { name: 'why', placeholder: 'TEXT', help: 'what it rests on' },
      {
        name: 'again',
        help: 'replace the decision that stands there; the old one stays as a comment above it',
      },
      { name: 'dry-run', help: 'show what would be written and write nothing' },
      explainOption,
      jsonOption,
    ],
    examples: [
      {
        line: 'decide "orange ladder" "one part to three" --ratio 1:3 --why "14 turned blue" --dry-run --again',
        says: 'look first',
      },
      {
        line: 'decide "orange ladder" "a step further back" --ratio 1:3.3 --again',
        says: 'in place of the decision that stands there',
      },
    ],
    load: async () => (await import('./decide.ts')).runDecide,
  },
];
