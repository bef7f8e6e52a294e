import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const now = '2026-03-20T23:30:00Z';
const file = 'series/ladder.yaml';

const seriesOf = (text: string): Promise<string> => ledgerOf({ [file]: text });

const open = `# the first one
series:   ladder      # its name
varies: oil per emulsifier

passes:
  - clear
`;

describe('decide', () => {
  it('adds the decision and leaves every other byte', async () => {
    const folder = await seriesOf(open);
    const words = ['decide', 'ladder', 'one part to three', '--ratio', '1:3', '--why', 'the half: blue'];
    const ran = await neckring(words, { folder, now });
    expect([ran.code, ran.err]).toEqual([0, `wrote ${file}\n`]);
    expect(await readIn(folder, file)).toBe(
      `${open}\ndecided:\n  text: one part to three\n  date: 2026-03-20\n  ratio: 1:3\n  why: "the half: blue"\n`,
    );
    expect(ran.out).toContain('+   ratio: 1:3');
  });

  it('fills a decision that was left open, and takes the day of the bench', async () => {
    const folder = await seriesOf(`${open}decided:   # still to come\n`);
    // 23:30 UTC on 20 March is still the 20th in Lisbon (winter time); a summer evening is the next day.
    await neckring(['decide', 'ladder', 'half'], { folder, now: '2026-07-01T23:30:00Z' });
    expect(await readIn(folder, file)).toBe(
      `${open}decided:   # still to come\n  text: half\n  date: 2026-07-02\n`,
    );
  });

  it('a second decision is refused; --again keeps the old one as a comment', async () => {
    const folder = await exampleLedger();
    const path = 'series/orange-ladder.yaml';
    const before = await readIn(folder, path);
    const refused = await neckring(['decide', 'orange ladder', 'half'], { folder, now });
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('says what was decided on 2026-03-09: "one part to three');
    expect(refused.err).toContain('--again replaces it');
    expect(await readIn(folder, path)).toBe(before);
    const again = ['decide', 'orange ladder', 'one to 3.2', '--ratio', '1:3.2', '--again'];
    expect((await neckring(again, { folder, now })).code).toBe(0);
    const after = await readIn(folder, path);
    const [head = '', old = ''] = before.split('decided:\n');
    const kept = `decided:\n${old}`.trimEnd().replace(/^/gmu, '# ');
    expect(after).toBe(
      `${head}# before:\n${kept}\ndecided:\n  text: one to 3.2\n  date: 2026-03-20\n  ratio: 1:3.2\n`,
    );
    const same = await neckring(again, { folder, now: '2026-03-21T09:00:00Z' });
    expect([same.code, same.err]).toEqual([0, `${path} says so already; nothing written\n`]);
    expect(await readIn(folder, path)).toBe(after);
    const third = ['decide', 'orange ladder', 'one to 3.4', '--ratio', '1:3.4', '--again'];
    expect((await neckring(third, { folder, now })).code).toBe(0);
    expect((await readIn(folder, path)).match(/# before:/gu)?.length).toBe(2);
    expect((await neckring(['check'], { folder, now })).code).toBe(0);
  });

  it('says where more oil is decided on than was seen to hold', async () => {
    const folder = await exampleLedger();
    const words = ['decide', 'orange ladder', 'half', '--ratio', '1:2', '--again', '--dry-run'];
    const ran = await neckring(words, { folder, now });
    expect(ran.out).toContain('! 1 : 2 is more oil than was seen to hold');
    expect(ran.err).toBe('would write series/orange-ladder.yaml\n');
    const third = await neckring([...words.slice(0, 4), '1:3', ...words.slice(5)], { folder, now });
    expect(third.out).not.toContain('!');
  });

  it('as JSON', async () => {
    const folder = await seriesOf(open);
    const answer = await found(['decide', 'ladder', 'a third', '--ratio', '0.333'], { folder, now });
    expect([answer['file'], answer['date'], leafValue(answer['ratio'])]).toEqual([file, '2026-03-20', 0.333]);
  });

  it.each([
    ['an empty text', ['ladder', '  '], 'the decision is empty'],
    ['no ratio', ['ladder', 'half', '--ratio', 'half'], '--ratio: "half" is not a ratio'],
    ['a ratio of 0', ['ladder', 'half', '--ratio', '0'], '--ratio: "0" is no ratio'],
    ['no such series', ['laddr', 'half'], 'did you mean "ladder"?'],
  ])('refuses %s and writes nothing', async (_, words, message) => {
    const folder = await seriesOf(open);
    const ran = await neckring(['decide', ...words], { folder, now });
    expect([ran.code, ran.err.includes(message)], ran.err).toEqual([2, true]);
    expect(await readIn(folder, file)).toBe(open);
  });

  it('takes an amount where an amount is varied', async () => {
    const folder = await seriesOf('series: ladder\nvaries: propylene glycol\n');
    expect((await neckring(['decide', 'ladder', 'six', '--ratio', '6 g'], { folder, now })).code).toBe(0);
    expect(await readIn(folder, file)).toContain('  ratio: 6 g\n');
    const other = await seriesOf('series: ladder\nvaries: propylene glycol\n');
    expect((await neckring(['decide', 'ladder', 'six', '--ratio', '6'], { folder: other, now })).code).toBe(
      2,
    );
  });

  it('keeps windows line ends', async () => {
    const folder = await seriesOf('series: ladder\r\ndecided:\r\n  text: old\r\n');
    expect((await neckring(['decide', 'ladder', 'new', '--again'], { folder, now })).code).toBe(0);
    expect(await readIn(folder, file)).toBe(
      'series: ladder\r\n# before:\r\n# decided:\r\n#   text: old\r\ndecided:\r\n  text: new\r\n  date: 2026-03-20\r\n',
    );
  });
});

describe('from a ladder to a working ratio', () => {
  it('init, new, ladder, weigh, look, next, decide', async () => {
    const folder = await ledgerOf({});
    const at = (time: string) => ({ folder, now: time });
    const say = async (time: string, ...words: readonly string[]) => {
      const ran = await neckring(words, at(time));
      expect(ran.code, `${words.join(' ')}: ${ran.err}${ran.out}`).toBe(0);
      return ran;
    };
    await say(
      '2026-03-02T08:00:00Z',
      ...['new', '--title', 'sweet orange, first', '--item', '2 g sweet orange oil'],
      ...['--item', '6 g polysorbate 80', '--item', 'to 50 g water', '--step', 'warm to 60 C and stir'],
    );
    // The true break of this bench: 0.42 part of oil to one of emulsifier.
    const trueBreak = 0.42;
    const makeAndLook = async (day: string, week: string, words: readonly string[]) => {
      const made = await found(words, at(`${day}T10:00:00Z`));
      for (const beaker of rows(made['beakers'] ?? made['trials'])) {
        const number = String(beaker['trial']);
        const items = rows(beaker['items']);
        const figures = items.map((item) => leafValue(item['mass']).toFixed(2));
        await say(`${day}T10:30:00Z`, 'weigh', number, ...figures);
        const [oil = 0, emulsifier = 1] = figures.map(Number);
        const look = oil / emulsifier > trueBreak ? 'hazy' : 'clear';
        await say(`${week}T10:30:00Z`, 'look', number, look);
      }
    };
    await makeAndLook('2026-03-02', '2026-03-09', ['ladder', '1', '--series', 'orange', '--write']);
    await makeAndLook('2026-03-09', '2026-03-16', ['next', 'orange', '--write']);
    await makeAndLook('2026-03-16', '2026-03-23', ['next', 'orange', '--write']);
    const later = '2026-03-24T10:00:00Z';
    const series = await found(['series', 'orange'], at(later));
    const [broke, working] = [leafValue(series['breakPoint']), leafValue(series['workingPoint'])];
    expect(Math.abs(broke / trueBreak - 1)).toBeLessThan(0.1);
    expect(working).toBeLessThan(trueBreak);
    expect(working).toBeGreaterThan(trueBreak * 0.75);
    await say(later, 'decide', 'orange', 'a step back from the break', '--ratio', working.toFixed(3));
    expect(await readIn(folder, 'series/orange.yaml')).toContain(`ratio: ${working.toFixed(3)}`);
    await say(later, 'check');
  });

  it('a decision reads back in the series', async () => {
    const folder = await seriesOf(open);
    await writeIn(
      folder,
      'trials/1.yaml',
      'trial: 1\nseries: ladder\nmade: 2026-03-02T10:00+00:00\nstages:\n  emulsion:\n    - sweet orange oil: 2 g\n    - polysorbate 80: 6 g\n    - water: to 50 g\n',
    ).catch(() => undefined);
    await neckring(['decide', 'ladder', 'a third', '--ratio', '1:3'], { folder, now });
    const ran = await neckring(['series', 'ladder', '--json'], { folder, now });
    expect(record(JSON.parse(ran.out))['schema']).toBe('series@1');
    expect((await neckring(['series', 'ladder'], { folder, now })).out).toContain('a third');
  });
});
