/** The oxygenated terpenes of flavour oils; they count as oil. */

import type { Ingredient } from '../ingredient.ts';
import { recalledThreshold, threshold, useLevel } from './aroma-makers.ts';
import { handbook, logP, molarMass, recalled, solubility } from './figure-makers.ts';

export const terpenoids: readonly Ingredient[] = [
  {
    name: 'eucalyptol',
    role: 'oil',
    aliases: ['1,8-cineole', 'cineole'],
    cas: '470-82-6',
    formula: 'C10H18O',
    figures: {
      density: handbook(0.9267, 20),
      'molar mass': molarMass(154.253),
      'refractive index': handbook(1.4586, 20),
      'log p': logP(2.74),
      'water solubility': solubility(3500, { low: 2000, high: 3530 }),
    },
  },
  {
    name: 'linalool',
    role: 'oil',
    cas: '78-70-6',
    formula: 'C10H18O',
    figures: {
      density: {
        value: 0.87,
        temperatureCelsius: 15,
        source: 'essential-oil-constituents',
        others: [recalled(0.862, { temperatureCelsius: 20 }), recalled(0.858, { temperatureCelsius: 25 })],
      },
      'molar mass': molarMass(154.253),
      'refractive index': { value: 1.4627, temperatureCelsius: 20, source: 'essential-oil-constituents' },
      'flash point': { value: 71, source: 'essential-oil-constituents' },
      'log p': logP(2.97),
      'water solubility': solubility(1590),
      'odour threshold': threshold(6, 'belitz-2009', {
        others: [
          recalledThreshold(0.8, 0.8, { note: 'R form' }),
          recalledThreshold(7.4, 7.4, { note: 'S form' }),
        ],
      }),
      'use level': useLevel(1, 10),
    },
  },
  {
    name: 'linalyl acetate',
    role: 'oil',
    cas: '115-95-7',
    formula: 'C12H20O2',
    figures: {
      density: handbook(0.895, 20),
      'molar mass': molarMass(196.29),
      'refractive index': handbook(1.446, 20),
      'log p': logP(3.93),
      'water solubility': solubility(30, { others: [recalled(500, { note: 'other lists, at most' })] }),
    },
  },
  {
    name: 'citral',
    role: 'oil',
    aliases: ['geranial and neral'],
    cas: '5392-40-5',
    formula: 'C10H16O',
    figures: {
      density: handbook(0.888, 20, {
        low: 0.8869,
        high: 0.8888,
        note: 'between neral and geranial',
        others: [recalled(0.888, { low: 0.885, high: 0.891, temperatureCelsius: 25 })],
      }),
      'molar mass': molarMass(152.237),
      'refractive index': handbook(1.488, 20, { low: 1.4869, high: 1.4898 }),
      'log p': recalled(3.45, { low: 2.8, high: 3.45 }),
      'water solubility': solubility(1340, { others: [solubility(420), solubility(590)] }),
      'odour threshold': threshold(32, 'belitz-2009', { others: [recalledThreshold(28, 120)] }),
      'use level': useLevel(5, 40),
    },
    notes: ['the figure of smell is that of geranial', 'breaks down in acid'],
  },
  {
    name: 'nootkatone',
    role: 'oil',
    aliases: ['(+)-nootkatone'],
    cas: '4674-50-4',
    formula: 'C15H22O',
    figures: {
      density: recalled(1, { low: 0.99, high: 1, temperatureCelsius: 20 }),
      'molar mass': molarMass(218.34),
      'log p': recalled(3.85, { low: 3.8, high: 3.9, note: 'estimated' }),
      'odour threshold': threshold(1, 'belitz-1987', {
        others: [
          { value: 1000, source: 'belitz-1987', note: 'the other mirror form' },
          recalledThreshold(170, 1000, { note: 'flavour in water' }),
        ],
      }),
      'use level': useLevel(0.5, 5),
    },
    notes: ['melts at 32 to 37 C'],
  },
  {
    name: 'geraniol',
    role: 'oil',
    cas: '106-24-1',
    formula: 'C10H18O',
    figures: {
      density: handbook(0.8894, 20),
      'molar mass': molarMass(154.253),
      'refractive index': handbook(1.4766, 20),
      'log p': logP(3.56),
      'water solubility': solubility(670, { low: 530, high: 810, others: [solubility(100)] }),
    },
  },
];
