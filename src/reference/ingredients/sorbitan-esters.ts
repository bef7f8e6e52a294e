/** Sorbitan esters. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, molarMass, recalled } from './figure-makers.ts';

const traded = (low: number, high: number): Figure => between(low, high, { source: 'sorbitan-trade-table' });

const purity = (low: number, high: number, other?: Figure): Figure =>
  between(low, high, { source: 'eu-purity', fromMemory: true, ...(other ? { others: [other] } : {}) });

const acidAtMost = (high: number): Figure =>
  recalled(high, { source: 'eu-purity', low: 0, high, note: 'at most' });

export const sorbitanEsters: readonly Ingredient[] = [
  {
    name: 'sorbitan monolaurate',
    role: 'emulsifier',
    aliases: ['sorbitan laurate'],
    searchWords: ['span 20'],
    cas: '1338-39-2',
    eNumber: 'E 493',
    formula: 'C18H34O6',
    figures: {
      hlb: { value: 8.6, source: 'hlb-mixing-ratios' },
      density: {
        value: 1.032,
        temperatureCelsius: 25,
        source: 'sorbitan-laurate-sheet',
        others: [recalled(1.02, { low: 1.01, high: 1.03, temperatureCelsius: 25 })],
      },
      'molar mass': molarMass(346.464),
      'saponification number': purity(155, 170, between(150, 165, { source: 'merck-sorbitan' })),
      'acid number': acidAtMost(7),
    },
  },
  {
    name: 'sorbitan monopalmitate',
    role: 'emulsifier',
    aliases: ['sorbitan palmitate'],
    searchWords: ['span 40'],
    cas: '26266-57-9',
    eNumber: 'E 495',
    formula: 'C22H42O6',
    figures: {
      hlb: { value: 6.7, source: 'sorbitan-trade-table' },
      density: recalled(1, { temperatureCelsius: 25 }),
      'molar mass': molarMass(402.572),
      'saponification number': purity(140, 150, traded(140, 150)),
      'acid number': acidAtMost(7.5),
    },
  },
  {
    name: 'sorbitan monostearate',
    role: 'emulsifier',
    aliases: ['sorbitan stearate'],
    searchWords: ['span 60'],
    cas: '1338-41-6',
    eNumber: 'E 491',
    formula: 'C24H46O6',
    figures: {
      hlb: { value: 4.7, source: 'ocl-2022', others: [{ value: 4.7, source: 'griffin-1949' }] },
      density: recalled(0.99, { low: 0.98, high: 1, temperatureCelsius: 25 }),
      'molar mass': molarMass(430.626),
      'saponification number': purity(147, 157, traded(145, 157)),
      'acid number': acidAtMost(10),
    },
  },
  {
    name: 'sorbitan tristearate',
    role: 'emulsifier',
    searchWords: ['span 65'],
    cas: '26658-19-5',
    eNumber: 'E 492',
    formula: 'C60H114O8',
    figures: {
      hlb: { value: 2.1, source: 'sorbitan-trade-table' },
      density: recalled(0.98, { temperatureCelsius: 25 }),
      'molar mass': molarMass(963.564),
      'saponification number': purity(176, 188, traded(176, 188)),
      'acid number': acidAtMost(15),
    },
  },
  {
    name: 'sorbitan oleate',
    role: 'emulsifier',
    aliases: ['sorbitan monooleate'],
    searchWords: ['span 80'],
    cas: '1338-43-8',
    eNumber: 'E 494',
    formula: 'C24H44O6',
    figures: {
      hlb: {
        value: 4.3,
        source: 'hlb-mixing-ratios',
        others: [
          { value: 4.3, source: 'griffin-1949' },
          { value: 4.3, source: 'sorbitan-oleate-sheet' },
        ],
      },
      density: recalled(1, { low: 0.99, high: 1.01, temperatureCelsius: 25 }),
      'molar mass': molarMass(428.61),
      'saponification number': between(145, 160, {
        source: 'sorbitan-oleate-sheet',
        others: [traded(143, 151)],
      }),
      'acid number': { value: 8, low: 0, high: 8, source: 'sorbitan-oleate-sheet', note: 'at most' },
    },
  },
  {
    name: 'sorbitan trioleate',
    role: 'emulsifier',
    searchWords: ['span 85'],
    cas: '26266-58-0',
    formula: 'C60H108O8',
    figures: {
      hlb: { value: 1.8, source: 'griffin-1949', others: [{ value: 1.8, source: 'emulsifier-hlb-list' }] },
      density: recalled(0.95, { temperatureCelsius: 25 }),
      'molar mass': molarMass(957.516),
      'saponification number': between(169, 183, {
        source: 'usp32-sorbitan-trioleate',
        others: [traded(172, 186)],
      }),
      'acid number': { value: 17, low: 0, high: 17, source: 'usp32-sorbitan-trioleate', note: 'at most' },
    },
  },
];
