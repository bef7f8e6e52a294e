/** What does not fit the shape of a file, told by zod from the same shapes. Loaded only for a file that does not fit. */

import * as z from 'zod/mini';
import { type FileKind, fileShapes } from './schema.ts';
import type { FileShape, KeyShapes } from './shape-words.ts';

/** One thing that does not fit, in terms of our own. */
export interface Misfit {
  readonly path: readonly (string | number)[];
  readonly misfit:
    | { readonly kind: 'unknown keys'; readonly keys: readonly string[] }
    | { readonly kind: 'wanted'; readonly shapes: readonly Shape[] }
    | { readonly kind: 'not one of'; readonly words: readonly string[] };
}

export type Shape = 'text' | 'list' | 'map';

function schemaOf(shape: FileShape): z.ZodMiniType {
  switch (shape.is) {
    case 'text':
      return z.string();
    case 'word':
      return z.enum(Object.fromEntries(shape.words.map((word) => [word, word])));
    case 'anything':
      return z.unknown();
    case 'optional':
      return z.optional(schemaOf(shape.of));
    case 'list':
      return z.array(schemaOf(shape.of));
    case 'either':
      return z.union(shape.of.map(schemaOf));
    case 'names':
      return z.record(z.string(), schemaOf(shape.of));
    case 'keys':
      return shape.rest
        ? z.catchall(z.object(schemasOf(shape.keys)), schemaOf(shape.rest))
        : z.strictObject(schemasOf(shape.keys));
  }
}

const schemasOf = (shapes: KeyShapes): Record<string, z.ZodMiniType> =>
  Object.fromEntries(Object.entries(shapes).map(([key, shape]) => [key, schemaOf(shape)]));

const schemas = new Map<FileKind, z.ZodMiniType>();

/** What does not fit the shape of a kind of file; `plain` holds texts, arrays and objects without prototype. */
export function misfitsOf(kind: FileKind, plain: unknown): readonly Misfit[] {
  const schema = schemas.get(kind) ?? schemaOf(fileShapes[kind]);
  schemas.set(kind, schema);
  const result = z.safeParse(schema, plain);
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
