/** Preservatives. */

import type { Ingredient } from '../ingredient.ts';
import { molarMass, recalled } from './figure-makers.ts';

export const preservatives: readonly Ingredient[] = [
  {
    name: 'potassium sorbate',
    role: 'preservative',
    cas: '24634-61-5',
    eNumber: 'E 202',
    formula: 'C6H7KO2',
    figures: { 'molar mass': molarMass(150.217), 'apparent density': recalled(1.4) },
    notes: ['1 g holds 0.746 g of sorbic acid; acid syrups can make it fall out as crystals of the acid'],
  },
  {
    name: 'sorbic acid',
    role: 'preservative',
    cas: '110-44-1',
    eNumber: 'E 200',
    formula: 'C6H8O2',
    figures: {
      'molar mass': molarMass(112.127),
      'water solubility': {
        value: 1500,
        temperatureCelsius: 20,
        source: 'food-additives-data-book',
        note: 'printed as 0.15 per cent at pH 3.1',
      },
    },
  },
  {
    name: 'sodium benzoate',
    role: 'preservative',
    cas: '532-32-1',
    eNumber: 'E 211',
    formula: 'C7H5NaO2',
    figures: { 'molar mass': molarMass(144.105), 'apparent density': recalled(1.68) },
    notes: [
      '1 g holds 0.847 g of benzoic acid',
      'with ascorbic acid it can form benzene, the more with light, heat and metals',
    ],
  },
  {
    name: 'benzoic acid',
    role: 'preservative',
    cas: '65-85-0',
    eNumber: 'E 210',
    formula: 'C7H6O2',
    figures: {
      'molar mass': molarMass(122.123),
      'water solubility': {
        value: 2900,
        temperatureCelsius: 20,
        source: 'food-additives-data-book',
        note: 'printed as 0.29 per cent by mass',
      },
    },
  },
  {
    name: 'ethyl lauroyl arginate',
    role: 'preservative',
    aliases: ['lauric arginate', 'lauric arginate ethyl ester', 'ethyl lauroyl arginate hydrochloride'],
    cas: '60372-77-2',
    eNumber: 'E 243',
    formula: 'C20H41ClN4O3',
    figures: { 'molar mass': molarMass(421.023) },
    notes: [
      'carries a positive charge: it falls out with gums and other emulsifiers that carry a negative one',
    ],
  },
  {
    name: 'dimethyl dicarbonate',
    role: 'preservative',
    searchWords: ['velcorin'],
    cas: '4525-33-1',
    eNumber: 'E 242',
    formula: 'C4H6O5',
    figures: { density: recalled(1.25, { temperatureCelsius: 20 }), 'molar mass': molarMass(134.087) },
    notes: ['very toxic neat, dosed by closed machines only; gone from the drink within hours'],
  },
  {
    name: 'sodium metabisulfite',
    role: 'preservative',
    aliases: ['sodium metabisulphite'],
    cas: '7681-57-4',
    eNumber: 'E 223',
    formula: 'Na2S2O5',
    figures: { 'molar mass': molarMass(190.095), 'apparent density': recalled(2.4) },
  },
];
