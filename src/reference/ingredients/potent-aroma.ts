/** Aroma compounds that work at parts per billion: weighed as stock dilutions, never neat. */

import type { Ingredient } from '../ingredient.ts';
import { recalledDensity, threshold, useLevel } from './aroma-makers.ts';
import { between, molarMass, recalled } from './figure-makers.ts';

const handling =
  'smelled at parts per billion or less: keep it to a stock dilution, closed and away from the drink';

export const potentAroma: readonly Ingredient[] = [
  {
    name: '4-methoxy-2-methyl-2-butanethiol',
    role: 'aroma',
    aliases: ['cassis thiol', 'blackcurrant thiol', '4-methoxy-2-methylbutane-2-thiol'],
    cas: '94087-83-9',
    formula: 'C6H14OS',
    potent: true,
    figures: {
      density: recalledDensity(0.91),
      'molar mass': molarMass(134.237),
      'odour threshold': threshold(0.00002, 'belitz-2009'),
      'use level': useLevel(1e-5, 1e-3),
    },
    notes: [handling],
  },
  {
    name: '1-p-menthene-8-thiol',
    role: 'aroma',
    aliases: ['grapefruit thiol', 'p-menth-1-ene-8-thiol', 'menthene thiol'],
    searchWords: ['grapefruit mercaptan', 'thioterpineol'],
    cas: '71159-90-5',
    formula: 'C10H18S',
    potent: true,
    figures: {
      density: {
        value: 0.948,
        temperatureCelsius: 25,
        source: 'encyclopaedia-menthenethiol',
        note: 'the R form',
      },
      'molar mass': molarMass(170.314),
      'odour threshold': threshold(0.0001, 'encyclopaedia-menthenethiol', {
        note: 'racemate; the two forms differ',
        others: [
          threshold(0.00002, 'belitz-2009', { note: 'R form' }),
          threshold(0.00002, 'belitz-1987', { note: 'R form' }),
          threshold(0.00008, 'encyclopaedia-menthenethiol', { note: 'S form' }),
        ],
      }),
      'use level': useLevel(1e-5, 1e-3),
    },
    notes: [handling],
  },
  {
    name: '4-mercapto-4-methyl-2-pentanone',
    role: 'aroma',
    aliases: ['box tree thiol', '4-methyl-4-sulfanylpentan-2-one', '4MMP'],
    searchWords: ['cat ketone'],
    cas: '19872-52-7',
    formula: 'C6H12OS',
    potent: true,
    figures: {
      density: recalledDensity(0.98, { low: 0.96, high: 1 }),
      'molar mass': molarMass(132.221),
      'odour threshold': threshold(0.0001, 'belitz-2009', {
        others: [threshold(0.0008, 'dubourdieu-tominaga', { note: 'model wine' })],
      }),
      'use level': useLevel(1e-5, 1e-3),
    },
    notes: [handling],
  },
  {
    name: '3-mercaptohexanol',
    role: 'aroma',
    aliases: ['3-mercapto-1-hexanol', '3-sulfanylhexan-1-ol', 'passion fruit thiol'],
    cas: '51755-83-0',
    formula: 'C6H14OS',
    potent: true,
    figures: {
      density: recalledDensity(0.97),
      'molar mass': molarMass(134.237),
      'odour threshold': recalled(0.017, {
        source: 'aroma-handbooks',
        others: [
          threshold(0.05, 'tominaga-2006', { note: 'R form, model wine' }),
          threshold(0.06, 'tominaga-2006', { note: 'S form, model wine' }),
        ],
      }),
      'use level': useLevel(0.001, 0.1),
    },
    notes: [handling],
  },
  {
    name: '3-mercaptohexyl acetate',
    role: 'aroma',
    aliases: ['3-sulfanylhexyl acetate', 'passion fruit thiol acetate'],
    cas: '136954-20-6',
    formula: 'C8H16O2S',
    potent: true,
    figures: {
      density: recalledDensity(0.99),
      'molar mass': molarMass(176.274),
      'odour threshold': recalled(0.002, {
        source: 'aroma-handbooks',
        others: [
          threshold(0.009, 'tominaga-2006', { note: 'R form, model wine' }),
          threshold(0.0025, 'tominaga-2006', { note: 'S form, model wine' }),
          threshold(0.004, 'tominaga-2006', { note: 'racemate, model wine' }),
        ],
      }),
      'use level': useLevel(0.001, 0.1),
    },
    notes: [handling],
  },
  {
    name: 'beta-damascenone',
    role: 'aroma',
    aliases: ['damascenone'],
    cas: '23696-85-7',
    formula: 'C13H18O',
    potent: true,
    figures: {
      density: recalledDensity(0.95),
      'molar mass': molarMass(190.286),
      'odour threshold': threshold(0.009, 'belitz-1987', {
        note: 'printed as damascone',
        others: [recalled(0.002, { source: 'aroma-handbooks' })],
      }),
      'use level': useLevel(0.001, 0.1),
    },
    notes: [handling],
  },
  {
    name: '2-isobutyl-3-methoxypyrazine',
    role: 'aroma',
    aliases: ['bell pepper pyrazine', 'IBMP'],
    cas: '24683-00-9',
    formula: 'C9H14N2O',
    potent: true,
    figures: {
      density: recalledDensity(0.99),
      'molar mass': molarMass(166.224),
      'odour threshold': threshold(0.002, 'belitz-1987', {
        note: 'printed without the methoxy',
        others: [between(0.001, 0.002, { source: 'aroma-handbooks', fromMemory: true })],
      }),
      'use level': useLevel(0.001, 0.05),
    },
    notes: [handling],
  },
  {
    name: 'sotolon',
    role: 'aroma',
    aliases: ['caramel furanone', 'fenugreek lactone'],
    cas: '28664-35-9',
    formula: 'C6H8O3',
    potent: true,
    figures: {
      density: recalledDensity(1.19),
      'molar mass': molarMass(128.127),
      'odour threshold': threshold(7, 'belitz-2009', {
        note: 'S form; published values span a factor of 90,000',
        others: [
          threshold(90, 'belitz-2009', { note: 'R form' }),
          recalled(0.001, { source: 'aroma-handbooks' }),
        ],
      }),
      'use level': useLevel(0.01, 1),
    },
    notes: [handling],
  },
  {
    name: 'geosmin',
    role: 'aroma',
    aliases: ['earth alcohol'],
    cas: '19700-21-1',
    formula: 'C12H22O',
    potent: true,
    figures: {
      density: recalledDensity(0.985),
      'molar mass': molarMass(182.307),
      'odour threshold': threshold(0.004, 'geosmin-review', {
        others: [threshold(0.01, 'geosmin-review'), threshold(0.02, 'geosmin-thesis')],
      }),
    },
    notes: [handling],
  },
  {
    name: 'alpha-sinensal',
    role: 'aroma',
    aliases: ['sinensal'],
    cas: '17909-77-2',
    formula: 'C15H22O',
    potent: true,
    figures: {
      density: recalledDensity(0.92),
      'molar mass': molarMass(218.34),
      'odour threshold': threshold(0.05, 'belitz-2009'),
      'use level': useLevel(0.01, 1),
    },
    notes: [handling],
  },
];
