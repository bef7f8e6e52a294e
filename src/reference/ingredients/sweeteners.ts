/** Intense sweeteners and polyols. Sweetness is by mass, sucrose being 1, and falls with strength. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, molarMass, recalled } from './figure-makers.ts';
import { cyclamateInUs } from './withdrawn.ts';

const sweetness = (value: number, others?: readonly Figure[]): Figure => ({
  value,
  source: 'sweetener-review',
  ...(others ? { others } : {}),
});

const notConstant =
  'an intense sweetener is no constant multiple of sucrose: it weakens as the drink gets sweeter';

const intense: readonly Ingredient[] = [
  {
    name: 'sucralose',
    role: 'sweetener',
    searchWords: ['splenda'],
    cas: '56038-13-2',
    eNumber: 'E 955',
    formula: 'C12H19Cl3O8',
    figures: { 'molar mass': molarMass(397.626), 'relative sweetness': sweetness(600) },
    notes: [notConstant],
  },
  {
    name: 'acesulfame potassium',
    role: 'sweetener',
    aliases: ['acesulfame K', 'acesulfame-K', 'ace-K'],
    cas: '55589-62-3',
    eNumber: 'E 950',
    formula: 'C4H4KNO4S',
    figures: { 'molar mass': molarMass(201.237), 'relative sweetness': sweetness(200) },
    notes: [notConstant],
  },
  {
    name: 'aspartame',
    role: 'sweetener',
    cas: '22839-47-0',
    eNumber: 'E 951',
    formula: 'C14H18N2O5',
    figures: {
      'molar mass': molarMass(294.307),
      'relative sweetness': sweetness(175, [
        { value: 200, source: 'prepared-foods', note: 'at 4.3 per cent of sucrose' },
        { value: 130, source: 'prepared-foods', note: 'at 10 per cent of sucrose, 22 C' },
      ]),
    },
    notes: [notConstant, 'a source of phenylalanine'],
  },
  {
    name: 'sodium cyclamate',
    role: 'sweetener',
    aliases: ['cyclamate'],
    withdrawn: cyclamateInUs,
    cas: '139-05-9',
    eNumber: 'E 952',
    formula: 'C6H12NNaO3S',
    figures: { 'molar mass': molarMass(201.216), 'relative sweetness': sweetness(40) },
    notes: [notConstant],
  },
  {
    name: 'saccharin',
    role: 'sweetener',
    cas: '81-07-2',
    eNumber: 'E 954',
    formula: 'C7H5NO3S',
    figures: { 'molar mass': molarMass(183.181), 'relative sweetness': sweetness(400) },
    notes: [notConstant],
  },
  {
    name: 'sodium saccharin',
    role: 'sweetener',
    aliases: ['saccharin sodium', 'sodium saccharin dihydrate', 'saccharin sodium dihydrate'],
    cas: '6155-57-3',
    eNumber: 'E 954',
    formula: 'C7H4NNaO3S.2H2O',
    figures: {
      'molar mass': molarMass(241.193),
      'relative sweetness': between(250, 330, {
        source: 'alternative-sweeteners',
        note: 'from 30 to 40 mg for 10 g of sucrose in 240 mL of coffee',
      }),
    },
    notes: [notConstant],
  },
  {
    name: 'steviol glycosides',
    role: 'sweetener',
    aliases: ['stevia extract', 'stevia', 'rebaudioside A', 'reb A'],
    cas: '58543-16-1',
    eNumber: 'E 960',
    formula: 'C44H70O23',
    figures: {
      'molar mass': { ...molarMass(967.021), note: 'rebaudioside A' },
      'relative sweetness': sweetness(300, [
        between(200, 350, { source: 'prakash-2014', note: 'rebaudioside M' }),
      ]),
    },
    notes: [notConstant],
  },
  {
    name: 'neotame',
    role: 'sweetener',
    cas: '165450-17-9',
    eNumber: 'E 961',
    formula: 'C20H30N2O5',
    figures: {
      'molar mass': molarMass(378.469),
      'relative sweetness': recalled(8000, { low: 7000, high: 13_000 }),
    },
    notes: [notConstant],
  },
  {
    name: 'neohesperidin dihydrochalcone',
    role: 'sweetener',
    aliases: ['neohesperidin DC', 'NHDC'],
    cas: '20702-77-6',
    eNumber: 'E 959',
    formula: 'C28H36O15',
    figures: { 'molar mass': molarMass(612.581), 'relative sweetness': recalled(1500) },
    notes: [notConstant],
  },
];

interface Polyol {
  readonly name: string;
  readonly cas: string;
  readonly eNumber: string;
  readonly formula?: string;
  readonly mass?: number;
  readonly sweetness: number;
  readonly inSolution: number;
}

const polyol = ({ mass, sweetness: sweet, inSolution, ...record }: Polyol): Ingredient => ({
  ...record,
  role: 'sweetener',
  figures: {
    ...(mass === undefined ? {} : { 'molar mass': molarMass(mass) }),
    'relative sweetness': sweetness(sweet),
    'apparent density': recalled(inSolution, { note: 'in water, from the molar volume in dilute solution' }),
  },
});

const polyols: readonly Ingredient[] = [
  {
    name: 'erythritol',
    cas: '149-32-6',
    eNumber: 'E 968',
    formula: 'C4H10O4',
    mass: 122.12,
    sweetness: 0.7,
    inSolution: 1.4,
  },
  {
    name: 'xylitol',
    cas: '87-99-0',
    eNumber: 'E 967',
    formula: 'C5H12O5',
    mass: 152.146,
    sweetness: 1,
    inSolution: 1.48,
  },
  {
    name: 'sorbitol',
    cas: '50-70-4',
    eNumber: 'E 420',
    formula: 'C6H14O6',
    mass: 182.172,
    sweetness: 0.6,
    inSolution: 1.52,
  },
  {
    name: 'mannitol',
    cas: '69-65-8',
    eNumber: 'E 421',
    formula: 'C6H14O6',
    mass: 182.172,
    sweetness: 0.6,
    inSolution: 1.52,
  },
  {
    name: 'maltitol',
    cas: '585-88-6',
    eNumber: 'E 965',
    formula: 'C12H24O11',
    mass: 344.313,
    sweetness: 0.9,
    inSolution: 1.6,
  },
  { name: 'isomalt', cas: '64519-82-0', eNumber: 'E 953', sweetness: 0.5, inSolution: 1.6 },
].map(polyol);

export const sweeteners: readonly Ingredient[] = [...intense, ...polyols];
