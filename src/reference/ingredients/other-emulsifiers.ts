/** Sucrose esters, oxyethylated emulsifiers beside the polysorbates, saponins, and the polymers without an HLB. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, molarMass, recalled } from './figure-makers.ts';

interface SucroseEster {
  readonly acid: string;
  readonly monoester: number;
  readonly hlb: Figure;
  readonly formula: string;
  readonly molarMass: number;
}

const grade = (value: number): Figure => ({ value, source: 'sucrose-ester-grades' });
const recalledGrade = (value: number): Figure => recalled(value, { note: 'supplier grade tables' });

/** Named by fatty acid and by the share of monoester, from which the HLB follows. */
const sucroseEster = ({ acid, monoester, hlb, formula, molarMass: mass }: SucroseEster): Ingredient => ({
  name: `sucrose ${acid} (${monoester} % monoester)`,
  role: 'emulsifier',
  aliases: [`sucrose ${acid} ${monoester}`, `sucrose ${acid}, ${monoester} % monoester`],
  searchWords: ['sugar ester', 'sucrose ester', 'ryoto', 'sisterna'],
  eNumber: 'E 473',
  formula,
  figures: { hlb, 'molar mass': { ...molarMass(mass), note: 'of the monoester' } },
});

const stearate = { acid: 'stearate', formula: 'C30H56O12', molarMass: 608.766 } as const;

const sucroseEsters: readonly Ingredient[] = [
  ...(
    [
      [1, 1],
      [10, 2],
      [30, 5],
      [40, 7],
      [50, 9],
      [55, 11],
      [70, 15],
      [75, 16],
    ] as const
  ).map(([monoester, hlb]) => sucroseEster({ ...stearate, monoester, hlb: grade(hlb) })),
  sucroseEster({
    acid: 'laurate',
    monoester: 80,
    hlb: recalledGrade(16),
    formula: 'C24H44O12',
    molarMass: 524.604,
  }),
  sucroseEster({
    acid: 'myristate',
    monoester: 80,
    hlb: recalledGrade(16),
    formula: 'C26H48O12',
    molarMass: 552.658,
  }),
  sucroseEster({
    acid: 'palmitate',
    monoester: 70,
    hlb: recalledGrade(15),
    formula: 'C28H52O12',
    molarMass: 580.712,
  }),
  sucroseEster({
    acid: 'palmitate',
    monoester: 80,
    hlb: { value: 16, source: 'sucrose-palmitate-grades' },
    formula: 'C28H52O12',
    molarMass: 580.712,
  }),
  sucroseEster({
    acid: 'oleate',
    monoester: 70,
    hlb: recalledGrade(15),
    formula: 'C30H54O12',
    molarMass: 606.75,
  }),
];

const oxyethylated: readonly Ingredient[] = [
  {
    name: 'tocopheryl polyethylene glycol succinate',
    role: 'emulsifier',
    aliases: ['TPGS', 'vitamin E TPGS', 'tocofersolan'],
    cas: '9002-96-4',
    figures: {
      hlb: { value: 13.2, source: 'tpgs-sheet' },
      density: { value: 1.06, temperatureCelsius: 45, source: 'tpgs-sheet' },
      'molar mass': { value: 1513, source: 'tpgs-sheet', note: 'about' },
      'critical micelle concentration': {
        value: 0.13,
        source: 'tpgs-sheet',
        note: 'printed as 0.02 per cent by mass',
      },
    },
    notes: ['melts at 37 to 41 C (supplier sheet)'],
  },
  {
    name: 'PEG-40 hydrogenated castor oil',
    role: 'emulsifier',
    aliases: ['polyoxyl 40 hydrogenated castor oil'],
    searchWords: ['cremophor rh 40', 'kolliphor rh 40'],
    cas: '61788-85-0',
    figures: {
      hlb: {
        value: 15,
        low: 14,
        high: 16,
        source: 'peg-40-castor-sheet',
        others: [{ value: 15, source: 'hlb-mixing-ratios' }],
      },
      density: recalled(1.05, { temperatureCelsius: 25 }),
      'saponification number': between(45, 69, { source: 'usp32-peg-40-castor-oil' }),
    },
    notes: ['known from cosmetics and pharmacy; no listing as a food additive was found'],
  },
  {
    name: 'polyoxyl 35 castor oil',
    role: 'emulsifier',
    aliases: ['PEG-35 castor oil'],
    searchWords: ['cremophor el', 'kolliphor el'],
    cas: '61791-12-6',
    figures: {
      hlb: { value: 13, low: 12, high: 14, source: 'hlb-mixing-ratios' },
      density: recalled(1.055, { low: 1.05, high: 1.06, temperatureCelsius: 25 }),
      'saponification number': between(60, 75, { source: 'general-knowledge', fromMemory: true }),
    },
    notes: ['known from pharmacy; no listing as a food additive was found'],
  },
  {
    name: 'PEG-8 caprylic/capric glycerides',
    role: 'emulsifier',
    aliases: ['caprylocaproyl polyoxyl-8 glycerides'],
    searchWords: ['labrasol'],
    figures: { hlb: { value: 12, source: 'pharmaceutics-2023-limonene' } },
    notes: ['known from pharmacy; no listing as a food additive was found'],
  },
];

const natural: readonly Ingredient[] = [
  {
    name: 'quillaia extract',
    role: 'emulsifier',
    aliases: ['quillaja extract', 'quillaia', 'quillaja', 'quillaja saponin'],
    cas: '68990-67-0',
    eNumber: 'E 999',
    figures: {
      hlb: recalled(13.5, { low: 13, high: 14, note: 'quoted, little used' }),
      'molar mass': recalled(1650, { note: 'of a saponin, about' }),
      'critical micelle concentration': {
        value: 0.39,
        low: 0.3,
        high: 0.48,
        temperatureCelsius: 25,
        source: 'mitra-dungan-1997',
        note: 'printed as 0.5 to 0.8 g/L, here by 1650 g/mol',
      },
    },
    notes: ['extracts are sold in many strengths: what counts is the saponin in yours'],
  },
  {
    name: 'gum arabic',
    role: 'emulsifier',
    aliases: ['acacia gum', 'gum acacia', 'acacia'],
    cas: '9000-01-5',
    eNumber: 'E 414',
    polymer: true,
    figures: { 'apparent density': recalled(1.6) },
    notes: ['works as a film around the droplet; gives a cloudy drink rather than a clear one'],
  },
  {
    name: 'starch sodium octenyl succinate',
    role: 'emulsifier',
    aliases: ['octenyl succinate starch', 'OSA starch', 'modified starch, octenyl succinate'],
    searchWords: ['purity gum', 'hi-cap', 'capsul'],
    cas: '66829-29-6',
    eNumber: 'E 1450',
    polymer: true,
    figures: { 'apparent density': recalled(1.6) },
  },
];

export const otherEmulsifiers: readonly Ingredient[] = [...sucroseEsters, ...oxyethylated, ...natural];
