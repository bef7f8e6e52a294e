import { describe, expect, it } from 'vitest';
import type { Io } from '../src/io.ts';
import { withProgress } from '../src/progress.ts';

/** What a terminal would show of stderr and stdout, with the clock of the test. */
function watched(more: Partial<Io> = {}) {
  const seen = { text: '', now: 0 };
  const io = withProgress({
    out: (text) => {
      seen.text += text;
    },
    err: (text) => {
      seen.text += text;
    },
    outIsTerminal: true,
    errIsTerminal: true,
    canAsk: false,
    ask: async () => undefined,
    columns: 40,
    environment: {},
    workingFolder: '/',
    now: () => seen.now,
    random: () => 0.5,
    ...more,
  });
  return { io, seen };
}

describe('progress', () => {
  it('says nothing of what takes less than a second', () => {
    const { io, seen } = watched();
    for (seen.now = 0; seen.now < 1000; seen.now += 50) io.progress?.('reading');
    io.out('done\n');
    expect(seen.text).toBe('done\n');
  });

  it('is one line, at most ten times a second, and gone before anything else is written', () => {
    const { io, seen } = watched();
    for (seen.now = 0; seen.now <= 1200; seen.now += 10) io.progress?.(`read ${seen.now}`);
    expect(seen.text).toBe('\rread 1000\rread 1100\rread 1200');
    io.out('done\n');
    expect(seen.text.endsWith(`\r${' '.repeat(9)}\rdone\n`)).toBe(true);
    io.err('wrote it\n');
    expect(seen.text.endsWith('\rdone\nwrote it\n')).toBe(true);
  });

  it('is cut to the width', () => {
    const { io, seen } = watched();
    seen.now = 2000;
    io.progress?.('x'.repeat(200));
    expect(seen.text).toBe(`\r${'x'.repeat(39)}`);
  });

  it.each([
    ['in a pipe', { errIsTerminal: false }],
    ['on a terminal that knows no way back', { environment: { TERM: 'dumb' } }],
  ])('%s there is none', (_, more) => {
    expect(watched(more).io.progress).toBeUndefined();
  });
});
