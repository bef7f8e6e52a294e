/** The shapes of the six kinds of file, over plain texts: which keys there are, and what stands under them. */

import * as z from 'zod/mini';
import { figureUnits, roles } from '../reference/ingredient.ts';
import { fits, type Plan, planOf } from './schema-fit.ts';
import { made, optionalText, stages, text, textOrTexts, texts } from './schema-made.ts';
import type { TreeNode } from './tree.ts';

const dropper = z.strictObject({
  drop: text,
  spread: optionalText,
  liquid: optionalText,
  temperature: optionalText,
  weighings: optionalText,
  drops: optionalText,
});

const balance = z.strictObject({ division: text, limit: optionalText, name: optionalText });

const vessel = z.strictObject({
  name: optionalText,
  volume: optionalText,
  mass: optionalText,
  count: optionalText,
});

const bench = z.strictObject({
  ledger: text,
  bench: z.optional(
    z.strictObject({
      name: optionalText,
      'time zone': optionalText,
      balances: z.optional(z.array(balance)),
      vessels: z.optional(z.array(vessel)),
      weighing: optionalText,
      drop: optionalText,
      dropper: z.optional(dropper),
      temperature: optionalText,
      viewed: textOrTexts,
      covers: texts,
      settle: optionalText,
      watch: optionalText,
      looks: texts,
      'long watch': texts,
      tastes: texts,
      margin: optionalText,
      'largest dilution': optionalText,
      water: z.optional(
        z.strictObject({
          alkalinity: optionalText,
          hardness: optionalText,
          chlorine: optionalText,
          iron: optionalText,
          sodium: optionalText,
          ph: optionalText,
        }),
      ),
      'foam test': z.optional(
        z.strictObject({
          glass: optionalText,
          volume: optionalText,
          temperature: optionalText,
          pour: optionalText,
        }),
      ),
      limits: texts,
    }),
  ),
});

const figures = Object.fromEntries(Object.keys(figureUnits).map((name) => [name, optionalText]));

const ingredient = z.strictObject({
  ...figures,
  like: optionalText,
  role: z.optional(z.enum(roles)),
  fold: optionalText,
  contains: z.optional(z.record(text, text)),
  aliases: texts,
  lot: optionalText,
  opened: optionalText,
  made: optionalText,
  keep: optionalText,
  price: optionalText,
  drop: optionalText,
  dropper: z.optional(dropper),
  left: optionalText,
  source: optionalText,
  note: optionalText,
});

const ingredients = z.strictObject({ ingredients: z.optional(z.record(text, z.optional(ingredient))) });

const trial = z.strictObject({
  trial: text,
  ...made,
  from: optionalText,
  series: optionalText,
  batch: optionalText,
  stages,
});

const batch = z.strictObject({
  batch: text,
  ...made,
  formula: optionalText,
  revision: optionalText,
  trial: optionalText,
  'scaled to': optionalText,
  loss: optionalText,
  yield: optionalText,
  bottles: optionalText,
  bottle: optionalText,
  stages: z.optional(stages),
});

const series = z.strictObject({
  series: text,
  question: optionalText,
  varies: optionalText,
  same: texts,
  judge: optionalText,
  passes: texts,
  watch: optionalText,
  settle: optionalText,
  control: optionalText,
  blank: optionalText,
  shape: z.optional(z.enum(['edge', 'window'])),
  note: optionalText,
  decided: z.optional(
    z.strictObject({ text: optionalText, date: optionalText, ratio: optionalText, why: optionalText }),
  ),
});

const formula = z.strictObject({
  formula: text,
  title: optionalText,
  why: optionalText,
  note: optionalText,
  from: optionalText,
  stages,
  aim: z.optional(z.record(text, textOrTexts)),
});

const schemas = { bench, ingredients, trial, series, formula, batch };

export type FileKind = keyof typeof schemas;

