/** Esters of fruit flavours, dosed at parts per million. */

import type { Ingredient } from '../ingredient.ts';
import { type Aroma, aroma, recalledDensity, recalledThreshold, threshold } from './aroma-makers.ts';
import { handbook, recalled, solubility } from './figure-makers.ts';

const records: readonly Aroma[] = [
  {
    name: 'ethyl butyrate',
    aliases: ['ethyl butanoate'],
    cas: '105-54-4',
    formula: 'C6H12O2',
    mass: 116.16,
    density: handbook(0.8735, 25, {
      others: [{ value: 0.8786, temperatureCelsius: 20, source: 'vdi-ppds' }],
    }),
    threshold: threshold(0.1, 'belitz-2009', { others: [threshold(1, 'belitz-1987')] }),
    use: [5, 28],
    more: {
      'refractive index': handbook(1.3898, 25),
      'flash point': { value: 19, source: 'flash-point-set' },
      'water solubility': solubility(4900, { others: [solubility(6150, { low: 6100, high: 6200 })] }),
      viscosity: { value: 0.669, temperatureCelsius: 20, source: 'vdi-ppds' },
      'surface tension': { value: 24.5, temperatureCelsius: 20, source: 'jasper-1972' },
    },
    notes: ['flammable: flash point near 19 C'],
  },
  {
    name: 'ethyl acetate',
    aliases: ['ethyl ethanoate'],
    cas: '141-78-6',
    formula: 'C4H8O2',
    mass: 88.106,
    density: handbook(0.9003, 20, {
      others: [{ value: 0.8942, temperatureCelsius: 25, source: 'vdi-ppds' }],
    }),
    more: {
      'refractive index': handbook(1.3723, 20),
      'flash point': recalled(-4),
      'water solubility': solubility(80_000, { low: 80_000, high: 88_000 }),
      viscosity: { value: 0.455, temperatureCelsius: 20, source: 'vdi-ppds' },
      'surface tension': { value: 24, temperatureCelsius: 20, source: 'jasper-1972' },
    },
    notes: ['flammable: flash point below 0 C'],
  },
  {
    name: 'ethyl 2-methylbutyrate',
    aliases: ['ethyl 2-methylbutanoate'],
    cas: '7452-79-1',
    formula: 'C7H14O2',
    mass: 130.187,
    density: recalledDensity(0.869),
    threshold: threshold(0.06, 'belitz-2009', { others: [threshold(0.1, 'belitz-1987')] }),
    use: [1, 8],
  },
  {
    name: 'ethyl hexanoate',
    aliases: ['ethyl caproate'],
    cas: '123-66-0',
    formula: 'C8H16O2',
    mass: 144.214,
    density: handbook(0.873, 20),
    threshold: threshold(5, 'belitz-2009', { others: [recalledThreshold(1)] }),
    use: [1, 7],
    more: {
      'refractive index': handbook(1.4073, 20),
      'water solubility': solubility(630, { low: 630, high: 710 }),
      viscosity: { value: 1.01, temperatureCelsius: 20, source: 'viswanath-natarajan' },
      'surface tension': { value: 25.8, temperatureCelsius: 20, source: 'jasper-1972' },
    },
  },
  {
    name: 'isoamyl acetate',
    aliases: ['3-methylbutyl acetate'],
    cas: '123-92-2',
    formula: 'C7H14O2',
    mass: 130.187,
    density: handbook(0.876, 15, {
      others: [recalled(0.87, { low: 0.867, high: 0.872, temperatureCelsius: 25 })],
    }),
    threshold: threshold(3, 'belitz-2009', { others: [recalledThreshold(2)] }),
    use: [5, 28],
    more: {
      'refractive index': handbook(1.4, 20),
      'water solubility': solubility(2000, { low: 1570, high: 2000 }),
      'surface tension': { value: 24.8, temperatureCelsius: 20, source: 'jasper-1972' },
    },
    notes: ['flammable: flash point near 25 C'],
  },
];

export const esters: readonly Ingredient[] = records.map(aroma);
