/** Amounts and changes of a comparison as short texts. */

import type { ComesTo } from '../calc/compare/comes-to.ts';
import { numberText } from '../calc/number-text.ts';
import type { Moved, PropertyChange } from './compare-sides.ts';
import { isMoved } from './compare-sides.ts';

/** `+3.2 %`, `-16.7 %`, `x 12`, `new`, `gone` */
export function changeWords({ before, after }: Moved): string {
  if (before === undefined || before === 0) return after === undefined || after === 0 ? '' : 'new';
  if (after === undefined || after === 0) return 'gone';
  const ratio = after / before;
  if (ratio >= LARGE) return `x ${numberText(ratio, 3)}`;
  const percent = (ratio - 1) * 100;
  if (Math.abs(percent) < 0.05) return percent === 0 ? '' : `${percent < 0 ? '-' : '+'}<0.1 %`;
  return `${percent < 0 ? '-' : '+'}${Math.abs(percent).toFixed(Math.abs(percent) < 10 ? 1 : 0)} %`;
}

/** From here on a factor says more than per cent. */
const LARGE = 5;

/** The relative change; undefined where one side is nothing. */
export const relativeChange = ({ before, after }: Moved): number | undefined =>
  before === undefined || after === undefined || before === 0 ? undefined : after / before - 1;

interface Scale {
  readonly unit: string;
  readonly times: number;
}

/** g/L for what is weighed in grams, ppm, ppb and ppt by mass for what is dosed. */
function scaleOf(massFraction: number): Scale | undefined {
  if (massFraction >= 1e-4) return undefined;
  if (massFraction >= 1e-6) return { unit: 'ppm', times: 1e6 };
  return massFraction >= 1e-9 ? { unit: 'ppb', times: 1e9 } : { unit: 'ppt', times: 1e12 };
}

interface Shares {
  readonly massFraction: Moved;
  readonly gramsPerLitre: Moved;
}

/** What is shown of a share: g/L where there is enough of it, else the mass fraction. */
export const shownShare = ({ massFraction, gramsPerLitre }: Shares): Moved =>
  scaleOf(Math.max(massFraction.before ?? 0, massFraction.after ?? 0)) ? massFraction : gramsPerLitre;

/** Both sides in one unit: `0.18` and `0.15 g/L`. */
export function shareTexts({ massFraction, gramsPerLitre }: Shares): readonly [string, string] {
  const scale = scaleOf(Math.max(massFraction.before ?? 0, massFraction.after ?? 0));
  const [low, high] = scale
    ? [massFraction.before, massFraction.after].map((one) => one && one * scale.times)
    : [gramsPerLitre.before, gramsPerLitre.after];
  return bothTexts({ before: low, after: high }, 3, scale?.unit ?? 'g/L');
}

const sharesOf = (before: ComesTo | undefined, after: ComesTo | undefined): Shares => ({
  massFraction: { before: before?.massFraction, after: after?.massFraction },
  gramsPerLitre: { before: before?.gramsPerLitre, after: after?.gramsPerLitre },
});

export const comesToTexts = (
  before: ComesTo | undefined,
  after: ComesTo | undefined,
): readonly [string, string] => shareTexts(sharesOf(before, after));

export const comesToShown = (before: ComesTo | undefined, after: ComesTo | undefined): Moved =>
  shownShare(sharesOf(before, after));

/** To the digits that the figure is worth. */
export const propertyTexts = ({ before, after, digits, unit }: PropertyChange): readonly [string, string] => [
  figureText(before, digits, unit),
  figureText(after, digits, unit),
];

const figureText = (value: number | undefined, digits: number, unit: string): string =>
  value === undefined ? '-' : `${numberText(value, digits)}${unit === '' ? '' : ` ${unit}`}`;

/** To so many digits, or as many as it takes to tell the two apart. */
export function bothTexts(moved: Moved, digits: number, unit: string): readonly [string, string] {
  const { before, after } = moved;

  for (let count = digits; count <= mostDigits; count += 1) {
    const both = [figureText(before, count, unit), figureText(after, count, unit)] as const;
    if (both[0] !== both[1] || !isMoved(moved) || count === mostDigits) return both;
  }
  return [figureText(before, mostDigits, unit), figureText(after, mostDigits, unit)];
}

const mostDigits = 8;

/** `1st`, `2nd`, `11th` */
export function ordinal(place: number): string {
  const last = place % 10;
  const isTeen = Math.floor(place / 10) % 10 === 1;
  const ending = isTeen ? 'th' : (['th', 'st', 'nd', 'rd'][last] ?? 'th');
  return `${place}${ending}`;
}
