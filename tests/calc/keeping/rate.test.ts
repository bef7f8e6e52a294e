import { describe, expect, it } from 'vitest';
import { parseConditions, parseLegs } from '../../../src/calc/keeping/conditions-field.ts';
import { ownLaw, parseOwnLoss } from '../../../src/calc/keeping/own-data.ts';
import {
  arrhenius,
  type Conditions,
  esterRate,
  halfLifeDays,
  inversionRate,
  type Rate,
} from '../../../src/calc/keeping/rate.ts';
import type { Parsed } from '../../../src/problem.ts';
import { esterConstants } from '../../../src/reference/kinetics.ts';

const kelvin = (celsius: number): number => celsius + 273.15;

function days(rate: Parsed<Rate>): number {
  if (!rate.ok) throw new Error(rate.fault.message);
  return halfLifeDays(rate.value.perSecond);
}

const ester = (name: string, conditions: Conditions): number => {
  const constants = esterConstants[name];
  if (!constants) throw new Error(`no constants of ${name}`);
  return days(esterRate(constants, conditions));
};

describe('esters', () => {
  it.each([
    ['ethyl acetate', 3, 72.9],
    ['ethyl acetate', 2.8, 46],
    ['ethyl hexanoate', 3, 179],
  ])(
    'published: %s at pH %f, 25 C: half in %f d (Mabey and Mill 1978, Taft; recomputed)',
    (name, ph, printed) => {
      const value = ester(name, { ph, temperatureKelvin: kelvin(25) });
      expect(Number(value.toPrecision(3))).toBe(printed);
    },
  );

  it.each([
    ['ethyl acetate', '1.97', 365.25],
    ['isopropyl acetate', '8.4', 365.25],
    ['tert-butyl acetate', '140', 365.25],
    ['vinyl acetate', '7', 1],
    ['phenyl acetate', '38', 1],
  ])(
    'published: %s at pH 7, 25 C: half in %s (years or days; Schwarzenbach and others)',
    (name, printed, unit) => {
      const value = ester(name, { ph: 7, temperatureKelvin: kelvin(25) }) / unit;
      expect(Math.abs(value / Number(printed) - 1)).toBeLessThan(0.06);
    },
  );

  it('published: at pH 7 and 25 C half is left after 1.97 y of ethyl acetate, 8.4 y of isopropyl acetate, to the printed digits', () => {
    const years = (name: string): number => ester(name, { ph: 7, temperatureKelvin: kelvin(25) }) / 365.25;
    expect(years('ethyl acetate').toFixed(2)).toBe('1.97');
    expect(years('isopropyl acetate').toFixed(1)).toBe('8.4');
    // The fastest alkaline constant of 140 aroma esters (Rayne and Forest 2011), 43 1/(M s), at pH 7.
    const fastest = days(
      esterRate(
        { acid: 0, neutral: 0, base: 43, factor: 2, source: 'test', fromMemory: false },
        { ph: 7, temperatureKelvin: kelvin(25) },
      ),
    );
    expect(fastest.toFixed(2)).toBe('1.87');
  });

  it('published: the energy gives the printed factors of ten kelvins and of 25 to 40 C', () => {
    const factor = (activation: number, from: number, to: number): string =>
      arrhenius({ activation, fromKelvin: kelvin(from), toKelvin: kelvin(to) }).toFixed(2);
    // Ten kelvins: ASTM F1980 style Q10 for 50, 66, 80 kJ/mol; 25 to 40 C for 66 and 109.2 kJ/mol.
    expect([factor(50, 25, 35), factor(66, 25, 35), factor(80, 25, 35)]).toEqual(['1.92', '2.37', '2.85']);
    expect([factor(66, 25, 40), factor(109.2, 25, 40)]).toEqual(['3.58', '8.25']);
  });

  it('law: one unit of pH is ten times the acid, and warmth and acid multiply', () => {
    const [slow, acid, warm] = [
      ester('ethyl butyrate', { ph: 3.5, temperatureKelvin: kelvin(20) }),
      ester('ethyl butyrate', { ph: 2.5, temperatureKelvin: kelvin(20) }),
      ester('ethyl butyrate', { ph: 2.5, temperatureKelvin: kelvin(30) }),
    ];
    expect(slow / acid).toBeCloseTo(10, 6);
    expect(acid / warm).toBeCloseTo(
      arrhenius({ activation: 66, fromKelvin: kelvin(20), toKelvin: kelvin(30) }),
      6,
    );
  });

  it.each([
    ['ethyl butyrate', 5, 25, 'only the acid constant'],
    ['ethyl acetate', 7, 4, 'how that changes with temperature'],
    ['ethyl acetate', 3, 70, '0 to 50 C'],
    ['ethyl acetate', 0.2, 25, 'pH 1'],
  ])('refuses %s at pH %f, %f C', (name, ph, celsius, words) => {
    const constants = esterConstants[name];
    const result = constants && esterRate(constants, { ph, temperatureKelvin: kelvin(celsius) });
    expect(result && !result.ok && result.fault.message).toContain(words);
  });
});

