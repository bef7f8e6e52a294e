import type { ResolvedStage } from '../mixture/picture.ts';
import { isLike } from '../slip-guard/item-substances.ts';

/** g/mL at 20 C, where the record of the ethanol has no density. */
const ETHANOL_DENSITY = 0.7893;

/**
 * Alcohol by volume: the volume that its ethanol would fill on its own, over that of the drink.
 *
 * Formula   share v/v = (g/L of ethanol / density of ethanol at 20 C) / 1000
 * Input     a resolved stage
 * Output    share of the volume, 0..1
 * Source    density of ethanol at 20 C: CRC Handbook, 95th edition
 * Accuracy  as that of the volume of the stage, which is reckoned without the shrinking of alcohol in water
 * Example   39.465 g/L of ethanol -> 0.05
 */
export function alcoholByVolume({ substances }: ResolvedStage): number {
  return substances
    .filter(({ entry }) => isLike(entry, 'ethanol'))
    .reduce((sum, { entry, gramsPerLitre }) => sum + gramsPerLitre / densityOf(entry.record), 0);
}

const densityOf = ({ figures }: ResolvedStage['substances'][number]['entry']['record']): number =>
  (figures.density?.value ?? ETHANOL_DENSITY) * 1000;
