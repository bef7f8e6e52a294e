/** The terpene hydrocarbons of flavour oils; they count as oil. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { threshold, useLevel } from './aroma-makers.ts';
import { between, handbook, logP, molarMass, recalled, solubility } from './figure-makers.ts';
import { syntheticOnly } from './withdrawn.ts';

/** Surface tension against air at 20 C, from the coefficients of a straight line in temperature. */
const tension = (value: number): Figure => ({ value, temperatureCelsius: 20, source: 'jasper-1972' });

export const terpenes: readonly Ingredient[] = [
  {
    name: 'limonene',
    role: 'oil',
    aliases: ['d-limonene', '(R)-limonene', '(R)-(+)-limonene', '(+)-limonene', 'orange terpenes'],
    cas: '5989-27-5',
    formula: 'C10H16',
    figures: {
      density: handbook(0.8411, 20, {
        others: [
          { value: 0.8429, temperatureCelsius: 20, source: 'melinder-2010' },
          { value: 0.839, temperatureCelsius: 25, source: 'melinder-2010' },
          { value: 0.8402, temperatureCelsius: 20.85, source: 'essential-oil-constituents' },
        ],
      }),
      'molar mass': molarMass(136.238),
      'required hlb': {
        value: 14.9,
        source: 'vaughan-rice-1990',
        note: 'worked out from the solubility parameter; microemulsions were tried at 8.7 and 12, and none formed at 6.4',
        others: [
          { value: 12, source: 'pharmaceutics-2023-limonene' },
          { value: 8.7, source: 'pharmaceutics-2023-limonene', note: 'with very much surfactant' },
        ],
      },
      'refractive index': handbook(1.473, 20),
      'flash point': { value: 48, source: 'flash-point-set' },
      'log p': logP(4.57, { others: [logP(4.38, { note: 'the other mirror form' })] }),
      'water solubility': solubility(13.8, {
        others: [solubility(7.57), between(2.4, 19, { source: 'aqsoldb-2019' })],
      }),
      'surface tension': tension(27.6),
      'odour threshold': threshold(200, 'belitz-2009', { others: [threshold(10, 'belitz-1987')] }),
      'use level': useLevel(10, 100),
    },
  },
  {
    name: 'myrcene',
    role: 'oil',
    aliases: ['beta-myrcene'],
    withdrawn: syntheticOnly,
    cas: '123-35-3',
    formula: 'C10H16',
    figures: {
      density: handbook(0.8013, 15, { others: [recalled(0.794, { temperatureCelsius: 20 })] }),
      'molar mass': molarMass(136.238),
      'refractive index': handbook(1.4722, 20),
      'log p': logP(4.17),
      'water solubility': solubility(5.35, { low: 5.1, high: 5.6 }),
    },
  },
  {
    name: 'alpha-pinene',
    role: 'oil',
    cas: '80-56-8',
    formula: 'C10H16',
    figures: {
      density: handbook(0.8539, 25, {
        others: [{ value: 0.8592, temperatureCelsius: 20, source: 'essential-oil-constituents' }],
      }),
      'molar mass': molarMass(136.238),
      'refractive index': handbook(1.4632, 25),
      'flash point': { value: 31, source: 'flash-point-set' },
      'log p': logP(4.83, { low: 4.44, high: 4.83 }),
      'water solubility': solubility(2.49, { low: 2.2, high: 3.2 }),
      'surface tension': tension(26.5),
    },
  },
  {
    name: 'beta-pinene',
    role: 'oil',
    cas: '127-91-3',
    formula: 'C10H16',
    figures: {
      density: handbook(0.86, 25),
      'molar mass': molarMass(136.238),
      'refractive index': handbook(1.4768, 25),
      'flash point': { value: 37.5, source: 'flash-point-set' },
      'log p': logP(4.16),
      'water solubility': solubility(9, { low: 7, high: 11 }),
      'surface tension': tension(26.4),
    },
  },
  {
    name: 'gamma-terpinene',
    role: 'oil',
    cas: '99-85-4',
    formula: 'C10H16',
    figures: {
      density: handbook(0.849, 20),
      'molar mass': molarMass(136.238),
      'refractive index': handbook(1.4765, 14),
      'flash point': { value: 52.5, source: 'flash-point-set' },
      'log p': logP(4.5),
      'water solubility': solubility(8.7),
    },
  },
  {
    name: 'alpha-terpinene',
    role: 'oil',
    cas: '99-86-5',
    formula: 'C10H16',
    figures: {
      density: handbook(0.8375, 19),
      'molar mass': molarMass(136.238),
      'refractive index': handbook(1.477, 19),
      'log p': logP(4.25),
      'water solubility': recalled(8, { temperatureCelsius: 25 }),
    },
  },
  {
    name: 'terpinolene',
    role: 'oil',
    cas: '586-62-9',
    formula: 'C10H16',
    figures: {
      density: handbook(0.8632, 15),
      'molar mass': molarMass(136.238),
      'refractive index': handbook(1.4883, 20),
      'log p': logP(4.47),
      'water solubility': solubility(9.5, { low: 4.6, high: 9.5 }),
    },
  },
  {
    name: 'p-cymene',
    role: 'oil',
    aliases: ['para-cymene', 'cymene'],
    cas: '99-87-6',
    formula: 'C10H14',
    figures: {
      density: handbook(0.8573, 20),
      'molar mass': molarMass(134.222),
      'refractive index': handbook(1.4909, 20),
      'log p': logP(4.1),
      'water solubility': solubility(23.4),
      'surface tension': tension(27.1),
    },
  },
  {
    name: 'beta-caryophyllene',
    role: 'oil',
    aliases: ['caryophyllene'],
    cas: '87-44-5',
    formula: 'C15H24',
    figures: {
      density: handbook(0.9075, 20),
      'molar mass': molarMass(204.357),
      'refractive index': handbook(1.4986, 20),
      'water solubility': solubility(0.09),
    },
  },
  {
    name: 'valencene',
    role: 'oil',
    cas: '4630-07-3',
    formula: 'C15H24',
    figures: {
      density: recalled(0.92, { temperatureCelsius: 25 }),
      'molar mass': molarMass(204.357),
      'use level': useLevel(1, 50),
    },
  },
];
