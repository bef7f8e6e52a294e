import type { Role } from '../../reference/ingredient.ts';
import { isNamed } from '../density/blend.ts';
import { sum } from '../sum.ts';
import type { Mixture, ResolvedSubstance } from './picture.ts';

export interface InDrink {
  readonly massGrams: number;
  readonly gramsPerLitre: number;
  readonly milligramsPerLitre: number;
  readonly massFraction: number;
}

/** A pure substance by its name (own records made like it count too), or all that play a role. */
export type WhatInDrink = { readonly substance: string } | { readonly role: Role };

/**
 * How much of a substance, or of a role, the finished drink holds.
 *
 * Formula   sum over the pure substances of the stage named drink
 * Input     a resolved mixture; the substance or the role
 * Output    g in all of the drink, g/L, mg/L, mass fraction; zeros where it holds none; undefined without a drink
 * Example   4.5 g of citric acid in 1 L -> gramsPerLitre 4.5
 */
export function inDrink({ drink }: Mixture, what: WhatInDrink): InDrink | undefined {
  if (!drink) return undefined;
  const found = drink.substances.filter((one) => isWanted(one, what));
  const gramsPerLitre = sum(found.map((one) => one.gramsPerLitre));
  return {
    massGrams: sum(found.map((one) => one.massGrams)),
    gramsPerLitre,
    milligramsPerLitre: gramsPerLitre * 1000,
    massFraction: sum(found.map((one) => one.massFraction)),
  };
}

const isWanted = (one: ResolvedSubstance, what: WhatInDrink): boolean =>
  'role' in what ? one.role === what.role : isNamed(one.entry, what.substance);
