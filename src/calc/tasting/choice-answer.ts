/** The figures of a tasting and the sentences before them, for a triangle and a pair alike. */

import type { PlainFound, Readings, TrialPicture, Worked } from '../calculator.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Working } from '../working.ts';
import type { ChoiceInputs } from './choice-inputs.ts';
import {
  type Choice,
  choicePower,
  choicePValue,
  distinguishers,
  rightNeeded,
  rightSide,
  type Tasting,
  tastingsNeeded,
} from './forced-choice.ts';

const percent = { unit: '', as: 'percent', digits: 2 } as const;

export const choiceReadings: Readings = {
  reached: { label: 'number needed reached' },
  rightNeeded: { label: 'right needed', unit: '', as: 'count' },
  pValue: { ...percent, label: 'chance of as many by guessing' },
  distinguisherFraction: { ...percent, label: 'share that can tell' },
  distinguisherLow: { ...percent, label: 'can tell, at least' },
  distinguisherHigh: { ...percent, label: 'can tell, at most' },
  sureness: { ...percent, label: 'each end is sure to' },
  difference: { ...percent, label: 'difference looked for, told by' },
  power: { ...percent, label: 'chance to find it in so many' },
  wantedPower: { ...percent, label: 'wanted chance to find it' },
  tastingsNeeded: { label: 'tastings needed for that', unit: '', as: 'count' },
};

/** What a kind of tasting says of its own. */
export interface ChoiceWords {
  /** `found the odd glass` */
  readonly didRight: string;
  /** `that they can be told apart` */
  readonly claim: string;
  /** What a number that was not reached leaves open, up to a share: `can tell them apart`. */
  readonly mayStill: string;
  /** `one in three` */
  readonly chance: string;
  readonly standard: string;
}

const percentText = (share: number): string => `${trimmedNumber(share * 100, 2)} %`;

interface ChoiceAsked {
  readonly inputs: ChoiceInputs;
  readonly choice: Choice;
  readonly words: ChoiceWords;
  readonly working: Working;
}

export function choiceAnswer(asked: ChoiceAsked): Worked {
  const { inputs, choice, words, working } = asked;
  const { risk, share, power, tastings } = inputs;
  const wanted = tastingsNeeded({ ...choice, risk, share, power });
  working.line(
    'tastings for a difference = least n that finds it with the wanted chance',
    wanted === null
      ? 'more than 100 000'
      : `n = ${wanted}; a few more may do a little less, since the number needed is whole`,
  );
  const found: PlainFound = { difference: share, wantedPower: power, tastingsNeeded: wanted };
  working.cite('the test', words.standard);
  working.line(
    'a difference that a share can tell: right with chance guess + share x (1 - guess)',
    `${guessText(choice)} + ${trimmedNumber(share, 4)} x (1 - ${guessText(choice)}) = ${trimmedNumber(choice.guess + share * (1 - choice.guess), 4)}`,
  );
  if (tastings === undefined) return { found, lead: planLead(asked, wanted) };
  const tasting = { ...choice, tastings, risk };
  const needed = rightNeeded(tasting);
  working.line(
    `number needed = least k with P(X >= k of ${tastings}, ${words.chance}) <= risk${sidesText(choice)}`,
    needed === null ? `even ${tastings} of ${tastings} would not do` : `k = ${needed}`,
  );
  const of = { ...found, rightNeeded: needed, power: choicePower({ ...tasting, share }) };
  if (inputs.right === undefined) return { found: of, lead: neededLead(asked, tasting, needed) };
  return tastedAnswer({ ...asked, tasting, needed, right: inputs.right, found: of });
}

interface TastedAsked extends ChoiceAsked {
  readonly tasting: Tasting;
  readonly needed: number | null;
  readonly right: number;
  readonly found: PlainFound;
}

