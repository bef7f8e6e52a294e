/** Aroma as dosed, beside the published odour thresholds in water. */

import type { Figure } from '../../reference/ingredient.ts';
import type { ResolvedStage } from '../mixture/picture.ts';

export interface OdourThreshold {
  /** ug/kg. */
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly fromMemory: boolean;
  /** `R form`, `model wine` */
  readonly note: string | undefined;
}

export interface OdourActivity {
  readonly substance: string;
  readonly isPotent: boolean;
  /** ug/kg, as dosed. */
  readonly partsPerBillion: number;
  /** Empty where none is published. */
  readonly thresholds: readonly OdourThreshold[];
  /** Times over the highest and over the lowest threshold; absent without one. */
  readonly times?: { readonly low: number; readonly high: number };
  /** True where one of the two ends is from memory. */
  readonly fromMemory: boolean;
}

/**
 * Formula   odour activity = concentration / threshold, from the highest to the lowest threshold that is published
 * Input     a resolved stage
 * Output    for every aroma compound ug/kg as dosed, the thresholds, the range of the activity
 * Source    with each threshold
 * Accuracy  thresholds of one compound differ by factors of up to thousands; it ranks, and says nothing of what is tasted
 * Example   0.5 ppb of a thiol with a threshold of 0.00002 ppb -> 25000
 */
export function odourActivities({ substances }: ResolvedStage): readonly OdourActivity[] {
  return substances
    .filter(
      ({ role, massGrams, entry }) =>
        massGrams > 0 && (role === 'aroma' || entry.record.potent || entry.record.figures['odour threshold']),
    )
    .map(({ name, massFraction, entry }) => {
      const partsPerBillion = massFraction * 1e9;
      const thresholds = thresholdsOf(entry.record.figures['odour threshold']);
      const [lowest, highest] = ends(thresholds);
      return {
        substance: name,
        isPotent: entry.record.potent === true,
        partsPerBillion,
        thresholds,
        ...(lowest && highest
          ? { times: { low: partsPerBillion / highest.high, high: partsPerBillion / lowest.low } }
          : {}),
        fromMemory: Boolean(lowest?.fromMemory || highest?.fromMemory),
      };
    })
    .sort((left, right) => (right.times?.high ?? 0) - (left.times?.high ?? 0));
}

function thresholdsOf(figure: Figure | undefined): readonly OdourThreshold[] {
  if (!figure) return [];
  const { value, low, high, source, fromMemory, note, others } = figure;
  const own = { low: low ?? value, high: high ?? value, source, fromMemory: fromMemory ?? false, note };
  return [own, ...(others ?? []).flatMap(thresholdsOf)];
}

const ends = (
  all: readonly OdourThreshold[],
): readonly [OdourThreshold | undefined, OdourThreshold | undefined] => [
  [...all].sort((left, right) => left.low - right.low)[0],
  [...all].sort((left, right) => right.high - left.high)[0],
];
