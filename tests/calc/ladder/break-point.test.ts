import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakPoint } from '../../../src/calc/ladder/break-point.ts';
import { anyLadder, beakers, found, priors } from './some-beakers.ts';

const some = { numRuns: 40 };
const close = (value: number | null, wanted: number | null, off = 1e-9): void => {
  expect(Math.abs(Number(value) / Number(wanted) - 1)).toBeLessThan(off);
};
/** The logarithmic middle of where the break of a stirred emulsion is looked for. */
const centre = Math.sqrt(priors.lowRatio * priors.highRatio);

describe('The break point', () => {
  it('law: what lies alike about the middle has its break there, and holds there every other time', () => {
    const ladder = [
      '0.4 held, 0.7 held, 0.95 failed, 1.05 held',
      '0.95 held, 1.05 failed, 1.43 failed, 2.5 failed',
    ];
    const all = ladder.flatMap((text, day) =>
      beakers(text, String(day)).map((beaker) => ({ ...beaker, ratio: beaker.ratio * centre })),
    );
    const mirrored = all.map(({ ratio, outcome, day }) => ({
      ratio: centre ** 2 / ratio,
      outcome: outcome === 'held' ? ('failed' as const) : ('held' as const),
      day,
    }));
    const { breakPoint: middle, breakLow, breakHigh, chanceToHold } = found([...all, ...mirrored]);
    close(middle, centre);
    close(Number(breakLow) * Number(breakHigh), centre ** 2);
    expect(chanceToHold(centre)).toBeCloseTo(0.5, 9);
  });

  it('law: neither the order of the beakers nor the names of the days matter', () => {
    fc.assert(
      fc.property(anyLadder, (ladder) => {
        const renamed = ladder.toReversed().map((beaker) => ({ ...beaker, day: `the ${beaker.day}` }));
        const [one, other] = [found(ladder), found(renamed)];
        close(one.breakPoint, other.breakPoint);
        close(one.workingPoint, other.workingPoint);
      }),
      some,
    );
  });

  it('law: all ratios times a factor give the answer times the factor', () => {
    fc.assert(
      fc.property(anyLadder, fc.double({ min: 0.01, max: 100, noNaN: true }), (ladder, factor) => {
        const scaled = ladder.map((beaker) => ({ ...beaker, ratio: beaker.ratio * factor }));
        const asked = { ...priors, lowRatio: priors.lowRatio * factor, highRatio: priors.highRatio * factor };
        const [one, other] = [found(ladder), found(scaled, asked)];
        for (const key of ['breakPoint', 'breakLow', 'breakHigh', 'workingPoint'] as const) {
          close(Number(one[key]) * factor, other[key], 1e-6);
        }
        expect(other.chanceToHold(0.5 * factor)).toBeCloseTo(one.chanceToHold(0.5), 6);
      }),
      some,
    );
  });

  it('law: more beakers that say the same narrow the interval', () => {
    const day = '0.4 held, 0.45 held, 0.5 failed, 0.55 failed';
    const widths = [1, 2, 4, 8].map((days) => {
      const all = Array.from({ length: days }, (_, k) => beakers(day, String(k))).flat();
      const { breakLow, breakHigh } = found(all);
      return Number(breakHigh) / Number(breakLow);
    });
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    expect(new Set(widths).size).toBe(4);
  });

  it('law: the chance to hold falls, and is 95 % at the ratio that is said to hold so', () => {
    fc.assert(
      fc.property(anyLadder, (ladder) => {
        const { chanceToHold, holdsNinetyFive } = found(ladder);
        const chances = [0.1, 0.2, 0.4, 0.8, 1.6, 3.2].map(chanceToHold);
        expect(chances).toEqual(chances.toSorted((a, b) => b - a));
        if (holdsNinetyFive !== null) expect(chanceToHold(holdsNinetyFive)).toBeCloseTo(0.95, 6);
      }),
      some,
    );
  });

  it('law: the working point is the safer of the two', () => {
    fc.assert(
      fc.property(anyLadder, fc.double({ min: 0, max: 0.6, noNaN: true }), (ladder, marginFraction) => {
        const answer = breakPoint({ beakers: ladder, priors, marginFraction });
        const least = Math.min(
          answer.holdsNinetyFive ?? Number.NaN,
          Number(answer.breakPoint) * (1 - marginFraction),
        );
        expect(answer.workingPoint ?? Number.NaN).toBe(least);
      }),
      some,
    );
  });

  it('law: one odd beaker moves the bracket, and the break hardly', () => {
    const straight = [
      '0.3 held, 0.4 held, 0.5 held, 0.6 failed',
      '0.45 held, 0.5 held, 0.55 failed, 0.7 failed',
    ];
    const days = straight.map((text, day) => beakers(text, String(day)));
    const [without, withOdd] = [found(days.flat()), found([...days.flat(), ...beakers('0.2 failed', '0')])];
    expect(without.bracket).toEqual({ lastHeld: 0.5, firstFailed: 0.55, crossed: 0 });
    expect(withOdd.bracket).toEqual({ lastHeld: null, firstFailed: 0.2, crossed: 5 });
    close(withOdd.breakPoint, without.breakPoint, 0.02);
  });

  it('law: where little is needed to hold, all is turned over', () => {
    fc.assert(
      fc.property(anyLadder, (ladder) => {
        const turned = ladder.map((beaker) => ({ ...beaker, ratio: 1 / beaker.ratio }));
        const asked = { ...priors, lowRatio: 1 / priors.highRatio, highRatio: 1 / priors.lowRatio };
        const one = found(ladder);
        const other = breakPoint({ beakers: turned, priors: asked, marginFraction: 0.1, failing: 'below' });
        close(Number(one.breakPoint) * Number(other.breakPoint), 1);
        close(Number(one.breakLow) * Number(other.breakHigh), 1);
        expect(other.chanceToHold(2)).toBeCloseTo(one.chanceToHold(0.5), 9);
      }),
      some,
    );
  });
});

