import { mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, record } from './neckring.ts';
import { ledgerOf, lisbonBench, plainTrial, trialLedger } from './small-ledger.ts';

const now = '2026-07-01T09:30:00Z';
const newFile = (out: string): string => String(record(record(JSON.parse(out))['found'])['file']);

/** Runs `new` with `--json` and hands back the file that it wrote. */
async function written(folder: string, words: readonly string[]): Promise<{ file: string; text: string }> {
  const ran = await neckring(['new', ...words, '--json'], { folder, now });
  expect(ran.code, ran.out).toBe(0);
  const file = newFile(ran.out);
  return { file, text: await readIn(folder, file) };
}

describe('new: number and name', () => {
  it('is trial 1 in an empty ledger, with its title in the name and the time of the bench', async () => {
    const folder = await ledgerOf({});
    const { file, text } = await written(folder, ['--title', 'Cassis & Orange, hot!']);
    expect(file).toBe('trials/0001-cassis-orange-hot.yaml');
    expect(text.split('\n').slice(0, 3)).toEqual([
      'trial: 1',
      'title: Cassis & Orange, hot!',
      'made: 2026-07-01T10:30+01:00',
    ]);
  });

  it.each([
    ['7.yaml', '0008.yaml'],
    ['0007.yaml', '0008.yaml'],
    ['0099-old.yaml', '0100.yaml'],
    ['12000-old.yaml', '12001.yaml'],
  ])('after %s comes %s', async (there, next) => {
    const folder = await ledgerOf({
      [`trials/${there}`]: `trial: ${Number.parseInt(there, 10)}\nstages: {}\n`,
    });
    expect((await written(folder, [])).file).toBe(`trials/${next}`);
  });

  it('takes the number after the highest, not a gap', async () => {
    const folder = await ledgerOf({
      'trials/2.yaml': '',
      'trials/9.yaml': '',
      'trials/.30.yaml': '',
      'trials/40.txt': '',
    });
    expect((await written(folder, [])).file).toBe('trials/0010.yaml');
  });

  it('gives two that are asked at once two numbers', async () => {
    const folder = await ledgerOf({});
    const made = await Promise.all([1, 2, 3].map(() => neckring(['new', '--json'], { folder, now })));
    expect(made.map((one) => newFile(one.out)).sort()).toEqual([
      'trials/0001.yaml',
      'trials/0002.yaml',
      'trials/0003.yaml',
    ]);
    expect((await readdir(join(folder, 'trials'))).length).toBe(3);
  });

  it('says the number on stdout and the file on stderr', async () => {
    const folder = await ledgerOf({});
    expect(await neckring(['new', '--title', 'plain'], { folder, now })).toEqual({
      code: 0,
      out: 'trial 1\n',
      err: 'wrote trials/0001-plain.yaml\n',
    });
  });

  it('finds the ledger from a folder below it', async () => {
    const folder = await ledgerOf({});
    await mkdir(join(folder, 'photos/march'), { recursive: true });
    expect((await neckring(['new'], { folder: join(folder, 'photos/march'), now })).code).toBe(0);
    expect(await readdir(join(folder, 'trials'))).toEqual(['0001.yaml']);
  });

  it('outside a ledger says how to begin one', async () => {
    const folder = await ledgerOf({});
    const ran = await neckring(['new'], { folder: join(folder, '..') });
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('neckring init begins one here');
  });

  it('writes series, why and awkward titles so that they read back', async () => {
    const folder = await ledgerOf({ 'series/a.yaml': 'series: orange ladder\n' });
    const title = 'no: "quotes" # and more';
    const { file, text } = await written(folder, [
      '--title',
      title,
      '--series',
      'orange ladder',
      '--why',
      '- cold?',
    ]);
    expect(text).toContain('series: orange ladder\n');
    const list = await neckring(['list', '--json'], { folder });
    expect(JSON.parse(list.out)).toMatchObject({
      found: { trials: [{ file, title, series: 'orange ladder' }] },
    });
  });

  it('with --dry-run shows the file and writes nothing', async () => {
    const folder = await trialLedger(plainTrial);
    const dry = await neckring(['new', '--from', '1', '--title', 'again', '--dry-run'], { folder, now });
    expect(dry).toMatchObject({ code: 0, err: 'would write trials/0002-again.yaml\n' });
    expect(dry.out).toBe(
      plainTrial
        .replace('trial: 1\n', 'trial: 2\ntitle: again\n')
        .replace('made: 2026-03-02T10:15+00:00\n', 'made: 2026-07-01T10:30+01:00\nfrom: 1\n'),
    );
    expect(await readdir(join(folder, 'trials'))).toEqual(['1.yaml']);
  });
});

