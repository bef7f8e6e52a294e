import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leafOf } from '../../../src/ledger/json-schema-leaf.ts';
import type { FileKind } from '../../../src/ledger/schema.ts';
import { fileKinds } from '../../../src/ledger/schema-files.ts';
import { type UnitFactor, unitFactors } from '../../../src/reference/unit-factors.ts';
import { type FileRead, readBy } from '../read/all-readers.ts';
import { spoiltTexts } from '../read/spoilt-texts.ts';
import { type Leaf, leavesOf } from './leaf-files.ts';
import { tried } from './tried-texts.ts';
import { filesOf, parsed, refusals, repository, validator } from './validators.ts';

const example = filesOf(join(repository, 'examples/orange-cardamom'));
const gitLedger = filesOf(join(repository, 'tests/fixtures/git-ledger'));

const nameFor = {
  bench: 'bench.yaml',
  ingredients: 'ingredients.yaml',
  trial: 'trials/0014.yaml',
  series: 'series/ladder.yaml',
  formula: 'formulas/drink.yaml',
  batch: 'batches/b1.yaml',
} as const satisfies Readonly<Record<FileKind, FileRead>>;

const errorsIn = (kind: FileKind, text: string): readonly string[] =>
  readBy(nameFor[kind], text).flatMap(({ severity, message }) => (severity === 'error' ? [message] : []));

const fixtures = readdirSync(join(repository, 'tests/fixtures/problems')).flatMap((code) =>
  filesOf(join(repository, 'tests/fixtures/problems', code)).map((one) => ({ code, ...one })),
);

/** Whether an editor says something against a file: it can't be parsed, or the schema refuses it. */
function isMarked(kind: FileKind, text: string): boolean {
  try {
    return refusals(kind, parsed(text)).length > 0;
  } catch {
    return true;
  }
}

describe('law: never stricter than the reader', () => {
  it('every file of every fixture that its reader takes', () => {
    const taken = fixtures.filter(({ kind, text }) => errorsIn(kind, text).length === 0);
    expect(taken.length).toBeGreaterThan(20);
    for (const { code, file, kind, text } of taken)
      expect([code, file, refusals(kind, parsed(text))]).toEqual([code, file, []]);
  });

  it('files with signs put into them at random: what the reader takes, the schema takes', () => {
    const all = [...example, ...gitLedger, ...fixtures];
    const kindOf = new Map(all.map(({ text, kind }) => [text, kind]));
    let taken = 0;
    for (const kind of fileKinds) {
      const texts = [...kindOf].flatMap(([text, of]) => (of === kind ? [text] : []));
      for (const text of spoiltTexts(texts, texts.length === 0 ? 0 : 300)) {
        if (errorsIn(kind, text).length > 0) continue;
        taken += 1;
        expect([text, refusals(kind, parsed(text))]).toEqual([text, []]);
      }
    }
    expect(taken).toBeGreaterThan(150);
  });

  const leaves = leavesOf(fileKinds);

  /** What the schema says against a text that the reader takes there. */
  function stricterAt({ kind, path, fileWith }: Leaf, typed: string): string | undefined {
    const text = fileWith(typed);
    const refused = refusals(kind, parsed(text));
    return refused.length > 0 && errorsIn(kind, text).length === 0
      ? `${kind} ${path}: ${typed}: ${refused.join('; ')}`
      : undefined;
  }

  it('every place in which a text may stand is tried, with a text that its reader takes', () => {
    expect(leaves.length).toBeGreaterThan(160);
    const untaken = leaves.filter(({ kind, fileWith }) =>
      tried.every((text) => errorsIn(kind, fileWith(JSON.stringify(text))).length > 0),
    );
    expect(untaken.map(({ kind, path }) => `${kind} ${path}`)).toEqual([]);
  });

  it.each(tried.map((one) => [one]))('"%s" everywhere, in quotes and plain', (text) => {
    const typed = [JSON.stringify(text), ...(/^[\w.+-]*$/u.test(text) ? [text] : [])];
    expect(leaves.flatMap((leaf) => typed.flatMap((one) => stricterAt(leaf, one) ?? []))).toEqual([]);
  });

  it('an amount in every unit that the tool knows, in every spelling', () => {
    const validate = validator().compile(leafOf.amount);
    const units: readonly UnitFactor[] = unitFactors;
    for (const { symbol, spellings = [] } of units)
      for (const unit of [symbol, ...spellings]) expect([unit, validate(`2.5${unit}`)]).toEqual([unit, true]);
  });

  it('texts at random anywhere', () => {
    const alphabet = [
      ...'0123456789.,+-*/() :%eEgmLCdKk',
      ' in drink',
      'to ',
      'rest',
      ' mg/L',
      ' g',
      'clear',
      '\u212a',
    ];
    const text = fc
      .array(fc.constantFrom(...alphabet), { minLength: 1, maxLength: 8 })
      .map((signs) => signs.join(''));
    fc.assert(
      fc.property(fc.constantFrom(...leaves), text, (leaf, typed) => {
        expect(stricterAt(leaf, JSON.stringify(typed))).toBeUndefined();
      }),
      { numRuns: 3000, seed: 7 },
    );
  });
});

/** Shape and words alone; what the reader refuses for other reasons an editor can't know. */
describe('pinned: slips that editors mark while one types', () => {
  const slips = fixtures.flatMap(({ code, kind, file, text }) => {
    const mine = errorsIn(kind, text);
    return mine.length === 0 ? [] : [{ code, file, isMarked: isMarked(kind, text) }];
  });

  it.each([
    'unknown-key',
    'wrong-type',
    'unknown-word',
    'unknown-look',
    'missing-key',
    'no-unit',
    'not-an-item',
    'bad-score',
    'decimal-comma',
    'thousands-comma',
    'unknown-version',
    'no-amount',
    'bad-time',
  ])('every file of %s', (code) => {
    const of = slips.filter((one) => one.code === code);
    expect(of.map(({ file, isMarked: marked }) => [file, marked])).toEqual(
      of.map(({ file }) => [file, true]),
    );
    expect(of.length).toBeGreaterThan(0);
  });

  it('what is left to neckring check', () => {
    const left = slips.filter(({ isMarked: marked }) => !marked).map(({ code }) => code);
    expect([...new Set(left)].sort()).toEqual([
      ...['anchor', 'directive', 'duplicate-key', 'indent', 'negative-amount', 'no-name', 'no-offset'],
      ...[
        'open-bracket',
        'second-document',
        'second-name',
        'skipped-time',
        'tag',
        'text-after-quote',
        'two-rests',
      ],
      ...['unknown-time-zone', 'unknown-unit', 'wrong-kind'],
    ]);
  });
});
