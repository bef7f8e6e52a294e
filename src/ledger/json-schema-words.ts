/** What is said of each key of each kind of file. It stands beside the shapes, and they alone say which keys there are. */

import { figureUnits } from '../reference/ingredient.ts';
import {
  balanceSaid,
  dropperKeysSaid,
  dropperSaid,
  foamTestSaid,
  habitsSaid,
  vesselSaid,
  waterSaid,
} from './json-schema-bench-words.ts';
import {
  itemSaid,
  madeSaid,
  observationSaid,
  resultSaid,
  sampleSaid,
  stageSaid,
  stagesSaid,
  stepSaid,
} from './json-schema-made-words.ts';
import { type KeysSaid, namesSaid, type Said, said } from './json-schema-said.ts';
import {
  balance,
  decided,
  dropper,
  type FileKind,
  fileShapes,
  foamTest,
  habits,
  ingredient,
  vessel,
  water,
} from './schema.ts';
import { item, longStage, observation, result, sample, step } from './schema-made.ts';
import type { FileShape } from './shape-words.ts';

const note = said('anything else worth keeping');

/** Figures that need their unit; the others may stand without. */
const withUnit: ReadonlySet<string> = new Set(['g/mL', 'C', 'mg/L', 'ug/kg', 'mg/kg', 'mmol/L']);

const figuresSaid: KeysSaid = Object.fromEntries(
  Object.entries(figureUnits).map(([name, unit]): [string, Said] => [
    name,
    said(
      unit === '' ? `${name}, a number alone` : `${name} in ${unit}`,
      withUnit.has(unit) ? 'amount' : 'figure',
    ),
  ]),
);

const ingredientSaid: KeysSaid = {
  ...figuresSaid,
  like: said('takes everything from this ingredient, then what stands here', 'words', 'sweet orange oil'),
  role: said('what it counts as'),
  fold: said('how many times an oil was concentrated', 'number', '5'),
  contains: namesSaid(
    'what it is a solution of',
    said('a share by mass, a mass, parts, or rest', 'share of a solution', '100 ppm', 'rest'),
  ),
  aliases: said('other names that you type for it'),
  lot: said('the lot on the bottle'),
  opened: said('when the bottle was opened', 'time or day', '2026-02-11'),
  made: said('when it was made', 'time or day', '2026-02-20'),
  keep: said('how long it keeps', 'amount', '90 d'),
  price: said('what it costs', 'amount', '42 EUR/kg'),
  drop: said('mass of a drop of it', 'amount', '0.021 g'),
  dropper: dropperSaid,
  left: said('how much is left', 'amount', '18 g'),
  source: said('where the figures are from', 'words', 'supplier sheet'),
  note,
};

const decidedSaid: KeysSaid = {
  text: said('what was decided'),
  date: said('when', 'time or day', '2026-03-09'),
  ratio: said('the ratio to work with'),
  why: said('why'),
};

