import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLedger, settingsOf } from '../../../src/ledger/folder.ts';
import { faultsIn } from '../../../src/ledger/merge/faults.ts';
import { mergeTexts } from '../../../src/ledger/merge/merge-texts.ts';
import { readText } from '../../../src/ledger/open-file.ts';
import { memoryReadPort } from '../../../src/ledger/port.ts';
import { readTrialCard } from '../../../src/ledger/read-trial.ts';
import { readTime } from '../../../src/ledger/times.ts';
import { ingredients } from '../../../src/reference/library.ts';
import { bothDone } from './both-done.ts';
import { type Doing, doings, type Notebook, names, notebooks, typedOut } from './notebook.ts';

const timeOf = (text: string): number | undefined => {
  const time = readTime(text, undefined);
  return time.ok ? time.value.epochMilliseconds : undefined;
};

const labels = { ours: 'main', theirs: 'cassis', size: 7 };
const file = 'trials/0001-orange.yaml';

const merge = (base: string, ours: string, theirs: string) => {
  const merged = mergeTexts({ file, texts: { base, ours, theirs }, labels, timeOf });
  if (merged.state === 'not merged') throw new Error(`${merged.version} was not taken apart`);
  return merged;
};

const withAll = (page: Notebook, done: readonly Doing[], side: string): Notebook =>
  done.reduce((now, doing) => doing(now, side), page);

const some = fc.array(doings, { maxLength: 5 });

/** Byte order mark and line ends, as editors leave them. */
const layouts = fc.constantFrom<(text: string) => string>(
  (text) => text,
  (text) => text.replaceAll('\n', '\r\n'),
  (text) => `\ufeff${text}`,
  (text) => text.trimEnd(),
);

const errorsIn = (text: string): readonly string[] =>
  readText(file, text, (document) => readTrialCard(document, {}))
    .problems.filter(({ severity }) => severity === 'error')
    .map(({ message }) => message);

describe('merging two people at one page', () => {
  it('law: equals both edits done one after the other, or is left to a person where they touch one fact', () => {
    let clean = 0;
    fc.assert(
      fc.property(notebooks, some, some, layouts, (page, first, second, layout) => {
        const [mine, yours] = [withAll(page, first, 'a'), withAll(page, second, 'b')];
        const [base, ours, theirs] = [page, mine, yours].map((one) => layout(typedOut(one)));
        const merged = merge(base ?? '', ours ?? '', theirs ?? '');
        const both = bothDone(page, mine, yours, names);
        if (both) {
          expect(merged.text).toBe(layout(typedOut(both)));
          expect(errorsIn(merged.text)).toEqual([]);
          clean += 1;
        }
        expect(merged.state).toBe(both ? 'clean' : 'conflict');
      }),
      { numRuns: 1200 },
    );
    expect(clean).toBeGreaterThan(300);
  }, 120_000);

  it('law: check passes on every clean merge of pages on which it passes', async () => {
    const bench = 'ledger: 1\nbench:\n  time zone: Europe/Lisbon\n';
    const port = memoryReadPort({ '/bench/bench.yaml': bench }, () => Date.UTC(2026, 5, 1));
    const ledger = await readLedger('/bench', port);
    const faultsOf = faultsIn({ file, ledger, settings: settingsOf(ledger.bench), ingredients });
    fc.assert(
      fc.property(notebooks, some, some, (page, first, second) => {
        const [base = '', ours = '', theirs = ''] = [
          page,
          withAll(page, first, 'a'),
          withAll(page, second, 'b'),
        ].map(typedOut);
        expect([...faultsOf(ours), ...faultsOf(theirs)]).toEqual([]);
        const merged = mergeTexts({ file, texts: { base, ours, theirs }, labels, timeOf, faultsOf });
        if (merged.state === 'clean') expect(faultsOf(merged.text)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  }, 120_000);

  it('law: nothing that either wrote is missing, conflict or not', () => {
    fc.assert(
      fc.property(notebooks, some, some, (page, first, second) => {
        const [base, ours, theirs] = [page, withAll(page, first, 'a'), withAll(page, second, 'b')].map(
          typedOut,
        );
        const { text } = merge(base ?? '', ours ?? '', theirs ?? '');
        // One line may hold the amount of one and the comment of the other.
        const partsOf = (lines: string): readonly string[] => lines.split(/\n|(?= {3}# )/u);
        const there = new Set(partsOf(text));
        const old = new Set(partsOf(base ?? ''));
        const written = [...partsOf(ours ?? ''), ...partsOf(theirs ?? '')].filter((part) => !old.has(part));
        // Of two equal answers the later time goes.
        expect(written.filter((part) => !there.has(part) && !part.startsWith('  - at: '))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  }, 120_000);

  it('law: who did nothing changes nothing, and two who did the same agree', () => {
    fc.assert(
      fc.property(notebooks, some, (page, done) => {
        const [base, side] = [page, withAll(page, done, 'a')].map(typedOut);
        expect(merge(base ?? '', side ?? '', base ?? '').text).toBe(side);
        expect(merge(base ?? '', base ?? '', side ?? '').text).toBe(side);
        expect(merge(base ?? '', side ?? '', side ?? '').text).toBe(side);
      }),
      { numRuns: 100 },
    );
  }, 120_000);
});
