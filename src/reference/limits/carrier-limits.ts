/** Carriers, antifoam, alcohol: what US, EU and Codex texts give for a flavoured drink. */

import { codex, drinks, elsewhere, eu, type LimitFigure, most, unnumbered, us } from './published-figure.ts';

export const carrierLimits: readonly LimitFigure[] = [
  most('propylene glycol', 'us', 20_000, 'mg/kg', {
    food: 'all other food, drinks without alcohol among it, as served',
    ...us('184.1666(d)'),
  }),
  elsewhere('propylene glycol', 'us', 50_000, { food: 'alcoholic drinks, as served', ...us('184.1666(d)') }),
  elsewhere('propylene glycol', 'us', 970_000, { food: 'seasonings and flavourings', ...us('184.1666(d)') }),
  elsewhere('propylene glycol', 'us', 240_000, { food: 'confections and frostings', ...us('184.1666(d)') }),
  elsewhere('propylene glycol', 'us', 25_000, { food: 'frozen dairy products', ...us('184.1666(d)') }),
  most('propylene glycol', 'eu', 1000, 'mg/L', {
    food: 'drinks but cream liqueurs, from all sources',
    ...eu('Annex III Part 1, note, as of December 2011', 'text'),
  }),
  elsewhere('propylene glycol', 'eu', 3000, {
    food: 'food from all sources, with E 1505, E 1517 and E 1518',
    ...eu('Annex III Part 1, note, as of December 2011', 'text'),
  }),
  unnumbered('glycerol', 'eu', 'as needed', eu('Annex II, 14.1.4')),
  unnumbered('glycerol', 'us', 'practice', us('182.1320')),
  unnumbered('triacetin', 'us', 'practice', us('184.1901(c)')),
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
  most('silicone', 'us', 10, 'mg/kg', { food: 'food as ready to consume', ...us('173.340(a)(2)') }),
  most('silicone', 'eu', 10, 'mg/L', eu(drinks)),
  codex('silicone', 20),
];