const fileSaid: Readonly<Record<FileKind, KeysSaid>> = {
  bench: {
    ledger: said('version of the format', 'version', '1'),
    bench: said('what you own and how you work'),
  },
  ingredients: {
    ingredients: namesSaid(
      'your own ingredients: they add to the built-in ones and override them',
      said('what you know of it'),
    ),
  },
  trial: {
    ...madeSaid,
    trial: said('its number', 'count', '14'),
    from: said('the trial that it was changed from', 'count', '11'),
    series: said('the series that it belongs to'),
    batch: said('the batch that it belongs to'),
    stages: stagesSaid,
  },
  series: {
    series: said('its name'),
    question: said('what the trials are to answer'),
    varies: said('what is changed from trial to trial', 'words', 'oil per emulsifier'),
    same: said('what is kept the same'),
    judge: said('the sample that decides'),
    passes: said('looks that pass; clear if left out', 'look'),
    watch: said('how long a beaker is watched before it has held', 'amount', '7 d'),
    settle: said('before this only ring and broken count', 'amount', '1 d'),
    control: said('number of the trial that is known to hold', 'count', '11'),
    blank: said('number of the trial with everything but the oil', 'count', '12'),
    shape: said('one edge, or an optimum between two'),
    formula: said('the formula whose aims count'),
    note,
    decided: said('what came of it; neckring decide writes it'),
  },
  formula: {
    formula: said('its name'),
    title: said('what it is, in a few words'),
    why: said('what it is for'),
    note,
    from: said('the trial that it comes from', 'count', '17'),
    stages: stagesSaid,
    aim: namesSaid(
      'what the drink must meet: a figure, "2.9 to 3.2", "at least 2.9" or "at most 3.2"',
      said('how much of this substance, such as 0.4 to 0.6 ppb'),
      {
        ph: said('pH', 'words', '2.9 to 3.2'),
        acid: said('titratable acid as citric', 'words', '4.3 to 4.7 g/L'),
        brix: said('degrees Brix', 'words', '9.8 to 10.2'),
        'brix acid ratio': said('degrees Brix by per cent of acid', 'words', '14 to 18'),
        co2: said('carbonation', 'words', '3.3 to 3.7 vol'),
        density: said('density', 'words', '1.03 to 1.04 g/mL'),
        serving: said('how much one drinks', 'words', '330 mL'),
        temperature: said('how warm it is drunk', 'words', '6 C'),
        alcohol: said('alcohol by volume', 'words', 'at most 0.5 % v/v'),
        turbidity: said('turbidity', 'words', 'at most 5 NTU'),
        head: said('height of the foam', 'words', 'at most 20 mm'),
        'head life': said('how long the foam stands', 'words', 'at most 40 s'),
        'water activity': said('water activity', 'words', 'at most 0.85'),
        look: said('looks that pass', 'look', 'clear'),
      },
    ),
  },
  batch: {
    ...madeSaid,
    batch: said('its name'),
    formula: said('the formula that was made'),
    revision: said('its version in git'),
    trial: said('the trial that was made', 'count', '17'),
    'scaled to': said('how much it was scaled to', 'words', '20 L syrup'),
    loss: said('what is lost on the way', 'amount', '3 %'),
    yield: said('how much came out', 'amount', '23.6 kg'),
    bottles: said('how many bottles were filled', 'count', '300'),
    bottle: said('what one bottle holds', 'amount', '330 mL'),
    stages: stagesSaid,
  },
};

/** What each kind of file is. */
export const kindsSaid = {
  bench: { title: 'the bench', description: 'what you own and how you work' },
  ingredients: { title: 'your ingredients', description: 'they add to the built-in ones and override them' },
  trial: { title: 'a trial', description: 'one numbered make, and what was seen of it' },
  series: { title: 'a series', description: 'trials that ask one question, and the decision' },
  formula: { title: 'a formula', description: 'a design that is kept, with its aims' },
  batch: { title: 'a batch', description: 'a formula or a trial made at size' },
} as const satisfies Readonly<Record<FileKind, { readonly title: string; readonly description: string }>>;

/** What is said of the keys of each shape that has keys. */
export const keysSaid: ReadonlyMap<FileShape, KeysSaid> = new Map<FileShape, KeysSaid>([
  [item, itemSaid],
  [step, stepSaid],
  [longStage, stageSaid],
  [sample, sampleSaid],
  [observation, observationSaid],
  [result, resultSaid],
  [balance, balanceSaid],
  [vessel, vesselSaid],
  [dropper, dropperKeysSaid],
  [water, waterSaid],
  [foamTest, foamTestSaid],
  [habits, habitsSaid],
  [ingredient, ingredientSaid],
  [decided, decidedSaid],
  [fileShapes.bench, fileSaid.bench],
  [fileShapes.ingredients, fileSaid.ingredients],
  [fileShapes.trial, fileSaid.trial],
  [fileShapes.series, fileSaid.series],
  [fileShapes.formula, fileSaid.formula],
  [fileShapes.batch, fileSaid.batch],
]);
