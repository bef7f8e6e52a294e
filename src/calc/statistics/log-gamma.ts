/** Where the asymptotic series takes over: its first term left out is then below 1e-16. */
const SERIES_FROM = 16;

/**
 * Natural logarithm of the gamma function.
 *
 * Formula   (x - 1/2) ln x - x + ln(2 pi)/2 + 1/(12 x) - 1/(360 x^3) + 1/(1260 x^5) - 1/(1680 x^7) + ...;
 *           below 16 by ln Gamma(x) = ln Gamma(x + 1) - ln x
 * Input     x above 0
 * Output    ln Gamma(x)
 * Source    Abramowitz and Stegun 1964, equation 6.1.41
 * Example   logGamma(5) -> 3.178054
 */
export function logGamma(x: number): number {
  let shifted = x;
  let product = 1;
  while (shifted < SERIES_FROM) {
    product *= shifted;
    shifted += 1;
  }
  const inverse = 1 / shifted;
  const square = inverse * inverse;
  const tail =
    inverse * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square * (1 / 1680 - square / 1188))));
  return (
    (shifted - 0.5) * Math.log(shifted) - shifted + 0.5 * Math.log(2 * Math.PI) + tail - Math.log(product)
  );
}
