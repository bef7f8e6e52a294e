/** Phenols, aldehydes and ketones of herb and spice oils, and the fatty aldehydes of citrus: they count as oil. */

import type { Figure, Ingredient } from '../ingredient.ts';
import { handbook, logP, molarMass, recalled, solubility } from './figure-makers.ts';

const recalledSmell = (low: number, high: number): Figure =>
  recalled(low, { low, high, source: 'aroma-handbooks', note: 'the lower end of the range' });

/** mg/kg in finished drinks without alcohol; the upper end is the figure. */
const use = (low: number, high: number): Figure =>
  recalled(high, {
    low,
    high,
    source: 'fema-use-survey',
    note: 'order of magnitude; the upper end of the range',
  });

export const oilCompounds: readonly Ingredient[] = [
  {
    name: 'eugenol',
    role: 'oil',
    cas: '97-53-0',
    formula: 'C10H12O2',
    figures: {
      density: handbook(1.0652, 20),
      'molar mass': molarMass(164.204),
      'refractive index': handbook(1.5405, 20),
      viscosity: {
        value: 9.1,
        temperatureCelsius: 20,
        source: 'viswanath-natarajan',
        others: [{ value: 7.3, temperatureCelsius: 25, source: 'viswanath-natarajan' }],
      },
      'log p': logP(2.27),
      'water solubility': solubility(4500, {
        others: [solubility(1150), recalled(2460, { temperatureCelsius: 25 })],
      }),
      'odour threshold': recalledSmell(6, 30),
      'use level': use(0.5, 2),
    },
  },
  {
    name: 'cinnamaldehyde',
    role: 'oil',
    aliases: ['trans-cinnamaldehyde', 'cinnamic aldehyde'],
    cas: '104-55-2',
    formula: 'C9H8O',
    figures: {
      density: handbook(1.0497, 20),
      'molar mass': molarMass(132.162),
      'refractive index': handbook(1.6195, 20),
      'log p': logP(1.9),
      'water solubility': solubility(1420, { low: 1080, high: 2110 }),
      'odour threshold': recalledSmell(50, 750),
      'use level': use(1, 9),
    },
  },
  {
    name: 'menthol',
    role: 'oil',
    aliases: ['l-menthol', '(-)-menthol'],
    cas: '2216-51-5',
    formula: 'C10H20O',
    figures: {
      density: handbook(0.903, 15),
      'molar mass': molarMass(156.269),
      'refractive index': handbook(1.46, 22),
      'flash point': { value: 93, source: 'flash-point-set' },
      'log p': logP(3.4),
      'water solubility': solubility(473, { low: 375, high: 510 }),
      'odour threshold': recalledSmell(40, 900),
      'use level': use(5, 35),
    },
    notes: ['melts at 42 C'],
  },
  {
    name: 'menthone',
    role: 'oil',
    aliases: ['l-menthone'],
    cas: '14073-97-3',
    formula: 'C10H18O',
    figures: {
      density: handbook(0.8954, 20),
      'molar mass': molarMass(154.253),
      'refractive index': handbook(1.4505, 20),
      'log p': logP(3.05),
      'water solubility': solubility(595, { low: 500, high: 690 }),
    },
  },
  {
    name: '(R)-carvone',
    role: 'oil',
    aliases: ['carvone', 'l-carvone', '(-)-carvone'],
    cas: '6485-40-1',
    formula: 'C10H14O',
    figures: {
      density: handbook(0.9593, 20),
      'molar mass': molarMass(150.221),
      'refractive index': handbook(1.4988, 20),
      'log p': logP(2.71),
      'water solubility': solubility(1300),
      'surface tension': { value: 34.7, temperatureCelsius: 20, source: 'jasper-1972', note: 'the S form' },
    },
    notes: ['the spearmint form'],
  },
  {
    name: '(S)-carvone',
    role: 'oil',
    aliases: ['d-carvone', '(+)-carvone'],
    cas: '2244-16-8',
    formula: 'C10H14O',
    figures: {
      density: handbook(0.965, 20),
      'molar mass': molarMass(150.221),
      'refractive index': handbook(1.4989, 20),
      'log p': logP(2.71),
      'water solubility': solubility(1300, { others: [solubility(1880)] }),
    },
    notes: ['the caraway form'],
  },
  {
    name: 'anethole',
    role: 'oil',
    aliases: ['trans-anethole'],
    cas: '4180-23-8',
    formula: 'C10H12O',
    figures: {
      density: handbook(0.9882, 20),
      'molar mass': molarMass(148.205),
      'refractive index': handbook(1.5615, 20),
      'flash point': { value: 89, source: 'flash-point-set' },
      'log p': recalled(3.35, { low: 3.3, high: 3.4 }),
      'water solubility': solubility(111),
    },
  },
  {
    name: 'octanal',
    role: 'oil',
    aliases: ['aldehyde C-8'],
    cas: '124-13-0',
    formula: 'C8H16O',
    figures: {
      density: handbook(0.8211, 20),
      'molar mass': molarMass(128.215),
      'refractive index': handbook(1.4217, 20),
      'flash point': { value: 51, source: 'flash-point-set' },
      viscosity: { value: 1.22, temperatureCelsius: 20, source: 'perry-viscosity' },
      'water solubility': solubility(560),
      'odour threshold': recalled(0.7, { source: 'aroma-handbooks' }),
      'use level': use(0.1, 1),
    },
  },
  {
    name: 'decanal',
    role: 'oil',
    aliases: ['aldehyde C-10'],
    cas: '112-31-2',
    formula: 'C10H20O',
    figures: {
      density: handbook(0.83, 15),
      'molar mass': molarMass(156.269),
      'refractive index': handbook(1.4287, 20),
      'flash point': { value: 85, source: 'flash-point-set' },
      viscosity: { value: 1.64, temperatureCelsius: 20, source: 'perry-viscosity' },
      'water solubility': solubility(29),
      'odour threshold': recalledSmell(0.1, 2),
      'use level': use(0.1, 3),
    },
  },
];
