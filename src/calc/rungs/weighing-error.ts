/** How far a balance may be out in a single small weighing. */

/**
 * Formula   half a division / mass
 * Input     the division of the balance and the mass, g
 * Output    the relative error, g/g
 * Source    a reading rounded to the division is at most half of it off (arithmetic)
 * Example   readingError(0.01, 0.5) -> 0.01
 */
export const readingError = (divisionGrams: number, massGrams: number): number =>
  divisionGrams / 2 / massGrams;

/**
 * The least mass that a balance weighs well enough.
 *
 * Formula   half a division / the error that is accepted
 * Example   leastMass(0.01, 0.01) -> 0.5
 */
export const leastMass = (divisionGrams: number, acceptedFraction: number): number =>
  divisionGrams / 2 / acceptedFraction;
