/** The coefficients of Mie's series for one sphere. */

/** Relative refractive index n + ik; a positive k absorbs. A perfect conductor is the limit of an endless index. */
export type RelativeIndex = { readonly n: number; readonly k: number } | 'perfect conductor';

/** a_n and b_n for n = 1, 2, … at places 0, 1, …, real and imaginary parts apart. */
export interface MieCoefficients {
  readonly sizeParameter: number;
  readonly aReal: Float64Array;
  readonly aImaginary: Float64Array;
  readonly bReal: Float64Array;
  readonly bImaginary: Float64Array;
}

/** Starting value of a downward recursion for a function whose scale is set at the end. */
const SEED = 1e-300;
const EXTRA_ORDERS = 25;

/**
 * The coefficients of the scattered field of a sphere.
 *
 * Formula   a_n = [A psi_n(x) - psi_(n-1)(x)] / [A xi_n(x) - xi_(n-1)(x)] with A = D_n(mx)/m + n/x; b_n with A = m D_n(mx) + n/x;
 *           real parts as (|numerator|^2 - Im A)/|denominator|^2, which the Wronskian makes exact for weak absorbers.
 *           D_n by downward recursion from max(N, 1.2 |mx|) + 200 (+ 20 + 4 |mx| for small |mx|), psi_n downward to
 *           sin x, chi_n upward
 * Input     size parameter x = pi d n_medium / wavelength, 0.001 to 20000; relative index m = n + ik
 * Output    a_n, b_n up to N = x + 4.05 x^(1/3) + 2, and some more
 * Source    Bohren and Huffman 1983, Absorption and Scattering of Light by Small Particles, ch. 4; length Wiscombe 1980
 */
export function mieCoefficients(x: number, index: RelativeIndex): MieCoefficients {
  const orders = Math.ceil(x + 4.05 * Math.cbrt(x) + 2) + 1;
  const bessel = riccatiBessel(x, orders);
  const coefficients: MieCoefficients = {
    sizeParameter: x,
    aReal: new Float64Array(orders),
    aImaginary: new Float64Array(orders),
    bReal: new Float64Array(orders),
    bImaginary: new Float64Array(orders),
  };
  if (index === 'perfect conductor') fillConductor(coefficients, bessel);
  else fillSphere(coefficients, bessel, index);
  return coefficients;
}

interface RiccatiBessel {
  readonly psi: Float64Array;
  readonly chi: Float64Array;
}

/** psi_n(x) = x j_n(x) and chi_n(x) = -x y_n(x) for n = 0 to `orders`. */
function riccatiBessel(x: number, orders: number): RiccatiBessel {
  const psi = new Float64Array(orders + 1);
  const chi = new Float64Array(orders + 1);
  let above = 0;
  let here = SEED;
  for (let n = orders + EXTRA_ORDERS; n >= 1; n--) {
    if (n <= orders) psi[n] = here;
    const below = ((2 * n + 1) / x) * here - above;
    above = here;
    here = below;
    if (Math.abs(here) > 1e250) {
      above *= SEED;
      here *= SEED;
      for (let done = n; done <= orders; done++) psi[done] = (psi[done] ?? 0) * SEED;
    }
  }
  psi[0] = here;
  const first = firstPsi(x);
  const isSineLarger = Math.abs(Math.sin(x)) >= Math.abs(first);
  const scale = isSineLarger ? Math.sin(x) / here : first / (psi[1] ?? 1);
  for (let n = 0; n <= orders; n++) psi[n] = (psi[n] ?? 0) * scale;
  chi[0] = Math.cos(x);
  chi[1] = Math.cos(x) / x + Math.sin(x);
  for (let n = 1; n < orders; n++) chi[n + 1] = ((2 * n + 1) / x) * (chi[n] ?? 0) - (chi[n - 1] ?? 0);
  return { psi, chi };
}

/** sin x / x - cos x; for small x, where the two are nearly equal, it is not the larger one and not used. */
const firstPsi = (x: number): number => Math.sin(x) / x - Math.cos(x);

