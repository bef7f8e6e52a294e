/** Citrus oils, with the folded and terpeneless ones. */

import type { Ingredient } from '../ingredient.ts';
import { citrusRequiredHlb, lemonRequiredHlb } from './citrus-required-hlb.ts';
import { between, fromRelativeDensity, recalled } from './figure-makers.ts';

const foldedNote =
  'its composition differs from maker to maker: weigh a measured volume of your own for its density';

export const citrusOils: readonly Ingredient[] = [
  {
    name: 'sweet orange oil',
    role: 'oil',
    aliases: ['orange oil', 'cold pressed orange oil', 'orange oil, cold pressed', 'oil of sweet orange'],
    searchWords: ['citrus sinensis peel oil'],
    cas: '8008-57-9',
    fold: 1,
    figures: {
      density: fromRelativeDensity({
        low: 0.842,
        high: 0.846,
        celsius: 25,
        source: 'usp32-orange-oil',
        locator: 'Specific gravity',
        others: [
          fromRelativeDensity({ low: 0.842, high: 0.85, celsius: 20, source: 'ph-eur-orange-oil' }),
          { value: 0.845, temperatureCelsius: 25, source: 'orange-oil-sheet' },
        ],
      }),
      'required hlb': citrusRequiredHlb,
      'refractive index': between(1.472, 1.474, {
        temperatureCelsius: 20,
        source: 'usp32-orange-oil',
        others: [between(1.47, 1.476, { temperatureCelsius: 20, source: 'iso-3140', fromMemory: true })],
      }),
      'optical rotation': between(94, 99, { temperatureCelsius: 25, source: 'usp32-orange-oil' }),
      'flash point': {
        value: 46,
        source: 'orange-oil-entry',
        locator: 'closed cup',
        others: [{ value: 54, source: 'orange-oil-sheet' }],
      },
    },
    notes: ['mostly limonene; aldehydes 1.2 to 2.5 per cent as decanal (USP)'],
  },
  {
    name: 'sweet orange oil fivefold',
    role: 'oil',
    aliases: ['fivefold orange oil', 'orange oil fivefold', 'orange oil 5-fold', '5-fold orange oil'],
    searchWords: ['orange oil 5x'],
    cas: '8008-57-9',
    fold: 5,
    figures: {
      density: recalled(0.851, { low: 0.845, high: 0.86, temperatureCelsius: 25 }),
      'required hlb': citrusRequiredHlb,
      'refractive index': recalled(1.475, { low: 1.473, high: 1.478, temperatureCelsius: 20 }),
    },
    notes: [foldedNote],
  },
  {
    name: 'sweet orange oil tenfold',
    role: 'oil',
    aliases: ['tenfold orange oil', 'orange oil tenfold', 'orange oil 10-fold', '10-fold orange oil'],
    searchWords: ['orange oil 10x'],
    cas: '8008-57-9',
    fold: 10,
    figures: {
      density: recalled(0.86, { low: 0.85, high: 0.875, temperatureCelsius: 25 }),
      'required hlb': citrusRequiredHlb,
      'refractive index': recalled(1.477, { low: 1.474, high: 1.481, temperatureCelsius: 20 }),
    },
    notes: [foldedNote],
  },
  {
    name: 'terpeneless orange oil',
    role: 'oil',
    aliases: ['orange oil terpeneless', 'sweet orange oil terpeneless', 'deterpenated orange oil'],
    cas: '68606-94-0',
    figures: { density: recalled(0.885, { low: 0.87, high: 0.9, temperatureCelsius: 25 }) },
    notes: [foldedNote, 'no required HLB was found: its oxygenated constituents are nothing like limonene'],
  },
  {
    name: 'mandarin oil',
    role: 'oil',
    aliases: ['tangerine oil', 'mandarin oil, cold pressed'],
    cas: '8008-31-9',
    fold: 1,
    figures: {
      density: fromRelativeDensity({
        low: 0.846,
        high: 0.854,
        celsius: 20,
        source: 'surburg-panten',
        locator: 'mandarin oil, yellow',
        others: [
          fromRelativeDensity({
            low: 0.847,
            high: 0.855,
            celsius: 20,
            source: 'surburg-panten',
            note: 'green',
          }),
          fromRelativeDensity({
            low: 0.844,
            high: 0.853,
            celsius: 20,
            source: 'surburg-panten',
            note: 'red',
          }),
        ],
      }),
      'required hlb': citrusRequiredHlb,
      'refractive index': between(1.4726, 1.4753, {
        temperatureCelsius: 20,
        source: 'surburg-panten',
        locator: 'mandarin oil, yellow',
      }),
      'optical rotation': between(69, 76, {
        temperatureCelsius: 20,
        source: 'surburg-panten',
        locator: 'mandarin oil, yellow',
      }),
      'flash point': { value: 48.9, source: 'surburg-panten', locator: 'mandarin oil, closed cup' },
    },
  },
  {
    name: 'bergamot oil',
    role: 'oil',
    aliases: ['bergamot oil, cold pressed'],
    cas: '8007-75-8',
    fold: 1,
    figures: {
      density: fromRelativeDensity({
        low: 0.871,
        high: 0.879,
        celsius: 25,
        source: 'fcc-bergamot-quoted',
        others: [
          between(0.872, 0.883, { temperatureCelsius: 20, source: 'bergamot-sheet', note: 'bergapten-free' }),
        ],
      }),
      'refractive index': between(1.465, 1.468, {
        temperatureCelsius: 20,
        source: 'fcc-bergamot-quoted',
        others: [between(1.4638, 1.4692, { temperatureCelsius: 20, source: 'bergamot-sheet' })],
      }),
      'optical rotation': between(15, 36, { temperatureCelsius: 20, source: 'fcc-bergamot-quoted' }),
    },
    notes: ['expressed oil holds bergapten, which makes skin sensitive to light'],
  },
  {
    name: 'distilled lime oil',
    role: 'oil',
    aliases: ['lime oil', 'lime oil distilled', 'lime oil, distilled'],
    cas: '8008-26-2',
    fold: 1,
    figures: {
      density: fromRelativeDensity({ low: 0.855, high: 0.863, celsius: 25, source: 'fcc', fromMemory: true }),
      'required hlb': citrusRequiredHlb,
      'refractive index': between(1.4745, 1.477, { temperatureCelsius: 20, source: 'fcc', fromMemory: true }),
      'optical rotation': between(35, 47, { temperatureCelsius: 25, source: 'fcc', fromMemory: true }),
    },
  },
  {
    name: 'cold pressed lime oil',
    role: 'oil',
    aliases: ['expressed lime oil', 'lime oil, cold pressed'],
    cas: '8008-26-2',
    fold: 1,
    figures: {
      density: fromRelativeDensity({ low: 0.872, high: 0.881, celsius: 25, source: 'fcc', fromMemory: true }),
      'refractive index': between(1.482, 1.486, { temperatureCelsius: 20, source: 'fcc', fromMemory: true }),
      'optical rotation': between(35, 41, { temperatureCelsius: 25, source: 'fcc', fromMemory: true }),
    },
  },
  {
    name: 'lemon oil',
    role: 'oil',
    aliases: ['lemon oil, cold pressed', 'cold pressed lemon oil', 'oil of lemon'],
    cas: '8008-56-8',
    fold: 1,
    figures: {
      density: fromRelativeDensity({
        low: 0.849,
        high: 0.855,
        celsius: 25,
        source: 'usp35-lemon-oil',
        locator: 'Specific gravity',
      }),
      'required hlb': lemonRequiredHlb,
      'refractive index': between(1.473, 1.476, {
        temperatureCelsius: 20,
        source: 'usp35-lemon-oil',
        others: [between(1.4742, 1.4755, { temperatureCelsius: 20, source: 'merck-lemon-oil' })],
      }),
      'optical rotation': between(57, 65.6, { temperatureCelsius: 25, source: 'usp35-lemon-oil' }),
    },
  },
  {
    name: 'distilled lemon oil',
    role: 'oil',
    aliases: ['lemon oil distilled', 'lemon oil, distilled'],
    cas: '8008-56-8',
    fold: 1,
    figures: {
      density: fromRelativeDensity({ low: 0.842, high: 0.856, celsius: 25, source: 'fcc-lemon-quoted' }),
      'required hlb': lemonRequiredHlb,
      'refractive index': between(1.47, 1.475, { temperatureCelsius: 20, source: 'fcc-lemon-quoted' }),
      'optical rotation': between(55, 78, { temperatureCelsius: 25, source: 'fcc-lemon-quoted' }),
    },
  },
  {
    name: 'grapefruit oil',
    role: 'oil',
    aliases: ['grapefruit oil, cold pressed', 'cold pressed grapefruit oil'],
    cas: '8016-20-4',
    fold: 1,
    figures: {
      density: fromRelativeDensity({ low: 0.848, high: 0.856, celsius: 25, source: 'fcc-grapefruit-quoted' }),
      'required hlb': citrusRequiredHlb,
      'refractive index': between(1.473, 1.479, { temperatureCelsius: 20, source: 'fcc-grapefruit-quoted' }),
      'optical rotation': between(91, 96, { temperatureCelsius: 25, source: 'fcc-grapefruit-quoted' }),
    },
  },
];
