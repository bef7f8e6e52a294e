import { describe, expect, it } from 'vitest';
import { atAngle, mie } from '../../../src/calc/light/mie.ts';
import { mieCoefficients, type RelativeIndex } from '../../../src/calc/light/mie-coefficients.ts';
import precise from '../../fixtures/published/mie-high-precision.json' with { type: 'json' };
import vectors from '../../fixtures/published/mie-vectors.json' with { type: 'json' };
import { agreesWithPrint } from '../../support/printed.ts';

function indexOf(text: string): RelativeIndex {
  if (text === 'conductor') return 'perfect conductor';
  const [, n, k = '0'] = /^([\d.]+)(?:\+([\d.e+-]+)i)?$/.exec(text) ?? [];
  return { n: Number(n), k: Number(k) };
}

function efficiencies(x: string, index: RelativeIndex) {
  const result = mie({ sizeParameter: Number(x), index });
  if (!result.ok) throw new Error(result.fault.message);
  return { ...result.value, g: result.value.g ?? Number.NaN };
}

/** The lowest of 1e-6 and half of the last printed digit. */
const isClose = (value: number, printed: string): boolean =>
  agreesWithPrint(value, printed) || Math.abs(value / Number(printed) - 1) < 1e-6;

describe('efficiencies of spheres', () => {
  it('published: Wiscombe 1979, case MV-01, a conductor of x = 0.099, to the 6e-5 of the series behind the print', () => {
    // The print comes from a series for small spheres; 40 digits of the exact sum give 3.20950856e-4 and -1.27535947e-4.
    const { qExt, g } = efficiencies('0.099', 'perfect conductor');
    expect(Math.abs(qExt / 3.209674e-4 - 1)).toBeLessThan(6e-5);
    expect([qExt, g * qExt].map((value) => value.toExponential(8))).toEqual([
      '3.20950856e-4',
      '-1.27535947e-4',
    ]);
  });

  const exact = vectors.wiscombe.rows.filter(({ id }) => id !== 'MV-01');
  it.each(exact)('published: Wiscombe 1979, case $id, m = $index, x = $x', (row) => {
    const { qExt, qSca, g } = efficiencies(row.x, indexOf(row.index));
    expect([qExt, row.qExt, isClose(qExt, row.qExt)]).toEqual([qExt, row.qExt, true]);
    expect([qSca, row.qSca, isClose(qSca, row.qSca)]).toEqual([qSca, row.qSca, true]);
    expect([g * qSca, row.gQsca, isClose(g * qSca, row.gQsca)]).toEqual([g * qSca, row.gQsca, true]);
  });

  it.each(vectors.others.rows)('published: $id, Bohren and Huffman 1983 and Wiscombe 1979', (row) => {
    const index = indexOf(row.index);
    const { qExt, qSca, g } = efficiencies(row.x, index);
    // The sample sphere is given by its radius, wavelength and index; x is printed to seven digits.
    const back = backward(Number(row.x), index);
    for (const [value, printed] of [
      [qExt, row.qExt],
      [qSca, row.qSca],
      [g, row.g],
      [back, row.qBack],
    ] as const)
      expect([row.id, value, printed, isClose(value, printed)]).toEqual([row.id, value, printed, true]);
  });

  it.each(vectors.emulsions.rows)('published: $id, 40 digits, m = $index, x = $x', (row) => {
    const { qExt, qSca, g } = efficiencies(row.x, indexOf(row.index));
    expect(qSca / qExt).toBeCloseTo(1, 12);
    expect([qExt, isClose(qExt, row.qExt)]).toEqual([qExt, true]);
    expect([g, isClose(g, row.g)]).toEqual([g, true]);
  });

  it('published: 60-digit computation by Bessel functions, x 0.01 to 10000, absorbing too, to 1e-6', () => {
    const worst = precise.rows.map((row) => {
      const { qExt, qSca, g } = efficiencies(row.sizeParameter, { n: Number(row.n), k: Number(row.k) });
      const off = [qExt / Number(row.qExt), qSca / Number(row.qSca), g / Number(row.g)].map((ratio) =>
        Math.abs(ratio - 1),
      );
      return { row, off: Math.max(...off) };
    });
    expect(precise.rows.length).toBeGreaterThan(150);
    expect(worst.filter(({ off }) => !(off < 1e-6))).toEqual([]);
  });

  it('law: what does not absorb scatters all that it takes out; an index of 1 takes out nothing', () => {
    for (const x of [0.001, 0.05, 3, 77, 20_000]) {
      const { qExt, qSca } = efficiencies(String(x), { n: 1.1, k: 0 });
      expect(qSca / qExt).toBeCloseTo(1, 9);
    }
    const none = mie({ sizeParameter: 2, index: { n: 1, k: 0 } });
    expect(none.ok && none.value.qExt < 1e-20 && none.value.qAbs < 1e-20).toBe(true);
  });

  it.each([
    [0, { n: 1.1, k: 0 }, 'size parameter 0'],
    [30_000, { n: 1.1, k: 0 }, 'size parameter 30000'],
    [Number.NaN, { n: 1.1, k: 0 }, 'size parameter NaN'],
    [1, { n: 0, k: 0 }, 'index 0+0i'],
    [1, { n: 1.1, k: 30 }, 'index 1.1+30i'],
  ] as const)('refuses x %f with %j', (sizeParameter, index, words) => {
    const result = mie({ sizeParameter, index });
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.fault.message).toContain(words);
  });
});

/** |sum (2n+1)(-1)^n (a_n - b_n)|^2 / x^2. */
function backward(x: number, index: RelativeIndex): number {
  const { aReal, aImaginary, bReal, bImaginary } = mieCoefficients(x, index);
  let [re, im] = [0, 0];
  aReal.forEach((value, at) => {
    const weight = (2 * at + 3) * (-1) ** (at + 1);
    re += weight * (value - (bReal[at] ?? 0));
    im += weight * ((aImaginary[at] ?? 0) - (bImaginary[at] ?? 0));
  });
  return (re ** 2 + im ** 2) / x ** 2;
}

describe('where a sphere sends light', () => {
  const sphere = mieCoefficients((2 * Math.PI * 0.525) / 0.6328, { n: 1.55, k: 0 });
  const ahead = atAngle(sphere, 1).s11;

  it.each(vectors.angles.rows)(
    'published: Bohren and Huffman 1983, Appendix A, $degrees degrees ($id)',
    (row) => {
      const { s11, s12, s33, s34 } = atAngle(sphere, Math.cos((row.degrees * Math.PI) / 180));
      for (const [value, printed] of [
        [s11 / ahead, row.s11],
        [-s12 / s11, row.polarisation],
        [s33 / s11, row.s33],
        [s34 / s11, row.s34],
      ] as const) {
        const within = Math.abs(value - Number(printed)) <= 1e-6 * Math.max(1, Math.abs(Number(printed)));
        expect([row.degrees, value, printed, within]).toEqual([row.degrees, value, printed, true]);
      }
    },
  );

  it('law: 3/(16 pi) to 90 degrees, and as much back as ahead, from a sphere far smaller than the wavelength', () => {
    const small = mieCoefficients(0.001, { n: 1.1, k: 0 });
    expect(atAngle(small, -1).s11 / atAngle(small, 1).s11).toBeCloseTo(1, 5);
    const result = mie({ sizeParameter: 0.001, index: { n: 1.1, k: 0 } });
    const scattered = result.ok ? result.value.qSca : Number.NaN;
    expect(atAngle(small, 0).s11 / (Math.PI * 0.001 ** 2 * scattered)).toBeCloseTo(3 / (16 * Math.PI), 6);
  });
});
