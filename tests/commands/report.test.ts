import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formulaFile, gitLedger } from './git-ledger.ts';
import { exampleLedger, found, neckring, readIn, scratchFolder } from './neckring.ts';
import { at, fortyBeakers, rungText, seriesLedger } from './series-ledger.ts';
import { ledgerOf, trialLedger } from './small-ledger.ts';

async function reportOf(folder: string, ...words: readonly string[]): Promise<string> {
  const { err, out } = await neckring(['report', ...words, '--html', 'out.html'], { folder });
  expect(err).toContain('wrote out.html');
  expect(out).toBe('');
  return readIn(folder, 'out.html');
}

const headings = (page: string): readonly string[] =>
  [...page.matchAll(/<h2 [^>]*>(.*?)<\/h2>/gu)].map(([, text = '']) => text);

describe('the report of a series', () => {
  it('shows the board, the curve, the map and the decision', async () => {
    const folder = await exampleLedger();
    const page = await reportOf(folder, 'orange', 'ladder');
    expect(headings(page)).toEqual(
      expect.arrayContaining(['The board', 'The break', 'The map', 'The decision', 'Sources']),
    );
    expect(page).toMatch(
      /<b>1 : 3<\/b><span>trial 13<\/span><span class="fate">held, passed to day 7<\/span>/u,
    );
    expect(page).toMatch(/hazy, ring<\/td>/u);
    expect(page).toContain('work at 1 : ');
    expect(page).toContain('That is no shelf life');
  });

  it('is the same file each time, and says what it is in JSON', async () => {
    const folder = await exampleLedger();
    const first = await reportOf(folder, 'orange ladder');
    expect(await reportOf(folder, 'orange ladder')).toBe(first);
    const words = ['report', 'orange ladder', '--html', 'out.html'];
    const answer = await found(words, { folder });
    expect(answer).toMatchObject({ kind: 'series', title: 'orange ladder', file: 'out.html' });
    expect(answer['size']).toEqual({ value: Buffer.byteLength(first), unit: 'B' });
  });

  it('tells what must be read first, and draws no edge where there is none', async () => {
    const held = { 1: 'clear', 3: 'clear', 7: 'clear' };
    const folder = await seriesLedger([
      { trial: 1, oil: 1, looks: held },
      { trial: 2, oil: 2, looks: held },
    ]);
    const page = await reportOf(folder, 'ladder');
    expect(headings(page)[0]).toBe('Take care first');
    expect(page).toContain('all held');
    expect(page).not.toContain('breaks at');
  });

  it('a window and a grid of two have their own pages', async () => {
    const looks = { 1: 'clear', 7: 'clear' };
    const shaped = 'series: ladder\nvaries: propylene glycol\nshape: window\n';
    const items = (grams: number) => [
      'sweet orange oil: 2 g',
      'polysorbate 80: 6 g',
      `propylene glycol: ${grams} g`,
      'water: to 50 g',
    ];
    const rungs = [2, 4, 6].map((grams, trial) => ({ trial: trial + 1, items: items(grams), looks }));
    const window = await reportOf(await seriesLedger(rungs, shaped), 'ladder');
    expect(headings(window)).toContain('The window');
    expect(window).toContain('id="window-drawing-title"');
    expect(window).toContain('Nothing failed above it yet.');
    const both = 'series: ladder\nvaries: propylene glycol, oil per emulsifier\n';
    const page = await reportOf(await seriesLedger(rungs, both), 'ladder');
    expect(headings(page)).toContain('What held');
    expect(page).toContain('id="grid-drawing-title"');
  });

  it('forty beakers are drawn', async () => {
    const page = await reportOf(await seriesLedger(fortyBeakers), 'ladder');
    expect(page.match(/<g class="mark (?:held|failed)"/gu)?.length).toBeGreaterThanOrEqual(80);
    expect(page).not.toMatch(/NaN|undefined/u);
  });

  it('foam is drawn over the dose of antifoam, each pour and the mean', async () => {
    const pour = (trial: number, ppm: number, heads: readonly number[]) => ({
      trial,
      items: [`simethicone emulsion: ${ppm} ppm`, 'sucrose: 9 %', 'water: to 1 kg'],
      looks: {},
      observations: heads
        .map((head, index) => `  - at: ${at(2, (index + 1) / 100)}\n    head: ${head} mm\n`)
        .join(''),
      process: '',
    });
    const folder = await seriesLedger(
      [pour(1, 10, [30, 34]), pour(2, 20, [20, 22]), pour(3, 40, [8, 10])],
      'series: ladder\nvaries: simethicone emulsion\n',
    );
    const page = await reportOf(folder, 'ladder');
    expect(headings(page)).toContain('Foam');
    expect(page.match(/<circle class="pour"/gu)).toHaveLength(6);
    expect(page.match(/<path class="mean"/gu)).toHaveLength(3);
  });
});

