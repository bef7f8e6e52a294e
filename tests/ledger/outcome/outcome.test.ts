import { describe, expect, it } from 'vitest';
import { openBench, settingsOf } from '../../../src/ledger/folder.ts';
import { ageSeconds, lastedShare, outcomeOf, watchRules } from '../../../src/ledger/outcome.ts';
import { memoryReadPort } from '../../../src/ledger/port.ts';
import { openTrial } from '../../../src/ledger/single-trial.ts';

const made = Date.parse('2026-03-01T10:00Z');
const day = 86_400_000;

type Looked = readonly (readonly [after: number, look: string])[];

/** A trial made at 10:00, looked at after so many days. */
const trialText = (looked: Looked, more = ''): string => `trial: 1
made: 2026-03-01T10:00+00:00
stages:
  emulsion:
    - water: to 50 g
${
  looked.length + more.length > 0
    ? `observations:\n${looked
        .map(
          ([after, look]) =>
            `  - at: ${new Date(made + after * day).toISOString().slice(0, 16)}+00:00\n    look: ${look}\n`,
        )
        .join('')}${more}`
    : ''
}`;

async function outcome(looked: Looked, more = '', passes?: readonly ['clear', 'bluish']) {
  const bench = 'ledger: 1\nbench:\n  time zone: UTC\n';
  const port = memoryReadPort({ '/l/bench.yaml': bench, '/l/trials/1.yaml': trialText(looked, more) });
  const opened = await openBench('/l', port);
  if (!opened.card) throw new Error('no bench');
  const trial = await openTrial({ root: '/l', port, settings: settingsOf(opened.card) }, 1);
  const card = trial?.card;
  const [sample] = card?.samples ?? [];
  if (!card || !sample) throw new Error('no sample');
  const rules = { ...watchRules({ sample, bench: opened.card }), ...(passes ? { passes } : {}) };
  const found = outcomeOf({ card, sample, rules });
  const age = (one: typeof found.lastPass) => one && (ageSeconds(card, sample, one) ?? 0) / 86_400;
  return {
    outcome: found.outcome,
    heldTheWatch: found.heldTheWatch,
    between: [age(found.lastPass), age(found.firstFail)],
    recovery: age(found.recovery),
    lasted: lastedShare({ card, sample, rules }, found),
  };
}

// Watch 7 d, settling 1 d: the defaults of a bench (common practice, no source).
describe('outcomes with the looks between which they came about', () => {
  it.each<[string, Looked, object]>([
    ['nothing seen', [], { outcome: 'watching', between: [undefined, undefined], lasted: 0 }],
    ['clear so far', [[2, 'clear']], { outcome: 'watching', between: [2, undefined], lasted: 2 / 7 }],
    [
      'clear to the end',
      [
        [2, 'clear'],
        [7, 'clear'],
      ],
      { outcome: 'held', heldTheWatch: true, between: [7, undefined], lasted: 1 },
    ],
    [
      'between two looks',
      [
        [2, 'clear'],
        [4, 'hazy'],
      ],
      { outcome: 'failed', heldTheWatch: false, between: [2, 4] },
    ],
    ['at the first look', [[2, 'bluish']], { outcome: 'failed', between: [undefined, 2] }],
    [
      'a haze before it has settled does not count',
      [
        [0.5, 'hazy'],
        [2, 'clear'],
      ],
      { outcome: 'watching', between: [2, undefined] },
    ],
    [
      'a ring before it has settled does',
      [[0.5, 'clear, ring']],
      { outcome: 'failed', between: [undefined, 0.5] },
    ],
    ['so does broken', [[0.5, 'broken']], { outcome: 'failed', between: [undefined, 0.5] }],
    [
      'one that recovers stays failed, and it is told',
      [
        [2, 'clear'],
        [4, 'hazy'],
        [5, 'clear'],
        [7, 'clear'],
      ],
      { outcome: 'failed', heldTheWatch: false, between: [2, 4], recovery: 5 },
    ],
    [
      'a late failure counts, and that it held the watch is told',
      [
        [7, 'clear'],
        [30, 'clear'],
        [90, 'sediment'],
      ],
      { outcome: 'failed', heldTheWatch: true, between: [30, 90] },
    ],
    [
      'a failure over the end of the watch did not hold it',
      [
        [4, 'clear'],
        [10, 'hazy'],
      ],
      { outcome: 'failed', heldTheWatch: false, between: [4, 10] },
    ],
  ])('%s', async (_, looked, expected) => {
    expect(await outcome(looked)).toMatchObject(expected);
  });

  it('looking that stopped: before the end it ended, after it held', async () => {
    const ended = (after: number): string =>
      `  - at: ${new Date(made + after * day).toISOString().slice(0, 16)}+00:00\n    ended: spilled\n`;
    expect(await outcome([[2, 'clear']], ended(3))).toMatchObject({ outcome: 'ended', lasted: 2 / 7 });
    expect(await outcome([[7, 'clear']], ended(8))).toMatchObject({ outcome: 'held' });
    expect(await outcome([[2, 'hazy']], ended(3))).toMatchObject({ outcome: 'failed' });
  });

  it('what passes is what the series says', async () => {
    const looked: Looked = [
      [2, 'bluish'],
      [7, 'clear'],
    ];
    expect(await outcome(looked, '', ['clear', 'bluish'])).toMatchObject({ outcome: 'held' });
  });
});

/** Every course of looks with these words at four ages. */
function* courses(): Generator<Looked> {
  const words = ['', 'clear', 'hazy', 'ring'];
  const ages = [0.5, 3, 7, 30];
  for (let code = 0; code < words.length ** ages.length; code += 1) {
    yield ages.flatMap((after, at) => {
      const word = words[Math.floor(code / words.length ** at) % words.length] ?? '';
      return word === '' ? [] : [[after, word] as const];
    });
  }
}

describe('laws, over every course of four looks', () => {
  it('law: one more look that passes at the end undoes neither held nor failed', async () => {
    let tried = 0;
    for (const looked of courses()) {
      const before = await outcome(looked);
      if (before.outcome === 'watching') continue;
      const after = await outcome([...looked, [31, 'clear']]);
      expect([looked, after.outcome]).toEqual([looked, before.outcome]);
      expect(after.between[1]).toBe(before.between[1]);
      tried += 1;
    }
    expect(tried).toBeGreaterThan(100);
  });

  it('law: the ends of the interval are looks, the first one before the second', async () => {
    for (const looked of courses()) {
      const { between, outcome: found } = await outcome(looked);
      const [last, first] = between;
      const ages = looked.map(([after]) => after);
      for (const end of between) if (end !== undefined) expect(ages).toContain(end);
      if (last !== undefined && first !== undefined) expect(last).toBeLessThan(first);
      expect(first !== undefined).toBe(found === 'failed');
    }
  });

  it('law: the order in which looks are written does not matter', async () => {
    for (const looked of courses())
      expect(await outcome([...looked].reverse())).toEqual(await outcome(looked));
  });
});
