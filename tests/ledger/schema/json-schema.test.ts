import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { allKindSchemas, bodyMark, kindSchema } from '../../../src/ledger/json-schema.ts';
import { keysSaid } from '../../../src/ledger/json-schema-words.ts';
import { aimNames } from '../../../src/ledger/read-formula.ts';
import { fileShapes } from '../../../src/ledger/schema.ts';
import { fileKinds, schemaHead, schemaMarks } from '../../../src/ledger/schema-files.ts';
import type { FileShape } from '../../../src/ledger/shape-words.ts';
import { filesOf, parsed, refusals, repository, validator } from './validators.ts';

const example = filesOf(join(repository, 'examples/orange-cardamom'));
const gitLedger = filesOf(join(repository, 'tests/fixtures/git-ledger'));

/** Every shape with keys below a shape, itself included. */
function keyed(shape: FileShape): readonly Extract<FileShape, { is: 'keys' }>[] {
  if (shape.is === 'optional' || shape.is === 'list' || shape.is === 'names') return keyed(shape.of);
  if (shape.is === 'either') return shape.of.flatMap(keyed);
  if (shape.is !== 'keys') return [];
  return [shape, ...Object.values(shape.keys).flatMap(keyed), ...(shape.rest ? keyed(shape.rest) : [])];
}

describe('what is said of the keys', () => {
  const shapes = [...new Set(Object.values(fileShapes).flatMap(keyed))];

  it('is said of every key of every shape, and of no other', () => {
    for (const shape of shapes) {
      const wanted = [...Object.keys(shape.keys), ...(shape.rest ? ['*'] : [])];
      expect(Object.keys(keysSaid.get(shape) ?? {}).sort()).toEqual(wanted.sort());
    }
    expect(keysSaid.size).toBe(shapes.length);
  });

  it('of every name of an aim', () => {
    const aim = keysSaid.get(fileShapes.formula)?.['aim'];
    expect(Object.keys(aim?.known ?? {}).sort()).toEqual([...aimNames].sort());
  });

  it('in short plain words, with examples that the schema takes', () => {
    const ajv = validator();
    const walk = (schema: unknown): void => {
      if (typeof schema !== 'object' || schema === null) return;
      if ('description' in schema) expect(String(schema.description)).toMatch(/^.{2,125}(?<!\.)$/u);
      if ('examples' in schema && Array.isArray(schema.examples)) {
        const validate = ajv.compile(schema);
        for (const one of schema.examples)
          if (!('items' in schema)) expect([one, validate(one)]).toEqual([one, true]);
      }
      for (const under of Object.values(schema)) walk(under);
    };
    for (const { schema } of allKindSchemas('0.1.0')) walk(schema);
  });
});

describe('the schemas, given to ajv (JSON Schema draft-07)', () => {
  it.each(fileKinds)('%s compiles in strict mode, and its meta-schema takes it', (kind) => {
    const ajv = validator();
    const { schema } = kindSchema(kind, '0.1.0');
    expect(ajv.validateSchema(schema)).toBe(true);
    expect(typeof ajv.compile(schema)).toBe('function');
  });

  it.each([...example, ...gitLedger].map((one) => [one.file, one] as const))('%s is taken', (_, one) => {
    expect(refusals(one.kind, parsed(one.text))).toEqual([]);
  });
});

describe('the mark in the head of a schema', () => {
  it('pinned: those that check looks for are those of the shapes (write what is found here into schemaMarks)', () => {
    expect(Object.fromEntries(allKindSchemas('0.1.0').map(({ kind, mark }) => [kind, mark]))).toEqual(
      schemaMarks,
    );
  });

  it('is that of what the schema says, whoever wrote it, and stands in its text', () => {
    for (const kind of fileKinds) {
      const { mark, text } = kindSchema(kind, '0.2.0-rc.1');
      expect(schemaHead(text)).toEqual({ version: '0.2.0-rc.1', mark });
      expect(bodyMark(JSON.parse(text))).toBe(mark);
      expect(kindSchema(kind, '0.1.0').mark).toBe(mark);
    }
  });

  it('is another one where anything is said otherwise', () => {
    const { mark, schema } = kindSchema('trial', '0.1.0');
    expect(bodyMark({ ...schema, title: 'a beaker' })).not.toBe(mark);
  });
});
