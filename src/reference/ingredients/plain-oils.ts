/** Mineral oils and waxes, the oil phases of textbook problems, and MCT oil. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { between, recalled } from './figure-makers.ts';

const paraffinRequiredHlb: Figure = {
  value: 12,
  source: 'hlb-teaching-sheet',
  note: 'the figure of textbook problems; the originator of the scale found 10 with four families of blends',
  others: [
    { value: 10, low: 10, high: 12, source: 'griffin-1949', locator: 'heavy mineral oil' },
    { value: 11.8, source: 'meher-2013', note: 'light liquid paraffin' },
  ],
};

/** Required HLB of the originator's list, as textbooks carry it. */
const listed = (value: number): Figure => recalled(value, { source: 'ici-hlb-system' });
const listedRange = (low: number, high: number): Figure =>
  between(low, high, { source: 'ici-hlb-system', fromMemory: true });

const density = (value: number, temperatureCelsius = 20): Figure => recalled(value, { temperatureCelsius });

export const plainOils: readonly Ingredient[] = [
  {
    name: 'MCT oil',
    role: 'oil',
    aliases: [
      'medium chain triglycerides',
      'medium-chain triglycerides',
      'caprylic/capric triglyceride',
      'fractionated coconut oil',
    ],
    searchWords: ['miglyol', 'neobee', 'captex'],
    cas: '73398-61-5',
    figures: {
      density: {
        value: 0.95,
        temperatureCelsius: 20,
        source: 'ph-eur-triglycerides',
        locator: 'Relative density, about',
        others: [recalled(0.943, { low: 0.94, high: 0.945, temperatureCelsius: 25 })],
      },
      'required hlb': {
        value: 15.36,
        source: 'macedo-quoted',
        note: 'published figures disagree from 5 to 15.4; a row of blends of your own decides',
        others: [
          recalled(5.25, { low: 5, high: 5.5, note: 'supplier lists' }),
          recalled(10.9, { low: 10.8, high: 11, note: 'supplier lists' }),
          between(12.5, 14, { source: 'mct-nanoemulsion-review' }),
        ],
      },
      'refractive index': { value: 1.446, temperatureCelsius: 20, source: 'ph-eur-triglycerides' },
      viscosity: between(25, 33, { temperatureCelsius: 20, source: 'ph-eur-triglycerides' }),
      'saponification number': between(310, 360, { source: 'ph-eur-triglycerides' }),
    },
    notes: ['also a carrier for oil-soluble flavours; it slows the growth of droplets'],
  },
  {
    name: 'liquid paraffin',
    role: 'oil',
    aliases: ['paraffin oil', 'heavy liquid paraffin', 'light liquid paraffin'],
    cas: '8012-95-1',
    figures: { density: density(0.865), 'required hlb': paraffinRequiredHlb },
  },
  {
    name: 'mineral oil',
    role: 'oil',
    aliases: ['white mineral oil', 'mineral oil, paraffinic'],
    cas: '8042-47-5',
    figures: { density: density(0.865), 'required hlb': paraffinRequiredHlb },
  },
  {
    name: 'lanolin',
    role: 'oil',
    aliases: ['wool fat', 'anhydrous lanolin'],
    cas: '8006-54-0',
    eNumber: 'E 913',
    figures: {
      density: density(0.94, 15),
      'required hlb': {
        value: 10,
        source: 'hlb-teaching-sheet',
        others: [recalled(12, { source: 'martin-pharmacy' })],
      },
    },
  },
  {
    name: 'beeswax',
    role: 'oil',
    aliases: ['white beeswax', 'yellow beeswax'],
    cas: '8012-89-3',
    eNumber: 'E 901',
    figures: {
      density: density(0.96),
      'required hlb': {
        value: 12,
        source: 'ocl-2022',
        note: 'white beeswax; the list of the originator and textbook problems have 9',
        others: [recalled(9, { source: 'ici-hlb-system' }), recalled(9, { source: 'martin-pharmacy' })],
      },
    },
  },
  {
    name: 'paraffin wax',
    role: 'oil',
    cas: '8002-74-2',
    figures: { density: density(0.9), 'required hlb': listed(10) },
  },
  {
    name: 'carnauba wax',
    role: 'oil',
    cas: '8015-86-9',
    eNumber: 'E 903',
    figures: { density: density(0.995), 'required hlb': listedRange(12, 15) },
  },
  {
    name: 'petrolatum',
    role: 'oil',
    aliases: ['petroleum jelly', 'white soft paraffin'],
    cas: '8009-03-8',
    figures: { 'required hlb': listedRange(7, 8) },
  },
  {
    name: 'mineral spirits',
    role: 'oil',
    aliases: ['white spirit'],
    figures: { density: density(0.78), 'required hlb': listed(14) },
    notes: ['here for textbook problems; not for food'],
  },
  {
    name: 'kerosene',
    role: 'oil',
    cas: '8008-20-6',
    figures: { density: density(0.8), 'required hlb': listedRange(12, 14) },
    notes: ['here for textbook problems; not for food'],
  },
  {
    name: 'pine oil',
    role: 'oil',
    cas: '8002-09-3',
    figures: { density: density(0.93), 'required hlb': listed(16) },
  },
];