describe('What tells only a side', () => {
  it('law: without an outcome nothing is said', () => {
    for (const text of ['', '0.3 watching', '0.3 watching 0.5']) {
      const { side, breakPoint: middle, breakLow, breakHigh, workingPoint, scatter } = found(beakers(text));
      expect([side, middle, breakLow, breakHigh, workingPoint, scatter]).toEqual([
        'none',
        null,
        null,
        null,
        null,
        null,
      ]);
    }
  });

  it('law: all held leaves the upper side open, and works no higher than what held', () => {
    const answer = found(beakers('0.2 held, 0.3 held, 0.4 held'));
    expect([answer.side, answer.breakPoint, answer.breakHigh]).toEqual(['all held', null, null]);
    expect(Number(answer.breakLow)).toBeGreaterThan(0.3);
    expect(Number(answer.breakLow)).toBeLessThanOrEqual(0.4);
    expect(Number(answer.workingPoint)).toBeLessThanOrEqual(0.4);
  });

  it('law: all failed leaves the lower side open, and no ratio to work at', () => {
    const answer = found(beakers('0.2 failed, 0.3 failed'));
    expect([answer.side, answer.breakPoint, answer.breakLow, answer.workingPoint]).toEqual([
      'all failed',
      null,
      null,
      null,
    ]);
    expect(Number(answer.breakHigh)).toBeGreaterThanOrEqual(0.2);
    expect(Number(answer.breakHigh)).toBeLessThan(0.3);
  });
});

describe('What is still watched', () => {
  const ladder = beakers('0.3 held, 0.5 failed');

  it('law: a beaker watched for no time tells nothing', () => {
    const before = found(ladder);
    for (const text of ['0.4 watching', '0.4 watching 0', '1.5 watching 0']) {
      const after = found([...ladder, ...beakers(text)]);
      close(after.breakPoint, before.breakPoint);
      close(after.breakLow, before.breakLow);
    }
  });

  it('law: one that lasted the whole watch tells as much as one that held, half of it less', () => {
    const at = (text: string): number => Number(found([...ladder, ...beakers(text)]).breakPoint);
    close(at('0.42 watching 1'), at('0.42 held'));
    expect(at('0.42 watching 0.5')).toBeGreaterThan(Number(found(ladder).breakPoint));
    expect(at('0.42 watching 0.5')).toBeLessThan(at('0.42 held'));
  });
});
