/** What an eye sees of a haze, by NTU: a working scale, good to a factor of two, with the background named. */

import { hazeBands } from '../../reference/light.ts';

export type Background = 'black' | 'white';

export interface LookWords {
  readonly onBlack: string;
  readonly onWhite: string;
  /** Both in a few words. */
  readonly look: string;
}

/**
 * Formula   below 0.5 NTU nobody sees it; to 3 a careful eye on black; to 6 most on black and few on white; to 20 hazy;
 *           above cloudy
 * Source    as `hazeBands`
 * Example   lookOf(1) -> clear on white, faint on black
 */
export function lookOf(ntu: number): LookWords {
  const { unseen, faint, whiteClear, hazy } = hazeBands;
  if (ntu < unseen) return { onBlack: 'clear', onWhite: 'clear', look: 'clear' };
  if (ntu < faint)
    return {
      onBlack: 'faint, perhaps bluish, to a careful eye',
      onWhite: 'clear',
      look: 'clear on white, faint on black',
    };
  if (ntu < whiteClear)
    return { onBlack: 'hazy to most', onWhite: 'clear', look: 'clear on white, hazy on black' };
  if (ntu < hazy) return { onBlack: 'hazy', onWhite: 'hazy to most', look: 'hazy' };
  return { onBlack: 'cloudy', onWhite: 'cloudy', look: 'cloudy' };
}

/** NTU from which a haze counts as seen against a background. */
export const seenFrom = (background: Background): number =>
  background === 'black' ? hazeBands.unseen : hazeBands.whiteClear;

/** NTU that a look on such a background stands for; an open end is undefined. */
export function hazeOf(
  look: 'clear' | 'bluish' | 'hazy' | 'cloudy',
  background: Background,
): { readonly low?: number; readonly high?: number } {
  const { unseen, faint, whiteClear, hazy } = hazeBands;
  if (look === 'clear') return { high: background === 'black' ? faint : whiteClear };
  if (look === 'bluish') return { low: unseen, high: whiteClear };
  if (look === 'hazy') return { low: background === 'black' ? faint : whiteClear, high: hazy };
  return { low: hazy };
}
