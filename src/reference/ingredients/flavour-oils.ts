/** Mint and other herb oils, and cardamom. */

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
