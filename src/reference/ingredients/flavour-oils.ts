/** Herb, spice and seed oils. */

import type { Ingredient } from '../ingredient.ts';
import { between, fromRelativeDensity, recalled } from './figure-makers.ts';

const noRequiredHlb =
  'no required HLB was found for this oil: give one with @, or find it with a row of blends';

export const flavourOils: readonly Ingredient[] = [
  {
    name: 'cardamom oil',
    role: 'oil',
    aliases: ['cardamom seed oil', 'oil of cardamom'],
    cas: '8000-66-6',
    figures: {
      density: fromRelativeDensity({
        low: 0.917,
        high: 0.947,
        celsius: 25,
        source: 'usp32-cardamom-oil',
        locator: 'Specific gravity',
      }),
      'refractive index': between(1.463, 1.466, { temperatureCelsius: 20, source: 'usp32-cardamom-oil' }),
      'optical rotation': between(22, 44, { temperatureCelsius: 25, source: 'usp32-cardamom-oil' }),
    },
    notes: ['one volume dissolves in five of 70 per cent ethanol (USP)', noRequiredHlb],
  },
  {
    name: 'peppermint oil',
    role: 'oil',
    aliases: ['oil of peppermint'],
    searchWords: ['mentha piperita'],
    cas: '8006-90-4',
    figures: {
      density: fromRelativeDensity({
        low: 0.896,
        high: 0.908,
        celsius: 25,
        source: 'usp35-peppermint-oil',
        others: [fromRelativeDensity({ low: 0.899, high: 0.911, celsius: 20, source: 'surburg-panten' })],
      }),
      'required hlb': { value: 12.3, source: 'orafidiya-2002', fromMemory: true },
      'refractive index': between(1.459, 1.465, { temperatureCelsius: 20, source: 'usp35-peppermint-oil' }),
      'optical rotation': between(-32, -18, { temperatureCelsius: 25, source: 'usp35-peppermint-oil' }),
    },
    notes: ['one volume dissolves in three of 70 per cent ethanol (USP)'],
  },
  {
    name: 'spearmint oil',
    role: 'oil',
    cas: '8008-79-5',
    figures: {
      density: fromRelativeDensity({
        low: 0.917,
        high: 0.934,
        celsius: 25,
        source: 'fcc',
        fromMemory: true,
        others: [
          between(0.915, 0.938, { temperatureCelsius: 20, source: 'spearmint-sheet' }),
          {
            value: 0.929,
            temperatureCelsius: 25,
            source: 'parry-1922',
            note: 'relative density of one sample',
          },
        ],
      }),
      'refractive index': between(1.483, 1.491, { temperatureCelsius: 20, source: 'spearmint-sheet' }),
    },
    notes: [noRequiredHlb],
  },
  {
    name: 'terpeneless spearmint oil',
    role: 'oil',
    aliases: ['spearmint oil terpeneless'],
    figures: {
      density: fromRelativeDensity({ low: 0.949, high: 0.956, celsius: 25, source: 'cfr-27-21-129' }),
      'refractive index': between(1.493, 1.498, { temperatureCelsius: 20, source: 'cfr-27-21-129' }),
    },
    notes: [noRequiredHlb],
  },
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
  {
    name: 'rosemary oil',
    role: 'oil',
    cas: '8000-25-7',
    figures: {
      density: recalled(0.906, { low: 0.894, high: 0.918, temperatureCelsius: 20 }),
      'required hlb': {
        value: 15,
        source: 'rodriguez-rojo-2012',
        note: 'droplet size and stability; the other study found more',
        others: [{ value: 16.5, source: 'fernandes-2013', fromMemory: true }],
      },
      'refractive index': recalled(1.468, { low: 1.464, high: 1.476, temperatureCelsius: 20 }),
    },
  },
  {
    name: 'eucalyptus oil',
    role: 'oil',
    cas: '8000-48-4',
    figures: {
      density: recalled(0.914, { low: 0.906, high: 0.925, temperatureCelsius: 20 }),
      'required hlb': { value: 9.8, source: 'orafidiya-2002', fromMemory: true },
      'refractive index': recalled(1.463, { low: 1.458, high: 1.47, temperatureCelsius: 20 }),
    },
  },
  {
    name: 'citronella oil',
    role: 'oil',
    cas: '8000-29-1',
    figures: {
      density: recalled(0.889, { low: 0.88, high: 0.897, temperatureCelsius: 20 }),
      'required hlb': { value: 12.6, source: 'meher-2013' },
    },
  },
];
