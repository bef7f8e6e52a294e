import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../src/calc/parse-quantity.ts';
import { inUnit, toInner, type Unit, unitNamed, units, unitTyped } from '../../src/calc/unit.ts';
import { isPossibleUnit, unitWordsAt } from '../../src/calc/unit-words.ts';

interface GnuFixture {
  readonly factors: readonly { readonly symbol: string; readonly factor: number }[];
  readonly temperatures: readonly {
    readonly symbol: string;
    readonly value: number;
    readonly kelvin: number;
  }[];
}

interface PrintedFactor {
  readonly symbol: string;
  readonly factor: string;
  /** How many of our inner unit one SI unit holds. */
  readonly innerPerSi: number;
}

interface Sp811Fixture {
  readonly exact: readonly PrintedFactor[];
  readonly sevenDigits: readonly PrintedFactor[];
}

const published = (name: string): string =>
  readFileSync(new URL(`../fixtures/published/${name}`, import.meta.url), 'utf8');

const gnu: GnuFixture = JSON.parse(published('units-gnu.json'));
const sp811: Sp811Fixture = JSON.parse(published('units-sp811.json'));

function unitOf(symbol: string): Unit {
  const unit = unitNamed(symbol);
  if (!unit) throw new Error(`no unit ${symbol}`);
  return unit;
}

const relativeError = (value: number, reference: number): number =>
  Math.abs(value - reference) / Math.abs(reference);

/** Units that GNU units does not have: counts, scales with a zero of their own, and trade units of size 1. */
const unknownToGnu = [
  'metric tsp',
  'metric tbsp',
  'drops',
  'parts',
  'C',
  'F',
  'NTU',
  'rpm',
  'vol',
  'mg/L as CaCO3',
];

describe('published: GNU units 2.22, the whole table', () => {
  test.each(gnu.factors)('published: GNU units 2.22, 1 $symbol is $factor', ({ symbol, factor }) => {
    expect(relativeError(toInner(1, unitOf(symbol)), factor)).toBeLessThan(1e-12);
  });

  test.each(gnu.temperatures)(
    'published: GNU units 2.22, $value $symbol is $kelvin K',
    ({ symbol, value, kelvin }) => {
      expect(relativeError(toInner(value, unitOf(symbol)), kelvin)).toBeLessThan(1e-12);
    },
  );

  test('published: every unit of the table is in the fixture, apart from those that GNU units lacks', () => {
    const checked = gnu.factors.map(({ symbol }) => symbol);
    expect(
      units
        .map(({ symbol }) => symbol)
        .filter((symbol) => !checked.includes(symbol))
        .sort(),
    ).toEqual([...unknownToGnu].sort());
  });
});

describe('published: NIST SP 811 (2008), appendix B.8 (from memory)', () => {
  test.each(sp811.exact)(
    'published: SP 811 B.8, $name is $factor exactly',
    ({ symbol, factor, innerPerSi }) => {
      expect(relativeError(toInner(1, unitOf(symbol)) / innerPerSi, Number(factor))).toBeLessThan(1e-15);
    },
  );

  test.each(sp811.sevenDigits)(
    'published: SP 811 B.8, $name is $factor as printed',
    ({ symbol, factor, innerPerSi }) => {
      const printed = (toInner(1, unitOf(symbol)) / innerPerSi).toExponential(6);
      expect(Number(printed)).toBe(Number(factor));
    },
  );

  test('published: SP 811 B.8 (from memory), K = (F + 459.67) / 1.8 and K = C + 273.15', () => {
    expect(toInner(212, unitOf('F'))).toBeCloseTo((212 + 459.67) / 1.8, 10);
    expect(toInner(100, unitOf('C'))).toBe(373.15);
  });

  test('published: metric spoons are 5 mL and 15 mL (common practice, no source)', () => {
    expect(toInner(1, unitOf('metric tsp'))).toBe(5);
    expect(toInner(1, unitOf('metric tbsp'))).toBe(15);
  });

  test('law: 128 US fluid ounces, 768 teaspoons or 256 tablespoons are a US gallon', () => {
    const gallon = toInner(1, unitOf('US gal'));
    expect(toInner(128, unitOf('US fl oz'))).toBeCloseTo(gallon, 9);
    expect(toInner(768, unitOf('US tsp'))).toBeCloseTo(gallon, 9);
    expect(toInner(256, unitOf('US tbsp'))).toBeCloseTo(gallon, 9);
    expect(toInner(160, unitOf('imp fl oz'))).toBeCloseTo(toInner(1, unitOf('imp gal')), 9);
  });
});

test('no two units share a spelling', () => {
  const typed = units.flatMap((unit) => [unit.symbol, ...(unit.spellings ?? [])]);
  expect(new Set(typed).size).toBe(typed.length);
});

