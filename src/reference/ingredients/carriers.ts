/** Water, and the liquids that carry a flavour or help it into water. */

import type { Ingredient } from '../ingredient.ts';
import { between, handbook, logP, molarMass, recalled, solubility } from './figure-makers.ts';

export const water: Ingredient = {
  name: 'water',
  role: 'water',
  aliases: ['drinking water', 'tap water', 'bench water', 'sparkling water'],
  searchWords: ['aqua'],
  cas: '7732-18-5',
  formula: 'H2O',
  figures: {
    density: {
      value: 0.99821,
      temperatureCelsius: 20,
      source: 'kell-1975',
      others: [{ value: 0.99705, temperatureCelsius: 25, source: 'kell-1975' }],
    },
    'molar mass': molarMass(18.0153),
    'refractive index': recalled(1.33299, { temperatureCelsius: 20, source: 'crc-95' }),
    viscosity: recalled(1.002, {
      temperatureCelsius: 20,
      source: 'crc-95',
      others: [recalled(0.89, { temperatureCelsius: 25, source: 'crc-95' })],
    }),
  },
};

/** Water without alkalinity, hardness or sodium; the figures are those of water. */
export const deionisedWater: Ingredient = {
  ...water,
  name: 'deionised water',
  aliases: ['deionized water', 'demineralised water', 'distilled water', 'reverse osmosis water'],
  searchWords: [],
};

export const carriers: readonly Ingredient[] = [
  {
    name: 'propylene glycol',
    role: 'carrier',
    aliases: ['PG', '1,2-propanediol', 'propane-1,2-diol'],
    cas: '57-55-6',
    eNumber: 'E 1520',
    formula: 'C3H8O2',
    figures: {
      density: handbook(1.0361, 20, {
        others: [between(1.035, 1.04, { temperatureCelsius: 20, source: 'ph-eur-propylene-glycol' })],
      }),
      'molar mass': molarMass(76.094),
      'apparent density': {
        value: 1.082,
        temperatureCelsius: 20,
        source: 'melinder-2010',
        note: 'in water, from the density of 10 per cent by mass, 1.006 g/mL',
      },
      'refractive index': handbook(1.4324, 20),
      viscosity: {
        value: 57.6,
        temperatureCelsius: 20,
        source: 'perry-viscosity',
        others: [
          { value: 42.5, temperatureCelsius: 25, source: 'perry-viscosity' },
          { value: 56, temperatureCelsius: 20, source: 'propylene-glycol-sheet' },
          recalled(48.6, { temperatureCelsius: 25, note: 'supplier sheets' }),
        ],
      },
      'flash point': recalled(103, { low: 103, high: 107 }),
      'log p': logP(-0.92),
      'surface tension': { value: 40.1, temperatureCelsius: 25, source: 'propylene-glycol-ntp' },
    },
  },
  {
    name: 'glycerol',
    role: 'carrier',
    aliases: ['glycerin', 'glycerine', 'vegetable glycerin', 'vegetable glycerine'],
    cas: '56-81-5',
    eNumber: 'E 422',
    formula: 'C3H8O3',
    figures: {
      density: handbook(1.2613, 20, {
        others: [
          { value: 1.258, temperatureCelsius: 25, source: 'vdi-ppds' },
          { value: 1.2611, temperatureCelsius: 20, source: 'crc-102' },
        ],
      }),
      'molar mass': molarMass(92.094),
      'apparent density': {
        value: 1.292,
        temperatureCelsius: 20,
        source: 'crc-102',
        note: 'in water, from the density of 5 per cent by mass, 1.0097 g/mL',
      },
      'refractive index': handbook(1.4746, 20),
      viscosity: {
        value: 1433,
        temperatureCelsius: 20,
        source: 'vdi-ppds',
        others: [{ value: 928, temperatureCelsius: 25, source: 'vdi-ppds' }],
      },
      'flash point': recalled(160),
      'log p': logP(-1.76),
      'relative sweetness': recalled(0.65, { low: 0.6, high: 0.7, source: 'sweetener-review' }),
    },
    notes: ['what is sold often holds a few per cent of water: read the label'],
  },
  {
    name: 'ethanol',
    role: 'carrier',
    aliases: ['ethyl alcohol', 'alcohol', 'absolute ethanol'],
    cas: '64-17-5',
    formula: 'C2H6O',
    figures: {
      density: handbook(0.7893, 20, { others: [recalled(0.7849, { temperatureCelsius: 25 })] }),
      'molar mass': molarMass(46.068),
      'apparent density': {
        value: 0.846,
        temperatureCelsius: 20,
        source: 'crc-102',
        note: 'in water, from the density of 5 per cent by mass, 0.9893 g/mL',
      },
      'refractive index': handbook(1.3611, 20),
      viscosity: {
        value: 1.19,
        temperatureCelsius: 20,
        source: 'perry-viscosity',
        others: [{ value: 1.08, temperatureCelsius: 25, source: 'perry-viscosity' }],
      },
      'flash point': recalled(13),
      'log p': logP(-0.31),
      'surface tension': {
        value: 22.4,
        temperatureCelsius: 20,
        source: 'jasper-1972',
        note: '24.05 less 0.0832 a degree',
      },
    },
    notes: [
      'absolute; bottled spirits and 96 per cent alcohol hold water',
      'flammable: flash point near 13 C',
    ],
  },
  {
    name: 'triacetin',
    role: 'carrier',
    aliases: ['glycerol triacetate', 'glyceryl triacetate'],
    cas: '102-76-1',
    eNumber: 'E 1518',
    formula: 'C9H14O6',
    figures: {
      density: handbook(1.1583, 20, { others: [recalled(1.155, { temperatureCelsius: 25 })] }),
      'molar mass': molarMass(218.205),
      'refractive index': handbook(1.4301, 20),
      viscosity: recalled(23, {
        temperatureCelsius: 20,
        others: [recalled(17.4, { temperatureCelsius: 25 })],
      }),
      'flash point': recalled(136, { low: 136, high: 138 }),
      'log p': logP(0.25),
      'water solubility': solubility(58_000, { low: 55_000, high: 70_000 }),
    },
  },
  {
    name: 'triethyl citrate',
    role: 'carrier',
    cas: '77-93-0',
    eNumber: 'E 1505',
    formula: 'C12H20O7',
    figures: {
      density: handbook(1.1369, 20),
      'molar mass': molarMass(276.285),
      'refractive index': handbook(1.4455, 20),
      viscosity: recalled(35, { temperatureCelsius: 25 }),
    },
  },
  {
    name: 'benzyl alcohol',
    role: 'carrier',
    cas: '100-51-6',
    eNumber: 'E 1519',
    formula: 'C7H8O',
    figures: { density: recalled(1.0419, { temperatureCelsius: 24 }), 'molar mass': molarMass(108.14) },
  },
  {
    name: 'polyethylene glycol 400',
    role: 'carrier',
    aliases: ['PEG 400', 'macrogol 400'],
    cas: '25322-68-3',
    eNumber: 'E 1521',
    figures: { density: recalled(1.128, { temperatureCelsius: 20 }) },
  },
];
