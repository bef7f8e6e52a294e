/** What the emulsifiers of a stage weigh for a wanted HLB of their blend. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { splitToHlb } from '../emulsifier-split.ts';
import { trimmedNumber } from '../number-text.ts';

export interface BlendItem {
  readonly name: string;
  readonly massGrams: number;
  /** Share of its mass that is emulsifier, above 0. */
  readonly share: number;
  readonly hlb: number;
}

/**
 * The masses at the wanted HLB, with as much emulsifier in all as there is, nearest to the present shares.
 *
 * Formula   `splitToHlb` on the emulsifier in each item
 * Input     the items that bring emulsifier: mass g, share of emulsifier, HLB; the wanted HLB
 * Output    g of each item, in order
 * Refuses   one emulsifier alone; an HLB that they don't reach
 * Example   blendMasses of polysorbate 80 3 g (15) and sorbitan oleate 3 g (4.3) to 12 -> 4.32 g and 1.68 g
 */
export function blendMasses(items: readonly BlendItem[], wanted: number): Parsed<readonly number[]> {
  if (items.length < 2) {
    return refused(
      'one-emulsifier',
      `the stage has ${items.length === 1 ? 'one emulsifier' : 'no emulsifier'}, and a blend takes two`,
      'add the second one to the trial, with an amount',
    );
  }
  const total = items.reduce((sum, { massGrams, share }) => sum + massGrams * share, 0);
  const parts = items.map(({ massGrams, share, hlb }) => ({ hlb, share: (massGrams * share) / total }));
  const split = splitToHlb(parts, wanted);
  if (!split) {
    const each = items.map(({ name, hlb }) => `${name} has ${trimmedNumber(hlb, 4)}`).join(', ');
    return refused(
      'out-of-reach',
      `a blend HLB of ${trimmedNumber(wanted, 4)} is out of reach: ${each}`,
      'choose a rung between them',
    );
  }
  return parsed(items.map(({ share }, at) => ((split[at] ?? 0) * total) / share));
}
