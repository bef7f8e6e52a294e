/** Esters and other aroma compounds that are dosed at parts per million. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { handbook, molarMass, recalled, solubility } from './figure-makers.ts';

const smelled = (value: number, source: string, others: readonly Figure[] = []): Figure => ({
  value,
  source,
  ...(others.length > 0 ? { others } : {}),
});
const recalledSmell = (value: number, low = value, high = value): Figure =>
  recalled(value, { source: 'aroma-handbooks', ...(low < high ? { low, high } : {}) });

interface Aroma {
  readonly name: string;
  readonly aliases?: readonly string[];
  readonly cas: string;
  readonly formula: string;
  readonly mass: number;
  /** Left out for solids. */
  readonly density?: Figure;
  readonly threshold?: Figure;
  /** mg/kg in finished drinks without alcohol, lowest and highest. */
  readonly use?: readonly [number, number];
  readonly more?: Ingredient['figures'];
  readonly notes?: readonly string[];
}

const remembered = (value: number): Figure =>
  recalled(value, { temperatureCelsius: 25, source: 'aroma-handbooks' });

function aroma({ mass, density, threshold, use, more, ...record }: Aroma): Ingredient {
  return {
    ...record,
    role: 'aroma',
    figures: {
      ...(density ? { density } : {}),
      'molar mass': molarMass(mass),
      ...(threshold ? { 'odour threshold': threshold } : {}),
      ...(use ? { 'use level': useLevel(use) } : {}),
      ...more,
    },
  };
}

const useLevel = ([low, high]: readonly [number, number]): Figure =>
  recalled(high, {
    low,
    high,
    source: 'fema-use-survey',
    note: 'order of magnitude; the upper end of the range',
  });

export const flavourCompounds: readonly Ingredient[] = [
  {
    name: 'ethyl butyrate',
    aliases: ['ethyl butanoate'],
    cas: '105-54-4',
    formula: 'C6H12O2',
    mass: 116.16,
    density: handbook(0.8735, 25, {
      others: [{ value: 0.8786, temperatureCelsius: 20, source: 'vdi-ppds' }],
    }),
    threshold: smelled(0.1, 'belitz-2009', [smelled(1, 'belitz-1987')]),
    use: [5, 28] as const,
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
    density: remembered(0.869),
    threshold: smelled(0.06, 'belitz-2009', [smelled(0.1, 'belitz-1987')]),
    use: [1, 8] as const,
  },
  {
    name: 'ethyl hexanoate',
    aliases: ['ethyl caproate'],
    cas: '123-66-0',
    formula: 'C8H16O2',
    mass: 144.214,
    density: handbook(0.873, 20),
    threshold: smelled(5, 'belitz-2009', [recalledSmell(1)]),
    use: [1, 7] as const,
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
    threshold: smelled(3, 'belitz-2009', [recalledSmell(2)]),
    use: [5, 28] as const,
    more: {
      'refractive index': handbook(1.4, 20),
      'water solubility': solubility(2000, { low: 1570, high: 2000 }),
      'surface tension': { value: 24.8, temperatureCelsius: 20, source: 'jasper-1972' },
    },
    notes: ['flammable: flash point near 25 C'],
  },
  {
    name: 'beta-ionone',
    cas: '14901-07-6',
    formula: 'C13H20O',
    mass: 192.302,
    density: remembered(0.945),
    threshold: { value: 0.007, source: 'belitz-1987', note: 'some people need a hundred times as much' },
    use: [0.1, 3] as const,
  },
  {
    name: 'dimethyl sulfide',
    aliases: ['dimethyl sulphide'],
    cas: '75-18-3',
    formula: 'C2H6S',
    mass: 62.13,
    density: remembered(0.846),
    threshold: recalledSmell(0.3, 0.3, 1),
    use: [0.1, 1] as const,
    notes: ['boils at 37 C and is very flammable (from memory)'],
  },
  {
    name: 'furaneol',
    aliases: ['HDMF', 'strawberry furanone'],
    cas: '3658-77-3',
    formula: 'C6H8O3',
    mass: 128.127,
    threshold: smelled(60, 'belitz-2009', [
      { value: 25, source: 'belitz-2009', note: 'in the mouth' },
      smelled(0.04, 'belitz-1987'),
    ]),
    use: [1, 10] as const,
    notes: ['melts at 77 to 79 C'],
  },
  {
    name: 'vanillin',
    cas: '121-33-5',
    formula: 'C8H8O3',
    mass: 152.149,
    threshold: smelled(20, 'belitz-1987', [recalledSmell(20, 20, 200)]),
    use: [20, 100] as const,
    more: { 'water solubility': solubility(11_000, { low: 9000, high: 11_000 }) },
  },
  {
    name: 'ethyl vanillin',
    cas: '121-32-4',
    formula: 'C9H10O3',
    mass: 166.176,
    threshold: recalledSmell(100),
    use: [5, 25] as const,
  },
  {
    name: 'rose oxide',
    cas: '16409-43-1',
    formula: 'C10H18O',
    mass: 154.253,
    density: remembered(0.872),
    threshold: { value: 0.1, source: 'belitz-2009', note: 'cis form' },
    use: [0.1, 1] as const,
  },
  {
    name: 'raspberry ketone',
    cas: '5471-51-2',
    formula: 'C10H12O2',
    mass: 164.204,
    threshold: recalledSmell(100, 1, 100),
    use: [5, 20] as const,
    notes: ['melts at 82 C'],
  },
  {
    name: 'maltol',
    cas: '118-71-8',
    formula: 'C6H6O3',
    mass: 126.111,
    threshold: smelled(35_000, 'belitz-1987', [recalledSmell(2500, 2500, 9000)]),
    use: [4, 100] as const,
  },
  {
    name: 'ethyl maltol',
    cas: '4940-11-8',
    formula: 'C7H8O3',
    mass: 140.138,
    use: [5, 50] as const,
  },
  {
    name: 'gamma-decalactone',
    cas: '706-14-9',
    formula: 'C10H18O2',
    mass: 170.252,
    density: remembered(0.952),
    threshold: smelled(11, 'belitz-2009'),
    use: [1, 7] as const,
  },
  {
    name: 'delta-decalactone',
    cas: '705-86-2',
    formula: 'C10H18O2',
    mass: 170.252,
    density: remembered(0.96),
    threshold: smelled(100, 'belitz-2009'),
    use: [1, 5] as const,
  },
  {
    name: 'hexanal',
    cas: '66-25-1',
    formula: 'C6H12O',
    mass: 100.161,
    density: remembered(0.815),
    threshold: smelled(4.5, 'belitz-1987'),
    use: [0.1, 1.5] as const,
  },
  {
    name: '(Z)-3-hexenol',
    aliases: ['cis-3-hexenol', 'leaf alcohol'],
    cas: '928-96-1',
    formula: 'C6H12O',
    mass: 100.161,
    density: remembered(0.848),
    threshold: recalledSmell(39, 39, 70),
    use: [0.5, 5] as const,
  },
  {
    name: 'methyl anthranilate',
    cas: '134-20-3',
    formula: 'C8H9NO2',
    mass: 151.165,
    density: remembered(1.168),
    threshold: recalledSmell(3),
    use: [2, 16] as const,
  },
  {
    name: 'diacetyl',
    aliases: ['2,3-butanedione'],
    cas: '431-03-8',
    formula: 'C4H6O2',
    mass: 86.09,
    density: remembered(0.981),
    threshold: recalledSmell(2.3, 2.3, 15),
    use: [0.5, 2.5] as const,
    notes: ['its vapour harms the lungs: handle it in stock dilution, with good air'],
  },
].map(aroma);
