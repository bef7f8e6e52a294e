/**
 * A sum that keeps the small terms beside the large ones.
 *
 * Formula   Kahan-Babuska summation as improved by Neumaier: what each addition drops is added at the end
 * Input     numbers of one unit
 * Output    their sum in that unit; 0 for none
 * Source    Neumaier 1974, Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen, ZAMM 54:39, method IV
 *           (from memory)
 * Example   sum([1, 1e100, 1, -1e100]) -> 2
 */
export function sum(values: readonly number[]): number {
  let total = 0;
  let dropped = 0;
  for (const value of values) {
    const next = total + value;
    dropped += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + dropped;
}
