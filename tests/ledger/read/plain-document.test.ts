import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { libraryDocument } from '../../../src/ledger/library-document.ts';
import { parseDocument } from '../../../src/ledger/parse.ts';
import { plainDocument } from '../../../src/ledger/plain-document.ts';

const root = resolve(import.meta.dirname, '../../..');

function yamlFiles(folder: string): readonly string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return yamlFiles(path);
    return name.endsWith('.yaml') ? [path] : [];
  });
}

const read = (path: string): string => readFileSync(path, 'utf8');
const examples = yamlFiles(join(root, 'examples')).map(read);
const problems = yamlFiles(join(root, 'tests/fixtures/problems')).map(read);

/** Numbers from 0 to 1 that are the same in every run (a linear congruence). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const pieces =
  ` |  |\n|\n  |- |-|: |:|#| # c|"|'|? |?x|\t|\r\n|> |&a |*a|!t |[|]|{|}|,|%|@|\`|<<: |---\n|...\n|é|\u00a0|\u2028|\u0085|\ufeff|-5|a: b|- a: b\n|- - x|\\|''|"a"|\n\n|   \n|# x\n|=|~|.|+|漢|-\n|k:\n|k:|:x|::|| |- - - - - - - - - - x`.split(
    '|',
  );

function mutant(texts: readonly string[], next: () => number): string {
  const pick = <Kind>(from: readonly Kind[]): Kind | undefined => from[Math.floor(next() * from.length)];
  const lines = (pick(texts) ?? '').split('\n');
  const from = Math.floor(next() * lines.length);
  const part = next() < 0.7 ? lines.slice(from, from + 1 + Math.floor(next() * 12)) : lines;
  const margin = next() < 0.5 ? (/^ */.exec(part[0] ?? '')?.[0].length ?? 0) : 0;
  let text = part.map((line) => (line.startsWith(' '.repeat(margin)) ? line.slice(margin) : line)).join('\n');
  for (let change = Math.floor(next() * 4); change > 0; change -= 1) {
    const at = Math.floor(next() * (text.length + 1));
    const cut = next() < 0.3 ? 1 + Math.floor(next() * 3) : 0;
    text = text.slice(0, at) + (cut > 0 ? '' : (pick(pieces) ?? '')) + text.slice(at + cut);
  }
  return text;
}

describe('plainDocument beside the YAML library (yaml 2, YAML 1.2 failsafe schema)', () => {
  it('law: every example file is plain, and is the tree that the library reads', () => {
    for (const text of examples) {
      const tree = plainDocument(text);
      expect(tree).toEqual(libraryDocument('a.yaml', text).root);
    }
  });

  it('law: a file that the library finds fault with is never plain', () => {
    const faulty = problems.filter((text) => libraryDocument('a.yaml', text).problems.length > 0);
    expect(faulty.length).toBeGreaterThan(20);
    for (const text of faulty) expect(plainDocument(text)).toBeUndefined();
  });

  it('law: what is read as plain in 6,000 spoilt texts is what the library reads, without a problem', () => {
    const next = numbersFrom(20261125);
    let plain = 0;
    for (let round = 0; round < 6000; round += 1) {
      const text = mutant([...examples, ...problems], next);
      const tree = plainDocument(text);
      if (!tree) continue;
      plain += 1;
      const { root: library, problems: found } = libraryDocument('a.yaml', text);
      expect({ text, tree, found }).toEqual({ text, tree: library, found: [] });
    }
    expect(plain).toBeGreaterThan(1000);
  });

  it('leaves flow style, blocks, anchors and texts of several lines to the library', () => {
    for (const text of [
      'a: [1, 2]',
      'a: |\n  b',
      'a: &x b',
      'a: b\n  c',
      'a:\tb',
      'a: "b\\n"',
      '- a',
      'a: 1\na: 2',
      '',
    ])
      expect(plainDocument(text)).toBeUndefined();
    expect(parseDocument('a.yaml', 'a: [1, 2]').root).toMatchObject({ kind: 'map' });
  });
});
