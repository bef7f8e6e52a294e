import { lossWorthAWord } from '../../reference/cautions.ts';
import { trimmedNumber } from '../number-text.ts';
import type { PlacedCaution } from '../slip-guard/placed-caution.ts';
import { processCaution } from './order-cautions.ts';

/**
 * What a stage weighs against what went into it.
 *
 * Formula   (sum of the items - weighs) / sum of the items, asked about above 2 % either way
 * Input     name of the stage, sumGrams of its items, weighsGrams
 * Output    one caution, or none
 * Example   50 g in, 48 g out -> loss-on-heating, 4 %
 */
export function lossCaution(stage: {
  readonly name: string;
  readonly sumGrams: number;
  readonly weighsGrams: number;
}): readonly PlacedCaution[] {
  const { name, sumGrams, weighsGrams } = stage;
  const share = (sumGrams - weighsGrams) / sumGrams;
  if (!(Math.abs(share) > lossWorthAWord.value)) return [];
  const percent = `${trimmedNumber(Math.abs(share) * 100, 2)} %`;
  const figures = `${name} weighs ${trimmedNumber(weighsGrams, 5)} g of the ${trimmedNumber(sumGrams, 5)} g that went in`;
  return share > 0
    ? [processCaution('loss-on-heating', `${figures}, ${percent} lost`, { stage: name })]
    : [processCaution('weighs-more', `${figures}, ${percent} more`, { stage: name })];
}
