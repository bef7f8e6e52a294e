import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { neckring, writeIn } from './neckring.ts';

const series = 12;
const each = 10;
let folder = '';

const trial = (number: number): string => `trial: ${number}
made: 2026-03-02T10:15+00:00
series: ladder ${number % series}
stages:
  emulsion:
    - sweet orange oil: ${1 + number / 100} g
    - polysorbate 80: 6 g
    - water: to 50 g
observations:
  - at: 2026-03-03T09:00+00:00
    look: clear
`;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'neckring-'));
  await writeIn(folder, 'bench.yaml', 'time zone: UTC\n');
  for (const name of ['trials', 'series']) await mkdir(join(folder, name));
  for (let at = 0; at < series; at += 1)
    await writeIn(folder, `series/${at}.yaml`, `series: ladder ${at}\nvaries: oil per emulsifier\n`);
  for (let number = 1; number <= series * each; number += 1)
    await writeIn(folder, `trials/${number}.yaml`, trial(number));
});

afterAll(() => rm(folder, { recursive: true, force: true }));

/** How many files a command read, told every twenty. */
async function filesReadBy(words: readonly string[]): Promise<number> {
  let last = '';
  const progress = (text: string): void => {
    last = text;
  };
  const { code, err } = await neckring(words, { folder, progress, now: '2026-03-04T10:00:00Z' });
  expect([code, err.includes('error')]).toEqual([0, false]);
  return Number(/(\d+) files/.exec(last)?.[1] ?? 0);
}

describe('how much of the ledger a command reads', () => {
  it('a report of all of it reads each file once or twice, however many series there are', async () => {
    expect(await filesReadBy(['report', '--html', 'all.html'])).toBeLessThan(
      2 * (series * each + series) + 20,
    );
  });

  it.each([
    ['observe', ['observe', '7', '--note', 'faint']],
    ['look', ['look', '7', 'clear', '--note', 'again']],
    ['weigh', ['weigh', '7', 'sweet orange oil', '1.07']],
  ])('one %s does not read the ledger', async (_, words) => {
    expect(await filesReadBy(words)).toBeLessThan(20);
  });
});
