/** Preservatives, acids, chelator, bitter and stimulant: what US, EU and Codex texts give for a flavoured drink. */

import { codex, drinks, eu, group, type LimitFigure, most, unnumbered, us } from './published-figure.ts';

export const preservativeLimits: readonly LimitFigure[] = [
  most('sodium benzoate', 'us', 1000, 'mg/kg', { food: 'food', ...us('184.1733(d)') }),
  most('benzoic', 'eu', 150, 'mg/L', eu(drinks)),
  codex('benzoic', 250, { read: 'abstract' }),
  unnumbered('sorbic', 'us', 'practice', us('182.3640')),
  most('sorbic', 'eu', 300, 'mg/L', {
    food: 'flavoured soft drinks without benzoates',
    when: 'without benzoates',
    ...eu(drinks),
  }),
  most('sorbic', 'eu', 250, 'mg/L', {
    food: 'flavoured soft drinks with benzoates',
    when: 'with benzoates',
    ...eu(drinks),
  }),
  codex('sorbic', 500),
  most('dimethyl dicarbonate', 'us', 250, 'mg/kg', {
    food: 'listed drinks only, such as ready-to-drink tea',
    ...us('172.133', 'in part'),
  }),
  most('dimethyl dicarbonate', 'eu', 250, 'mg/L', {
    food: 'flavoured soft drinks, as added, nothing left',
    ...eu(drinks),
  }),
  most('sulfur dioxide', 'eu', 20, 'mg/L', {
    food: 'flavoured soft drinks, carried over from fruit juice concentrate',
    ...eu(drinks, 'from memory'),
  }),
  codex('sulfur dioxide', 70),
  most('edta', 'us', 33, 'mg/kg', { food: 'canned carbonated soft drinks', ...us('172.120(b)(1)') }),
  unnumbered('edta', 'eu', 'none found', eu(drinks, 'from memory')),
  codex('edta', 200, { read: 'from memory' }),
  most('phosphorus pentoxide', 'eu', 700, 'mg/L', { ...eu(drinks), note: 'sport drinks 500 (from memory)' }),
  unnumbered('phosphoric acid', 'us', 'practice', { source: 'cfr-21-later', at: '182.1073', read: 'text' }),
  most('malic', 'us', 34_000, 'mg/kg', { food: 'drinks without alcohol, as served', ...us('184.1069(d)') }),
  unnumbered('malic', 'eu', 'as needed', eu(group)),
  unnumbered('citric', 'us', 'practice', us('184.1033', 'elsewhere quoted')),
  unnumbered('citric', 'eu', 'as needed', eu(group)),
  unnumbered('tartaric', 'us', 'practice', us('184.1099', 'elsewhere quoted')),
  unnumbered('tartaric', 'eu', 'as needed', eu(group)),
  unnumbered('ascorbic', 'us', 'practice', { source: 'cfr-21-later', at: '182.3013', read: 'text' }),
  unnumbered('ascorbic', 'eu', 'as needed', eu(group)),
  most('quinine', 'us', 83, 'mg/kg', { food: 'carbonated drinks, named on the label', ...us('172.575') }),
  most('quinine', 'eu', 100, 'mg/kg', {
    food: 'drinks without alcohol, as a flavouring',
    source: 'eu-872-2012',
    at: 'Annex',
    read: 'from memory',
  }),
  most('caffeine', 'us', 200, 'mg/kg', { food: 'cola-type drinks', ...us('182.1180') }),
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
