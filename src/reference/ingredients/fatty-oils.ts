/** Vegetable oils, fatty acids and alcohols, and their plain esters. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, molarMass, recalled } from './figure-makers.ts';

/** Required HLB of the originator's list, as textbooks carry it. */
const listed = (value: number): Figure => recalled(value, { source: 'ici-hlb-system' });
const listedRange = (low: number, high: number): Figure =>
  between(low, high, { source: 'ici-hlb-system', fromMemory: true });

const density = (value: number, temperatureCelsius = 20): Figure => recalled(value, { temperatureCelsius });

export const fattyOils: readonly Ingredient[] = [
  {
    name: 'cetyl alcohol',
    role: 'oil',
    aliases: ['hexadecanol', '1-hexadecanol'],
    cas: '36653-82-4',
    formula: 'C16H34O',
    figures: {
      'required hlb': {
        value: 15,
        source: 'hlb-teaching-sheet',
        others: [recalled(15.75, { low: 15.5, high: 16 })],
      },
      'molar mass': molarMass(242.447),
    },
  },
  {
    name: 'stearyl alcohol',
    role: 'oil',
    cas: '112-92-5',
    formula: 'C18H38O',
    figures: {
      'required hlb': listedRange(14, 15.5),
      'molar mass': molarMass(270.501),
    },
  },
  {
    name: 'isopropyl myristate',
    role: 'oil',
    cas: '110-27-0',
    formula: 'C17H34O2',
    figures: {
      density: density(0.853),
      'required hlb': { value: 11.5, source: 'ocl-2022' },
      'molar mass': molarMass(270.457),
    },
  },
  {
    name: 'isopropyl palmitate',
    role: 'oil',
    cas: '142-91-6',
    formula: 'C19H38O2',
    figures: {
      density: density(0.852),
      'required hlb': listed(11.5),
      'molar mass': molarMass(298.511),
    },
  },
  {
    name: 'stearic acid',
    role: 'oil',
    cas: '57-11-4',
    eNumber: 'E 570',
    formula: 'C18H36O2',
    figures: {
      'required hlb': { value: 15, source: 'ocl-2022' },
      'molar mass': molarMass(284.484),
    },
  },
  {
    name: 'oleic acid',
    role: 'oil',
    cas: '112-80-1',
    formula: 'C18H34O2',
    figures: {
      density: density(0.895),
      'required hlb': listed(17),
      'molar mass': molarMass(282.468),
    },
  },
  {
    name: 'lauric acid',
    role: 'oil',
    cas: '143-07-7',
    formula: 'C12H24O2',
    figures: { 'required hlb': listed(16), 'molar mass': molarMass(200.322) },
  },
  {
    name: 'cottonseed oil',
    role: 'oil',
    cas: '8001-29-4',
    figures: {
      density: density(0.92),
      'required hlb': {
        ...listedRange(5, 6),
        value: 6,
        note: 'the upper end is the figure of textbook problems',
      },
    },
  },
  {
    name: 'soybean oil',
    role: 'oil',
    aliases: ['soya oil', 'soya bean oil'],
    cas: '8001-22-7',
    figures: { density: density(0.921), 'required hlb': listed(6) },
  },
  {
    name: 'rapeseed oil',
    role: 'oil',
    aliases: ['canola oil'],
    cas: '8002-13-9',
    figures: { density: density(0.917), 'required hlb': listed(7) },
  },
  {
    name: 'sunflower oil',
    role: 'oil',
    cas: '8001-21-6',
    figures: { density: density(0.92), 'required hlb': recalled(7, { note: 'supplier lists' }) },
  },
  {
    name: 'palm oil',
    role: 'oil',
    cas: '8002-75-3',
    figures: { density: density(0.91, 40), 'required hlb': listed(7) },
  },
  {
    name: 'corn oil',
    role: 'oil',
    aliases: ['maize oil'],
    cas: '8001-30-7',
    figures: { density: density(0.92), 'required hlb': listedRange(8, 10) },
  },
  {
    name: 'castor oil',
    role: 'oil',
    cas: '8001-79-4',
    figures: { density: density(0.961), 'required hlb': listed(14) },
  },
  {
    name: 'cocoa butter',
    role: 'oil',
    cas: '8002-31-1',
    figures: { density: density(0.91, 40), 'required hlb': listed(6) },
  },
  {
    name: 'camellia seed oil',
    role: 'oil',
    aliases: ['tea seed oil'],
    figures: {
      density: density(0.914),
      'required hlb': between(5.94, 6.3, { source: 'lee-yoon-2020', locator: 'Camellia japonica seed oil' }),
    },
  },
];
