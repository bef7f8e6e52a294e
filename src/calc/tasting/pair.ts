import { fail } from '../../problem.ts';
import { defineCalculator } from '../define-calculator.ts';
import { type ChoiceWords, choiceAnswer, choiceReadings, filedUnderDrink } from './choice-answer.ts';
import { choiceFields, readChoice } from './choice-inputs.ts';
import { wordField, yesField } from './word-field.ts';

/**
 * A paired comparison: which of two drinks has more of something, or is preferred.
 *
 * Formula   one in two by guessing: P(X >= right), the number needed, the share that can tell, power; two-sided where
 *           nobody knew beforehand which it would be
 * Input     right (or those who chose one of the two) of tastings; risk, share to find and power, 0 to 1
 * Output    pValue, rightNeeded, distinguisherFraction with its sides, power, tastingsNeeded
 * Refuses   no question or two, more right than tasted, fractions, shares that can't be
 * Source    ISO 5495, exact binomial
 * Example   pair --more soapy --right 11 --of 14 -> rightNeeded 11, pValue 0.0287
 */
export const pair = defineCalculator({
  name: 'pair',
  version: 1,
  summary: 'which of two drinks has more of something, or is preferred',
  fields: {
    more: wordField({
      help: 'what was asked: which one is more of this; the expected answer counts as right',
      placeholder: 'WORD',
    }),
    prefer: yesField('which one was preferred'),
    twoSided: yesField('nobody knew beforehand which one it would be'),
    ...choiceFields,
  },
  readings: {
    ...choiceReadings,
    distinguisherFraction: {
      ...choiceReadings['distinguisherFraction'],
      label: 'share that can tell, or prefers',
    },
  },
  examples: [],
  takes: filedUnderDrink,
  work: (given, working) => {
    const { more, prefer } = given;
    if (more === undefined && !prefer)
      return fail('missing', 'what was asked is not given', 'add --more soapy, or --prefer');
    if (more !== undefined && prefer)
      return fail('given-twice', 'both --more and --prefer are given', 'a tasting asks one question');
    const sides = prefer || given.twoSided ? 2 : 1;
    return choiceAnswer({
      inputs: readChoice(given),
      choice: { guess: 1 / 2, sides },
      words: { ...wordsOf(more, sides), chance: 'one in two', standard },
      working,
    });
  },
});

const standard = 'iso-5495#exact binomial';

function wordsOf(more: string | undefined, sides: 1 | 2): Omit<ChoiceWords, 'chance' | 'standard'> {
  if (more === undefined)
    return {
      didRight: 'preferred the same one (two-sided: it could have been either)',
      claim: 'that it is preferred',
      mayStill: 'have a preference',
    };
  return {
    didRight:
      sides === 1
        ? `called the expected one more ${more}`
        : `called the same one more ${more} (two-sided: it could have been either)`,
    claim: `that it is more ${more}`,
    mayStill: `find it more ${more}`,
  };
}
