/** How much emulsifier covers droplets, and which droplets an amount of it can cover. */

interface Covering {
  readonly oilMillilitres: number;
  /** mg/m2. */
  readonly surfaceLoad: number;
}

/**
 * Formula   m = 6 Gamma V / d: one layer on every droplet, micelles not counted
 * Input     mL of oil; surface load mg/m2; diameter nm
 * Output    g of emulsifier
 * Source    McClements, Food Emulsions; area of spheres
 * Example   emulsifierToCover({ oilMillilitres: 100, surfaceLoad: 2, diameterNanometres: 120 }) -> 10
 */
export const emulsifierToCover = (of: Covering & { readonly diameterNanometres: number }): number =>
  (6 * of.surfaceLoad * of.oilMillilitres) / of.diameterNanometres;

/** The same turned round: nm. Example   smallestCovered({ oilMillilitres: 100, surfaceLoad: 2, emulsifierGrams: 10 }) -> 120 */
export const smallestCovered = (of: Covering & { readonly emulsifierGrams: number }): number =>
  (6 * of.surfaceLoad * of.oilMillilitres) / of.emulsifierGrams;
