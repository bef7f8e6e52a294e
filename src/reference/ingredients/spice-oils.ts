/** Spice and berry oils. */

import type { Ingredient } from '../ingredient.ts';
import { between, fromRelativeDensity } from './figure-makers.ts';

const noRequiredHlb =
  'no required HLB was found for this oil: give one with @, or find it with a row of blends';

export const spiceOils: readonly Ingredient[] = [
  {
    name: 'ginger oil',
    role: 'oil',
    cas: '8007-08-7',
    figures: {
      density: fromRelativeDensity({ low: 0.87, high: 0.882, celsius: 25, source: 'fcc', fromMemory: true }),
      'refractive index': between(1.488, 1.494, { temperatureCelsius: 20, source: 'fcc', fromMemory: true }),
      'optical rotation': between(-47, -28, { temperatureCelsius: 25, source: 'fcc', fromMemory: true }),
    },
    notes: [noRequiredHlb],
  },
  {
    name: 'cinnamon bark oil',
    role: 'oil',
    aliases: ['cinnamon oil'],
    cas: '8015-91-6',
    figures: {
      density: fromRelativeDensity({ low: 1.01, high: 1.03, celsius: 25, source: 'fcc', fromMemory: true }),
      'refractive index': between(1.573, 1.591, { temperatureCelsius: 20, source: 'fcc', fromMemory: true }),
    },
    notes: ['heavier than water: it falls where others float', noRequiredHlb],
  },
  {
    name: 'cinnamon leaf oil',
    role: 'oil',
    cas: '8015-91-6',
    figures: {
      density: fromRelativeDensity({
        low: 1.037,
        high: 1.053,
        celsius: 20,
        source: 'surburg-panten',
        locator: 'cinnamon leaf oil',
      }),
      'refractive index': between(1.527, 1.54, { temperatureCelsius: 20, source: 'surburg-panten' }),
      'optical rotation': between(-2.5, 2, { temperatureCelsius: 20, source: 'surburg-panten' }),
    },
    notes: ['dissolves in propylene glycol, not in glycerol (Food Chemicals Codex)', noRequiredHlb],
  },
  {
    name: 'cassia oil',
    role: 'oil',
    cas: '8007-80-5',
    figures: {
      density: fromRelativeDensity({
        low: 1.052,
        high: 1.07,
        celsius: 20,
        source: 'surburg-panten',
        locator: 'cassia oil',
      }),
      'refractive index': between(1.6, 1.614, { temperatureCelsius: 20, source: 'surburg-panten' }),
    },
    notes: ['heavier than water: it falls where others float', noRequiredHlb],
  },
  {
    name: 'clove bud oil',
    role: 'oil',
    aliases: ['clove oil'],
    cas: '8000-34-8',
    figures: {
      density: fromRelativeDensity({ low: 1.038, high: 1.06, celsius: 25, source: 'usp32-clove-oil' }),
      'refractive index': between(1.527, 1.535, { temperatureCelsius: 20, source: 'usp32-clove-oil' }),
    },
    notes: ['one volume dissolves in two of 70 per cent ethanol (USP)', noRequiredHlb],
  },
  {
    name: 'juniper berry oil',
    role: 'oil',
    aliases: ['juniper oil'],
    cas: '8002-68-4',
    figures: {
      density: fromRelativeDensity({
        low: 0.85,
        high: 0.88,
        celsius: 20,
        source: 'surburg-panten',
        locator: 'juniper berry oil',
        others: [
          fromRelativeDensity({ low: 0.854, high: 0.879, celsius: 25, source: 'fcc', fromMemory: true }),
        ],
      }),
      'refractive index': between(1.47, 1.483, { temperatureCelsius: 20, source: 'surburg-panten' }),
      'optical rotation': between(-6, 0, { temperatureCelsius: 20, source: 'surburg-panten' }),
    },
    notes: ['dissolves in neither glycerol nor propylene glycol', noRequiredHlb],
  },
  {
    name: 'black pepper oil',
    role: 'oil',
    aliases: ['pepper oil'],
    cas: '8006-82-4',
    figures: {
      density: fromRelativeDensity({
        low: 0.861,
        high: 0.885,
        celsius: 20,
        source: 'surburg-panten',
        locator: 'pepper oil, four origins',
      }),
      'refractive index': between(1.479, 1.488, { temperatureCelsius: 20, source: 'fcc', fromMemory: true }),
      'optical rotation': between(-18, 20, {
        temperatureCelsius: 20,
        source: 'surburg-panten',
        note: 'by origin',
      }),
    },
    notes: [noRequiredHlb],
  },
  {
    name: 'coriander oil',
    role: 'oil',
    aliases: ['coriander seed oil'],
    cas: '8008-52-4',
    figures: {
      density: fromRelativeDensity({ low: 0.863, high: 0.875, celsius: 25, source: 'usp35-coriander-oil' }),
      'refractive index': between(1.462, 1.472, { temperatureCelsius: 20, source: 'usp35-coriander-oil' }),
      'optical rotation': between(8, 15, { temperatureCelsius: 25, source: 'usp35-coriander-oil' }),
    },
    notes: ['one volume dissolves in three of 70 per cent ethanol (USP)', noRequiredHlb],
  },
  {
    name: 'nutmeg oil',
    role: 'oil',
    aliases: ['nutmeg oil, east indian'],
    cas: '8008-45-5',
    figures: {
      density: fromRelativeDensity({
        low: 0.88,
        high: 0.91,
        celsius: 25,
        source: 'fcc',
        fromMemory: true,
        others: [fromRelativeDensity({ low: 0.859, high: 0.924, celsius: 25, source: 'usp9-nutmeg-oil' })],
      }),
      'refractive index': between(1.474, 1.488, { temperatureCelsius: 20, source: 'fcc', fromMemory: true }),
      'optical rotation': between(8, 30, { temperatureCelsius: 25, source: 'fcc', fromMemory: true }),
    },
    notes: [noRequiredHlb],
  },
];
