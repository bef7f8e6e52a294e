/** Preservatives, acids, chelator, bitter and stimulant: what US, EU and Codex texts give for a flavoured drink. */

import { codex, type LimitFigure, most, unnumbered } from './published-figure.ts';

const annex = { source: 'eu-1333-2008', at: 'Annex II Part E, 14.1.4' } as const;

export const preservativeLimits: readonly LimitFigure[] = [
  most('sodium benzoate', 'us', 1000, 'mg/kg', {
    food: 'food',
    source: 'cfr-21',
    at: '184.1733(d)',
    read: 'text',
  }),
  most('benzoic', 'eu', 150, 'mg/L', { ...annex, read: 'elsewhere quoted' }),
  codex('benzoic', 250, { read: 'abstract' }),
  unnumbered('sorbic', 'us', 'practice', { source: 'cfr-21', at: '182.3640', read: 'text' }),
  most('sorbic', 'eu', 300, 'mg/L', {
    ...annex,
    food: 'flavoured soft drinks without benzoates',
    when: 'without benzoates',
    read: 'elsewhere quoted',
  }),
  most('sorbic', 'eu', 250, 'mg/L', {
    ...annex,
    food: 'flavoured soft drinks with benzoates',
    when: 'with benzoates',
    read: 'elsewhere quoted',
  }),
  codex('sorbic', 500),
  most('dimethyl dicarbonate', 'us', 250, 'mg/kg', {
    food: 'listed drinks only, such as ready-to-drink tea',
    source: 'cfr-21',
    at: '172.133',
    read: 'in part',
  }),
  most('dimethyl dicarbonate', 'eu', 250, 'mg/L', {
    ...annex,
    food: 'flavoured soft drinks, as added, nothing left',
    read: 'elsewhere quoted',
  }),
  most('sulfur dioxide', 'eu', 20, 'mg/L', {
    ...annex,
    food: 'flavoured soft drinks, carried over from fruit juice concentrate',
    read: 'from memory',
  }),
  codex('sulfur dioxide', 70),
  most('edta', 'us', 33, 'mg/kg', {
    food: 'canned carbonated soft drinks',
    source: 'cfr-21',
    at: '172.120(b)(1)',
    read: 'text',
  }),
  unnumbered('edta', 'eu', 'none found', { ...annex, read: 'from memory' }),
  codex('edta', 200, { read: 'from memory' }),
  most('phosphorus pentoxide', 'eu', 700, 'mg/L', {
    ...annex,
    read: 'elsewhere quoted',
    note: 'sport drinks 500 (from memory)',
  }),
  unnumbered('phosphoric acid', 'us', 'practice', { source: 'cfr-21-later', at: '182.1073', read: 'text' }),
  most('malic', 'us', 34_000, 'mg/kg', {
    food: 'drinks without alcohol, as served',
    source: 'cfr-21',
    at: '184.1069(d)',
    read: 'text',
  }),
  unnumbered('malic', 'eu', 'as needed', {
    source: 'eu-1333-2008',
    at: 'Annex II group I',
    read: 'elsewhere quoted',
  }),
  unnumbered('citric', 'us', 'practice', { source: 'cfr-21', at: '184.1033', read: 'elsewhere quoted' }),
  unnumbered('citric', 'eu', 'as needed', {
    source: 'eu-1333-2008',
    at: 'Annex II group I',
    read: 'elsewhere quoted',
  }),
  unnumbered('tartaric', 'us', 'practice', { source: 'cfr-21', at: '184.1099', read: 'elsewhere quoted' }),
  unnumbered('tartaric', 'eu', 'as needed', {
    source: 'eu-1333-2008',
    at: 'Annex II group I',
    read: 'elsewhere quoted',
  }),
  unnumbered('ascorbic', 'us', 'practice', { source: 'cfr-21-later', at: '182.3013', read: 'text' }),
  unnumbered('ascorbic', 'eu', 'as needed', {
    source: 'eu-1333-2008',
    at: 'Annex II group I',
    read: 'elsewhere quoted',
  }),
  most('quinine', 'us', 83, 'mg/kg', {
    food: 'carbonated drinks, named on the label',
    source: 'cfr-21',
    at: '172.575',
    read: 'text',
  }),
  most('quinine', 'eu', 100, 'mg/kg', {
    food: 'drinks without alcohol, as a flavouring',
    source: 'eu-872-2012',
    at: 'Annex',
    read: 'from memory',
  }),
  most('caffeine', 'us', 200, 'mg/kg', {
    food: 'cola-type drinks',
    source: 'cfr-21',
    at: '182.1180',
    read: 'text',
  }),
  most('caffeine', 'eu', 150, 'mg/kg', {
    food: 'drinks without alcohol, as a flavouring',
    source: 'eu-2018-1482',
    at: 'Annex',
    read: 'elsewhere quoted',
  }),
  {
    form: 'caffeine',
    body: 'eu',
    kind: 'label',
    value: 150,
    unit: 'mg/L',
    food: 'drinks whose label warns children and pregnant women',
    isDrink: true,
    source: 'eu-1169-2011',
    at: 'Annex III, point 4',
    read: 'elsewhere quoted',
  },
];
