import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, record, rows } from './neckring.ts';

const now = '2026-03-12T12:00:00Z';
const later = '2026-03-12T12:05:00Z';
const fourteen = 'trials/0014-orange-1-to-2.5.yaml';
const drink = 'trials/0017-orange-cardamom-drink.yaml';

describe('same: the last look once more', () => {
  it('of several trials, in a range', async () => {
    const folder = await exampleLedger();
    expect((await neckring(['same', '13-14', '--by', 'K'], { folder, now })).code).toBe(0);
    const look = (words: string) => `  - at: 2026-03-12T12:00+00:00\n    look: ${words}\n    by: K\n`;
    expect(await readIn(folder, 'trials/0013-orange-1-to-3.yaml')).toContain(`${look('clear')}concluded: `);
    expect((await readIn(folder, fourteen)).endsWith(look('bluish'))).toBe(true);
  });

  it('of every sample of a trial, or of the one that is named', async () => {
    const folder = await exampleLedger();
    await neckring(['look', '17', 'hazy', '--sample', 'cold glass', '--at', '09:00'], { folder, now });
    const { out } = await neckring(['same', '17', '--json'], { folder, now });
    expect(rows(record(record(JSON.parse(out))['found'])['looks'])).toMatchObject([
      { sample: 'warm glass', looks: ['clear'] },
      { sample: 'cold glass', looks: ['hazy'] },
    ]);
    const words = ['same', '17', '--sample', 'cold glass'];
    const named = await neckring(words, { folder, now: '2026-03-12T12:30:00Z' });
    expect(named.err.match(/wrote/g)).toHaveLength(1);
  });

  it('of a time before, the last look before that', async () => {
    const folder = await exampleLedger();
    await neckring(['same', '14', '--at', '2026-03-08 09:00'], { folder, now });
    expect(await readIn(folder, fourteen)).toContain('  - at: 2026-03-08T09:00+00:00\n    look: clear\n');
  });

  it('typed twice in a minute it is there once', async () => {
    const folder = await exampleLedger();
    await neckring(['same', '14'], { folder, now });
    const once = await readIn(folder, fourteen);
    expect((await neckring(['same', '14'], { folder, now })).err).toContain('says so already');
    expect(await readIn(folder, fourteen)).toBe(once);
  });

  it.each([
    [['14-'], '"14-" is not a trial or a range of trials'],
    [['clear'], '"clear" is not a trial or a range of trials'],
    [['99'], 'there is no trial 99'],
    [
      ['14', '--at', '2026-03-02 12:00'],
      'there is no look of the beaker of trial 14 to repeat; say what was seen: neckring look 14 clear',
    ],
  ])('refuses %j', async (words, message) => {
    const folder = await exampleLedger();
    const before = await readIn(folder, fourteen);
    const ran = await neckring(['same', ...words], { folder, now });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
    expect(await readIn(folder, fourteen)).toBe(before);
  });
});

describe('end: looking stops', () => {
  it('writes when and why', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(['end', '14', '--why', 'thrown away', '--note', 'no room'], { folder, now });
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('ended (thrown away)');
    expect(
      (await readIn(folder, fourteen)).endsWith(
        '  - at: 2026-03-12T12:00+00:00\n    note: no room\n    ended: thrown away\n',
      ),
    ).toBe(true);
    expect((await neckring(['check', fourteen], { folder, now })).code).toBe(0);
  });

  it.each([
    ['look', ['look', '13', '14', 'clear']],
    ['same', ['same', '13-14']],
    ['a second end', ['end', '13-14', '--why', 'mould']],
    ['observe', ['observe', '14', '--look', 'clear']],
  ])('after it %s is refused, also for the trials beside it', async (_, words) => {
    const folder = await exampleLedger();
    await neckring(['end', '14', '--why', 'spilled'], { folder, now });
    const before = [await readIn(folder, fourteen), await readIn(folder, 'trials/0013-orange-1-to-3.yaml')];
    for (const moment of [now, later]) {
      const ran = await neckring(words, { folder, now: moment });
      expect(ran.code).toBe(2);
      expect(ran.err).toBe(
        `the beaker of trial 14 ended 2026-03-12T12:00+00:00 (spilled); give the time with --at if it was seen before; if it goes on, take "ended" out of ${fourteen}:${(before[0] ?? '').split('\n').length - 2}\n`,
      );
    }
    expect([await readIn(folder, fourteen), await readIn(folder, 'trials/0013-orange-1-to-3.yaml')]).toEqual(
      before,
    );
  });

  it('typed again in the same minute it is there once', async () => {
    const folder = await exampleLedger();
    await neckring(['end', '14', '--why', 'spilled'], { folder, now });
    const ran = await neckring(['end', '14', '--why', 'spilled'], { folder, now });
    expect([ran.code, ran.err]).toEqual([0, expect.stringContaining('says so already; nothing written')]);
  });

  it('what was seen before it can still be written down, and a note or a taste after it', async () => {
    const folder = await exampleLedger();
    await neckring(['end', '14', '--why', 'drunk'], { folder, now });
    for (const words of [
      ['look', '14', 'hazy', '--at', '10:00'],
      ['observe', '14', '--look', 'hazy', '--at', '11:00'],
      ['observe', '14', '--taste', 'soapy=2', '--note', 'from memory'],
    ])
      expect((await neckring(words, { folder, now: later })).code).toBe(0);
  });

  it('of one sample; the other is still looked at, also with same', async () => {
    const folder = await exampleLedger();
    const unsaid = await neckring(['end', '17', '--why', 'drunk'], { folder, now });
    expect([unsaid.code, unsaid.err]).toEqual([2, expect.stringContaining('trial 17 has 2 samples')]);
    await neckring(['end', '17', '--why', 'drunk', '--sample', 'warm glass'], { folder, now });
    const { out } = await neckring(['same', '17', '--json'], { folder, now: later });
    expect(rows(record(record(JSON.parse(out))['found'])['looks'])).toMatchObject([{ sample: 'cold glass' }]);
    expect((await readIn(folder, drink)).match(/ended: drunk/g)).toHaveLength(1);
  });

  it.each([
    [['14'], '--why is needed; say --why spilled, drunk, mould or "thrown away"'],
    [['14', '--why', ' '], '--why is needed'],
    [['17-14', '--why', 'mould'], '"17-14" runs backwards'],
    [['99', '--why', 'mould'], 'there is no trial 99'],
  ])('refuses %j', async (words, message) => {
    const folder = await exampleLedger();
    const ran = await neckring(['end', ...words], { folder, now });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
  });
});