function fillConductor({ sizeParameter: x, ...of }: MieCoefficients, { psi, chi }: RiccatiBessel): void {
  for (let n = 1; n < psi.length; n++) {
    const [here, below] = [psi[n] ?? 0, psi[n - 1] ?? 0];
    const [chiHere, chiBelow] = [chi[n] ?? 0, chi[n - 1] ?? 0];
    const electric = (n / x) * here - below;
    const size = electric ** 2 + ((n / x) * chiHere - chiBelow) ** 2;
    of.aReal[n - 1] = electric ** 2 / size;
    of.aImaginary[n - 1] = (electric * ((n / x) * chiHere - chiBelow)) / size;
    of.bReal[n - 1] = here ** 2 / (here ** 2 + chiHere ** 2);
    of.bImaginary[n - 1] = (here * chiHere) / (here ** 2 + chiHere ** 2);
  }
}

function fillSphere(
  { sizeParameter: x, ...of }: MieCoefficients,
  { psi, chi }: RiccatiBessel,
  { n: real, k: imaginary }: { readonly n: number; readonly k: number },
): void {
  const orders = psi.length - 1;
  const [dReal, dImaginary] = logarithmicDerivative(real * x, imaginary * x, orders);
  const square = real ** 2 + imaginary ** 2;
  for (let n = 1; n <= orders; n++) {
    const re = dReal[n] ?? 0;
    const im = dImaginary[n] ?? 0;
    const inside = {
      psi: psi[n] ?? 0,
      chi: chi[n] ?? 0,
      psiBelow: psi[n - 1] ?? 0,
      chiBelow: chi[n - 1] ?? 0,
    };
    const a = coefficient(
      (re * real + im * imaginary) / square + n / x,
      (im * real - re * imaginary) / square,
      inside,
    );
    const b = coefficient(re * real - im * imaginary + n / x, im * real + re * imaginary, inside);
    of.aReal[n - 1] = a.re;
    of.aImaginary[n - 1] = a.im;
    of.bReal[n - 1] = b.re;
    of.bImaginary[n - 1] = b.im;
  }
}

interface Functions {
  readonly psi: number;
  readonly chi: number;
  readonly psiBelow: number;
  readonly chiBelow: number;
}

/** P/(P - iC), P = A psi_n - psi_(n-1), C = A chi_n - chi_(n-1). */
function coefficient(aReal: number, aImaginary: number, { psi, chi, psiBelow, chiBelow }: Functions) {
  const pRe = aReal * psi - psiBelow;
  const pIm = aImaginary * psi;
  const dRe = pRe + aImaginary * chi;
  const dIm = pIm - (aReal * chi - chiBelow);
  const size = dRe ** 2 + dIm ** 2;
  return { re: (pRe ** 2 + pIm ** 2 - aImaginary) / size, im: (pIm * dRe - pRe * dIm) / size };
}

/** D_n(z) = psi_n'(z)/psi_n(z) for n = 0 to `orders`, downward: D_(n-1) = n/z - 1/(D_n + n/z). */
function logarithmicDerivative(
  zReal: number,
  zImaginary: number,
  orders: number,
): readonly [Float64Array, Float64Array] {
  const real = new Float64Array(orders + 1);
  const imaginary = new Float64Array(orders + 1);
  const size = zReal ** 2 + zImaginary ** 2;
  const inverseRe = zReal / size;
  const inverseIm = -zImaginary / size;
  let re = 0;
  let im = 0;
  const reach = Math.sqrt(size);
  const start = Math.ceil(Math.max(orders, 1.2 * reach) + Math.min(200, 20 + 4 * reach));
  for (let n = start; n >= 1; n--) {
    if (n <= orders) {
      real[n] = re;
      imaginary[n] = im;
    }
    const sumRe = re + n * inverseRe;
    const sumIm = im + n * inverseIm;
    const length = sumRe ** 2 + sumIm ** 2;
    re = n * inverseRe - sumRe / length;
    im = n * inverseIm + sumIm / length;
  }
  return [real, imaginary];
}
