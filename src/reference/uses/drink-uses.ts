/** Carbon dioxide, sweetness, energy, what falls out: what is used for what, and where it holds. */

import { energyFactors, energySource } from '../energy.ts';
import { acidSolubility, plainSolubility, saltSolubility, sorbicInSucrose } from '../solubility.ts';
import {
  carrollHenry,
  dissolvedVolume,
  gasMolarVolume,
  generalVirial,
  secondVirial,
  sugarOnCarbonDioxide,
  waterVapour,
  weissSolubility,
} from '../solution/carbon-dioxide.ts';
import { sweetnessCurves, sweetnessFactors } from '../solution/sweetness.ts';
import type { Shelf } from './use.ts';

const celsius = ({
  lowCelsius,
  highCelsius,
}: {
  readonly lowCelsius: number;
  readonly highCelsius: number;
}) => `${lowCelsius} to ${highCelsius} C`;
const kelvin = (value: number): string => `${Math.round(value - 273.15)} C`;

export const drinkShelves: readonly Shelf[] = [
  {
    what: 'solubility of CO2',
    of: weissSolubility,
    range: `${celsius(weissSolubility.valid)}, water without sugar`,
    by: ['carbonation', 'drink', 'scale'],
    always: ['carbonation'],
  },
  {
    what: 'solubility of CO2, second equation',
    of: carrollHenry,
    range: `${celsius(carrollHenry.valid)}, below 10 bar, water without sugar`,
    by: ['carbonation', 'drink', 'scale'],
    always: ['carbonation'],
  },
  {
    what: 'CO2 as a real gas',
    of: secondVirial,
    range: `${kelvin(secondVirial.valid.lowKelvin)} to ${kelvin(secondVirial.valid.highKelvin)}`,
    by: ['carbonation', 'drink', 'scale'],
    always: ['carbonation'],
  },
  {
    what: 'CO2 as a real gas, warmer',
    of: generalVirial,
    range: `used above ${kelvin(secondVirial.valid.highKelvin)}`,
    by: ['carbonation'],
  },
  { what: 'room of dissolved CO2', of: dissolvedVolume, by: ['carbonation'], always: ['carbonation'] },
  {
    what: 'a volume of CO2',
    of: gasMolarVolume,
    range: 'by definition, 0 C and 1 atm',
    by: ['carbonation', 'drink', 'scale'],
    always: ['carbonation'],
  },
  {
    what: 'water vapour above water',
    of: waterVapour,
    range: '0 to 374 C (from memory)',
    by: ['carbonation', 'drink'],
    always: ['carbonation'],
  },
  {
    what: 'sugar drives CO2 out',
    of: sugarOnCarbonDioxide,
    range: `at 25 C, up to ${1000 * sugarOnCarbonDioxide.highest} g/L of sucrose`,
    by: ['carbonation', 'drink', 'scale'],
  },
  {
    what: 'sweetness of *',
    of: sweetnessCurves,
    range: 'in water, up to its highest response',
    by: ['drink', 'compare', 'history'],
  },
  {
    what: 'sweetness of *',
    of: sweetnessFactors,
    ranges: Object.fromEntries(
      Object.entries(sweetnessFactors).flatMap(([name, { levelPercent }]) =>
        levelPercent === undefined ? [] : [[name, `as sweet as ${levelPercent} % of sucrose`]],
      ),
    ),
    by: ['drink', 'compare', 'history'],
  },
  {
    what: 'energy factors',
    of: { source: energySource, ...energyFactors },
    range: 'food labels of the EU',
    by: ['drink', 'compare', 'history'],
    always: ['drink'],
  },
  {
    what: 'solubility of * acid',
    of: acidSolubility,
    ranges: { benzoic: '4 to 50 C, in water', fumaric: '20 to 60 C, in water' },
    by: ['drink', 'ph'],
  },
  {
    what: 'solubility of sorbic acid',
    of: sorbicInSucrose,
    range: 'at 20 C, up to 60 % of sucrose',
    by: ['drink'],
  },
  {
    what: 'solubility of *',
    of: saltSolubility,
    ranges: {
      'potassium hydrogen tartrate': '0 to 25 C, in water',
      'calcium citrate tetrahydrate': '18 to 25 C, in water',
    },
    by: ['drink'],
  },
  { what: 'solubility of *', of: plainSolubility, range: 'about 25 C, in water', by: ['drink'] },
];