describe('new --from', () => {
  it('copies stages, process and samples, and nothing that happened at the bench', async () => {
    const folder = await exampleLedger();
    const { text } = await written(folder, ['--from', '14', '--title', 'again, cold']);
    const source = await readIn(folder, 'trials/0014-orange-1-to-2.5.yaml');
    const plan = source.slice(source.indexOf('stages:'), source.indexOf('observations:'));
    expect(text).toBe(
      `# yaml-language-server: $schema=../schema/trial.json\ntrial: 18\ntitle: again, cold\nmade: 2026-07-01T10:30+01:00\nfrom: 14\nseries: orange ladder\n${plan.replace(/ +weighed: .*\n/g, '')}`,
    );
    expect((await neckring(['check'], { folder, now: '2026-07-02T00:00:00Z' })).code).toBe(0);
  });

  it('takes the title over where none is given, and another series where one is', async () => {
    const folder = await exampleLedger();
    const { text } = await written(folder, ['--from', '14', '--series', 'cold ladder']);
    expect(text).toContain('title: sweet orange, one part to 2.5 of emulsifier\n');
    expect(text).toContain('series: cold ladder\n');
  });

  it.each([
    [
      'block style',
      '    - sweet orange oil: 2 g   # the light one\n      weighed: 2.03 g\n      lot: 2231\n      note: last drops\n    - polysorbate 80: 6 g\n    - water: to 50 g\n',
    ],
    [
      'the long form with facts of that make',
      '    made: 2026-03-02\n    density: 0.99 g/mL\n    by: K\n    items:\n      - sweet orange oil: 2 g\n        weighed: 2.03 g\n      - polysorbate 80: 6 g\n      - water: to 50 g\n',
    ],
    [
      'flow style',
      '    [{ sweet orange oil: 2 g, weighed: 2.03 g, lot: 2231 }, polysorbate 80: 6 g, water: to 50 g]\n',
    ],
    [
      'a weighed water',
      '    - sweet orange oil: 2 g\n    - polysorbate 80: 6 g\n    - water: to 50 g\n      weighed: 42.1 g\n',
    ],
  ])('copies from %s', async (_, stage) => {
    const source = `trial: 1\nmade: 2026-03-02T10:15+00:00\nstages:\n  emulsion:\n${stage}observations:\n  - at: 2026-03-03T09:00+00:00\n    look: clear\n    note: seen\n`;
    const folder = await trialLedger(source);
    const { text } = await written(folder, ['--from', '1']);
    for (const gone of [
      'weighed',
      'lot:',
      'last drops',
      'density',
      'by: K',
      'observations',
      'seen',
      '2026-03-02',
    ])
      expect(text).not.toContain(gone);
    expect(text.includes('# the light one')).toBe(stage.includes('# the light one'));
    const checked = await neckring(['check', '--json'], { folder, now: '2026-07-02T00:00:00Z' });
    expect(JSON.parse(checked.out).problems).toEqual([]);
    const shown = await neckring(['show', '2', '--json'], { folder });
    const stages = JSON.parse(shown.out).found.stages;
    expect(stages[0].items.map((item: { mass: { value: number } }) => item.mass.value)).toEqual([2, 6, 42]);
  });

  it('copies from a file with CRLF, and its own lines end as those of a new file do', async () => {
    const folder = await trialLedger(plainTrial.replaceAll('\n', '\r\n'));
    const { text } = await written(folder, ['--from', '1']);
    expect(text).not.toContain('\r');
    expect(text.slice(text.indexOf('stages:'))).toBe(plainTrial.slice(plainTrial.indexOf('stages:')));
  });

  it('copies from a file without a last line end', async () => {
    const folder = await trialLedger(plainTrial.trimEnd());
    expect((await written(folder, ['--from', '1'])).text.endsWith('to 50 g\n')).toBe(true);
  });

  it('refuses a trial that does not exist and one that cannot be read, and writes nothing', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': 'trial: 1\nstages:\n  emulsion:\n    - oil 2 g\n' });
    const none = await neckring(['new', '--from', '5'], { folder });
    expect([none.code, none.err]).toEqual([
      2,
      'there is no trial 5; name it by its number or its file; the last one is 1\n',
    ]);
    const bad = await neckring(['new', '--from', '1'], { folder });
    expect(bad.code).toBe(2);
    expect(bad.err).toContain('trials/1.yaml:4:7');
    expect(await readdir(join(folder, 'trials'))).toEqual(['1.yaml']);
  });

  it('works where the bench has no time zone', async () => {
    const folder = await ledgerOf({
      'bench.yaml': lisbonBench.replace(/ {2}time zone.*\n/, '  temperature: 20 C\n'),
    });
    expect((await written(folder, [])).text).toMatch(/^made: 2026-07-01T\d\d:30[+-]\d\d:\d\d$/m);
  });
});

