/** How sweet a drink is, as a range: sugars and sweeteners by their published figures. */

import type { ResolvedStage } from '../mixture/picture.ts';
import { type Sweetness, sweetnessOf } from '../solution/sweetness.ts';
import { dryShare } from './nutrition.ts';

export interface SweetPart extends Sweetness {
  readonly substance: string;
}

export interface SweetnessRange {
  /** As sweet as so many g of sucrose in 100 mL. */
  readonly low: number;
  readonly high: number;
  readonly parts: readonly SweetPart[];
  /** Sweet, and without a figure. */
  readonly unknown: readonly string[];
}

/**
 * Formula   the parts summed, which blends don't strictly do: a rough guide where there are several
 * Input     a resolved stage
 * Output    % sucrose, low and high, with each part
 * Source    as named with each part
 */
export function sweetnessRange(stage: ResolvedStage): SweetnessRange {
  const parts: SweetPart[] = [];
  const unknown: string[] = [];
  for (const { entry, name, role, gramsPerLitre } of stage.substances) {
    const isSweet = role === 'sugar' || role === 'sweetener' || name === 'glycerol';
    if (!isSweet || gramsPerLitre <= 0) continue;
    const known = [entry.name, entry.record.hydrateOf?.name ?? '', ...(entry.like ?? [])]
      .map((sweetener) =>
        sweetnessOf({ sweetener, milligramsPerLitre: gramsPerLitre * dryShare(entry) * 1000 }),
      )
      .find(({ ok }) => ok);
    if (known?.ok) parts.push({ ...known.value, substance: name });
    else if (name !== 'glycerol') unknown.push(name);
  }
  return {
    low: parts.reduce((sum, { low }) => sum + low, 0),
    high: parts.reduce((sum, { high }) => sum + high, 0),
    parts,
    unknown,
  };
}
