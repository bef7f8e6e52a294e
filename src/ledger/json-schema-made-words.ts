/** What is said of the keys of stages, samples, observations and results, and of what was made. */

import { type KeysSaid, namesSaid, said } from './json-schema-said.ts';

const note = said('anything else worth keeping');

export const itemSaid: KeysSaid = {
  '*': said(
    'how much of it, such as 2 g, 12 drops, 4 %, 4.5 g/L, 4.5 g/L in drink or 2 parts; "to 50 g" makes the stage up',
    'amount',
  ),
  weighed: said('what the balance said; reckoned with where it stands', 'amount', '2.03 g'),
  lot: said('the lot on the bottle'),
  role: said('what it counts as here, where that is not what it usually is'),
  note,
};

export const stepSaid: KeysSaid = {
  do: said('what was done'),
  what: said('to what'),
  to: said('the temperature that it was brought to', 'amount', '60 C'),
  at: said('the temperature at which it was done', 'amount', '60 C'),
  for: said('how long', 'amount', '10 min'),
  over: said('how long the adding took', 'amount', '5 min'),
  stir: said('how fast it was stirred', 'words', '400 rpm', 'by hand'),
  with: said('the tool it was done with'),
  into: said('what it went into'),
  by: said('who did it'),
  note,
};

export const stageSaid: KeysSaid = {
  makes: said(
    'how much the stage is to make, where its items are in parts or shares',
    'amount',
    '50 g',
    '1 L',
  ),
  made: said(
    'when, where that is another time than the rest',
    'time or day',
    '2026-03-02T10:15+00:00',
    '2026-03-02',
  ),
  by: said('who made it'),
  process: said('what was done, step by step: sentences, or steps with their figures'),
  items: said('what goes in, in the order of addition'),
  density: said('its density as measured', 'amount', '1.036 g/mL'),
  weighs: said('what it weighed when it was done', 'amount', '49.2 g'),
  keep: said('how long it keeps', 'amount', '30 d'),
  note,
};

const sampleSaidAs = said('something that is looked at: a stage in a vessel');
export const sampleSaid: KeysSaid = {
  of: said('the stage that it is of; the last one made if left out'),
  in: said('its vessel', 'words', '100 mL glass beaker'),
  cover: said('what covers it', 'words', 'film'),
  at: said('the temperature at which it stands; that of the bench if left out', 'amount', '4 C'),
  viewed: said('against what and in which light it is looked at'),
  count: said('how many there are alike', 'count', '6'),
  looks: said('when to look, where that is not what the bench says', 'amount', '30 d'),
  watch: said('how long it is watched before it has held', 'amount', '7 d'),
  stress: said('cycles of warm and cold that it is put through'),
  cycles: said('how many cycles', 'count', '3'),
  note,
};

export const observationSaid: KeysSaid = {
  at: said('when it was seen', 'time', '2026-03-03T09:10+00:00'),
  sample: said('which sample; the first one if left out'),
  look: said('what the eye sees: one word, or several with commas', 'look'),
  temperature: said('temperature of the sample', 'amount', '21 C'),
  turbidity: said('turbidity as measured', 'amount', '3.2 NTU'),
  droplet: said('droplet diameter as measured', 'amount', '45 nm'),
  ph: said('pH as measured', 'number', '3.05'),
  acid: said('titratable acid as citric', 'amount', '4.6 g/L'),
  brix: said('degrees Brix as measured', 'number', '9.2'),
  density: said('density as measured', 'amount', '1.036 g/mL'),
  mass: said('mass of the sample', 'amount', '49.2 g'),
  co2: said('carbonation as measured', 'amount', '3.4 vol'),
  head: said('height of the foam', 'amount', '18 mm'),
  'head life': said('how long until the foam is gone', 'amount', '40 s'),
  taste: namesSaid('scores by taste words', said('a score from 0 to 5', 'score')),
  served: said('how it was tasted'),
  against: said('what it was tasted against'),
  blind: said('whether the taster did not know: yes or no', 'words', 'yes', 'no'),
  smell: said('in your own words'),
  colour: said('in your own words'),
  viewed: said('against what, in which light'),
  photo: said('a picture, by its path in the ledger', 'words', 'photos/0014-day-7.jpg'),
  by: said('who looked'),
  note,
  ended: said('why looking stops', 'words', 'spilled', 'drunk', 'mould'),
};

export const resultSaid: KeysSaid = {
  '*': said('a figure of the answer'),
  at: said('when it was worked out', 'time'),
  calculator: said('which calculator gave the answer'),
  stage: said('the stage that it is about'),
  of: said('a mark of everything that went into it; tells whether it is still true'),
};

export const stagesSaid = namesSaid(
  'one mixture after another, in the order of making; the finished drink is the one named drink',
  said('a mixture: a list of items, or "process" and "items"'),
);

/** What a trial and a batch have in common. */
export const madeSaid: KeysSaid = {
  title: said('what it is, in a few words'),
  made: said('when it was made', 'time or day', '2026-03-02T10:15+00:00', '2026-03-02'),
  by: said('who made it'),
  why: said('the question it asks'),
  concluded: said('what was learnt'),
  note,
  samples: namesSaid('what is looked at; left out, the last stage made', sampleSaidAs),
  observations: said('what was seen, measured or tasted, each with its time'),
  results: said('answers of calculators; neckring reckon writes them'),
};
