/** Lecithins, glycerides, polyglycerol esters and other food emulsifiers; the polymers have no HLB. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, molarMass, recalled } from './figure-makers.ts';

const recalledBetween = (low: number, high: number): Figure =>
  between(low, high, { source: 'general-knowledge', fromMemory: true });

const lecithins: readonly Ingredient[] = [
  {
    name: 'lecithin',
    role: 'emulsifier',
    aliases: ['soy lecithin', 'sunflower lecithin', 'fluid lecithin'],
    cas: '8002-43-5',
    eNumber: 'E 322',
    figures: {
      hlb: {
        value: 4,
        low: 3,
        high: 4,
        source: 'lecithin-sheet',
        note: 'another version of the same page has 4 to 7',
        others: [{ value: 4, source: 'emulsifier-hlb-list' }],
      },
      density: recalled(1.03, { temperatureCelsius: 25 }),
    },
  },
  {
    name: 'de-oiled lecithin',
    role: 'emulsifier',
    aliases: ['lecithin, de-oiled', 'deoiled lecithin'],
    eNumber: 'E 322',
    figures: { hlb: { value: 7, low: 7, high: 8, source: 'lecithin-sheet' } },
  },
  {
    name: 'hydrolysed lecithin',
    role: 'emulsifier',
    aliases: ['lysolecithin', 'enzyme-hydrolysed lecithin', 'lecithin, hydrolysed', 'hydrolyzed lecithin'],
    cas: '9008-30-4',
    eNumber: 'E 322',
    figures: { hlb: recalledBetween(8, 9) },
  },
  {
    name: 'hydroxylated lecithin',
    role: 'emulsifier',
    aliases: ['lecithin, hydroxylated'],
    cas: '8029-76-3',
    figures: { hlb: between(9, 12, { source: 'lecithin-sheet' }) },
  },
];

const glycerides: readonly Ingredient[] = [
  {
    name: 'glycerol monostearate',
    role: 'emulsifier',
    aliases: ['glyceryl monostearate', 'glycerin monostearate'],
    searchWords: ['GMS'],
    cas: '31566-31-1',
    eNumber: 'E 471',
    formula: 'C21H42O4',
    figures: {
      hlb: {
        value: 3.8,
        source: 'ocl-2022',
        others: [{ value: 3.74, source: 'griffin-1954', note: 'what his formula gives; printed 3.8' }],
      },
      'required hlb': { value: 3.8, source: 'ocl-2022', note: 'where it is counted with the oil phase' },
      'molar mass': molarMass(358.563),
      'saponification number': between(158, 177, { source: 'chp-2020-glyceryl-stearate' }),
    },
  },
  {
    name: 'propylene glycol monostearate',
    role: 'emulsifier',
    cas: '1323-39-3',
    eNumber: 'E 477',
    formula: 'C21H42O3',
    figures: { hlb: recalled(3.4), 'molar mass': molarMass(342.564) },
  },
  {
    name: 'propylene glycol monolaurate',
    role: 'emulsifier',
    cas: '27194-74-7',
    eNumber: 'E 477',
    formula: 'C15H30O3',
    figures: { hlb: recalled(4.5), 'molar mass': molarMass(258.402) },
  },
  {
    name: 'citric acid esters of mono- and diglycerides',
    role: 'emulsifier',
    searchWords: ['citrem'],
    eNumber: 'E 472c',
    figures: { hlb: recalledBetween(10, 12) },
  },
  {
    name: 'diacetyl tartaric acid esters of mono- and diglycerides',
    role: 'emulsifier',
    searchWords: ['datem'],
    eNumber: 'E 472e',
    figures: { hlb: recalledBetween(8, 10) },
  },
];

const polyglycerolEsters: readonly Ingredient[] = [
  {
    name: 'triglycerol monostearate',
    role: 'emulsifier',
    cas: '37349-34-1',
    eNumber: 'E 475',
    figures: {
      hlb: {
        value: 7.2,
        source: 'triglycerol-listing',
        note: 'listings run from 6.2 to 11.3',
        others: [recalled(6.2), { value: 9.1, source: 'polyglycerol-course-list', note: 'tetraglycerol' }],
      },
    },
  },
  {
    name: 'hexaglycerol monooleate',
    role: 'emulsifier',
    eNumber: 'E 475',
    figures: { hlb: recalledBetween(8.5, 9) },
  },
  {
    name: 'decaglycerol monolaurate',
    role: 'emulsifier',
    aliases: ['polyglyceryl-10 laurate', 'polyglycerol-10 laurate'],
    cas: '34406-66-1',
    eNumber: 'E 475',
    figures: {
      hlb: recalled(15.5, { note: '15.7 by the saponification number of the pure ester' }),
      density: recalled(1.15, { low: 1.1, high: 1.2 }),
      'molar mass': { value: 941, source: 'iupac-atomic-weights', note: 'nominal molecule' },
      'saponification number': recalledBetween(55, 75),
    },
  },
  {
    name: 'decaglycerol monooleate',
    role: 'emulsifier',
    aliases: ['polyglyceryl-10 oleate'],
    cas: '79665-93-3',
    eNumber: 'E 475',
    figures: {
      hlb: {
        ...recalledBetween(12, 12.9),
        note: 'commercial grades; the pure ester would have 14.5',
      },
      'molar mass': { value: 1023, source: 'iupac-atomic-weights', note: 'nominal molecule' },
    },
  },
  {
    name: 'decaglycerol monostearate',
    role: 'emulsifier',
    aliases: ['polyglyceryl-10 stearate'],
    cas: '79777-30-3',
    eNumber: 'E 475',
    figures: {
      hlb: recalledBetween(12, 12.5),
      'molar mass': { value: 1025, source: 'iupac-atomic-weights', note: 'nominal molecule' },
    },
  },
  {
    name: 'polyglycerol polyricinoleate',
    role: 'emulsifier',
    searchWords: ['pgpr'],
    cas: '29894-35-7',
    eNumber: 'E 476',
    figures: { hlb: recalledBetween(1, 3), 'saponification number': recalledBetween(170, 210) },
  },
];

export const foodEmulsifiers: readonly Ingredient[] = [...lecithins, ...glycerides, ...polyglycerolEsters];
