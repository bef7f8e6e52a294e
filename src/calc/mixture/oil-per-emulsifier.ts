import { meetingStage } from './meeting-stage.ts';
import type { Mixture } from './picture.ts';

export interface OilPerEmulsifier {
  /** The first stage in which both meet. */
  readonly stage: string;
  readonly oilGrams: number;
  readonly emulsifierGrams: number;
  readonly oilPerEmulsifier: number;
  readonly emulsifierPerOil: number;
}

/**
 * Oil to emulsifier, both ways up.
 *
 * Formula   oil / emulsifier, emulsifier / oil, by the roles of the pure substances in the first stage that holds both
 * Input     a resolved mixture
 * Output    masses in g, ratios in g/g; undefined where no stage holds both
 * Example   2 g of oil with 6 g of emulsifier -> oilPerEmulsifier 0.3333, emulsifierPerOil 3
 */
export function oilPerEmulsifier(mixture: Mixture): OilPerEmulsifier | undefined {
  const meeting = meetingStage(mixture);
  if (!meeting) return undefined;
  const { stage, oilGrams, emulsifierGrams } = meeting;
  return {
    stage: stage.name,
    oilGrams,
    emulsifierGrams,
    oilPerEmulsifier: oilGrams / emulsifierGrams,
    emulsifierPerOil: emulsifierGrams / oilGrams,
  };
}
