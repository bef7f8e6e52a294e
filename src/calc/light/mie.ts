/** What a sphere takes out of a beam of light, and where it sends it. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { mieRange } from '../../reference/light.ts';
import { type MieCoefficients, mieCoefficients, type RelativeIndex } from './mie-coefficients.ts';

export interface MieEfficiencies {
  readonly qExt: number;
  readonly qSca: number;
  readonly qAbs: number;
  /** Mean cosine of the angle of scattering; undefined where nothing is scattered. */
  readonly g: number | undefined;
}

/**
 * Efficiencies of a sphere of any size, absorbing or not.
 *
 * Formula   Q_ext = (2/x^2) sum (2n+1) Re(a_n + b_n); Q_sca = (2/x^2) sum (2n+1)(|a_n|^2 + |b_n|^2);
 *           g Q_sca = (4/x^2) [sum n(n+2)/(n+1) Re(a_n a*_(n+1) + b_n b*_(n+1)) + sum (2n+1)/(n(n+1)) Re(a_n b*_n)]
 * Input     size parameter 0.001 to 20000; relative index n + ik, n 0.01 to 20, k 0 to 20, or a perfect conductor
 * Output    efficiencies, per geometric area; g
 * Refuses   what lies outside
 * Source    Bohren and Huffman 1983, equations 4.61, 4.62 and section 4.5
 * Accuracy  1e-6 relative, for size parameters from 0.01 to 10000
 * Example   mie({ sizeParameter: 10, index: { n: 1.5, k: 0 } }) -> { qExt: 2.881999, qSca: 2.881999, g: 0.742913 }
 */
export function mie(sphere: {
  readonly sizeParameter: number;
  readonly index: RelativeIndex;
}): Parsed<MieEfficiencies> {
  const refusal = outside(sphere.sizeParameter, sphere.index);
  return refusal ?? parsed(efficiencies(mieCoefficients(sphere.sizeParameter, sphere.index)));
}

function efficiencies(of: MieCoefficients): MieEfficiencies {
  const { aReal, aImaginary, bReal, bImaginary } = of;
  const square = of.sizeParameter ** 2;
  let extinction = 0;
  let scattering = 0;
  let forward = 0;
  for (let at = 0; at < aReal.length; at++) {
    const n = at + 1;
    const ar = aReal[at] ?? 0;
    const ai = aImaginary[at] ?? 0;
    const br = bReal[at] ?? 0;
    const bi = bImaginary[at] ?? 0;
    const nextAr = aReal[at + 1] ?? 0;
    const nextAi = aImaginary[at + 1] ?? 0;
    const nextBr = bReal[at + 1] ?? 0;
    const nextBi = bImaginary[at + 1] ?? 0;
    extinction += (2 * n + 1) * (ar + br);
    scattering += (2 * n + 1) * (ar ** 2 + ai ** 2 + br ** 2 + bi ** 2);
    forward += ((n * (n + 2)) / (n + 1)) * (ar * nextAr + ai * nextAi + br * nextBr + bi * nextBi);
    forward += ((2 * n + 1) / (n * (n + 1))) * (ar * br + ai * bi);
  }
  const [qExt, qSca] = [(2 * extinction) / square, (2 * scattering) / square];
  return {
    qExt,
    qSca,
    qAbs: Math.max(0, qExt - qSca),
    g: qSca > 0 ? (4 * forward) / square / qSca : undefined,
  };
}

function outside(x: number, index: RelativeIndex): Parsed<never> | undefined {
  const { lowSize, highSize, lowIndex, highIndex } = mieRange;
  if (!(x >= lowSize && x <= highSize))
    return refused(
      'outside-range',
      `the size parameter ${x} lies outside what was checked`,
      `give one from ${lowSize} to ${highSize}: pi x diameter x index of the medium / wavelength`,
    );
  if (index === 'perfect conductor') return undefined;
  if (index.n >= lowIndex && index.n <= highIndex && index.k >= 0 && index.k <= highIndex) return undefined;
  return refused(
    'outside-range',
    `the relative index ${index.n}+${index.k}i lies outside what was checked`,
    `give n from ${lowIndex} to ${highIndex} and k from 0 to ${highIndex}`,
  );
}

/** The scattering matrix at one angle, for unit spheres as in the published tables. */
export interface MieAtAngle {
  readonly s11: number;
  readonly s12: number;
  readonly s33: number;
  readonly s34: number;
}

/**
 * Formula   S1 = sum (2n+1)/(n(n+1)) (a_n pi_n + b_n tau_n), S2 with a and b exchanged; S11 = (|S1|^2 + |S2|^2)/2,
 *           S12 = (|S2|^2 - |S1|^2)/2, S33 + i S34 = S2 S1*
 * Input     coefficients; the cosine of the angle of scattering
 * Source    Bohren and Huffman 1983, equations 4.74 and 4.77
 */
export function atAngle(of: MieCoefficients, cosine: number): MieAtAngle {
  const { aReal, aImaginary, bReal, bImaginary } = of;
  let oneRe = 0;
  let oneIm = 0;
  let twoRe = 0;
  let twoIm = 0;
  let before = 0;
  let here = 1;
  for (let at = 0; at < aReal.length; at++) {
    const n = at + 1;
    const tau = n * cosine * here - (n + 1) * before;
    const weight = (2 * n + 1) / (n * (n + 1));
    const ar = aReal[at] ?? 0;
    const ai = aImaginary[at] ?? 0;
    const br = bReal[at] ?? 0;
    const bi = bImaginary[at] ?? 0;
    oneRe += weight * (ar * here + br * tau);
    oneIm += weight * (ai * here + bi * tau);
    twoRe += weight * (ar * tau + br * here);
    twoIm += weight * (ai * tau + bi * here);
    const next = ((2 * n + 1) * cosine * here - (n + 1) * before) / n;
    before = here;
    here = next;
  }
  const [one, two] = [oneRe ** 2 + oneIm ** 2, twoRe ** 2 + twoIm ** 2];
  return {
    s11: (one + two) / 2,
    s12: (two - one) / 2,
    s33: oneRe * twoRe + oneIm * twoIm,
    s34: oneRe * twoIm - oneIm * twoRe,
  };
}

/** What turbidity needs of one size: Q_sca, and the share that goes to 90 degrees, per steradian. */
export function scatteringAt90(
  sizeParameter: number,
  index: RelativeIndex,
): { readonly qExt: number; readonly perSteradian: number } {
  const of = mieCoefficients(sizeParameter, index);
  const { qExt, qSca } = efficiencies(of);
  const { s11 } = atAngle(of, 0);
  return { qExt, perSteradian: qSca > 0 ? s11 / (Math.PI * sizeParameter ** 2 * qSca) : 0 };
}
