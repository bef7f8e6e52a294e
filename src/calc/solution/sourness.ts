import type { Equilibrium } from './equilibrium.ts';

/**
 * Sourness by its chemistry: molecules that still have a proton to give, and H+ itself, count alike. Carbonic acid
 * is left out; it prickles more than it sours, and it leaves the glass.
 *
 * Formula   sum of m of every acid species with one proton or more, plus m(H+)
 * Input     an equilibrium
 * Output    mol per kg of water; equal figures taste about equally sour
 * Source    Da Conceicao Neta and others 2007, J. Food Sci. 72:R33
 * Accuracy  a relation for organic acids side by side, not a measure across sugar, salt or aroma; 0.91 g of fumaric
 *           acid, given for 1.36 g of citric acid, comes out 11 % above it
 */
export function sournessOf(equilibrium: Equilibrium): number {
  let total = equilibrium.hydrogenMolality;
  for (const { acid, molality, molalities } of equilibrium.acids) {
    if (acid !== 'carbonic') total += molality - (molalities.at(-1) ?? 0);
  }
  return total;
}
