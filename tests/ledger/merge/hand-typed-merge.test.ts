import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, edit } from '../../../src/ledger/edit.ts';
import { type Plain, plainOf } from '../../../src/ledger/edit-facts.ts';
import { addListEntry } from '../../../src/ledger/edit-list.ts';
import { setKey } from '../../../src/ledger/edit-map.ts';
import { readPage } from '../../../src/ledger/edit-page.ts';
import { laid } from '../../../src/ledger/merge/layout.ts';
import { mergeTexts } from '../../../src/ledger/merge/merge-texts.ts';
import { unitsOf } from '../../../src/ledger/merge/units-of.ts';
import { readTime } from '../../../src/ledger/times.ts';
import { handTyped } from '../edit/hand-typed.ts';

const file = 'trials/0001.yaml';

const timeOf = (text: string): number | undefined => {
  const time = readTime(text, undefined);
  return time.ok ? time.value.epochMilliseconds : undefined;
};

const factsOf = (text: string): Plain | undefined => {
  const read = readPage(file, text);
  return read.ok ? plainOf(read.page.root) : undefined;
};

/** Facts apart from the order of keys. */
function sorted(plain: Plain): unknown {
  if (typeof plain === 'string') return plain;
  if ('list' in plain) return plain.list.map(sorted);
  return plain.map.map(([key, value]) => [key, sorted(value)]).sort();
}

const edited = (text: string, change: Change): string | undefined => {
  const done = edit(file, text, change);
  return done.ok ? done.text : undefined;
};

/** Edits of different facts. */
const changes: readonly Change[] = [
  setKey([], 'concluded', 'held the week'),
  addListEntry({
    key: 'observations',
    facts: [
      ['at', '2026-06-01T09:00+00:00'],
      ['look', 'ring'],
    ],
  }),
  addListEntry({
    key: 'results',
    facts: [
      ['at', '2026-06-01T09:00+00:00'],
      ['calculator', 'hlb'],
    ],
  }),
];

describe('merging pages as people type them', () => {
  it('law: a page is taken apart without a byte left over', () => {
    let whole = 0;
    fc.assert(
      fc.property(handTyped, (text) => {
        const read = readPage(file, laid(text).body);
        if (!read.ok || read.page.root.flow) return;
        if (unitsOf(read.page) === undefined) whole += 1;
      }),
      { numRuns: 150 },
    );
    expect(whole).toBe(0);
  });

  it('law: edits of two facts, each on its branch, come to the same as both on one', () => {
    let merges = 0;
    fc.assert(
      fc.property(handTyped, fc.constantFrom(0, 1, 2), fc.constantFrom(1, 2), (base, first, step) => {
        const [one, other] = [changes[first], changes[(first + step) % 3]];
        if (!one || !other) return;
        const [ours, theirs] = [edited(base, one), edited(base, other)];
        const both = ours === undefined ? undefined : edited(ours, other);
        if (ours === undefined || theirs === undefined || both === undefined) return;
        const merged = mergeTexts({
          file,
          texts: { base, ours, theirs },
          labels: { ours: 'main', theirs: 'cassis', size: 7 },
          timeOf,
        });
        if (merged.state === 'not merged') throw new Error(`${merged.version} was not taken apart`);
        expect(merged.state).toBe('clean');
        merges += 1;
        expect(sorted(factsOf(merged.text) ?? '')).toEqual(sorted(factsOf(both) ?? ''));
      }),
      { numRuns: 150 },
    );
    expect(merges).toBeGreaterThan(40);
  });
});
