/** Sugars. Sweetness is by mass, sucrose being 1. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, molarMass, recalled } from './figure-makers.ts';

const sweetness = (value: number, note?: string): Figure => ({
  value,
  source: 'sweetener-review',
  ...(note === undefined ? {} : { note }),
});

/** g per mL that a gram adds to dilute solution, from the density of one. */
const inSolution = (value: number, note: string): Figure => ({
  value,
  temperatureCelsius: 20,
  source: 'crc-102',
  note: `in water, from the density of ${note}`,
});

export const sugars: readonly Ingredient[] = [
  {
    name: 'sucrose',
    role: 'sugar',
    aliases: ['sugar', 'white sugar', 'cane sugar', 'beet sugar', 'table sugar', 'granulated sugar'],
    cas: '57-50-1',
    formula: 'C12H22O11',
    figures: {
      'molar mass': molarMass(342.3),
      'relative sweetness': sweetness(1),
      'apparent density': {
        value: 1.62,
        low: 1.594,
        high: 1.624,
        temperatureCelsius: 20,
        source: 'icumsa-sucrose-density',
        note: 'in water, from the density polynomial between 5 and 60 per cent by mass',
      },
    },
  },
  {
    name: 'glucose',
    role: 'sugar',
    aliases: ['dextrose', 'D-glucose', 'glucose anhydrous', 'dextrose anhydrous'],
    cas: '50-99-7',
    formula: 'C6H12O6',
    figures: {
      'molar mass': molarMass(180.156),
      'relative sweetness': { ...sweetness(0.8), others: [sweetness(0.74, 'older value')] },
      'apparent density': inSolution(1.607, '10 per cent by mass, 1.0375 g/mL'),
    },
  },
  {
    name: 'glucose monohydrate',
    role: 'sugar',
    aliases: ['dextrose monohydrate'],
    cas: '5996-10-1',
    formula: 'C6H12O6.H2O',
    hydrateOf: { name: 'glucose', waterPerMolecule: 1 },
    figures: {
      'molar mass': molarMass(198.171),
      'apparent density': inSolution(1.522, 'the anhydrous sugar, its water of crystals counted as water'),
    },
  },
  {
    name: 'fructose',
    role: 'sugar',
    aliases: ['D-fructose', 'fruit sugar', 'levulose'],
    cas: '57-48-7',
    formula: 'C6H12O6',
    figures: {
      'molar mass': molarMass(180.156),
      'relative sweetness': {
        ...sweetness(1.7, 'much less in a cold, acid drink'),
        others: [
          sweetness(1.73, 'older value'),
          recalled(1.2, { low: 1.1, high: 1.3, note: 'cold acid drinks' }),
        ],
      },
      'apparent density': inSolution(1.638, '5 per cent by mass, 1.0181 g/mL'),
    },
  },
  {
    name: 'invert sugar',
    role: 'sugar',
    aliases: ['inverted sugar'],
    cas: '8013-17-0',
    figures: {
      'relative sweetness': sweetness(1),
      'apparent density': inSolution(1.622, 'glucose and fructose, equal masses'),
    },
    notes: ['dry sugar: an invert syrup also holds water'],
  },
  {
    name: 'maltose',
    role: 'sugar',
    aliases: ['malt sugar'],
    cas: '69-79-4',
    formula: 'C12H22O11',
    figures: {
      'molar mass': molarMass(342.3),
      'relative sweetness': between(0.33, 0.5, { source: 'sweetener-review' }),
      'apparent density': inSolution(1.631, '10 per cent by mass, 1.0385 g/mL'),
    },
  },
  {
    name: 'maltose monohydrate',
    role: 'sugar',
    cas: '6363-53-7',
    formula: 'C12H22O11.H2O',
    hydrateOf: { name: 'maltose', waterPerMolecule: 1 },
    figures: {
      'molar mass': molarMass(360.312),
      'apparent density': inSolution(1.581, 'the anhydrous sugar, its water of crystals counted as water'),
    },
  },
  {
    name: 'lactose',
    role: 'sugar',
    aliases: ['milk sugar'],
    cas: '63-42-3',
    formula: 'C12H22O11',
    figures: {
      'molar mass': molarMass(342.3),
      'relative sweetness': { ...sweetness(0.2), others: [sweetness(0.16, 'older value')] },
      'apparent density': recalled(1.63),
    },
  },
  {
    name: 'honey',
    role: 'sugar',
    figures: { density: recalled(1.42, { temperatureCelsius: 20 }), 'relative sweetness': sweetness(1) },
    notes: ['holds 15 to 20 per cent of water (from memory)'],
  },
  {
    name: 'glucose-fructose syrup',
    role: 'sugar',
    aliases: ['high-fructose syrup', 'high fructose corn syrup', 'isoglucose'],
    searchWords: ['HFCS'],
    figures: { density: recalled(1.38, { temperatureCelsius: 20 }), 'relative sweetness': sweetness(1.1) },
    notes: ['a syrup near 77 per cent of dry sugar (from memory)'],
  },
];
