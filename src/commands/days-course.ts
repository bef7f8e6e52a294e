/** What to type from the first beaker to the end of the watch, as data: shown by `days`, run in this order by a test. */

import type { Example } from '../calc/calculator.ts';

export interface CourseDay {
  readonly day: number;
  readonly title: string;
  readonly lines: readonly Example[];
}

export const courseDays: readonly CourseDay[] = [
  {
    day: 0,
    title: 'one beaker, then a ladder of them, weighed out and left on the bench',
    lines: [
      { line: 'init', says: 'begins a ledger in this folder; put your balances into bench.yaml' },
      {
        line: 'emulsifier --batch 50 g --oil 4% --ratio 1:3',
        says: 'what goes into 50 g with 4 % of oil, one part of oil to three of emulsifier',
      },
      {
        line: 'new --title "sweet orange, one to three" --item "2 g sweet orange oil" --item "6 g polysorbate 80" --item "6 g propylene glycol" --item "to 50 g water" --step "warm oil and emulsifier to 60 C"',
        says: 'trial 1; neckring new alone asks for the same, line by line',
      },
      { line: 'weigh 1 2.01 6.02 6.00 35.97', says: 'what the balance said; weigh 1 alone asks' },
      {
        line: 'ladder 1 --rungs "1:4, 1:3, 1:2.5, 1:2" --write',
        says: 'trials 2 to 5, made the same way with other amounts of oil, in shuffled order',
      },
      { line: 'check', says: 'is anything wrong in the files, and where' },
    ],
  },
  {
    day: 1,
    title: 'look, and again on days 2 and 4',
    lines: [
      { line: 'due', says: 'which beakers want a look today' },
      { line: 'look 1-5 clear', says: 'what was seen in which; look alone asks for one after the other' },
      { line: 'observe 3 --note "a faint smell only"', says: 'anything else about one of them' },
    ],
  },
  {
    day: 7,
    title: 'the watch ends: where is the break, and what goes into the first drink',
    lines: [
      { line: 'look 1,2,4,5 clear 3 "cloudy, ring"', says: 'the last look of the week' },
      {
        line: 'series "sweet orange ladder"',
        says: 'which held, where the break lies, the ratio to work at',
      },
      {
        line: 'decide "sweet orange ladder" "one to three" --ratio 1:3 --why "held a week"',
        says: 'writes down what you decided, and why',
      },
      { line: 'next "sweet orange ladder" --beakers 4', says: 'or the next beakers, closer to the break' },
      {
        line: 'new --title "first drink" --stage drink --item "1.5 g emulsion of 1" --item "90 g sucrose" --item "4.5 g citric acid" --item "to 1 L water"',
        says: 'a litre of drink with the emulsion of trial 1',
      },
      { line: 'drink 6', says: 'its pH, acid, Brix, and how much of everything is in it' },
    ],
  },
];
