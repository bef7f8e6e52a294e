import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring } from './neckring.ts';
import { ledgerOf, plainTrial } from './small-ledger.ts';

/** Trials 1 to `count`, each with its number in the title. */
function manyTrials(count: number): Readonly<Record<string, string>> {
  const numbers = Array.from({ length: count }, (_, at) => at + 1);
  return Object.fromEntries(
    numbers.map((number) => [
      `trials/${number}.yaml`,
      plainTrial.replace('trial: 1\n', `trial: ${number}\ntitle: beaker ${number}\n`),
    ]),
  );
}

const titles = (out: string): readonly string[] => out.match(/beaker \d+/g) ?? [];

describe('list', () => {
  it('says what to type in an empty ledger', async () => {
    const folder = await ledgerOf({});
    expect(await neckring(['list'], { folder })).toEqual({
      code: 0,
      out: 'No trials yet. neckring new --title "…" writes the first.\n',
      err: '',
    });
    const { out } = await neckring(['list', '--json'], { folder });
    expect(JSON.parse(out)).toMatchObject({ schema: 'list@1', found: { trials: [] }, problems: [] });
  });

  it('shows the newest 40 on a terminal, newest last, with a count of the rest', async () => {
    const folder = await ledgerOf(manyTrials(43));
    const { out } = await neckring(['list'], { folder, terminal: true });
    expect(titles(out)).toEqual(Array.from({ length: 40 }, (_, at) => `beaker ${at + 4}`));
    expect(out).toContain('and 3 older; neckring list --all shows every one');
  });

  it.each([
    ['with --all', ['list', '--all'], true],
    ['into a pipe', ['list'], false],
  ])('shows all %s', async (_, words, terminal) => {
    const folder = await ledgerOf(manyTrials(43));
    const { out } = await neckring(words, { folder, terminal });
    expect(titles(out).length).toBe(43);
    expect(out).not.toContain('older');
  });

  it('as JSON lists all, also on a terminal', async () => {
    const folder = await ledgerOf(manyTrials(43));
    const { out } = await neckring(['list', '--json'], { folder, terminal: true });
    expect(JSON.parse(out).found.trials.length).toBe(43);
  });

  it('shows exactly 40 without a count', async () => {
    const folder = await ledgerOf(manyTrials(40));
    const { out } = await neckring(['list'], { folder, terminal: true });
    expect([titles(out).length, out.includes('older')]).toEqual([40, false]);
  });

  it('sorts by number, not by file name', async () => {
    const folder = await ledgerOf({
      'trials/10.yaml': plainTrial.replace('trial: 1\n', 'trial: 10\ntitle: beaker 10\n'),
      'trials/0009-z.yaml': plainTrial.replace('trial: 1\n', 'trial: 9\ntitle: beaker 9\n'),
    });
    expect(titles((await neckring(['list'], { folder })).out)).toEqual(['beaker 9', 'beaker 10']);
  });

  it('names the last look of each sample with its day', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['list'], { folder, columns: 200 });
    const rows = out.split('\n');
    expect(rows.find((row) => row.includes(' 15 '))).toMatch(/hazy, ring d7$/);
    expect(rows.find((row) => row.includes(' 17 '))).toMatch(/warm glass: clear d1; cold glass: clear d1$/);
  });

  it.each([60, 80, 120])('keeps to %i columns', async (columns) => {
    const folder = await exampleLedger();
    const { out } = await neckring(['list'], {
      folder,
      columns,
      terminal: true,
      environment: { NO_COLOR: '1' },
    });
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(columns);
  });

  it('shows the trials that can be read, and says that others have errors', async () => {
    const folder = await ledgerOf({ ...manyTrials(2), 'trials/3.yaml': 'trial: 3\nstages: [\n' });
    const ran = await neckring(['list'], { folder });
    expect(ran.code).toBe(0);
    expect(titles(ran.out)).toEqual(['beaker 1', 'beaker 2']);
    expect(ran.err).toMatch(/^\d+ errors? in the files; neckring check shows them\n$/);
  });

  it('shows what could drive a terminal as signs', async () => {
    const folder = await ledgerOf({
      'trials/1.yaml': plainTrial.replace('made', 'title: "a\\x1b[31mb"\nmade'),
    });
    const { out } = await neckring(['list'], { folder });
    expect(out).toContain('a␛[31mb');
    expect(out).not.toContain('\u001b');
  });
});
