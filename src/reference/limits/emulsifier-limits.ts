/** Emulsifiers, stabilisers and weighting agents: what US, EU and Codex texts give for a flavoured drink. */

import {
  codex,
  drinks,
  elsewhere,
  eu,
  group,
  type LimitFigure,
  most,
  unnumbered,
  us,
} from './published-figure.ts';

const adjuvant = 'minimum quantity for the effect';

export const emulsifierLimits: readonly LimitFigure[] = [
  unnumbered('polysorbate 80', 'us', 'no number', { ...us('172.840(c) and 172.515(b)'), note: adjuvant }),
  elsewhere('polysorbate 80', 'us', 500, { food: 'pickles', ...us('172.840(c)(3)') }),
  elsewhere('polysorbate 80', 'us', 30, { food: 'dill oil in canned green beans', ...us('172.840(c)(7)') }),
  unnumbered('polysorbate 60', 'us', 'no number', { ...us('172.836(c) and 172.515(b)'), note: adjuvant }),
  elsewhere('polysorbate 60', 'us', 45_000, {
    food: 'mixes without alcohol for alcoholic drinks',
    ...us('172.836(c)(10)'),
  }),
  elsewhere('polysorbate 60', 'us', 45_000, {
    food: 'dry soft drink mix, to wet its colours',
    ...us('172.836(c)(15)(i)'),
  }),
  elsewhere('polysorbate 60', 'us', 500, { food: 'chocolate syrup', ...us('172.836(c)(14)') }),
  unnumbered('polysorbate 65', 'us', 'none found', us('172.838(c)', 'in part')),
  unnumbered('polysorbate 20', 'us', 'no number', { ...us('172.515(b)'), note: adjuvant }),
  unnumbered('polysorbates', 'eu', 'none found', {
    ...eu(drinks, 'from memory'),
    note: 'may arrive with a flavouring',
  }),
  elsewhere('polysorbates', 'eu', 10_000, {
    food: 'flavourings, by mass of the flavouring',
    ...eu('Annex III Part 4', 'from memory'),
  }),
  elsewhere('polysorbates', 'eu', 1000, {
    food: 'food with liquid smoke or spice oleoresin flavourings',
    ...eu('Annex III Part 4'),
  }),
  codex('polysorbates', 500),
  unnumbered('sorbitan monostearate', 'us', 'no number', {
    ...us('172.842(c) and 172.515(b)'),
    note: adjuvant,
  }),
  unnumbered('sorbitan esters', 'eu', 'none found', eu(drinks, 'from memory')),
  unnumbered('sucrose esters', 'us', 'none found', {
    ...us('172.859(c)'),
    note: 'of drinks it names coffee and tea with dairy',
  }),
  most('sucrose esters', 'eu', 30, 'mg/L', {
    food: 'water-based clear flavoured drinks, carried over from the flavouring',
    source: 'eu-818-2013',
    at: 'Annex',
    read: 'from memory',
    note: 'the title was read, the figure was not',
  }),
  elsewhere('sucrose esters', 'eu', 15_000, {
    food: 'flavouring for clear flavoured drinks, by mass of the flavouring',
    source: 'eu-818-2013',
    at: 'Annex',
    read: 'from memory',
  }),
  elsewhere('sucrose esters', 'eu', 5000, {
    food: 'aniseed, dairy, coconut and almond drinks (per litre)',
    ...eu(drinks, 'from memory'),
  }),
  most('gum arabic', 'us', 20_000, 'mg/kg', {
    food: 'drinks and drink bases, as served',
    ...us('184.1330(c)'),
  }),
  unnumbered('octenyl succinate starch', 'eu', 'as needed', eu(group, 'from memory')),
  unnumbered('octenyl succinate starch', 'us', 'no number', {
    ...us('172.892(d)'),
    note: 'it limits how the starch is made',
  }),
  most('quillaia saponins', 'eu', 170, 'mg/L', {
    source: 'eu-2025-2084',
    at: 'Annex, 14.1.4',
    read: 'elsewhere quoted',
    note: 'before it, 200 mg/L of dry extract (from memory)',
  }),
  codex('quillaia saponins', 50),
  unnumbered('quillaia extract', 'us', 'no number', { ...us('172.510', 'from memory'), note: adjuvant }),
  codex('propylene glycol esters', 500),
  codex('polyglycerol esters', 5000),
  codex('diacetyl tartaric esters', 5000),
  codex('beta-cyclodextrin', 500),
  most('sucrose acetate isobutyrate', 'us', 300, 'mg/kg', {
    food: 'drinks without alcohol, in emulsions of flavouring oils',
    ...us('172.833(d)'),
  }),
  most('sucrose acetate isobutyrate', 'eu', 300, 'mg/L', {
    food: 'cloudy flavoured drinks only',
    ...eu(drinks),
  }),
  codex('sucrose acetate isobutyrate', 500),
  most('rosin esters', 'us', 100, 'mg/kg', { food: 'drinks with citrus oils', ...us('172.735(b)') }),
  most('rosin esters', 'eu', 100, 'mg/L', { food: 'cloudy flavoured drinks only', ...eu(drinks) }),
  codex('rosin esters', 150),
];
