/**
 * JSON Schema of the kinds of file, made from their shapes, for editors that complete and check while one types.
 * Draft-07: every language server for YAML reads it, and nothing that is used here is newer. Editors type scalars as
 * YAML 1.2 does (14 is a number, nothing at all is null) where the ledger reads texts, so a schema is looser than the
 * reader where the two can't be told apart, and never stricter.
 */

import { answerMark } from './answer-mark.ts';
import { type JsonSchema, leafOf, nothing, oneForm, takesNothing } from './json-schema-leaf.ts';
import { type KeysSaid, type Said, said } from './json-schema-said.ts';
import { keysSaid, kindsSaid } from './json-schema-words.ts';
import { type FileKind, fileShapes } from './schema.ts';
import { fileKinds, markText, schemaIdOf } from './schema-files.ts';
import type { FileShape } from './shape-words.ts';

const plainWords = said('');

/** The schema of a shape, with what is said of the key under which it stands. */
function schemaOf(shape: FileShape, about: Said): JsonSchema {
  switch (shape.is) {
    case 'text':
      return leafOf[about.holds];
    case 'word':
      return { enum: [...shape.words] };
    case 'anything':
      return {};
    case 'optional':
      return orNothing(schemaOf(shape.of, about));
    case 'list':
      return { type: 'array', items: schemaOf(shape.of, about) };
    case 'either':
      return oneForm(...shape.of.map((one) => schemaOf(one, about)));
    case 'names':
      return namesSchema(shape.of, about);
    case 'keys':
      return keysSchema(shape);
  }
}

function namesSchema(of: FileShape, { each = plainWords, known = {} }: Said): JsonSchema {
  const properties = Object.fromEntries(
    Object.entries(known).map(([name, about]) => [name, described(of, about)]),
  );
  return {
    type: 'object',
    ...(Object.keys(known).length === 0 ? {} : { properties }),
    additionalProperties: described(of, each),
  };
}

function keysSchema(shape: Extract<FileShape, { is: 'keys' }>): JsonSchema {
  const about: KeysSaid = keysSaid.get(shape) ?? {};
  const entries = Object.entries(shape.keys);
  const required = entries.flatMap(([key, { is }]) => (is === 'optional' || is === 'anything' ? [] : [key]));
  return {
    type: 'object',
    properties: Object.fromEntries(
      entries.map(([key, under]) => [key, described(under, about[key] ?? plainWords)]),
    ),
    ...(required.length === 0 ? {} : { required }),
    additionalProperties: shape.rest ? described(shape.rest, about['*'] ?? plainWords) : false,
  };
}

/** A schema with its words and examples. */
const described = (shape: FileShape, about: Said): JsonSchema => ({
  ...(about.says === '' ? {} : { description: about.says }),
  ...schemaOf(shape, about),
  ...(about.examples.length === 0 ? {} : { examples: about.examples.map((one) => exampleOf(one, about)) }),
});

const exampleOf = (text: string, { holds }: Said): string | number =>
  numeric.has(holds) && Number.isFinite(Number(text)) ? Number(text) : text;

const numeric: ReadonlySet<Said['holds']> = new Set(['number', 'count', 'score', 'figure', 'version']);

/** Nothing may stand there too. */
function orNothing(schema: JsonSchema): JsonSchema {
  const { type, ...rest } = schema;
  if (type === 'array' || type === 'object') return { type: [type, 'null'], ...rest };
  return takesNothing(schema) ? schema : oneForm(schema, nothing);
}

const widest = 120;

/** JSON with what is short on one line. */
function laidOut(value: unknown, margin: string): string {
  const line = JSON.stringify(value);
  if (margin.length + line.length <= widest || typeof value !== 'object' || value === null) return line;
  const inner = `${margin}  `;
  const isList = Array.isArray(value);
  const rows = Object.entries(value).map(([key, under]) => {
    const head = isList ? inner : `${inner}${JSON.stringify(key)}: `;
    return `${head}${laidOut(under, inner)}`;
  });
  const [open, close] = isList ? '[]' : '{}';
  return `${open}\n${rows.join(',\n')}\n${margin}${close}`;
}

export interface KindSchema {
  readonly kind: FileKind;
  /** Eight hex digits over everything that it says; another program of the same shapes gives the same. */
  readonly mark: string;
  readonly schema: JsonSchema;
  /** As it stands in `schema/KIND.json`. */
  readonly text: string;
}

/**
 * The schema of a kind of file.
 * Input     the kind; the version of the program, for the head of the file
 */
export function kindSchema(kind: FileKind, version: string): KindSchema {
  const body: JsonSchema = { ...kindsSaid[kind], ...schemaOf(fileShapes[kind], plainWords) };
  const mark = bodyMark(body);
  const schema: JsonSchema = {
    $schema: 'http://json-schema.org/draft-07/schema#',
    $id: schemaIdOf(kind),
    $comment: markText(version, mark),
    ...body,
  };
  return { kind, mark, schema, text: `${laidOut(schema, '')}\n` };
}

export const allKindSchemas = (version: string): readonly KindSchema[] =>
  fileKinds.map((kind) => kindSchema(kind, version));

/** The mark of what a schema says, whatever its head says. */
export function bodyMark(schema: JsonSchema): string {
  const { $schema: _, $id: __, $comment: ___, ...body } = schema;
  return answerMark([JSON.stringify(body)]);
}