describe('the report of a formula, a trial, a ledger', () => {
  it('a formula has its composition, its drink, its aims', async () => {
    const page = await reportOf(await exampleLedger(), 'orange cardamom');
    expect(headings(page)).toEqual(
      expect.arrayContaining([
        'What goes in',
        'The map',
        'The drink',
        'Aims',
        'In a litre',
        'Cautions',
        'Sources',
      ]),
    );
    expect(page.match(/<figure class="chart">/gu)).toHaveLength(3);
  });

  it('a trial has its looks and tastes', async () => {
    const page = await reportOf(await exampleLedger(), '17');
    expect(headings(page)).toEqual(expect.arrayContaining(['The board', 'The drink', 'Taste']));
    expect(page).toMatch(/<td class="score">.*?<\/svg>4<\/td>/u);
  });

  it('a batch has what went in and what it came to', async () => {
    const folder = await exampleLedger();
    const words = ['batch', 'record', 'orange cardamom', '--to', '20 L drink', '--name', 'first'];
    expect((await neckring(words, { folder })).code).toBe(0);
    const page = await reportOf(folder, 'first');
    expect(headings(page)).toEqual(expect.arrayContaining(['What went in', 'What it came to']));
    expect(await reportOf(folder, 'batches/first.yaml')).toBe(page);
  });

  it('what changed through git, the oldest first', async () => {
    const ledger = await gitLedger();
    const text = await ledger.read(formulaFile);
    const amount = /citric acid: (\S+)/u.exec(text)?.[1] ?? '';
    await ledger.change(formulaFile, `citric acid: ${amount}`, 'citric acid: 9');
    await ledger.commit('more acid');
    const page = await reportOf(ledger.folder, 'orange cardamom');
    expect(headings(page)).toContain('What changed');
    const then = await reportOf(ledger.folder, 'orange cardamom@HEAD~1');
    expect(then).toContain('as it was at');
    expect(then).not.toBe(page);
    expect(page).toContain('Figures through time');
  });

  it('a ledger shows every series in short, the newest first', async () => {
    const held = { 1: 'clear', 7: 'clear' };
    const folder = await seriesLedger(
      [
        { trial: 1, looks: held, day: 2 },
        { trial: 2, looks: held, day: 20, series: 'later' },
      ],
      undefined,
      { 'series/later.yaml': 'series: later\nvaries: oil per emulsifier\n' },
    );
    expect(headings(await reportOf(folder))).toEqual(['later', 'ladder']);
  });

  it('an empty ledger is a page too', async () => {
    const page = await reportOf(await ledgerOf({}));
    expect(page).toContain('ledger');
  });
});

describe('photos', () => {
  const png = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
    'base64',
  );

  const withPhoto = (path: string) =>
    trialLedger(
      rungText({
        trial: 1,
        looks: {},
        observations: `  - at: ${at(2, 1)}\n    look: clear\n    photo: ${path}\n`,
      }),
    );

  it('of the ledger stand inside the file', async () => {
    const folder = await withPhoto('photos/a.png');
    await mkdir(join(folder, 'photos'));
    await writeFile(join(folder, 'photos/a.png'), png);
    const page = await reportOf(folder, '1');
    expect(page).toContain(
      `<img src="data:image/png;base64,${png.toString('base64')}" alt="trial 1, day 1, clear">`,
    );
  });

  it('outside of it, too large, missing or no picture are named and left out', async () => {
    const elsewhere = join(await scratchFolder(), 'secret.png');
    await writeFile(elsewhere, png);
    const folder = await withPhoto('photos/link.png');
    await mkdir(join(folder, 'photos'));
    await symlink(elsewhere, join(folder, 'photos/link.png'));
    expect(await reportOf(folder, '1')).toContain('lies outside the ledger');
    for (const [name, bytes, why] of [
      ['large.png', Buffer.concat([png, Buffer.alloc(1_600_000)]), 'up to 1.5 MB are shown'],
      ['words.png', Buffer.from('no picture'), 'is no JPEG, PNG, GIF or WebP'],
    ] as const) {
      const other = await withPhoto(`photos/${name}`);
      await mkdir(join(other, 'photos'));
      await writeFile(join(other, 'photos', name), bytes);
      const page = await reportOf(other, '1');
      expect(page).toContain(why);
      expect(page).not.toContain('<img');
    }
    expect(await reportOf(await withPhoto('photos/gone.png'), '1')).toContain('is not there');
  });
});

describe('what is refused', () => {
  it('says what to do', async () => {
    const folder = await exampleLedger();
    const tries: readonly (readonly [readonly string[], string])[] = [
      [['orange ladder'], 'add --html report.html'],
      [['orange ladder', '--html', 'report.txt'], 'name it report.html'],
      [['orange laddr', '--html', 'a.html'], 'did you mean'],
      [['99', '--html', 'a.html'], 'there is no trial 99'],
      [['orange ladder', '--html', 'gone/a.html'], 'make the folder first'],
    ];
    for (const [words, said] of tries) {
      const { code, err } = await neckring(['report', ...words], { folder });
      expect([words, code, err]).toEqual([words, 2, expect.stringContaining(said)]);
    }
  });

  it('a page of others is not written over without --replace', async () => {
    const folder = await exampleLedger();
    await writeFile(join(folder, 'mine.html'), '<p>mine</p>');
    const words = ['report', '13', '--html', 'mine.html'];
    const { code, err } = await neckring(words, { folder });
    expect([code, err]).toEqual([2, expect.stringContaining('--replace')]);
    expect(await readIn(folder, 'mine.html')).toBe('<p>mine</p>');
    expect((await neckring([...words, '--replace'], { folder })).code).toBe(0);
  });

  it('names in files never become markup', async () => {
    const nasty = '<script>alert(1)</script>';
    const folder = await seriesLedger(
      [
        { trial: 1, looks: { 1: 'clear', 7: 'clear' } },
        { trial: 2, oil: 4, looks: { 1: 'hazy' } },
      ],
      `series: ladder\nquestion: "${nasty}"\nvaries: oil per emulsifier\ndecided:\n  text: "${nasty}"\n`,
    );
    const page = await reportOf(folder, 'ladder');
    expect(page).not.toContain('<script');
    expect(page).toContain('&lt;script&gt;');
  });
});
