import { describe, expect, it } from 'vitest';
import { courseDays } from '../../src/commands/days-course.ts';
import { neckring, scratchFolder } from './neckring.ts';

const wordsOf = (line: string): readonly string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');

describe('days', () => {
  it('shows every line of the week, and of one day alone', async () => {
    const all = await neckring(['days']);
    expect([all.code, all.err]).toEqual([0, '']);
    const typed = all.out.replace(/ \\\n +/g, ' ');
    for (const { lines } of courseDays)
      for (const { line } of lines) expect(typed).toContain(`  neckring ${line}\n`);
    const one = await neckring(['days', '1']);
    expect(one.out).toContain('Day 1: ');
    expect(one.out).not.toContain('Day 0: ');
    expect((await neckring(['days', 'day 7'])).out).toContain('Day 7: ');
  });

  it('says which days there are', async () => {
    const { code, err } = await neckring(['days', '3']);
    expect([code, err]).toEqual([2, 'there is no page for day 3; say one of 0, 1, 7, or nothing for all\n']);
  });

  it('is named by neckring alone', async () => {
    expect((await neckring([])).out).toContain('  neckring days');
  });

  it('every line runs, one after the other, on its day', async () => {
    const folder = await scratchFolder();
    const begun = Date.parse('2026-03-02T09:00:00Z');
    for (const { day, lines } of courseDays) {
      const now = new Date(begun + day * 86_400_000).toISOString();
      for (const { line } of lines) {
        const { code, out, err } = await neckring(wordsOf(line), { folder, now });
        expect([line, code, out === '' ? err : '']).toEqual([line, 0, '']);
        if (line === 'due') expect(out).toContain('neckring look 1-5 LOOK');
        if (line.startsWith('series')) expect(out).toContain('3 held, 1 failed');
        if (line.startsWith('drink')) expect(out).toMatch(/^Trial 6: the finished drink/m);
      }
    }
  });
});
