/** Numbers as text. Calculators use it only inside the lines of the working. */

/**
 * A number in plain digits to so many significant figures, trailing zeros kept; an exponent only where plain
 * digits would be absurd (under 1e-6 or from 1e9 up).
 *
 * Example   numberText(12.0270, 4) -> 12.03
 * Example   numberText(0.000123456, 3) -> 0.000123
 */
export function numberText(value: number, significant = 4): string {
  if (value === 0) return '0';
  if (!Number.isFinite(value)) throw new Error(`a number that is not finite reached the page: ${value}`);
  const size = Math.abs(value);
  if (size < 1e-6 || size >= 1e9) return value.toExponential(significant - 1);
  const exponent = Number(value.toExponential(significant - 1).split('e')[1]);
  return value.toFixed(Math.max(0, Math.min(20, significant - 1 - exponent)));
}

/**
 * The same without trailing zeros after the point.
 *
 * Example   trimmedNumber(4.5, 6) -> 4.5
 */
export function trimmedNumber(value: number, significant = 6): string {
  const text = numberText(value, significant);
  if (!text.includes('.')) return text;
  const [digits = '', exponent] = text.split('e');
  const trimmed = digits.replace(/\.?0+$/, '');
  return exponent === undefined ? trimmed : `${trimmed}e${exponent}`;
}
