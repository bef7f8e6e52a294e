import { describe, expect, it } from 'vitest';
import type { Fact } from '../../../src/ledger/fact-text.ts';
import { addObservation } from '../../../src/ledger/observations-edit.ts';

const timeOf = (text: string): number | undefined => {
  const time = Date.parse(text);
  return Number.isNaN(time) ? undefined : time;
};
const day = (number: number): string => `2026-03-0${number}T09:00+00:00`;
const entry = (at: string, look: string): string => `  - at: ${at}\n    look: ${look}\n`;
const add = (text: string, at: string, ...more: readonly Fact[]) =>
  addObservation('t.yaml', text, {
    facts: [['at', at], ...more],
    atEpoch: Date.parse(at),
    timeOf,
    firstSample: 'beaker',
  });

const head = 'trial: 1\nobservations:\n';

describe('addObservation', () => {
  it.each([
    ['by its time, between others', [1, 3], 2, [1, 2, 3]],
    ['first', [2, 3], 1, [1, 2, 3]],
    ['last', [1, 2], 3, [1, 2, 3]],
    ['after the last that is not later, in a file out of order', [3, 1, 4], 2, [3, 1, 2, 4]],
  ])('goes in %s', (_what, there, at, order) => {
    const from = head + there.map((number) => entry(day(number), 'clear')).join('');
    expect(add(from, day(at), ['look', 'hazy'])).toMatchObject({
      ok: true,
      state: 'added',
      text: head + order.map((number) => entry(day(number), number === at ? 'hazy' : 'clear')).join(''),
    });
  });

  it('goes after those of the same time, also when they are typed with another offset', () => {
    const from = head + entry('2026-03-02T10:00+01:00', 'clear') + entry(day(3), 'clear');
    expect(add(from, day(2), ['look', 'hazy'])).toMatchObject({
      line: 5,
      text: head + entry('2026-03-02T10:00+01:00', 'clear') + entry(day(2), 'hazy') + entry(day(3), 'clear'),
    });
  });

  it('leaves alone entries whose time cannot be read', () => {
    const from = `${head}  - note: undated\n${entry(day(3), 'clear')}`;
    expect(add(from, day(2), ['look', 'hazy'])).toMatchObject({
      text: `${head}  - note: undated\n${entry(day(2), 'hazy')}${entry(day(3), 'clear')}`,
    });
    expect(add(`${head}  - note: undated\n`, day(2), ['look', 'hazy'])).toMatchObject({
      text: `${head}  - note: undated\n${entry(day(2), 'hazy')}`,
    });
  });

  it.each([
    ['the same', `${head}${entry(day(2), 'clear, ring')}    note: x\n`],
    ['with its sample named', `${head}${entry(day(2), 'clear, ring')}    sample: beaker\n    note: x\n`],
    ['in another order', `${head}  - note: x\n    at: ${day(2)}\n    look: clear, ring\n`],
    ['with another offset', `${head}${entry('2026-03-02T10:00+01:00', 'clear, ring')}    note: x\n`],
    ['with the looks as a list', `${head}${entry(day(2), '[clear, ring]')}    note: x\n`],
  ])('is not written twice: %s', (_what, from) => {
    expect(add(from, day(2), ['look', 'clear, ring'], ['note', 'x'])).toEqual({
      ok: true,
      text: from,
      line: 3,
      state: 'unchanged',
    });
  });

  it.each([
    ['another time', day(3), 'beaker', 'clear'],
    ['another sample', day(2), 'glass', 'clear'],
    ['another look', day(2), 'beaker', 'hazy'],
  ])('is written when it has %s', (_what, at, sample, look) => {
    const from = head + entry(day(2), 'clear');
    expect(add(from, at, ['sample', sample], ['look', look])).toMatchObject({ state: 'added' });
  });

  it('stands before the results', () => {
    expect(add('trial: 1\nresults: []\n', day(2), ['look', 'clear'])).toMatchObject({
      text: `trial: 1\nobservations:\n${entry(day(2), 'clear')}results: []\n`,
    });
  });

  it('hands on the problems of a text that cannot be read', () => {
    expect(add('a: "\n', day(2)).ok).toBe(false);
  });
});
