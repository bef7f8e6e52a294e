/** Polysorbates and sorbitan esters. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, molarMass, recalled } from './figure-makers.ts';

const fromTable = (low: number, high: number): Figure =>
  between(low, high, { source: 'excipients-handbook', locator: 'Table VI, polysorbates' });

const micelle = (value: number, other: Figure): Figure => ({
  value,
  temperatureCelsius: 25,
  source: 'mahmood-2013',
  note: 'by fluorescence; surface tension finds far less on technical grades',
  others: [other],
});

const rememberedMicelle = (value: number, low?: number, high?: number): Figure =>
  recalled(value, { temperatureCelsius: 25, ...(low && high ? { low, high } : {}) });

const nominal = (value: number): Figure => ({
  ...molarMass(value),
  note: 'nominal molecule with 20 oxyethylene units; the product is a mixture',
});

export const polysorbates: readonly Ingredient[] = [
  {
    name: 'polysorbate 20',
    role: 'emulsifier',
    aliases: ['polyoxyethylene (20) sorbitan monolaurate'],
    searchWords: ['tween 20'],
    cas: '9005-64-5',
    eNumber: 'E 432',
    formula: 'C58H114O26',
    figures: {
      hlb: {
        value: 16.7,
        source: 'excipients-handbook',
        others: [
          { value: 16.7, source: 'hlb-mixing-ratios' },
          { value: 16.5, source: 'polysorbates-sheet' },
        ],
      },
      density: {
        value: 1.1,
        temperatureCelsius: 25,
        source: 'excipients-handbook',
        note: 'specific gravity',
      },
      'molar mass': nominal(1227.524),
      'saponification number': between(40, 50, { source: 'usp32-polysorbate-20' }),
      'acid number': { value: 2, low: 0, high: 2, source: 'excipients-handbook', note: 'at most' },
      viscosity: { value: 400, temperatureCelsius: 25, source: 'excipients-handbook' },
      'critical micelle concentration': micelle(0.0499, rememberedMicelle(0.06)),
    },
  },
  {
    name: 'polysorbate 40',
    role: 'emulsifier',
    aliases: ['polyoxyethylene (20) sorbitan monopalmitate'],
    searchWords: ['tween 40'],
    cas: '9005-66-7',
    eNumber: 'E 434',
    formula: 'C62H122O26',
    figures: {
      hlb: recalled(15.6, {
        source: 'ici-hlb-system',
        note: 'within 0.2 of what its saponification number gives',
        others: [{ value: 15.5, source: 'polysorbates-sheet' }],
      }),
      density: recalled(1.08, { low: 1.05, high: 1.1, temperatureCelsius: 25 }),
      'molar mass': nominal(1283.632),
      'saponification number': fromTable(41, 52),
      'acid number': { value: 2, low: 0, high: 2, source: 'excipients-handbook', note: 'at most' },
      viscosity: { value: 400, source: 'excipients-handbook' },
      'critical micelle concentration': micelle(0.0333, rememberedMicelle(0.027)),
    },
  },
  {
    name: 'polysorbate 60',
    role: 'emulsifier',
    aliases: ['polyoxyethylene (20) sorbitan monostearate'],
    searchWords: ['tween 60'],
    cas: '9005-67-8',
    eNumber: 'E 435',
    formula: 'C64H126O26',
    figures: {
      hlb: {
        value: 14.9,
        source: 'polysorbate-60-sheet',
        others: [{ value: 14.5, source: 'polysorbates-sheet' }],
      },
      density: recalled(1.1, { temperatureCelsius: 25 }),
      'molar mass': nominal(1311.686),
      'saponification number': between(45, 55, { source: 'cfr-21-172-836' }),
      'acid number': { value: 2, low: 0, high: 2, source: 'cfr-21-172-836', note: 'at most' },
      viscosity: { value: 400, temperatureCelsius: 25, source: 'excipients-handbook' },
      'critical micelle concentration': micelle(0.0167, rememberedMicelle(0.025, 0.02, 0.03)),
    },
  },
  {
    name: 'polysorbate 65',
    role: 'emulsifier',
    aliases: ['polyoxyethylene (20) sorbitan tristearate'],
    searchWords: ['tween 65'],
    cas: '9005-71-4',
    eNumber: 'E 436',
    formula: 'C100H194O28',
    figures: {
      hlb: recalled(10.5, {
        source: 'ici-hlb-system',
        note: 'within 0.1 of what its saponification number gives',
      }),
      density: recalled(1.05, { temperatureCelsius: 25 }),
      'molar mass': nominal(1844.624),
      'saponification number': fromTable(88, 98),
      'acid number': { value: 2, low: 0, high: 2, source: 'excipients-handbook', note: 'at most' },
    },
  },
  {
    name: 'polysorbate 80',
    role: 'emulsifier',
    aliases: ['polyoxyethylene (20) sorbitan monooleate'],
    searchWords: ['tween 80'],
    cas: '9005-65-6',
    eNumber: 'E 433',
    formula: 'C64H124O26',
    figures: {
      hlb: {
        value: 15,
        source: 'hlb-mixing-ratios',
        others: [
          { value: 15, source: 'ocl-2022' },
          { value: 15, source: 'polysorbates-sheet' },
        ],
      },
      density: between(1.06, 1.09, {
        temperatureCelsius: 25,
        source: 'usp32-polysorbate-80',
        note: 'printed as specific gravity',
      }),
      'molar mass': nominal(1309.67),
      'saponification number': between(45, 55, { source: 'cfr-21-172-840' }),
      'acid number': {
        value: 2,
        low: 0,
        high: 2.2,
        source: 'usp32-polysorbate-80',
        note: 'at most 2 or 2.2',
      },
      viscosity: {
        value: 430,
        low: 322,
        high: 538,
        temperatureCelsius: 25,
        source: 'usp32-polysorbate-80',
        note: 'printed as 300 to 500 mm2/s, here times 1.075 g/mL',
      },
      'critical micelle concentration': micelle(0.015, rememberedMicelle(0.012)),
    },
    notes: ['its cloud point is not settled: 65 C and 93 C are both met'],
  },
];
