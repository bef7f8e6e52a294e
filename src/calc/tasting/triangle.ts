import { defineCalculator } from '../define-calculator.ts';
import { choiceAnswer, choiceReadings, filedUnderDrink } from './choice-answer.ts';
import { choiceFields, readChoice } from './choice-inputs.ts';

/**
 * A triangle test: whether two drinks can be told apart at all.
 *
 * Formula   one in three by guessing: P(X >= right), the number needed, the share that can tell, power
 * Input     right of tastings; risk, share to find and power, 0 to 1
 * Output    pValue, rightNeeded, distinguisherFraction with its sides, power, tastingsNeeded
 * Refuses   more right than tasted, fractions, shares that can't be
 * Source    ISO 4120, exact binomial
 * Example   triangle --right 9 --of 15 -> rightNeeded 9, pValue 0.0308
 */
export const triangle = defineCalculator({
  name: 'triangle',
  version: 1,
  summary: 'whether two drinks can be told apart: which glass of three is the odd one',
  fields: choiceFields,
  readings: choiceReadings,
  examples: [],
  takes: filedUnderDrink,
  work: (given, working) =>
    choiceAnswer({
      inputs: readChoice(given),
      choice: { guess: 1 / 3, sides: 1 },
      words: {
        didRight: 'found the odd glass',
        claim: 'that they can be told apart',
        mayStill: 'be able to tell them apart',
        chance: 'one in three',
        standard: 'iso-4120#exact binomial',
      },
      working,
    }),
});