/** One thing that does not fit, in terms of our own. */
export interface Misfit {
  readonly path: readonly (string | number)[];
  readonly misfit:
    | { readonly kind: 'unknown keys'; readonly keys: readonly string[] }
    | { readonly kind: 'wanted'; readonly shapes: readonly Shape[] }
    | { readonly kind: 'not one of'; readonly words: readonly string[] };
}

export type Shape = 'text' | 'list' | 'map';

const plans = new Map<FileKind, Plan>();

/** Whether a tree fits the shape of a kind of file; where not, `misfitsOf` says why. */
export function fitsKind(kind: FileKind, root: TreeNode): boolean {
  const plan = plans.get(kind) ?? planOf(schemas[kind]);
  plans.set(kind, plan);
  return fits(root, plan);
}

/** What does not fit the shape of a kind of file; `plain` holds texts, arrays and objects without prototype. */
export function misfitsOf(kind: FileKind, plain: unknown): readonly Misfit[] {
  const result = z.safeParse(schemas[kind], plain);
  return result.success ? [] : result.error.issues.flatMap((issue) => misfits(issue, []));
}

type Path = readonly (string | number)[];

function misfits(issue: z.core.$ZodIssue, parent: Path): readonly Misfit[] {
  const path = [...parent, ...issue.path.map((step) => (typeof step === 'number' ? step : String(step)))];
  if (issue.code === 'unrecognized_keys')
    return [{ path, misfit: { kind: 'unknown keys', keys: issue.keys } }];
  if (issue.code === 'invalid_value')
    return [{ path, misfit: { kind: 'not one of', words: issue.values.map(String) } }];
  if (issue.code === 'invalid_union') return unionMisfits(issue.errors, path);
  const wanted = issue.code === 'invalid_type' ? (shapeNames[issue.expected] ?? 'text') : 'text';
  return [{ path, misfit: { kind: 'wanted', shapes: [wanted] } }];
}

/** Of the forms that a value may take, the one that it does take; where it takes none, all of them. */
function unionMisfits(forms: readonly (readonly z.core.$ZodIssue[])[], path: Path): readonly Misfit[] {
  const meant = forms.find((issues) => issues.every((issue) => !isWholeMisfit(issue)));
  if (meant) return meant.flatMap((issue) => misfits(issue, path));
  const all = forms.flatMap((issues) => issues.flatMap((issue) => misfits(issue, path)));
  const shapes = all.flatMap(({ misfit }) => (misfit.kind === 'wanted' ? misfit.shapes : []));
  return [{ path, misfit: { kind: 'wanted', shapes } }];
}

const isWholeMisfit = (issue: z.core.$ZodIssue): boolean =>
  issue.code === 'invalid_type' && issue.path.length === 0;

const shapeNames: Readonly<Record<string, Shape>> = {
  string: 'text',
  array: 'list',
  object: 'map',
  record: 'map',
};

const keysOf = (shape: object): readonly string[] => Object.keys(shape);

/** The keys that may stand at a path, for a near one to be offered. */
export function keysAt(kind: FileKind, path: Path): readonly string[] {
  let schema: unknown = schemas[kind];
  for (const step of path) schema = within(schema, step);
  return alternatives(schema).flatMap((one) => (one instanceof z.ZodMiniObject ? keysOf(one.def.shape) : []));
}

function within(schema: unknown, step: string | number): unknown {
  for (const one of alternatives(schema)) {
    if (typeof step === 'number' && one instanceof z.ZodMiniArray) return one.def.element;
    if (typeof step === 'string' && one instanceof z.ZodMiniRecord) return one.def.valueType;
    if (typeof step === 'string' && one instanceof z.ZodMiniObject) return one.def.shape[step];
  }
  return undefined;
}

function alternatives(schema: unknown): readonly unknown[] {
  if (schema instanceof z.ZodMiniOptional) return alternatives(schema.def.innerType);
  if (schema instanceof z.ZodMiniUnion) return schema.def.options.flatMap(alternatives);
  return [schema];
}