describe('new with items on the command line', () => {
  const items = ['--item', '2 g sweet orange oil', '--item', '6 g polysorbate 80', '--item', 'to 50 g water'];

  it('writes stage, steps and items, and passes check', async () => {
    const folder = await exampleLedger();
    await neckring(['new', '--title', 'typed', '--step', 'warm to 60 C: stir', ...items], { folder });
    const text = await readIn(folder, 'trials/0018-typed.yaml');
    expect(text.slice(text.indexOf('stages:'))).toBe(
      'stages:\n  emulsion:\n    process:\n      - "warm to 60 C: stir"\n    items:\n      - sweet orange oil: 2 g\n      - polysorbate 80: 6 g\n      - water: to 50 g\n',
    );
    expect((await neckring(['check'], { folder })).code).toBe(0);
  });

  it('with --from changes the amount of an item and nothing else of the plan', async () => {
    const folder = await exampleLedger();
    await neckring(['new', '--title', 'typed', ...items], { folder });
    await neckring(['new', '--from', '18', '--title', 'next', '--item', '2.4 g sweet orange oil'], {
      folder,
    });
    const [before, after] = [
      await readIn(folder, 'trials/0018-typed.yaml'),
      await readIn(folder, 'trials/0019-next.yaml'),
    ];
    expect(after.slice(after.indexOf('stages:'))).toBe(
      before.slice(before.indexOf('stages:')).replace('orange oil: 2 g', 'orange oil: 2.4 g'),
    );
  });

  it.each([
    [['--item', 'sweet orange oil'], 'does not begin with an amount'],
    [['--item', '2 g swet orange oil'], 'did you mean sweet orange oil'],
    [['--from', '13', '--item', '2 g cassis stock'], 'trial 13 has no item "cassis stock"'],
    [['--step', 'stir'], 'steps are given without items'],
  ])('refuses %j and writes nothing', async (words, message) => {
    const folder = await exampleLedger();
    const { code, err } = await neckring(['new', ...words], { folder });
    expect(code).toBe(2);
    expect(err.replace(/\s+/g, ' ')).toContain(message);
    expect((await neckring(['list'], { folder })).out).not.toContain('18');
  });
});

describe('new with an empty option', () => {
  it('writes nothing for it', async () => {
    const folder = await exampleLedger();
    await neckring(['new', '--title', 'plain', '--series', '', '--why', ' '], { folder });
    expect(await readIn(folder, 'trials/0018-plain.yaml')).not.toMatch(/^(series|why):/m);
  });
});

describe('new and ladder: when it was made', () => {
  // The clock of these tests stands at 2026-07-01 10:30 in Lisbon, an hour before Greenwich in summer (IANA tz database).
  it.each([
    ['2026-03-02', '2026-03-02'],
    ['yesterday 18:00', '2026-06-30T18:00+01:00'],
    ['2026-03-02 10:15', '2026-03-02T10:15+00:00'],
    ['2026-03-02T10:15+02:00', '2026-03-02T08:15+00:00'],
  ])('--made %j is written as %s', async (typed, said) => {
    const folder = await ledgerOf({});
    const { file, text } = await written(folder, ['--item', '2 g sweet orange oil', '--made', typed]);
    expect(text).toContain(`\nmade: ${said}\n`);
    expect((await neckring(['check', file], { folder, now })).code).toBe(0);
  });

  it.each([
    ['2026-07-02', '--made: 2026-07-02 has not come yet; type the time at which it was made'],
    ['23:00', '--made: 2026-07-01T23:00+01:00 has not come yet; type the time at which it was made'],
    ['2026-02-30', '--made: '],
    ['last week', '--made: '],
  ])('--made %j is refused, and nothing is written', async (typed, message) => {
    const folder = await ledgerOf({ 'trials/0001-plain.yaml': ladderPlan });
    for (const words of [['new'], ['ladder', '1', '--rungs', '1:4, 1:3', '--write']]) {
      const { code, err } = await neckring([...words, '--made', typed], { folder, now });
      expect([code, err.replace(/\s+/g, ' ')]).toEqual([2, expect.stringContaining(message)]);
    }
    expect(await readdir(join(folder, 'trials'))).toEqual(['0001-plain.yaml']);
  });

  it('holds for every beaker of a ladder, and is told', async () => {
    const folder = await ledgerOf({ 'trials/0001-plain.yaml': ladderPlan });
    const words = ['ladder', '1', '--rungs', '1:4, 1:3', '--made', 'yesterday 18:00', '--write'];
    const { code, out } = await neckring(words, { folder, now });
    expect(code, out).toBe(0);
    expect(out).toContain('The files say that they are made 2026-06-30T18:00+01:00');
    for (const name of (await readdir(join(folder, 'trials'))).filter((one) => !one.startsWith('0001')))
      expect(await readIn(folder, `trials/${name}`)).toContain('\nmade: 2026-06-30T18:00+01:00\n');
    expect((await readdir(join(folder, 'trials'))).length).toBe(3);
  });
});

const ladderPlan = `trial: 1
title: sweet orange
stages:
  emulsion:
    - sweet orange oil: 2 g
    - polysorbate 80: 6 g
    - water: to 50 g
`;
