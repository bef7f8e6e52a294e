import { refractometerBrix } from '../../src/calc/solution/refractometer.ts';
import { gramsPerMole } from '../../src/calc/solution/substance.ts';
import { sugarSolution } from '../../src/calc/solution/sugar.ts';
import { sucroseSolubilityAt, sucroseViscosityAt } from '../../src/calc/solution/sugar-limits.ts';
import { waterActivity } from '../../src/calc/solution/water-activity.ts';
import { answered, celsius, numbersOf, tableOf } from '../calc/solution/support.ts';
import { type Measured, type Pair, worstOff, worstShare } from './measured.ts';

const sugars = (name: string) => numbersOf('solution-sugars', name);

const sucrose = (brix: number, degrees: number) =>
  answered(
    sugarSolution({
      sugar: 'sucrose',
      measure: { kind: 'brix', value: brix },
      temperatureKelvin: celsius(degrees),
    }),
  );

/** Beside measured tables; the polynomial that is used here meets its own table to the last digit. */
const densities = (): readonly Pair[] =>
  tableOf('solution-sugars', 'density20').rows.flatMap(([brix, , handbook]): readonly Pair[] =>
    handbook === null || handbook === undefined
      ? []
      : [{ printed: Number(handbook) / 1000, value: sucrose(Number(brix), 20).density }],
  );

const readings = (): readonly Pair[] =>
  sugars('indexCorrection').map(([degrees = 0, reading = 0, correction = 0]) => ({
    printed: reading + correction,
    value: answered(refractometerBrix({ reading, temperatureKelvin: celsius(degrees) })),
  }));

const viscosities = (): readonly Pair[] =>
  sugars('viscosity').map(([brix = 0, degrees = 0, printed = 0]) => ({
    printed,
    value: answered(sucroseViscosityAt({ massFraction: brix / 100, temperatureKelvin: celsius(degrees) })),
  }));

const solubilities = (): readonly Pair[] =>
  sugars('solubility').map(([degrees = 0, printed = 0]) => ({
    printed,
    value: 100 * answered(sucroseSolubilityAt({ temperatureKelvin: celsius(degrees) })),
  }));

function activity(substance: string, molality: number, degrees: number): number {
  const grams = molality * (gramsPerMole(substance) ?? Number.NaN);
  return answered(
    waterActivity({
      waterGrams: 1000,
      substances: [{ substance, grams }],
      temperatureKelvin: celsius(degrees),
    }),
  ).waterActivity;
}

const isotonic = (): readonly Pair[] =>
  numbersOf('solution-water-activity', 'sucrose').map(([molality = 0, printed = 0]) => ({
    printed,
    value: activity('sucrose', molality, 25),
  }));

const freezing = (sugar: boolean): readonly Pair[] =>
  tableOf('solution-water-activity', 'freezing').rows.flatMap(
    ([solute, , molality, depression, printed]): readonly Pair[] => {
      const name = solute === 'sodium citrate dihydrate' ? 'trisodium citrate' : String(solute);
      if (['sucrose', 'glucose', 'fructose'].includes(name) !== sugar) return [];
      return [{ printed: Number(printed), value: activity(name, Number(molality), -Number(depression)) }];
    },
  );

/** Syrups: density, readings of a refractometer, viscosity, what water holds, water activity. */
export function sugarAndWater(): readonly Measured[] {
  const [density, reading, viscosity, solubility] = [densities(), readings(), viscosities(), solubilities()];
  const [robinson, sugary, others] = [isotonic(), freezing(true), freezing(false)];
  return [
    {
      what: 'density of syrup, 20 C',
      beside: 'CRC Handbook, 102nd ed.',
      rows: density.length,
      worst: worstOff(density, 4, 'g/mL'),
    },
    {
      what: 'refractometer away from 20 C',
      beside: 'OIV-MA-AS2-02',
      rows: reading.length,
      worst: worstOff(reading, 2, 'Brix'),
    },
    {
      what: 'viscosity of syrup',
      beside: 'CRC Handbook, 102nd ed.; NBS Circular 440',
      rows: viscosity.length,
      worst: worstShare(viscosity),
    },
    {
      what: 'sucrose that water holds',
      beside: 'CRC Handbook, older editions',
      rows: solubility.length,
      worst: worstOff(solubility, 2, '% by mass'),
    },
    {
      what: 'water activity, sucrose',
      beside: 'Robinson and Stokes 1959, from memory',
      rows: robinson.length,
      worst: worstOff(robinson, 4),
    },
    {
      what: 'water activity, sugars',
      beside: 'CRC Handbook, freezing points',
      rows: sugary.length,
      worst: worstOff(sugary, 4),
    },
    {
      what: 'water activity, glycerol, ethanol, salts, acid',
      beside: 'CRC Handbook, freezing points',
      rows: others.length,
      worst: worstOff(others, 4),
    },
  ];
}
