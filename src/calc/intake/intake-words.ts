/** The rows of `intake`: figures, and the words beside them. */

import { countedWords } from '../drink/counted-forms.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Drinking, IntakeShare, NoShare } from './day.ts';

const nothing = { serving: null, day: null, perBodyMass: null, figure: null, share: null };

export const noneRow = (substance: string, published: string) => ({
  ...nothing,
  substance,
  by: '-',
  published,
  fromMemory: false,
});

const carried = (
  { servingMilligrams, dayMilligrams }: Pick<IntakeShare, 'servingMilligrams' | 'dayMilligrams'>,
  { bodyKilograms }: Drinking,
) => ({ serving: servingMilligrams, day: dayMilligrams, perBodyMass: dayMilligrams / bodyKilograms });

export const shareRow = (one: IntakeShare, drinking: Drinking) => ({
  substance: countedWords(one.counted),
  ...carried(one, drinking),
  by: byWords(one.figure),
  published: publishedWords(one.figure),
  figure: one.figureMilligrams,
  share: one.share,
  fromMemory: one.figure.read === 'from memory',
});

export const numberlessRow = (one: NoShare, drinking: Drinking) => ({
  ...noneRow(countedWords(one.counted), one.words.words),
  ...carried(one, drinking),
  by: byWords(one.words),
  fromMemory: one.words.read === 'from memory',
});

const byWords = ({ by, read }: Pick<IntakeShare['figure'], 'by' | 'read'>): string =>
  read === 'from memory' ? `${by} *` : by;

function publishedWords({ value, unit, kind, people }: IntakeShare['figure']): string {
  const what = kind === 'temporary' ? ', temporary' : kind === 'most' ? ', tolerable most' : '';
  return `${trimmedNumber(value)} ${unit}${what}${people === undefined ? '' : `, ${people}`}`;
}

/** `caffeine: one serving carries 330 mg, above the figure of 200 mg at once, adults, that EFSA gives` */
export function aboveWords(one: IntakeShare, servings: number): string {
  const { counted, figure, share, dayMilligrams, servingMilligrams } = one;
  const isOne = figure.unit === 'mg at once' || servings === 1;
  const who = isOne ? 'one serving carries' : `${trimmedNumber(servings)} servings carry`;
  const but = counted.but === undefined ? '' : ` (${counted.but})`;
  const memory = figure.read === 'from memory' ? ', from memory' : '';
  const whom = figure.people === undefined ? '' : ` for ${figure.people}`;
  return `${countedWords(counted)}${but}: ${who} ${numberText(isOne ? servingMilligrams : dayMilligrams, 3)} mg, above the figure of ${trimmedNumber(figure.value)} ${figure.unit} that ${figure.by} gives${whom} (${trimmedNumber(share, 2)} times it${memory}), all food together.`;
}
