/** When two entries of a list are the same fact, however they are laid out. */

import type { Plain } from './edit-facts.ts';

/** `look: clear, ring` and a list of the two say the same. */
function wordsOf(plain: Plain): string {
  if (typeof plain === 'string')
    return plain
      .split(',')
      .map((word) => word.trim())
      .join(', ');
  if ('list' in plain) return plain.list.map(wordsOf).join(', ');
  return JSON.stringify(plain.map.map(([key, value]) => [key, wordsOf(value)]).sort());
}

/** What an observation says, its sample and author included, apart from its time and the order of its facts. */
export function observationContent(plain: Plain, firstSample: string): string {
  if (typeof plain === 'string' || 'list' in plain) return wordsOf(plain);
  const told = plain.map.filter(([key]) => key !== 'at' && key !== 'sample');
  return wordsOf({ map: [...told, ['sample', sampleOf(plain, firstSample)]] });
}

/** The sample that an observation is of. */
export function sampleOf(plain: Plain, firstSample: string): string {
  if (typeof plain === 'string' || 'list' in plain) return firstSample;
  const sample = plain.map.find(([key]) => key === 'sample')?.[1];
  return sample === undefined ? firstSample : wordsOf(sample);
}

/** An answer of a calculator apart from when it was given, in any order. */
export function answerContent(plain: Plain): string {
  if (typeof plain === 'string' || 'list' in plain) return '';
  return JSON.stringify(
    plain.map.filter(([key]) => key !== 'at').sort(([left], [right]) => (left < right ? -1 : 1)),
  );
}
