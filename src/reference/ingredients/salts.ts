/** Buffer salts and other salts. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { molarMass, recalled } from './figure-makers.ts';

/** g per mL that a gram adds to dilute solution. */
const inSolution = (value: number, note?: string): Figure =>
  recalled(value, { temperatureCelsius: 20, ...(note === undefined ? {} : { note }) });

export const salts: readonly Ingredient[] = [
  {
    name: 'trisodium citrate dihydrate',
    role: 'salt',
    aliases: ['sodium citrate', 'sodium citrate dihydrate', 'trisodium citrate'],
    cas: '6132-04-3',
    eNumber: 'E 331',
    formula: 'Na3C6H5O7.2H2O',
    hydrateOf: { name: 'trisodium citrate anhydrous', waterPerMolecule: 2 },
    figures: {
      'molar mass': molarMass(294.1),
      'apparent density': {
        value: 3.099,
        temperatureCelsius: 20,
        source: 'crc-102',
        note: 'in water, from the density of 10 per cent by mass, 1.0708 g/mL',
      },
    },
    notes: ['the form that is usually sold, and so what the plain name means here'],
  },
  {
    name: 'trisodium citrate anhydrous',
    role: 'salt',
    aliases: ['sodium citrate anhydrous', 'anhydrous trisodium citrate', 'sodium citrate, anhydrous'],
    cas: '68-04-2',
    eNumber: 'E 331',
    formula: 'Na3C6H5O7',
    figures: {
      'molar mass': molarMass(258.07),
      'apparent density': {
        value: 4.389,
        temperatureCelsius: 20,
        source: 'crc-102',
        note: 'in water, from the dihydrate with its water of crystals counted as water',
      },
    },
  },
  {
    name: 'tripotassium citrate monohydrate',
    role: 'salt',
    aliases: ['potassium citrate', 'potassium citrate monohydrate', 'tripotassium citrate'],
    cas: '6100-05-6',
    eNumber: 'E 332',
    formula: 'K3C6H5O7.H2O',
    hydrateOf: { name: 'tripotassium citrate anhydrous', waterPerMolecule: 1 },
    figures: {
      'molar mass': molarMass(324.41),
      'apparent density': inSolution(3, 'from the sodium salt and the volumes of the ions'),
    },
  },
  {
    name: 'tripotassium citrate anhydrous',
    role: 'salt',
    aliases: ['potassium citrate anhydrous', 'potassium citrate, anhydrous'],
    cas: '866-84-2',
    eNumber: 'E 332',
    formula: 'K3C6H5O7',
    figures: {
      'molar mass': molarMass(306.39),
      'apparent density': inSolution(3.4, 'from the sodium salt and the volumes of the ions'),
    },
  },
  {
    name: 'sodium bicarbonate',
    role: 'salt',
    aliases: ['sodium hydrogen carbonate', 'baking soda', 'bicarbonate of soda'],
    cas: '144-55-8',
    eNumber: 'E 500',
    formula: 'NaHCO3',
    figures: { 'molar mass': molarMass(84.007), 'apparent density': inSolution(3.5) },
    notes: ['gives off carbon dioxide in acid'],
  },
  {
    name: 'potassium bicarbonate',
    role: 'salt',
    aliases: ['potassium hydrogen carbonate'],
    cas: '298-14-6',
    eNumber: 'E 501',
    formula: 'KHCO3',
    figures: { 'molar mass': molarMass(100.114), 'apparent density': inSolution(3) },
    notes: ['gives off carbon dioxide in acid'],
  },
  {
    name: 'sodium chloride',
    role: 'salt',
    aliases: ['salt', 'table salt'],
    cas: '7647-14-5',
    formula: 'NaCl',
    figures: { 'molar mass': molarMass(58.44), 'apparent density': inSolution(3.2) },
  },
  {
    name: 'potassium chloride',
    role: 'salt',
    cas: '7447-40-7',
    eNumber: 'E 508',
    formula: 'KCl',
    figures: { 'molar mass': molarMass(74.548), 'apparent density': inSolution(2.7) },
  },
  {
    name: 'calcium chloride dihydrate',
    role: 'salt',
    cas: '10035-04-8',
    eNumber: 'E 509',
    formula: 'CaCl2.2H2O',
    hydrateOf: { name: 'calcium chloride', waterPerMolecule: 2 },
    figures: { 'molar mass': molarMass(147.008), 'apparent density': inSolution(2.8) },
  },
  {
    name: 'calcium chloride',
    role: 'salt',
    aliases: ['calcium chloride anhydrous'],
    cas: '10043-52-4',
    eNumber: 'E 509',
    formula: 'CaCl2',
    figures: { 'molar mass': molarMass(110.978), 'apparent density': inSolution(6.5) },
  },
  {
    name: 'magnesium sulfate heptahydrate',
    role: 'salt',
    aliases: ['magnesium sulphate heptahydrate'],
    cas: '10034-99-8',
    eNumber: 'E 518',
    formula: 'MgSO4.7H2O',
    figures: { 'molar mass': molarMass(246.466), 'apparent density': inSolution(1.95) },
  },
  {
    name: 'monopotassium phosphate',
    role: 'salt',
    aliases: ['potassium dihydrogen phosphate'],
    cas: '7778-77-0',
    eNumber: 'E 340',
    formula: 'KH2PO4',
    figures: { 'molar mass': molarMass(136.084), 'apparent density': inSolution(3.5) },
  },
];
