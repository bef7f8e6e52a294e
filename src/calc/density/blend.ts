/**
 * What a density estimate needs to know of a mixture: how much is water, how much is sucrose, and the volume that
 * the rest adds. Shares and volumes are per gram of the mixture, so blends mix in proportion to mass.
 */

import type { BookEntry, SubstanceShare } from '../book.ts';

export interface Blend {
  /** g of water per g. */
  readonly waterShare: number;
  /** g of sucrose per g. */
  readonly sucroseShare: number;
  /** mL that the sucrose adds per g of the mixture where the sugar-water polynomial does not reach. */
  readonly sucroseVolume: number;
  /** mL that everything else adds per g. */
  readonly otherVolume: number;
}

export const emptyBlend: Blend = { waterShare: 0, sucroseShare: 0, sucroseVolume: 0, otherVolume: 0 };

/** mL/g taken where nothing is known; the words of the estimate name such a substance. */
const UNKNOWN_VOLUME = 1;

export const isWater = (entry: BookEntry): boolean => entry.record.role === 'water';

/** True for the substance of this name, and for an own record made `like` it. */
export const isNamed = (entry: BookEntry, name: string): boolean =>
  entry.name === name || (entry.like?.includes(name) ?? false);

/** mL that a gram of a pure substance adds to a solution; undefined where no density is known. */
export function addedVolume(entry: BookEntry): number | undefined {
  const { figures } = entry.record;
  const density = (figures['apparent density'] ?? figures.density)?.value;
  return density !== undefined && density > 0 ? 1 / density : undefined;
}

/**
 * The blend of pure substances.
 *
 * Formula   shares are added up; volume = sum of w_i / rho_i, apparent density first, 1 g/mL where none is known
 * Input     pure substances with mass fractions that add up to 1
 * Output    shares in g/g, volumes in mL/g
 */
export function blendOf(composition: readonly SubstanceShare[]): Blend {
  let { waterShare, sucroseShare, sucroseVolume, otherVolume } = emptyBlend;
  for (const { substance, massFraction } of composition) {
    if (isWater(substance)) waterShare += massFraction;
    else {
      const volume = massFraction * (addedVolume(substance) ?? UNKNOWN_VOLUME);
      if (isNamed(substance, 'sucrose')) {
        sucroseShare += massFraction;
        sucroseVolume += volume;
      } else otherVolume += volume;
    }
  }
  return { waterShare, sucroseShare, sucroseVolume, otherVolume };
}

/**
 * Blends mixed by mass.
 *
 * Formula   x = sum(m_i x_i) / sum(m_i) for every share and volume
 * Input     blends with masses in g
 * Output    the blend of the whole; the empty blend where the masses come to 0
 */
export function mixBlends(parts: readonly { readonly blend: Blend; readonly grams: number }[]): Blend {
  let { waterShare, sucroseShare, sucroseVolume, otherVolume } = emptyBlend;
  let total = 0;
  for (const { blend, grams } of parts) {
    total += grams;
    waterShare += grams * blend.waterShare;
    sucroseShare += grams * blend.sucroseShare;
    sucroseVolume += grams * blend.sucroseVolume;
    otherVolume += grams * blend.otherVolume;
  }
  if (total === 0) return emptyBlend;
  return {
    waterShare: waterShare / total,
    sucroseShare: sucroseShare / total,
    sucroseVolume: sucroseVolume / total,
    otherVolume: otherVolume / total,
  };
}
