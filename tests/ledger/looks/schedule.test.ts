import { describe, expect, it } from 'vitest';
import { openBench, settingsOf } from '../../../src/ledger/folder.ts';
import { outcomeOf, watchRules } from '../../../src/ledger/outcome.ts';
import { memoryReadPort } from '../../../src/ledger/port.ts';
import { looksDue } from '../../../src/ledger/schedule.ts';
import { openTrial } from '../../../src/ledger/single-trial.ts';

const head = `trial: 1
made: 2026-03-01T16:00+00:00
stages:
  emulsion:
    - water: to 50 g
`;

async function cardOf(text: string) {
  const bench = 'ledger: 1\nbench:\n  time zone: UTC\n';
  const port = memoryReadPort({ '/l/bench.yaml': bench, '/l/trials/1.yaml': text });
  const opened = await openBench('/l', port);
  if (!opened.card) throw new Error('no bench');
  const trial = await openTrial({ root: '/l', port, settings: settingsOf(opened.card) }, 1);
  if (!trial?.card) throw new Error('no trial');
  return { card: trial.card, bench: opened.card };
}

const seen = (looks: Readonly<Record<string, string>>): string =>
  `observations:\n${Object.entries(looks)
    .map(([at, look]) => `  - at: 2026-${at}+00:00\n    look: ${look}\n`)
    .join('')}`;

/** Days after the make, whether due, and since which day. */
async function due(text: string, now: string) {
  const made = Date.parse('2026-03-01T16:00Z');
  const days = (epoch: number): number => (epoch - made) / 86_400_000;
  return looksDue({ ...(await cardOf(text)), now: Date.parse(`2026-${now}Z`) }).map((one) => ({
    sample: one.sample.name,
    day: one.afterSeconds / 86_400,
    isDue: one.isDue,
    since: days(one.sinceEpoch),
  }));
}

const one = (day: number, isDue: boolean, since = day) => [{ sample: 'emulsion', day, isDue, since }];

// The default schedule is 1, 2, 4 and 7 d, the watch 7 d, the long watch 30 and 90 d (common practice, no source).
describe('what is due', () => {
  it.each([
    ['on the day of the make', '03-01T18:00', one(1, false)],
    ['in the evening of it', '03-02T07:00', one(1, false)],
    ['the next morning, 8 h early', '03-02T08:00', one(1, true)],
    ['the day after, with a look missed', '03-03T17:00', one(2, true, 1)],
    ['on day 5, with three missed', '03-06T17:00', one(4, true, 1)],
    ['after the long watch', '08-01T10:00', one(90, true, 1)],
  ])('%s, where nothing was seen', async (_, now, expected) => {
    expect(await due(head, now)).toEqual(expected);
  });

  it.each([
    ['a look in the morning counts for its day', { '03-02T09:00': 'clear' }, '03-02T18:00', one(2, false)],
    ['one before that does not', { '03-02T07:00': 'clear' }, '03-02T18:00', one(1, true)],
    [
      'the newest look counts, in whatever order',
      { '03-03T12:00': 'clear', '03-02T12:00': 'clear' },
      '03-04T12:00',
      one(4, false),
    ],
    ['the watch is over: the long watch', { '03-08T17:00': 'clear' }, '03-10T12:00', one(30, false)],
    ['after 30 days', { '03-08T17:00': 'clear' }, '03-31T12:00', one(30, true)],
    ['after the last of them nothing', { '06-01T17:00': 'clear' }, '08-01T12:00', []],
    ['one that failed', { '03-03T12:00': 'clear', '03-05T12:00': 'ring' }, '03-09T12:00', []],
    ['a haze before it has settled', { '03-02T09:00': 'hazy' }, '03-03T12:00', one(2, true)],
    ['a ring before it has settled', { '03-02T09:00': 'clear, ring' }, '03-03T12:00', []],
  ])('%s', async (_, looks, now, expected) => {
    expect(await due(head + seen(looks), now)).toEqual(expected);
  });

  it('the schedule of the sample goes before that of the bench, watch and all', async () => {
    const samples =
      'samples:\n  jar:\n    of: emulsion\n    watch: 3 d\n    looks:\n      - 2 h\n  glass:\n    of: emulsion\n';
    expect(await due(head + samples, '03-01T17:30')).toEqual([
      { sample: 'jar', day: 2 / 24, isDue: true, since: 2 / 24 },
      { sample: 'glass', day: 1, isDue: false, since: 1 },
    ]);
    expect(await due(head + samples, '03-04T16:00')).toMatchObject([
      { sample: 'jar', day: 3, isDue: true },
      { sample: 'glass', day: 2, isDue: true },
    ]);
  });

  it('a schedule of its own that begins after the watch ends it with its first look', async () => {
    const samples = 'samples:\n  kept:\n    of: emulsion\n    looks:\n      - 30 d\n      - 365 d\n';
    expect(await due(head + samples, '03-20T16:00')).toEqual([
      { sample: 'kept', day: 30, isDue: false, since: 30 },
    ]);
    expect(await due(head + samples, '04-05T16:00')).toMatchObject([{ day: 30, isDue: true, since: 30 }]);
  });

  it('nothing of a sample that has ended, or of a trial without a time of making', async () => {
    const ended = `${head}observations:\n  - at: 2026-03-02T10:00+00:00\n    ended: drunk\n`;
    expect(await due(ended, '03-09T12:00')).toEqual([]);
    expect(await due(head.replace(/made.*\n/, ''), '03-09T12:00')).toEqual([]);
  });

  it('other readings are no looks', async () => {
    const reading = `${head}observations:\n  - at: 2026-03-02T10:00+00:00\n    ph: 3\n`;
    expect(await due(reading, '03-02T12:00')).toEqual(one(1, true));
  });

  it('the stage of the sample counts from its own making', async () => {
    const own = head.replace('    - water', '    made: 2026-03-05T16:00+00:00\n    items:\n      - water');
    expect(await due(own, '03-06T10:00')).toMatchObject([{ day: 1, isDue: true }]);
  });
});

describe('outcomes', () => {
  it.each([
    ['watching', {}],
    ['watching', { '03-03T12:00': 'clear' }],
    ['held', { '03-03T12:00': 'clear', '03-08T17:00': 'clear' }],
    ['failed', { '03-05T12:00': 'bluish', '03-08T17:00': 'clear' }],
    ['failed', { '03-08T17:00': 'clear', '04-01T12:00': 'sediment' }],
    ['watching', { '03-02T09:00': 'cloudy', '03-03T12:00': 'clear' }],
  ])('%s after %j', async (outcome, looks) => {
    const text = Object.keys(looks).length === 0 ? head : head + seen(looks);
    const { card, bench } = await cardOf(text);
    const [sample] = card.samples;
    if (!sample) throw new Error('no sample');
    expect(outcomeOf({ card, sample, rules: watchRules({ sample, bench }) })).toMatchObject({ outcome });
  });
});
