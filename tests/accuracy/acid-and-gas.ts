import { carbonDioxideMolality } from '../../src/calc/solution/carbon-dioxide.ts';
import { carbonationAtPartial } from '../../src/calc/solution/carbonation.ts';
import { dissolve, type Portion } from '../../src/calc/solution/dissolve.ts';
import { solveEquilibrium } from '../../src/calc/solution/equilibrium.ts';
import { answered, celsius, numbersOf } from '../calc/solution/support.ts';
import standards from '../fixtures/published/solution-ph-standards.json' with { type: 'json' };
import { type Measured, type Pair, worstOff, worstShare } from './measured.ts';

const molar = (substance: string, value: number): Portion => ({
  substance,
  amount: { unit: 'mol/L', value },
});

function phOf(portions: readonly Portion[]): number {
  const temperatureKelvin = celsius(25);
  const { components } = answered(dissolve({ portions, temperatureKelvin }));
  return answered(solveEquilibrium({ components, temperatureKelvin })).ph;
}

const buffer = (
  table: string,
  acid: string,
  base: string,
  litres: number,
  wanted: (ph: number) => boolean = () => true,
): readonly Pair[] =>
  numbersOf('solution-buffers', table)
    .filter(([printed = 0]) => wanted(printed))
    .map(([printed = 0, acidic = 0, basic = 0]) => ({
      printed,
      value: phOf([molar(acid, acidic / litres), molar(base, basic / litres)]),
    }));

/** McIlvaine gives mL of 0.2 mol/L phosphate and of 0.1 mol/L citric acid to 20 mL. */
const mcilvaine = (wanted: (ph: number) => boolean): readonly Pair[] =>
  numbersOf('solution-buffers', 'mcilvaine')
    .filter(([printed = 0]) => wanted(printed))
    .map(([printed = 0, phosphate = 0, citric = 0]) => ({
      printed,
      value: phOf([
        molar('disodium hydrogen phosphate', (0.2 * phosphate) / 20),
        molar('citric acid', (0.1 * citric) / 20),
      ]),
    }));

function standardPairs(): readonly Pair[] {
  return standards.solutions.flatMap(({ components, rows }) =>
    rows.map(([degrees = 0, printed = 0]) => ({
      printed,
      value: answered(
        solveEquilibrium({
          components: components.map(([substance, molesPerKilogramWater]) => ({
            substance: String(substance),
            molesPerKilogramWater: Number(molesPerKilogramWater),
          })),
          temperatureKelvin: celsius(degrees),
        }),
      ).ph,
    })),
  );
}

function handbookGas(): readonly Pair[] {
  return numbersOf('solution-carbon-dioxide', 'moleFractions').map(
    ([degrees = 0, kilopascal = 0, printed = 0]) => {
      const molality = answered(
        carbonDioxideMolality({
          temperatureKelvin: celsius(degrees),
          partialPressurePascal: kilopascal * 1000,
        }),
      );
      return { printed, value: (1000 * molality) / (molality + 55.5084) };
    },
  );
}

const volumesAt = (degrees: number, partialPressurePascal: number): number =>
  answered(carbonationAtPartial({ temperatureKelvin: celsius(degrees), partialPressurePascal })).volumes;

const gaugeGrid = (): readonly Pair[] =>
  numbersOf('solution-carbon-dioxide', 'gaugeGrid').map(([degrees = 0, psig = 0, printed = 0]) => ({
    printed,
    value: volumesAt(degrees, (psig + 14.696) * 6894.757),
  }));

function line(what: string, beside: string, pairs: readonly Pair[], worst: string): Measured {
  return { what, beside, rows: pairs.length, worst };
}

/** pH of standards and buffers, CO2 in water. */
export function acidAndGas(): readonly Measured[] {
  const known = standardPairs();
  const citrate = buffer('citrate', 'citric acid', 'trisodium citrate dihydrate', 1000);
  const acetate = buffer('acetateWalpole', 'acetic acid', 'sodium acetate', 1000);
  const doubtful = buffer('acetateGomori', 'acetic acid', 'sodium acetate', 500);
  const phosphate = buffer('phosphate', 'sodium dihydrogen phosphate', 'disodium hydrogen phosphate', 1000);
  const sour = mcilvaine((ph) => ph <= 4.4);
  const mild = mcilvaine((ph) => ph > 4.4);
  const handbook = handbookGas();
  const grid = gaugeGrid();
  return [
    line('pH, ten standards, 0 to 50 C', 'Bates 1962; Staples and Bates 1969', known, worstOff(known, 3)),
    line('pH, phosphate buffers', 'Gomori 1955', phosphate, worstOff(phosphate, 2)),
    line('pH, acetate buffers', 'Walpole 1914', acetate, worstOff(acetate, 2)),
    line(
      'pH, acetate buffers, one row doubtful',
      'Gomori 1955, from memory',
      doubtful,
      worstOff(doubtful, 2),
    ),
    line('pH, citrate buffers', 'a supplier, from memory', citrate, worstOff(citrate, 2)),
    line('pH to 4.4, citrate with phosphate', 'McIlvaine 1921', sour, worstOff(sour, 2)),
    line('pH above 4.4, citrate with phosphate', 'McIlvaine 1921', mild, worstOff(mild, 2)),
    line('CO2 in water, 5 to 50 C', 'CRC Handbook, 102nd ed.', handbook, worstShare(handbook)),
    line('CO2 at a gauge, 0 to 27 C', 'worked from Weiss 1974', grid, worstShare(grid)),
  ];
}
