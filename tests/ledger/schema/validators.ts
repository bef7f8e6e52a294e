/** The schemas as a validator that is not ours takes them, and files as an editor parses them. */

import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Ajv } from 'ajv';
import { parse } from 'yaml';
import { kindSchema } from '../../../src/ledger/json-schema.ts';
import type { FileKind } from '../../../src/ledger/schema.ts';
import { fileKinds } from '../../../src/ledger/schema-files.ts';

/** `errorMessage` is a word of editors; a validator is told to pass over it. Numbers in YAML may be without end. */
export const validator = (): Ajv =>
  new Ajv({ strict: true, allowUnionTypes: true, strictNumbers: false, allErrors: true }).addVocabulary([
    'errorMessage',
  ]);

const ajv = validator();
const compiled = new Map(fileKinds.map((kind) => [kind, ajv.compile(kindSchema(kind, '0.1.0').schema)]));

/** As YAML 1.2 says: 14 is a number, yes is a word. */
export const parsed = (text: string): unknown =>
  parse(text, { schema: 'core', uniqueKeys: false, logLevel: 'silent' });

/** What the schema refuses in a value, by path; nothing where it takes it. */
export function refusals(kind: FileKind, value: unknown): readonly string[] {
  const validate = compiled.get(kind);
  if (!validate) throw new Error(`no schema of ${kind}`);
  if (validate(value)) return [];
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath}: ${message}`);
}

const folders: Readonly<Record<string, FileKind>> = {
  trials: 'trial',
  series: 'series',
  formulas: 'formula',
  batches: 'batch',
};

export interface LedgerFile {
  readonly kind: FileKind;
  /** From the root of its ledger. */
  readonly file: string;
  readonly text: string;
}

/** The files of a ledger that count. */
export function filesOf(root: string): readonly LedgerFile[] {
  const read = (file: string, kind: FileKind): LedgerFile => ({
    kind,
    file,
    text: readFileSync(join(root, file), 'utf8'),
  });
  return readdirSync(root).flatMap((name): readonly LedgerFile[] => {
    if (name === 'bench.yaml') return [read(name, 'bench')];
    if (name === 'ingredients.yaml') return [read(name, 'ingredients')];
    const kind = folders[name];
    if (!kind) return [];
    return readdirSync(join(root, name))
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => read(`${name}/${file}`, kind));
  });
}

export const repository = resolve(import.meta.dirname, '../../..');
