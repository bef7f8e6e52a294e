import { describe, expect, it } from 'vitest';
import { aimsChart, placeOnTrack } from '../../../src/output/draw/aims.ts';
import { amountsChart } from '../../../src/output/draw/amounts.ts';
import { courseChart } from '../../../src/output/draw/course.ts';
import { foamHeads } from '../../../src/output/draw/foam-heads.ts';
import { heldWindowChart } from '../../../src/output/draw/held-window.ts';
import { holdCurve } from '../../../src/output/draw/hold-curve.ts';
import { outcomeGrid } from '../../../src/output/draw/outcome-grid.ts';
import { decades, linearScale, linearTicks, logScale } from '../../../src/output/draw/scale.ts';
import { isRoomy, sparse, stackedRows } from '../../../src/output/draw/stacked.ts';
import { fixed, keptInside, pathThrough, shortened } from '../../../src/output/draw/svg.ts';
import { triangleMap } from '../../../src/output/draw/triangle.ts';
import { partHolding, placeIn } from '../../../src/output/draw/triangle-part.ts';
import { toneOf, vessel } from '../../../src/output/draw/vessel.ts';

describe('scales and ticks', () => {
  it('law: ends lie at the ends, the middle in the middle', () => {
    const linear = linearScale({ low: 2, high: 6, from: 300, to: 100 });
    expect([2, 4, 6].map(linear)).toEqual([300, 200, 100]);
    // On the logarithm the geometric mean of 1 and 100 lies in the middle.
    const log = logScale({ low: 1, high: 100, from: 0, to: 50 });
    expect([1, 10, 100].map((value) => Math.round(log(value) * 1e9) / 1e9)).toEqual([0, 25, 50]);
    expect(linearScale({ low: 3, high: 3, from: 0, to: 10 })(3)).toBe(5);
  });

  it('ticks are round, inside, and no more than asked', () => {
    expect(linearTicks(0, 23)).toEqual([0, 5, 10, 15, 20]);
    expect(linearTicks(0, 0.3, 5)).toEqual([0, 0.1, 0.2, 0.3]);
    expect(linearTicks(0, 1, 5)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
    expect(linearTicks(4, 4)).toEqual([4]);
    expect(decades(0.02, 30)).toEqual([0.01, 0.1, 1, 10, 100]);
    expect(decades(1, 1)).toEqual([1, 10]);
  });

  it('places are short, and one that is no number is a defect', () => {
    expect([fixed(1.04), fixed(2), fixed(-0.01)]).toEqual(['1', '2', '0']);
    expect(() => fixed(Number.NaN)).toThrow('not finite');
    expect(
      pathThrough([
        [1, 2],
        [3.25, 4],
      ]),
    ).toBe('M1 2L3.3 4');
    expect(keptInside(0, 'abcd', 400)).toBeGreaterThan(10);
    expect(shortened('trisodium citrate dihydrate', 10)).toBe('trisodium…');
  });

  it('marks that would lie on each other stand in rows', () => {
    expect(stackedRows([10, 12, 40], 11, 4)).toEqual([0, 1, 0]);
    expect(stackedRows([10, 10, 10], 11, 2)).toEqual([0, 1, 1]);
    expect([isRoomy([0, 30], 20), isRoomy([0, 10], 20)]).toEqual([true, false]);
    expect(
      sparse(
        [0, 5, 40],
        (place) => place,
        () => 12,
      ),
    ).toEqual([0, 40]);
  });
});

describe('the map of three', () => {
  it('law: in the whole triangle each corner is one of the three alone, and the sides are equally long', () => {
    const whole = { oil: 0, emulsifier: 0, water: 0, side: 1 };
    const corners = [
      placeIn({ oil: 1, emulsifier: 0 }, whole),
      placeIn({ oil: 0, emulsifier: 1 }, whole),
      placeIn({ oil: 0, emulsifier: 0 }, whole),
    ];
    const sides = corners.map(([x, y], at) => {
      const [otherX, otherY] = corners[(at + 1) % 3] ?? [0, 0];
      return Math.hypot(x - otherX, y - otherY);
    });
    for (const side of sides) expect(side).toBeCloseTo(300, 9);
  });

  it('law: every point lies inside the part that is drawn, whose least shares and side make the whole', () => {
    const points = [0.015, 0.03, 0.08].map((oil) => ({ oil, emulsifier: 0.24, water: 0.76 - oil }));
    const part = partHolding(points);
    expect(part.oil + part.emulsifier + part.water + part.side).toBeCloseTo(1, 9);
    expect(part.side).toBe(0.15);
    for (const one of points) {
      expect(one.oil).toBeGreaterThanOrEqual(part.oil);
      expect(one.emulsifier).toBeGreaterThanOrEqual(part.emulsifier);
      expect(one.water).toBeGreaterThanOrEqual(part.water);
    }
  });

  it('one point alone, or points far apart, are shown on the whole', () => {
    expect(partHolding([{ oil: 0.04, emulsifier: 0.24, water: 0.72 }]).side).toBe(1);
    const corners = [
      { oil: 1, emulsifier: 0, water: 0 },
      { oil: 0, emulsifier: 0, water: 1 },
    ];
    expect(partHolding(corners).side).toBe(1);
  });
});

describe('beakers as they looked', () => {
  it('law: the tone grows with how turbid it is; shapes have none of their own', () => {
    expect(['clear', 'bluish', 'hazy', 'cloudy', 'gel', 'broken'].map((look) => toneOf([look]))).toEqual([
      0, 1, 2, 3, 4, 5,
    ]);
    expect(toneOf(['hazy', 'ring'])).toBe(2);
    expect(toneOf([])).toBe(0);
  });

  it('every look is drawn in a way of its own, and is nothing to hear', () => {
    const looks = ['clear', 'bluish', 'hazy', 'cloudy', 'specks', 'ring', 'sediment', 'gel', 'broken'];
    const drawn = looks.map((look) => vessel([look]).html.replaceAll(/tone\d/gu, ''));
    expect(new Set(drawn).size).toBe(looks.length);
    for (const one of drawn) expect(one).toContain('aria-hidden="true"');
  });

  it('an aim takes the middle of its track; what lies far outside stands at the end', () => {
    expect(placeOnTrack({ value: 3, low: 2, high: 4 })).toBe(0.5);
    expect(placeOnTrack({ value: 90, low: 2, high: 4 })).toBe(0.97);
    expect(placeOnTrack({ value: 2, low: 2 })).toBeCloseTo(0.3, 9);
    expect(placeOnTrack({ value: 4, high: 4 })).toBeCloseTo(0.7, 9);
  });
});

const nasty = '<script>alert("&")</script>';
const frame = { id: 'one', title: nasty, about: nasty };

describe('drawings', () => {
  const drawn = {
    hold: holdCurve({
      ...frame,
      low: 0.1,
      high: 1,
      chanceAt: () => 0.5,
      beakers: [
        { value: 0.2, state: 'held', label: nasty },
        { value: 0.4, state: 'watching', label: nasty },
        { value: 0.8, state: 'failed', label: nasty },
      ],
      ticks: [{ value: 0.5, text: nasty }],
      axis: nasty,
      working: { value: 0.2, text: nasty },
      breaks: { value: 0.4, text: nasty },
      interval: [null, 0.6],
    }),
    map: triangleMap({
      ...frame,
      points: [
        { oil: 0.1, emulsifier: 0.2, water: 0.7, state: 'held', label: nasty },
        { oil: 0.3, emulsifier: 0.2, water: 0.5, state: 'made', label: nasty },
      ],
    }),
    foam: foamHeads({
      ...frame,
      pours: [{ dose: 0, millimetres: 20 }],
      steps: [{ dose: 0, mean: 20, low: 18, high: 22 }],
      unit: nasty,
      axis: nasty,
    }),
    amounts: amountsChart({ ...frame, amounts: [{ name: nasty, gramsPerLitre: 90 }] }),
    aims: aimsChart({ ...frame, aims: [{ name: nasty, value: 1, low: 0, text: nasty, isMet: false }] }),
    course: courseChart({
      ...frame,
      strips: [{ label: nasty, values: [1, undefined, 1], textOf: () => nasty }],
      ends: [nasty, nasty],
    }),
  };

  it.each(Object.entries(drawn))(
    '%s: texts never become markup; it has a role, a title and words',
    (_, { html }) => {
      expect(html).not.toContain('<script');
      expect(html).toContain('&lt;script&gt;');
      expect(html).toMatch(
        /^<svg [^>]*role="img" aria-labelledby="one-title one-about"><title id="one-title">/u,
      );
      expect(html).toContain('<desc id="one-about">');
      expect(html).not.toMatch(/NaN|Infinity|undefined/u);
    },
  );
});

describe('a window and a grid', () => {
  const frame = { id: 'a', title: 'b', about: 'c', axis: 'glycol, g' };

  it('what held stands on the shelf, what failed hangs below; an open side has no edge', () => {
    const { html } = heldWindowChart({
      ...frame,
      low: 0,
      high: 10,
      isLog: false,
      beakers: [
        { value: 2, state: 'failed', label: '1' },
        { value: 4, state: 'held', label: '2' },
        { value: 6, state: 'held', label: '3' },
      ],
      ticks: [{ value: 5, text: '5' }],
      held: { from: 4, to: 6, text: 'held 4 to 6' },
      failedBelow: 2,
    });
    const tops = [...html.matchAll(/class="mark (held|failed)" transform="translate\([\d.]+ ([\d.]+)\)/gu)];
    const heightOf = (state: string) => tops.flatMap(([, of, y]) => (of === state ? [Number(y)] : []));
    expect(Math.max(...heightOf('held').slice(0, 2))).toBeLessThan(Math.min(...heightOf('failed')));
    expect(html.match(/class="break"/gu)).toHaveLength(1);
    expect(html).toContain('held 4 to 6');
  });

  it('every beaker of a grid is drawn once, also where forty steps leave no room for labels', () => {
    const many = Array.from({ length: 40 }, (_, at) => String(at));
    const { html } = outcomeGrid({
      ...frame,
      across: many,
      up: ['1', '2'],
      acrossName: 'glycol, g',
      upName: 'ratio',
      beakers: many.map((label, at) => ({ across: at, up: at % 2, state: 'held', label })),
    });
    // One for each beaker and one in the legend.
    expect(html.match(/class="mark held"/gu)).toHaveLength(41);
    expect(html).not.toMatch(/NaN|undefined/u);
  });
});