describe('sucrose', () => {
  it.each([
    [25, 3, '61.6'],
    [25, 2.5, '19.5'],
    [40, 3, '7.56'],
    [40, 2.5, '2.39'],
  ])(
    'published: at %f C and pH %f half is inverted in %s d (Vukov 1965, hardly any sugar)',
    (celsius, ph, printed) => {
      const value = days(inversionRate({ ph, temperatureKelvin: kelvin(celsius), sugarShare: 0 }));
      expect(Number(value.toPrecision(3))).toBe(Number(printed));
    },
  );

  it('published: the acid constants that it implies, 1.30e-4 and 5.4e-4 1/(M s) at 25 and 35 C', () => {
    const constant = (celsius: number): string => {
      const rate = inversionRate({ ph: 3, temperatureKelvin: kelvin(celsius), sugarShare: 0 });
      return ((rate.ok ? rate.value.perSecond : Number.NaN) * 1000).toExponential(1);
    };
    expect([constant(25), constant(35)]).toEqual(['1.3e-4', '5.4e-4']);
  });

  it('law: sugar takes the place of water, and the band widens outside 20 to 40 C and pH 2.5 to 4', () => {
    const rate = (sugarShare: number, celsius = 25): Rate => {
      const result = inversionRate({ ph: 3, temperatureKelvin: kelvin(celsius), sugarShare });
      if (!result.ok) throw new Error(result.fault.message);
      return result.value;
    };
    // 0.934 and 0.615 kg of water in a litre at 10 and 50 % (Vukov's own table).
    expect(rate(0.1).perSecond / rate(0).perSecond).toBeCloseTo(0.934, 3);
    expect(rate(0.5).perSecond / rate(0).perSecond).toBeCloseTo(0.615, 3);
    expect([rate(0.1).factor, rate(0.1, 4).factor]).toEqual([1.5, 2]);
    expect(inversionRate({ ph: 6, temperatureKelvin: kelvin(25) }).ok).toBe(false);
  });
});

describe("a person's own figures", () => {
  const loss = (text: string) => {
    const result = parseOwnLoss(text);
    if (!result.ok) throw new Error(result.fault.message);
    return result.value;
  };

  it('law: two temperatures give back both measurements and the energy between them', () => {
    const cold = loss('90 % left after 60 d at 22 C');
    const warm = loss('70 % left after 30 d at 40 C');
    const law = ownLaw([cold, warm], undefined);
    if (!law.ok) throw new Error(law.fault.message);
    for (const one of [cold, warm]) {
      const rate = law.value.rateAt(one.temperatureKelvin);
      expect(rate.ok && Math.exp(-rate.value.perSecond * one.seconds)).toBeCloseTo(one.left, 10);
    }
    const ratio = Math.log(0.7) / 30 / (Math.log(0.9) / 60);
    const activation = law.value.activation ?? Number.NaN;
    expect(arrhenius({ activation, fromKelvin: kelvin(22), toKelvin: kelvin(40) })).toBeCloseTo(ratio, 8);
  });

  it('law: one figure goes to another temperature only with a stated energy', () => {
    const one = [loss('82 % left after 30 d at 40 C')];
    const bare = ownLaw(one, undefined);
    expect(bare.ok && bare.value.rateAt(kelvin(22)).ok).toBe(false);
    expect(bare.ok && bare.value.rateAt(kelvin(40)).ok).toBe(true);
    const stated = ownLaw(one, 80);
    const [here, there] = [kelvin(40), kelvin(22)].map((at) =>
      stated.ok ? stated.value.rateAt(at) : undefined,
    );
    const ratio = here?.ok && there?.ok ? here.value.perSecond / there.value.perSecond : Number.NaN;
    expect(ratio).toBeCloseTo(arrhenius({ activation: 80, fromKelvin: kelvin(22), toKelvin: kelvin(40) }), 8);
  });

  it.each([
    '82 %',
    '0 % left after 30 d at 40 C',
    '82 g left after 30 d at 40 C',
    '82 % left after 30 d at 40',
  ])('refuses "%s"', (text) => expect(parseOwnLoss(text).ok).toBe(false));
});

describe('conditions in words', () => {
  it('reads pH, temperature and sugar in any order, and legs of storage', () => {
    expect(parseConditions('22 C, ph 2.7, 40 % sugar')).toMatchObject({
      ok: true,
      value: { ph: 2.7, temperatureKelvin: expect.closeTo(295.15, 10), sugarShare: 0.4 },
    });
    const legs = parseLegs('4 wk at 22 C, 26 wk at 4 C');
    expect(legs.ok && legs.value.map(({ seconds }) => seconds / 604_800)).toEqual([4, 26]);
  });

  it.each(['ph 2.7, ph 3', 'warm', '22', ''])('refuses "%s"', (text) =>
    expect(parseConditions(text).ok).toBe(false),
  );
});
