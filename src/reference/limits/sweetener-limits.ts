/** Sweeteners, and what oils bring by nature: what US, EU and Codex texts give for a flavoured drink. */

import type { FormName } from './forms.ts';
import { codex, type HowRead, type LimitFigure, most, unnumbered, us } from './published-figure.ts';

const reduced = 'energy-reduced flavoured drinks, or without added sugar';

const inDiet = (
  form: FormName,
  value: number,
  read: HowRead = 'elsewhere quoted',
  source = 'eu-1333-2008',
): LimitFigure =>
  most(form, 'eu', value, 'mg/L', { food: reduced, source, at: 'Annex II Part E, 14.1.4', read });
const byNature = (
  form: FormName,
  value: number,
  food = 'drinks without alcohol, by nature in what flavours them',
) =>
  most(form, 'eu', value, 'mg/kg', {
    food,
    source: 'eu-1334-2008',
    at: 'Annex III Part B',
    read: 'from memory',
  });
export const sweetenerLimits: readonly LimitFigure[] = [
  inDiet('acesulfame', 350),
  unnumbered('acesulfame', 'us', 'practice', us('172.800')),
  inDiet('aspartame', 600),
  unnumbered('aspartame', 'us', 'practice', {
    ...us('172.804'),
    note: 'phenylalanine is named on the label',
  }),
  inDiet('cyclamic', 250),
  codex('cyclamic', 350),
  inDiet('saccharin', 80),
  {
    form: 'saccharin',
    body: 'us',
    kind: 'most',
    value: 405.8,
    unit: 'mg/L',
    food: 'drinks for special diets (12 mg in a US fluid ounce)',
    isDrink: true,
    ...us('180.37(d)(1)'),
  },
  inDiet('sucralose', 300),
  unnumbered('sucralose', 'us', 'practice', us('172.831', 'from memory')),
  codex('sucralose', 300),
  inDiet('steviol', 80, 'from memory', 'eu-1131-2011'),
  inDiet('neotame', 20),
  unnumbered('neotame', 'us', 'practice', us('172.829', 'from memory')),
  codex('neotame', 33),
];

/** Adopted figures; those of the proposal were read and agree. They may not be added as such. */
export const natureLimits: readonly LimitFigure[] = [
  byNature('estragole', 10),
  byNature('methyleugenol', 1),
  byNature('safrole', 1),
  byNature('quassin', 0.5),
  byNature('pulegone', 20, 'drinks without alcohol with mint, by nature in it'),
  byNature('thujone', 0.5, 'drinks without alcohol from Artemisia, by nature in it'),
];
