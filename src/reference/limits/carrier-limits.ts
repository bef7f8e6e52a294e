/** Carriers, antifoam, alcohol: what US, EU and Codex texts give for a flavoured drink. */

import { codex, elsewhere, type LimitFigure, most, unnumbered } from './published-figure.ts';

export const carrierLimits: readonly LimitFigure[] = [
  most('propylene glycol', 'us', 20_000, 'mg/kg', {
    food: 'all other food, drinks without alcohol among it, as served',
    source: 'cfr-21',
    at: '184.1666(d)',
    read: 'text',
  }),
  elsewhere('propylene glycol', 'us', 50_000, {
    food: 'alcoholic drinks, as served',
    source: 'cfr-21',
    at: '184.1666(d)',
    read: 'text',
  }),
  elsewhere('propylene glycol', 'us', 970_000, {
    food: 'seasonings and flavourings',
    source: 'cfr-21',
    at: '184.1666(d)',
    read: 'text',
  }),
  elsewhere('propylene glycol', 'us', 240_000, {
    food: 'confections and frostings',
    source: 'cfr-21',
    at: '184.1666(d)',
    read: 'text',
  }),
  elsewhere('propylene glycol', 'us', 25_000, {
    food: 'frozen dairy products',
    source: 'cfr-21',
    at: '184.1666(d)',
    read: 'text',
  }),
  most('propylene glycol', 'eu', 1000, 'mg/L', {
    food: 'drinks but cream liqueurs, from all sources',
    source: 'eu-1333-2008',
    at: 'Annex III Part 1, note, as of December 2011',
    read: 'text',
  }),
  elsewhere('propylene glycol', 'eu', 3000, {
    food: 'food from all sources, with E 1505, E 1517 and E 1518',
    source: 'eu-1333-2008',
    at: 'Annex III Part 1, note, as of December 2011',
    read: 'text',
  }),
  unnumbered('glycerol', 'eu', 'as needed', {
    source: 'eu-1333-2008',
    at: 'Annex II, 14.1.4',
    read: 'elsewhere quoted',
  }),
  unnumbered('glycerol', 'us', 'practice', { source: 'cfr-21', at: '182.1320', read: 'text' }),
  unnumbered('triacetin', 'us', 'practice', { source: 'cfr-21', at: '184.1901(c)', read: 'text' }),
  codex('triethyl citrate', 200),
  codex('polyethylene glycol', 1000),
  {
    form: 'ethanol',
    body: 'us',
    kind: 'label',
    value: 0.5,
    unit: '% v/v',
    food: 'drinks that are called non-alcoholic',
    isDrink: true,
    source: 'cfr-27',
    at: '7.65',
    read: 'from memory',
  },
  {
    form: 'ethanol',
    body: 'eu',
    kind: 'label',
    value: 1.2,
    unit: '% v/v',
    food: 'drinks whose strength stands on the label',
    isDrink: true,
    source: 'eu-1169-2011',
    at: 'article 9(1)(k)',
    read: 'from memory',
  },
  most('silicone', 'us', 10, 'mg/kg', {
    food: 'food as ready to consume',
    source: 'cfr-21',
    at: '173.340(a)(2)',
    read: 'text',
  }),
  most('silicone', 'eu', 10, 'mg/L', {
    source: 'eu-1333-2008',
    at: 'Annex II Part E, 14.1.4',
    read: 'elsewhere quoted',
  }),
  codex('silicone', 20),
];
