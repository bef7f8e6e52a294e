/** What a line comes to in the finished drink, or in its stage where it goes into none. */

import type { Mixture } from '../mixture/picture.ts';

export interface ComesTo {
  /** `drink`, or the stage that it stays in. */
  readonly of: string;
  readonly massGrams: number;
  readonly massFraction: number;
  readonly gramsPerLitre: number;
}

/**
 * Formula   mass of the line x share of its stage that goes into the drink, over the mass and volume of the drink
 * Input     a resolved mixture; a stage by its name, a line by its place; whether its stage is asked for, whatever it goes into
 * Output    g, mass fraction, g/L; undefined where there is no such line
 * Example   6 g of polysorbate in 50 g of emulsion, 1.5 g of which go into 1 L -> 0.18 g/L
 */
export function comesTo(
  { stages, drink }: Mixture,
  stageName: string,
  place: number | undefined,
  inItsStage = false,
): ComesTo | undefined {
  const stage = stages.find(({ name }) => name === stageName);
  const item = place === undefined ? undefined : stage?.items[place];
  if (!stage || !item) return undefined;
  const share = stage === drink ? 1 : stage.shareInDrink;
  const isInDrink = drink !== undefined && share > 0 && !inItsStage;
  const whole = isInDrink ? drink : stage;
  const massGrams = isInDrink ? item.massGrams * share : item.massGrams;
  return {
    of: whole.name,
    massGrams: item.massGrams,
    massFraction: massGrams / whole.massGrams,
    gramsPerLitre: (massGrams / whole.volumeMillilitres) * 1000,
  };
}
