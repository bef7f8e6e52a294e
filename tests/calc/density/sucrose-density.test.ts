import { describe, expect, it } from 'vitest';
import { sucroseDensity } from '../../../src/calc/density/sucrose-density.ts';
import { waterDensity } from '../../../src/calc/density/water-density.ts';

const kilogramsPerCubicMetre = (percent: number, celsius: number): number => {
  const density = sucroseDensity({ massFraction: percent / 100, temperatureKelvin: celsius + 273.15 });
  if (!density.ok) throw new Error(density.fault.message);
  return density.value * 1000;
};

// CRC Handbook of Chemistry and Physics, 102nd ed., concentrative properties of aqueous solutions, sucrose at 20 C,
// printed in g/cm3 to four decimals. Above 60 % the handbook parts from the polynomial by up to 0.5 kg/m3.
const handbook = [
  [0, 998.2],
  [2, 1006.0],
  [8, 1029.9],
  [11, 1042.3],
  [15, 1059.2],
] as const;

// Plato in NBS Circular C440 (1942), table 113, D20/4 times 1000, from memory; times 0.99997 for kg/m3.
const circular = [
  [2, 1006.02],
  [15, 1059.17],
  [25, 1103.56],
  [35, 1151.28],
  [45, 1202.54],
  [55, 1257.54],
  [65, 1316.33],
  [70, 1347.17],
] as const;

// Bettin, Emmerich, Spieweck and Toth 1998 (ICUMSA SPS-4), as tabulated at 20 C.
const at20 = [
  [0, 998.2],
  [2, 1005.96],
  [8, 1029.9],
  [11, 1042.26],
  [15, 1059.16],
  [25, 1103.59],
  [35, 1151.33],
  [45, 1202.62],
  [55, 1257.65],
  [62, 1298.47],
  [65, 1316.56],
  [67, 1328.81],
  [70, 1347.48],
  [80, 1412.2],
  [85, 1445.94],
] as const;

// The same source, against temperature: % w/w, C, kg/m3.
const againstTemperature = [
  [10, 5, 1040.73],
  [10, 15, 1039.26],
  [10, 30, 1035.14],
  [10, 60, 1021.93],
  [20, 10, 1083.56],
  [20, 25, 1079.37],
  [20, 40, 1073.5],
  [30, 5, 1131.43],
  [30, 15, 1128.7],
  [30, 30, 1123.2],
  [30, 60, 1108.42],
  [40, 10, 1180.21],
  [40, 25, 1174.45],
  [40, 40, 1167.52],
  [50, 5, 1235.79],
  [50, 15, 1231.83],
  [50, 30, 1224.99],
  [50, 60, 1208.71],
  [60, 10, 1291.31],
  [60, 25, 1284.14],
  [60, 40, 1276.25],
  [65, 5, 1323.79],
  [65, 15, 1319.04],
  [65, 30, 1311.37],
  [65, 60, 1294.21],
  [70, 10, 1352.55],
  [70, 25, 1344.85],
  [70, 40, 1336.62],
] as const;

describe('sucroseDensity', () => {
  it.each(at20)('published: ICUMSA SPS-4 at 20 C, %d %% is %d kg/m3', (percent, density) => {
    expect(Math.abs(kilogramsPerCubicMetre(percent, 20) - density)).toBeLessThanOrEqual(0.00501);
  });

  it.each(againstTemperature)(
    'published: ICUMSA SPS-4, %d %% at %d C is %d kg/m3',
    (percent, celsius, density) => {
      expect(Math.abs(kilogramsPerCubicMetre(percent, celsius) - density)).toBeLessThanOrEqual(0.00501);
    },
  );

  it.each(handbook)('published: CRC Handbook 102nd ed., %d %% at 20 C is %d kg/m3', (percent, density) => {
    expect(Math.abs(kilogramsPerCubicMetre(percent, 20) - density)).toBeLessThanOrEqual(0.051);
  });

  it.each(circular)(
    'published: NBS Circular 440 (from memory), %d %% is %d within 0.03 %%',
    (percent, density) => {
      expect(Math.abs(kilogramsPerCubicMetre(percent, 20) / (density * 0.99997) - 1)).toBeLessThan(3e-4);
    },
  );

  it.each([
    { massFraction: 0.86, temperatureKelvin: 293.15, seen: '86 %' },
    { massFraction: -0.01, temperatureKelvin: 293.15, seen: '-1 %' },
    { massFraction: 0.1, temperatureKelvin: 277.15, seen: '4 C' },
    { massFraction: 0.1, temperatureKelvin: 334.15, seen: '61 C' },
    { massFraction: Number.NaN, temperatureKelvin: 293.15, seen: 'NaN' },
  ])('refuses $seen', ({ seen, ...at }) => {
    const density = sucroseDensity(at);
    expect(density.ok).toBe(false);
    expect(density.ok ? '' : density.fault.message).toContain(seen);
  });
});

describe('waterDensity', () => {
  // Lange's Handbook of Chemistry, 15th ed., and Kell 1975 (from memory), kg/m3.
  it.each([
    [0, 999.84],
    [5, 999.964],
    [15, 999.099],
    [25, 997.047],
    [40, 992.22],
    [60, 983.2],
  ])('published: at %d C it is %d kg/m3 within 0.015', (celsius, density) => {
    const water = waterDensity({ temperatureKelvin: celsius + 273.15 });
    expect(Math.abs((water.ok ? water.value : 0) * 1000 - density)).toBeLessThanOrEqual(0.015);
  });

  it('refuses ice and steam', () => {
    expect(waterDensity({ temperatureKelvin: 272 }).ok).toBe(false);
    expect(waterDensity({ temperatureKelvin: 374 }).ok).toBe(false);
  });
});
