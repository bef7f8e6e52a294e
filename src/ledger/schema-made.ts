/** Shapes of what is made and looked at: stages, samples, observations, results. Every scalar is text. */

import * as z from 'zod/mini';
import { roles } from '../reference/ingredient.ts';
import { stepWords } from './cards.ts';

export const text = z.string();
export const optionalText = z.optional(text);
export const texts = z.optional(z.array(text));

/** One text, or several. */
export const textOrTexts = z.optional(z.union([text, z.array(text)]));

/** `NAME: amount`, and what else is known of it. */
const item = z.catchall(
  z.object({
    weighed: optionalText,
    lot: optionalText,
    role: z.optional(z.enum(roles)),
    note: optionalText,
  }),
  text,
);

const step = z.strictObject({
  do: z.optional(z.enum(stepWords)),
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

const items = z.array(item);

const longStage = z.strictObject({
  makes: optionalText,
  made: optionalText,
  by: optionalText,
  process: z.optional(z.array(z.union([text, step]))),
  items: z.optional(items),
  density: optionalText,
  weighs: optionalText,
  keep: optionalText,
  note: optionalText,
});

export const stages = z.record(text, z.union([items, longStage]));

const sample = z.strictObject({
  of: optionalText,
  in: optionalText,
  cover: optionalText,
  at: optionalText,
  viewed: optionalText,
  count: optionalText,
  looks: texts,
  watch: optionalText,
  note: optionalText,
});

export const samples = z.optional(z.record(text, z.optional(sample)));

const observation = z.strictObject({
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
  taste: z.optional(z.record(text, text)),
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

export const observations = z.optional(z.array(observation));

/** A calculator's own keys stand beside these, and may hold lists and maps. */
const result = z.catchall(
  z.object({ at: text, calculator: text, stage: optionalText, of: optionalText }),
  z.unknown(),
);

export const results = z.optional(z.array(result));

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
