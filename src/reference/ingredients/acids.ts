/** Food acids, with their hydrates. The equivalents are the protons counted in titratable acidity. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { molarMass, recalled } from './figure-makers.ts';

/** Protons that a titration to pH 8.1 to 8.2 counts. */
const protons = (value: number, note?: string): Figure => ({
  value,
  source: 'citrus-titration',
  ...(note === undefined ? {} : { note }),
});

/** g per mL that a gram adds to dilute solution, from the density of one. */
const inSolution = (value: number, note: string): Figure => ({
  value,
  temperatureCelsius: 20,
  source: 'crc-102',
  note: `in water, from the density of ${note}`,
});

export const acids: readonly Ingredient[] = [
  {
    name: 'citric acid',
    role: 'acid',
    aliases: ['citric acid anhydrous', 'anhydrous citric acid', 'citric acid, anhydrous'],
    cas: '77-92-9',
    eNumber: 'E 330',
    formula: 'C6H8O7',
    figures: {
      'molar mass': molarMass(192.124),
      'acid equivalents': protons(3),
      'apparent density': inSolution(1.681, '5 per cent by mass, 1.0189 g/mL'),
    },
    notes: ['anhydrous; the monohydrate is a record of its own'],
  },
  {
    name: 'citric acid monohydrate',
    role: 'acid',
    aliases: ['citric acid, monohydrate'],
    cas: '5949-29-1',
    eNumber: 'E 330',
    formula: 'C6H8O7.H2O',
    hydrateOf: { name: 'citric acid', waterPerMolecule: 1 },
    figures: {
      'molar mass': molarMass(210.14),
      'acid equivalents': protons(3),
      'apparent density': inSolution(1.588, 'the anhydrous acid, its water of crystals counted as water'),
    },
  },
  {
    name: 'malic acid',
    role: 'acid',
    aliases: ['DL-malic acid', 'L-malic acid'],
    cas: '6915-15-7',
    eNumber: 'E 296',
    formula: 'C4H6O5',
    figures: {
      'molar mass': molarMass(134.087),
      'acid equivalents': protons(2),
      'apparent density': recalled(1.61, { note: 'near that of the crystals' }),
    },
  },
  {
    name: 'tartaric acid',
    role: 'acid',
    aliases: ['L-tartaric acid', 'L-(+)-tartaric acid'],
    cas: '87-69-4',
    eNumber: 'E 334',
    formula: 'C4H6O6',
    figures: {
      'molar mass': molarMass(150.087),
      'acid equivalents': protons(2),
      'apparent density': recalled(1.8, { temperatureCelsius: 20 }),
    },
  },
  {
    name: 'lactic acid',
    role: 'acid',
    aliases: ['lactic acid, pure', 'L-lactic acid', 'DL-lactic acid'],
    cas: '50-21-5',
    eNumber: 'E 270',
    formula: 'C3H6O3',
    figures: {
      density: recalled(1.206, { temperatureCelsius: 25, note: 'of the pure, supercooled acid' }),
      'molar mass': molarMass(90.078),
      'acid equivalents': protons(1),
      'apparent density': inSolution(1.257, '5 per cent by mass, 1.0086 g/mL'),
    },
    notes: [
      'pure: what is sold is a solution, so write one of your own that contains it, with water as the rest',
      'the 80 per cent grade may hold 76 to 84 per cent (Commission Directive 2008/84/EC); 88 per cent weighs 1.20 to 1.21 g/mL at 20 C (British Pharmacopoeia data)',
      'in strong solution a part of it is bound to itself and is set free on dilution',
    ],
  },
  {
    name: 'phosphoric acid',
    role: 'acid',
    aliases: ['orthophosphoric acid'],
    cas: '7664-38-2',
    eNumber: 'E 338',
    formula: 'H3PO4',
    figures: {
      'molar mass': molarMass(97.994),
      'acid equivalents': protons(2, 'to about pH 9; near 1.9 at pH 8.2, and 1 to about pH 4.5'),
      'apparent density': inSolution(2.125, '5 per cent by mass, 1.0254 g/mL'),
    },
    notes: [
      'pure: what is sold is a solution, so write one of your own that contains it, with water as the rest',
      'at 20 C 85 per cent weighs 1.685 g/mL, 75 per cent 1.579 g/mL (Food Additives Data Book)',
    ],
  },
  {
    name: 'acetic acid',
    role: 'acid',
    aliases: ['glacial acetic acid'],
    cas: '64-19-7',
    eNumber: 'E 260',
    formula: 'C2H4O2',
    figures: {
      density: recalled(1.0446, { temperatureCelsius: 25, source: 'crc-95' }),
      'molar mass': molarMass(60.052),
      'acid equivalents': protons(1),
      'apparent density': recalled(1.16, { temperatureCelsius: 20 }),
    },
  },
  {
    name: 'ascorbic acid',
    role: 'acid',
    aliases: ['vitamin C', 'L-ascorbic acid'],
    cas: '50-81-7',
    eNumber: 'E 300',
    formula: 'C6H8O6',
    figures: {
      'molar mass': molarMass(176.124),
      'acid equivalents': protons(1),
      'apparent density': recalled(1.65, { note: 'near that of the crystals' }),
    },
  },
  {
    name: 'fumaric acid',
    role: 'acid',
    cas: '110-17-8',
    eNumber: 'E 297',
    formula: 'C4H4O4',
    figures: {
      'molar mass': molarMass(116.072),
      'acid equivalents': protons(2),
      'apparent density': recalled(1.6),
      'water solubility': {
        value: 6300,
        temperatureCelsius: 25,
        source: 'food-additives-data-book',
        note: 'printed as 0.63 per cent by mass',
      },
    },
  },
  {
    name: 'adipic acid',
    role: 'acid',
    cas: '124-04-9',
    eNumber: 'E 355',
    formula: 'C6H10O4',
    figures: {
      'molar mass': molarMass(146.142),
      'acid equivalents': protons(2),
      'apparent density': recalled(1.36, { note: 'that of the crystals' }),
    },
  },
  {
    name: 'succinic acid',
    role: 'acid',
    cas: '110-15-6',
    eNumber: 'E 363',
    formula: 'C4H6O4',
    figures: {
      'molar mass': molarMass(118.088),
      'acid equivalents': protons(2),
      'apparent density': recalled(1.45),
    },
  },
  {
    name: 'gluconic acid',
    role: 'acid',
    cas: '526-95-4',
    eNumber: 'E 574',
    formula: 'C6H12O7',
    figures: {
      'molar mass': molarMass(196.155),
      'acid equivalents': recalled(1, { note: 'slowly in part a lactone, which a quick titration misses' }),
      'apparent density': recalled(1.7),
    },
    notes: ['pure: what is sold is a solution near 50 per cent'],
  },
];