function tastedAnswer(asked: TastedAsked): Worked {
  const { tasting, needed, right, working, words } = asked;
  const tasted = { ...tasting, right };
  const pValue = choicePValue(tasted);
  const told = distinguishers(tasted);
  const shown = rightSide(tasted);
  const reached = needed !== null && shown >= needed;
  working.cite('interval on the share that can tell', 'clopper-pearson-1934');
  working.line(
    `chance by guessing = ${tasting.sides === 2 ? '2 x ' : ''}P(X >= ${shown} of ${tasting.tastings}, ${words.chance})`,
    trimmedNumber(pValue, 5),
  );
  working.line(
    'share that can tell = (right / tastings - guess) / (1 - guess), 0 at least',
    `(${shown} / ${tasting.tastings} - ${guessText(tasting)}) / (1 - ${guessText(tasting)}) = ${trimmedNumber(told.share, 4)}`,
  );
  return {
    lead: tastedLead(asked, { reached, high: told.high, shown }),
    found: {
      ...asked.found,
      reached,
      pValue,
      distinguisherFraction: told.share,
      distinguisherLow: told.low,
      distinguisherHigh: told.high,
      sureness: 1 - tasting.risk / tasting.sides,
    },
  };
}

const ownPalate = 'Repeats by one person speak for that person only.';

interface Told {
  readonly reached: boolean;
  readonly high: number;
  readonly shown: number;
}

function tastedLead({ right, tasting, needed, words }: TastedAsked, { reached, high, shown }: Told): string {
  const { tastings } = tasting;
  const what = `${shown} of ${tastings} ${words.didRight}`;
  const need = needed === null ? `even ${tastings} of ${tastings} would be too few` : `${needed} needed`;
  if (reached) return `${what}: enough to say ${words.claim} (${need}). ${ownPalate}`;
  const open =
    high > 0
      ? `That does not show the contrary: up to ${percentText(high)} may ${words.mayStill}.`
      : 'That does not show the contrary.';
  const swapped = isFewerThanGuessing(right, tasting)
    ? ' So few right would be rare by guessing alone: look whether the key was read the wrong way round.'
    : '';
  return `${what}: not enough to say ${words.claim} (${need}). ${open}${swapped} ${ownPalate}`;
}

/** So few right that guessing alone would rarely give as few. */
function isFewerThanGuessing(right: number, { tastings, guess, sides, risk }: Tasting): boolean {
  const wrong = { right: tastings - right, tastings, guess: 1 - guess, sides: 1 as const };
  return sides === 1 && choicePValue(wrong) <= risk;
}

function neededLead({ words }: ChoiceAsked, tasting: Tasting, needed: number | null): string {
  const { tastings } = tasting;
  if (needed !== null) return `Of ${tastings} tastings ${needed} must be right to say ${words.claim}.`;
  const byGuessing = percentText(choicePValue({ ...tasting, right: tastings }));
  return `${tastings} ${tastings === 1 ? 'tasting is' : 'tastings are'} too few to say ${words.claim}: guessing alone gives ${tastings} of ${tastings} in ${byGuessing} of cases.`;
}

function planLead({ inputs }: ChoiceAsked, wanted: number | null): string {
  const difference = `a difference that ${percentText(inputs.share)} can tell`;
  if (wanted === null) return `More than 100 000 tastings would be needed to find ${difference}.`;
  return `${wanted} tastings find ${difference} with a chance of ${percentText(inputs.power)}. ${ownPalate}`;
}

const guessText = ({ guess }: Choice): string =>
  guess === 0.5 ? '1/2' : guess === 1 / 3 ? '1/3' : numberText(guess);
const sidesText = ({ sides }: Choice): string => (sides === 2 ? ' / 2' : '');

/** Nothing of a trial goes into the figures; the answer is filed under what is drunk. */
export const filedUnderDrink = ({ mixture }: TrialPicture) => [
  { stage: (mixture.drink ?? mixture.stages.at(-1))?.name ?? '', given: {} },
];
