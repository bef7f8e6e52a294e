/** The strength of a stock that makes a dose a countable number of drops. */

interface Dose {
  readonly soluteGrams: number;
  readonly dropGrams: number;
  /** The strength that there is, as a mass fraction; kept where it already suits. */
  readonly present: number;
  readonly fewest: number;
  readonly most: number;
}

/**
 * The strength (mass fraction) that gives between `fewest` and `most` drops: the present one where it does,
 * else the one of 1, 2 or 5 times a power of ten that comes nearest to ten drops.
 *
 * Example   3e-9 g of compound by drops of 0.021 g -> 1e-8 (14.3 drops)
 */
export function roundStrengthFor(dose: Dose): number {
  const count = (strength: number): number => dose.soluteGrams / (strength * dose.dropGrams);
  if (count(dose.present) >= dose.fewest && count(dose.present) <= dose.most) return dose.present;
  const exact = dose.soluteGrams / (10 * dose.dropGrams);
  const decade = Math.floor(Math.log10(exact));
  const steps = [decade - 1, decade, decade + 1].flatMap((power) =>
    [1, 2, 5].map((digit) => Number(`${digit}e${power}`)),
  );
  const distance = (strength: number): number => Math.abs(Math.log(count(strength) / 10));
  return steps
    .filter((strength) => strength <= 1)
    .reduce(
      (best, one) => (distance(one) < distance(best) ? one : best),
      exact > 1 ? 1 : (steps[0] ?? exact),
    );
}
