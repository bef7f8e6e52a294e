import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isMap, isScalar, isSeq, parseDocument } from 'yaml';
import { type Change, edit } from '../../../src/ledger/edit.ts';
import { addItemFact } from '../../../src/ledger/edit-item.ts';
import { addListEntry } from '../../../src/ledger/edit-list.ts';
import { setKey } from '../../../src/ledger/edit-map.ts';
import { handTyped } from './hand-typed.ts';

/** What the yaml library alone reads, without our reader; a key with nothing after it is null. */
function facts(node: unknown): unknown {
  if (isMap(node)) return node.items.map(({ key, value }) => [facts(key), facts(value)]);
  if (isSeq(node)) return { list: node.items.map(facts) };
  return isScalar(node) ? node.value : null;
}

function readFacts(text: string): readonly unknown[] {
  const read = parseDocument(text, { schema: 'failsafe', version: '1.2', logLevel: 'silent' });
  expect(read.errors).toEqual([]);
  const found = facts(read.contents);
  return Array.isArray(found) ? found : [];
}

const edited = (text: string, change: Change): string => {
  const done = edit('trial.yaml', text, change);
  if (!done.ok) throw new Error(`${done.problems[0]?.code}: ${done.problems[0]?.message}`);
  return done.text;
};

/** Whether every character of the old text stands in the new one, in its order. */
function isKept(old: string, now: string): boolean {
  let at = 0;
  for (const character of now) if (character === old.charAt(at)) at += 1;
  return at === old.length;
}

const isFlowOnOneLine = (text: string, key: string): boolean =>
  new RegExp(`^\ufeff?${key}: \\[.*\\]`, 'mu').test(text);

const note = fc.oneof(fc.constantFrom('faint', 'a: b', 'two\nlines', '# x', '', '- 1'), fc.string());

describe('edits of hand-typed files', () => {
  // Source: YAML 1.2.2 as read by the yaml library, not through the ledger's reader.
  it('law: a new entry in either list adds itself, and every character that was there stays', () => {
    fc.assert(
      fc.property(
        handTyped,
        fc.constantFrom('observations', 'results'),
        fc.nat(5),
        note,
        (text, key, position, said) => {
          const change = addListEntry({
            key,
            facts: [
              ['at', '9'],
              ['note', said],
            ],
            position,
            before: key === 'observations' ? ['results'] : [],
          });
          const now = edited(text, change);
          const added = [
            ['at', '9'],
            ['note', said],
          ];
          const old = readFacts(text).map((pair) => (Array.isArray(pair) ? pair : []));
          const there = old.find(([name]) => name === key)?.[1];
          const items: readonly unknown[] = there?.list ?? [];
          const list = { list: items.toSpliced(Math.min(position, items.length), 0, added) };
          const placed = old.some(([name]) => name === key)
            ? old.map(([name, value]) => [name, name === key ? list : value])
            : old.toSpliced(
                key === 'observations' && old.at(-1)?.[0] === 'results' ? old.length - 1 : old.length,
                0,
                [key, list],
              );
          expect(readFacts(now)).toEqual(placed);
          if (!isFlowOnOneLine(text, key)) expect(isKept(text, now)).toBe(true);
          if (text.includes('\r\n')) expect(now.replaceAll('\r\n', '')).not.toContain('\n');
          expect(now.startsWith('\ufeff')).toBe(text.startsWith('\ufeff'));
        },
      ),
      { numRuns: 1500 },
    );
  });

  it('law: a fact under an item and a new key keep every character that was there', () => {
    fc.assert(
      fc.property(handTyped, note, fc.nat(1), (text, said, index) => {
        const stage = text.includes('emulsion:') ? 'emulsion' : 'drink';
        const weighed = edited(text, addItemFact(['stages', stage], index, 'weighed', '2.03 g'));
        const decided = edited(weighed, setKey(['decided'], 'text', said));
        expect(isKept(text, decided)).toBe(true);
        expect(readFacts(decided).at(-1)).toEqual(['decided', [['text', said]]]);
        expect(readFacts(decided)).toHaveLength(readFacts(text).length + 1);
        expect(JSON.stringify(readFacts(decided))).toContain('["weighed","2.03 g"]');
      }),
      { numRuns: 500 },
    );
  });

  it('law: entries added one after the other all stand, in their order', () => {
    fc.assert(
      fc.property(handTyped, fc.array(note, { minLength: 2, maxLength: 5 }), (text, notes) => {
        const entry = (said: string): Change =>
          addListEntry({
            key: 'observations',
            facts: [
              ['at', '9'],
              ['note', said],
            ],
            before: ['results'],
          });
        const now = notes.reduce((before, said) => edited(before, entry(said)), text);
        const last = readFacts(now).find((pair) => Array.isArray(pair) && pair[0] === 'observations');
        const items = Array.isArray(last) ? last[1].list : [];
        expect(items.slice(-notes.length)).toEqual(
          notes.map((said) => [
            ['at', '9'],
            ['note', said],
          ]),
        );
      }),
      { numRuns: 300 },
    );
  });
});
