/** Causes that come before any look is blamed on the emulsion: time, the others, the way it was seen. */

import { numberText, trimmedNumber } from '../number-text.ts';
import { type Cause, cause, type Known } from './facts.ts';

/** Looks that are haze, as against what has gone to the top or the bottom. */
export const hazes: readonly string[] = ['bluish', 'hazy', 'cloudy'];

export const isHaze = ({ looks }: Known): boolean => looks.some((look) => hazes.includes(look));

/** What holds for every look. */
export function sharedCauses(known: Known): readonly Cause[] {
  return [...timeCauses(known), ...neighbourCauses(known), ...seenCauses(known), ...stressCauses(known)];
}

function timeCauses(known: Known): readonly Cause[] {
  const { ageDays, settleDays } = known;
  if (ageDays === undefined || ageDays >= settleDays || !isHaze(known)) return [];
  return [
    cause(
      'not-settled',
      90,
      `it is ${numberText(ageDays * 24, 2)} h old, and settles for ${trimmedNumber(settleDays, 2)} d here`,
    ),
  ];
}

function neighbourCauses({ blank, control, differences }: Known): readonly Cause[] {
  return [
    ...(blank === 'failed' ? [cause('blank-too', 95, 'the blank of the series failed')] : []),
    ...(control === 'failed' ? [cause('control-too', 85, 'the control of the series failed')] : []),
    ...(differences.length > 0
      ? [cause('made-otherwise', control === 'held' ? 80 : 72, differences.slice(0, 4).join('; '))]
      : []),
  ];
}

const seenCauses = (known: Known): readonly Cause[] =>
  known.unusualView !== undefined && isHaze(known)
    ? [cause('seen-otherwise', 55, `it was viewed: ${known.unusualView}`)]
    : [];

function stressCauses({ stress, celsius, looks }: Known): readonly Cause[] {
  if (stress) return [cause('stressed', 78, `the sample is under ${stress}`)];
  return celsius >= 35 && !looks.includes('sediment')
    ? [cause('too-warm', 74, `it stands at ${trimmedNumber(celsius, 3)} C`)]
    : [];
}

/** Words of a vessel or cover that are no glass. */
const plastics = /polyethylene|\bpe\b|plastic|film|cling|cup\b|bag\b/iu;

export function plasticCause({ vessel, cover }: Known, weight: number): readonly Cause[] {
  const found = [vessel, cover].filter((words) => plastics.test(words) && !/\bpet\b|glass cup/iu.test(words));
  return found.length > 0 ? [cause('plastic', weight, `it stands in or under ${found.join(' and ')}`)] : [];
}
