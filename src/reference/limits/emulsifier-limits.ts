/** Emulsifiers, stabilisers and weighting agents: what US, EU and Codex texts give for a flavoured drink. */

import { codex, elsewhere, type LimitFigure, most, unnumbered } from './published-figure.ts';

const adjuvant = 'minimum quantity for the effect';

export const emulsifierLimits: readonly LimitFigure[] = [
  unnumbered('polysorbate 80', 'us', 'no number', {
    source: 'cfr-21',
    at: '172.840(c) and 172.515(b)',
    read: 'text',
    note: adjuvant,
  }),
  elsewhere('polysorbate 80', 'us', 500, {
    food: 'pickles',
    source: 'cfr-21',
    at: '172.840(c)(3)',
    read: 'text',
  }),
  elsewhere('polysorbate 80', 'us', 30, {
    food: 'dill oil in canned green beans',
    source: 'cfr-21',
    at: '172.840(c)(7)',
    read: 'text',
  }),
  unnumbered('polysorbate 60', 'us', 'no number', {
    source: 'cfr-21',
    at: '172.836(c) and 172.515(b)',
    read: 'text',
    note: adjuvant,
  }),
  elsewhere('polysorbate 60', 'us', 45_000, {
    food: 'mixes without alcohol for alcoholic drinks',
    source: 'cfr-21',
    at: '172.836(c)(10)',
    read: 'text',
  }),
  elsewhere('polysorbate 60', 'us', 45_000, {
    food: 'dry soft drink mix, to wet its colours',
    source: 'cfr-21',
    at: '172.836(c)(15)(i)',
    read: 'text',
  }),
  elsewhere('polysorbate 60', 'us', 500, {
    food: 'chocolate syrup',
    source: 'cfr-21',
    at: '172.836(c)(14)',
    read: 'text',
  }),
  unnumbered('polysorbate 65', 'us', 'none found', { source: 'cfr-21', at: '172.838(c)', read: 'in part' }),
  unnumbered('polysorbate 20', 'us', 'no number', {
    source: 'cfr-21',
    at: '172.515(b)',
    read: 'text',
    note: adjuvant,
  }),
  unnumbered('polysorbates', 'eu', 'none found', {
    source: 'eu-1333-2008',
    at: 'Annex II Part E, 14.1.4',
    read: 'from memory',
    note: 'may arrive with a flavouring',
  }),
  elsewhere('polysorbates', 'eu', 10_000, {
    food: 'flavourings, by mass of the flavouring',
    source: 'eu-1333-2008',
    at: 'Annex III Part 4',
    read: 'from memory',
  }),
  elsewhere('polysorbates', 'eu', 1000, {
    food: 'food with liquid smoke or spice oleoresin flavourings',
    source: 'eu-1333-2008',
    at: 'Annex III Part 4',
    read: 'elsewhere quoted',
  }),
  codex('polysorbates', 500),
  unnumbered('sorbitan monostearate', 'us', 'no number', {
    source: 'cfr-21',
    at: '172.842(c) and 172.515(b)',
    read: 'text',
    note: adjuvant,
  }),
  unnumbered('sorbitan esters', 'eu', 'none found', {
    source: 'eu-1333-2008',
    at: 'Annex II Part E, 14.1.4',
    read: 'from memory',
  }),
  unnumbered('sucrose esters', 'us', 'none found', {
    source: 'cfr-21',
    at: '172.859(c)',
    read: 'text',
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
    source: 'eu-1333-2008',
    at: 'Annex II Part E, 14.1.4',
    read: 'from memory',
  }),
  most('gum arabic', 'us', 20_000, 'mg/kg', {
    food: 'drinks and drink bases, as served',
    source: 'cfr-21',
    at: '184.1330(c)',
    read: 'text',
  }),
  unnumbered('octenyl succinate starch', 'eu', 'as needed', {
    source: 'eu-1333-2008',
    at: 'Annex II group I',
    read: 'from memory',
  }),
  unnumbered('octenyl succinate starch', 'us', 'no number', {
    source: 'cfr-21',
    at: '172.892(d)',
    read: 'text',
    note: 'it limits how the starch is made',
  }),
  most('quillaia saponins', 'eu', 170, 'mg/L', {
    source: 'eu-2025-2084',
    at: 'Annex, 14.1.4',
    read: 'elsewhere quoted',
    note: 'before it, 200 mg/L of dry extract (from memory)',
  }),
  codex('quillaia saponins', 50),
  unnumbered('quillaia extract', 'us', 'no number', {
    source: 'cfr-21',
    at: '172.510',
    read: 'from memory',
    note: adjuvant,
  }),
  codex('propylene glycol esters', 500),
  codex('polyglycerol esters', 5000),
  codex('diacetyl tartaric esters', 5000),
  codex('beta-cyclodextrin', 500),
  most('sucrose acetate isobutyrate', 'us', 300, 'mg/kg', {
    food: 'drinks without alcohol, in emulsions of flavouring oils',
    source: 'cfr-21',
    at: '172.833(d)',
    read: 'text',
  }),
  most('sucrose acetate isobutyrate', 'eu', 300, 'mg/L', {
    food: 'cloudy flavoured drinks only',
    source: 'eu-1333-2008',
    at: 'Annex II Part E, 14.1.4',
    read: 'elsewhere quoted',
  }),
  codex('sucrose acetate isobutyrate', 500),
  most('rosin esters', 'us', 100, 'mg/kg', {
    food: 'drinks with citrus oils',
    source: 'cfr-21',
    at: '172.735(b)',
    read: 'text',
  }),
  most('rosin esters', 'eu', 100, 'mg/L', {
    food: 'cloudy flavoured drinks only',
    source: 'eu-1333-2008',
    at: 'Annex II Part E, 14.1.4',
    read: 'elsewhere quoted',
  }),
  codex('rosin esters', 150),
];
