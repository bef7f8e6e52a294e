/** Shapes of what is made and looked at: stages, samples, observations, results. Every scalar is text. */

import { roles } from '../reference/ingredient.ts';
import { stressWords } from '../reference/stress-cycles.ts';
import { stepWords } from './cards.ts';
import {
  anything,
  either,
  keys,
  keysAnd,
  list,
  names,
  oneOf,
  optional,
  optionalText,
  text,
  textOrTexts,
  texts,
} from './shape-words.ts';

/** `NAME: amount`, and what else is known of it. */
export const item = keysAnd(
  {
    weighed: optionalText,
    lot: optionalText,
    role: optional(oneOf(roles)),
    note: optionalText,
  },
  text,
);

export const step = keys({
  do: optional(oneOf(stepWords)),
  what: optionalText,
  to: optionalText,
  at: optionalText,
  for: optionalText,
  over: optionalText,
  stir: optionalText,
  with: optionalText,
  into: optionalText,
  by: optionalText,
  note: optionalText,
});

const items = list(item);

export const longStage = keys({
  makes: optionalText,
  made: optionalText,
  by: optionalText,
  process: optional(list(either(text, step))),
  items: optional(items),
  density: optionalText,
  weighs: optionalText,
  keep: optionalText,
  note: optionalText,
});

export const stages = names(either(items, longStage));

export const sample = keys({
  of: optionalText,
  in: optionalText,
  cover: optionalText,
  at: optionalText,
  viewed: optionalText,
  count: optionalText,
  looks: texts,
  watch: optionalText,
  stress: optional(oneOf(stressWords)),
  cycles: optionalText,
  note: optionalText,
});

export const samples = optional(names(optional(sample)));

export const observation = keys({
  at: text,
  sample: optionalText,
  look: textOrTexts,
  temperature: optionalText,
  turbidity: optionalText,
  droplet: optionalText,
  ph: optionalText,
  acid: optionalText,
  brix: optionalText,
  density: optionalText,
  mass: optionalText,
  co2: optionalText,
  head: optionalText,
  'head life': optionalText,
  taste: optional(names(text)),
  served: optionalText,
  against: optionalText,
  blind: optionalText,
  smell: optionalText,
  colour: optionalText,
  viewed: optionalText,
  photo: optionalText,
  by: optionalText,
  note: optionalText,
  ended: optionalText,
});

export const observations = optional(list(observation));

/** A calculator's own keys stand beside these, and may hold lists and maps. */
export const result = keysAnd(
  { at: text, calculator: text, stage: optionalText, of: optionalText },
  anything,
);

export const results = optional(list(result));

/** What a trial and a batch have in common. */
export const made = {
  title: optionalText,
  made: optionalText,
  by: optionalText,
  why: optionalText,
  concluded: optionalText,
  note: optionalText,
  samples,
  observations,
  results,
};