test('every spelling is read as its unit', () => {
  for (const unit of units) {
    for (const typed of [unit.symbol, ...(unit.spellings ?? [])]) {
      expect(unitTyped(typed)?.symbol, typed).toBe(unit.symbol);
    }
  }
});

test.each([
  ['ml', 'mL'],
  ['l', 'L'],
  ['ul', 'uL'],
  ['µL', 'uL'],
  ['µg', 'ug'],
  ['μg', 'ug'],
  ['mcg', 'ug'],
  ['g/l', 'g/L'],
  ['mg/l', 'mg/L'],
  ['µg/l', 'ug/L'],
  ['mcg/kg', 'ug/kg'],
  ['g/ml', 'g/mL'],
  ['g/cm³', 'g/mL'],
  ['kg/m³', 'kg/m3'],
  ['°C', 'C'],
  ['degC', 'C'],
  ['mg/l as CaCO3', 'mg/L as CaCO3'],
  ['us fl oz', 'US fl oz'],
  ['US  fl  oz', 'US fl oz'],
  ['%w/v', '% w/v'],
  ['% w/w', '%'],
  ['weeks', 'wk'],
  ['µm', 'um'],
  ['EUR/kg', 'EUR/kg'],
  ['USD/l', 'USD/L'],
  ['GBP/US gal', 'GBP/US gal'],
])('%s is read as %s', (typed, symbol) => {
  expect(unitTyped(typed)?.symbol).toBe(symbol);
});

test.each([
  'Kg',
  'KG',
  'ML',
  'G',
  'c',
  'oz',
  'tsp',
  'gal',
  'eur/kg',
  'EUR/min',
  'EU/kg',
  'g/',
  '/L',
  'g/L/kg',
  '',
])('"%s" is no unit', (typed) => {
  expect(unitTyped(typed)).toBeUndefined();
});

test('a price is counted for one inner unit: 42 EUR/kg is 0.042 EUR/g', () => {
  expect(toInner(42, unitOf('EUR/kg'))).toBeCloseTo(0.042, 15);
  expect(toInner(3.2, unitOf('USD/L'))).toBeCloseTo(0.0032, 15);
});

test('example: inUnit(0.0045, g/L) is 4.5', () => {
  expect(inUnit(0.0045, 'g/L')).toBeCloseTo(4.5, 12);
});

test('inUnit throws for what is no symbol', () => {
  expect(() => inUnit(1, 'ml')).toThrow('"ml" is not the symbol of a unit');
});

const anyUnit = fc.constantFrom(...units);
const anyValue = fc.double({ min: 1e-9, max: 1e9, noNaN: true });

test('law: a number and a unit, written and read, come back', () => {
  fc.assert(
    fc.property(anyUnit, anyValue, fc.constantFrom('', ' ', '   '), (unit, value, space) => {
      const read = parseQuantity(`${value}${space}${unit.symbol}`);
      expect(read.ok && [read.value.value, read.value.unit, read.value.dimension]).toEqual([
        value,
        unit.symbol,
        unit.dimension,
      ]);
    }),
  );
});

test('law: inUnit undoes the way to the inner unit', () => {
  fc.assert(
    fc.property(anyUnit, anyValue, (unit, value) => {
      const error = Math.abs(inUnit(toInner(value, unit), unit.symbol) - value);
      expect(error).toBeLessThanOrEqual(1e-12 * (value + (unit.offset ?? 0)));
    }),
  );
});

test('law: twice the number is twice the inner figure, scales with their own zero apart', () => {
  const plain = units.filter((unit) => !('offset' in unit));
  fc.assert(
    fc.property(fc.constantFrom(...plain), anyValue, (unit, value) => {
      expect(toInner(2 * value, unit)).toBe(2 * toInner(value, unit));
    }),
  );
});

test.each([
  [['2', 'US', 'fl', 'oz', 'rum'], 1, 3],
  [['50', 'g'], 1, 1],
  [['4', '%', 'w/v', 'citric', 'acid'], 1, 2],
  [['4', '%', 'citric', 'acid'], 1, 1],
  [['120', 'mg/L', 'as', 'CaCO3'], 1, 3],
  [['1', 'oz', 'av'], 1, 2],
  [['1', 'oz', 'oil'], 1, 1],
  [['3', 'EUR/US', 'gal'], 1, 2],
  [['50', '--ratio', '1:2'], 1, 0],
  [['50'], 1, 0],
])('unit words of %j from %i on: %i', (words, at, count) => {
  expect(unitWordsAt(words, at)).toBe(count);
});

test('isPossibleUnit knows units, doubtful ones and first words', () => {
  expect(['g', 'ml', 'US', 'oz', '%', 'EUR/kg'].map(isPossibleUnit)).toEqual([
    true,
    true,
    true,
    true,
    true,
    true,
  ]);
  expect(['oil', '--batch', '50', ''].map(isPossibleUnit)).toEqual([false, false, false, false]);
});
