import { readdirSync } from 'node:fs';
import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { neckring, scratchFolder } from './commands/neckring.ts';

const examples = new URL('../examples/', import.meta.url).pathname;
const ledgers = readdirSync(examples, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('bench.yaml'))
  .map((path) => path.slice(0, -'/bench.yaml'.length));

const copyOf = async (ledger: string): Promise<string> => {
  const folder = await scratchFolder();
  await cp(join(examples, ledger), folder, { recursive: true });
  return folder;
};
const filesOf = (ledger: string): readonly string[] =>
  readdirSync(join(examples, ledger), { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.endsWith('.yaml'),
  );

describe('examples', () => {
  it('hold every YAML file in a ledger', () => {
    expect(ledgers.length).toBeGreaterThan(0);
    const all = readdirSync(examples, { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.yaml'),
    );
    expect(all.filter((path) => !ledgers.some((ledger) => path.startsWith(`${ledger}/`)))).toEqual([]);
  });

  it.each(ledgers.flatMap((ledger) => filesOf(ledger).map((file) => [ledger, file] as const)))(
    '%s: %s passes check',
    async (ledger, file) => {
      const { code, out } = await neckring(['check', file], { folder: await copyOf(ledger) });
      expect([code, out]).toEqual([0, '1 file: no errors, no warnings\n']);
    },
  );

  it.each(ledgers)('%s is checked whole, and no file of it is left out', async (ledger) => {
    const { out } = await neckring(['check'], { folder: await copyOf(ledger) });
    expect(out).toBe(`${filesOf(ledger).length} files: no errors, no warnings\n`);
  });

  it.each(ledgers)('%s: every trial is shown and reckoned without a warning', async (ledger) => {
    const folder = await copyOf(ledger);
    const { out } = await neckring(['list', '--json'], { folder });
    const numbers: readonly number[] = JSON.parse(out).found.trials.map(
      (one: { trial: number }) => one.trial,
    );
    expect(numbers.length).toBeGreaterThan(0);
    for (const number of numbers) {
      const shown = await neckring(['show', String(number)], { folder });
      expect([number, shown.code, shown.err]).toEqual([number, 0, '']);
    }
    const reckoned = await neckring(['reckon', ...numbers.map(String)], { folder });
    expect([reckoned.code, reckoned.err.includes('warning')]).toEqual([0, false]);
  });
});
