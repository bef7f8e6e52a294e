/** The shapes of the six kinds of file, over plain texts: which keys there are, and what stands under them. */

import { figureUnits, roles } from '../reference/ingredient.ts';
import { fits, type Plan, planOf } from './schema-fit.ts';
import { made, stages } from './schema-made.ts';
import {
  type FileShape,
  keys,
  list,
  names,
  oneOf,
  optional,
  optionalText,
  text,
  textOrTexts,
  texts,
} from './shape-words.ts';
import type { TreeNode } from './tree.ts';

export const dropper = keys({
  drop: text,
  spread: optionalText,
  liquid: optionalText,
  temperature: optionalText,
  weighings: optionalText,
  drops: optionalText,
});

export const balance = keys({ division: text, limit: optionalText, name: optionalText });

export const vessel = keys({
  name: optionalText,
  volume: optionalText,
  mass: optionalText,
  count: optionalText,
});

export const water = keys({
  alkalinity: optionalText,
  hardness: optionalText,
  chlorine: optionalText,
  iron: optionalText,
  sodium: optionalText,
  ph: optionalText,
});

export const foamTest = keys({
  glass: optionalText,
  volume: optionalText,
  temperature: optionalText,
  pour: optionalText,
});

export const habits = keys({
  name: optionalText,
  'time zone': optionalText,
  balances: optional(list(balance)),
  vessels: optional(list(vessel)),
  weighing: optionalText,
  drop: optionalText,
  dropper: optional(dropper),
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
  water: optional(water),
  'foam test': optional(foamTest),
  limits: texts,
});

const bench = keys({ ledger: text, bench: optional(habits) });

const figures = Object.fromEntries(Object.keys(figureUnits).map((name) => [name, optionalText]));

export const ingredient = keys({
  ...figures,
  like: optionalText,
  role: optional(oneOf(roles)),
  fold: optionalText,
  contains: optional(names(text)),
  aliases: texts,
  lot: optionalText,
  opened: optionalText,
  made: optionalText,
  keep: optionalText,
  price: optionalText,
  drop: optionalText,
  dropper: optional(dropper),
  left: optionalText,
  source: optionalText,
  note: optionalText,
});

const ingredients = keys({ ingredients: optional(names(optional(ingredient))) });

const trial = keys({
  trial: text,
  ...made,
  from: optionalText,
  series: optionalText,
  batch: optionalText,
  stages,
});

const batch = keys({
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
  stages: optional(stages),
});

export const decided = keys({
  text: optionalText,
  date: optionalText,
  ratio: optionalText,
  why: optionalText,
});

const series = keys({
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
  shape: optional(oneOf(['edge', 'window'])),
  formula: optionalText,
  note: optionalText,
  decided: optional(decided),
});

const formula = keys({
  formula: text,
  title: optionalText,
  why: optionalText,
  note: optionalText,
  from: optionalText,
  stages,
  aim: optional(names(textOrTexts)),
});

export const fileShapes = { bench, ingredients, trial, series, formula, batch } as const;

export type FileKind = keyof typeof fileShapes;

const plans = new Map<FileKind, Plan>();

/** Whether a tree fits the shape of a kind of file; where not, `misfitsOf` says why. */
export function fitsKind(kind: FileKind, root: TreeNode): boolean {
  const plan = plans.get(kind) ?? planOf(fileShapes[kind]);
  plans.set(kind, plan);
  return fits(root, plan);
}

type Path = readonly (string | number)[];

/** The keys that may stand at a path, for a near one to be offered. */
export function keysAt(kind: FileKind, path: Path): readonly string[] {
  let shape: FileShape | undefined = fileShapes[kind];
  for (const step of path) shape = within(shape, step);
  return alternatives(shape).flatMap((one) => (one.is === 'keys' ? Object.keys(one.keys) : []));
}

function within(shape: FileShape | undefined, step: string | number): FileShape | undefined {
  for (const one of alternatives(shape)) {
    if (typeof step === 'number' && one.is === 'list') return one.of;
    if (typeof step === 'string' && one.is === 'names') return one.of;
    if (typeof step === 'string' && one.is === 'keys')
      return Object.hasOwn(one.keys, step) ? one.keys[step] : undefined;
  }
  return undefined;
}

function alternatives(shape: FileShape | undefined): readonly FileShape[] {
  if (shape?.is === 'optional') return alternatives(shape.of);
  if (shape?.is === 'either') return shape.of.flatMap(alternatives);
  return shape ? [shape] : [];
}
