import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, record, rows, writeIn } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const now = '2026-03-12T12:00:30Z';
const files = [11, 12, 13, 14, 15, 16, 17].map(
  (number) =>
    [
      '0011-orange-1-to-8',
      '0012-orange-1-to-4',
      '0013-orange-1-to-3',
      '0014-orange-1-to-2.5',
      '0015-orange-1-to-2',
      '0016-orange-1-to-1.5',
      '0017-orange-cardamom-drink',
    ][number - 11],
);
const fileOf = (number: number): string => `trials/${files[number - 11]}.yaml`;

const allTexts = (folder: string): Promise<readonly string[]> =>
  Promise.all([11, 12, 13, 14, 15, 16, 17].map((number) => readIn(folder, fileOf(number))));

/** What a run added to a file, which must otherwise be as it was. */
async function added(folder: string, number: number, before: string): Promise<string> {
  const after = await readIn(folder, fileOf(number));
  const lines = before.split('\n');
  const extra = after.split('\n').filter((line) => {
    if (line !== lines[0]) return true;
    lines.shift();
    return false;
  });
  expect(lines).toEqual([]);
  return extra.map((line) => `${line}\n`).join('');
}

describe('look: one line for the daily round', () => {
  it('trials and ranges, each with the look that follows them', async () => {
    const folder = await exampleLedger();
    const before = await allTexts(folder);
    const ran = await neckring(['look', '11-13', '15', 'clear', '14', 'Hazy', '16', 'clear, ring'], {
      folder,
      now,
    });
    expect(ran.code).toBe(0);
    const look = (words: string): string => `  - at: 2026-03-12T12:00+00:00\n    look: ${words}\n`;
    for (const number of [11, 12, 13, 15])
      expect(await added(folder, number, before[number - 11] ?? '')).toBe(look('clear'));
    expect(await added(folder, 14, before[3] ?? '')).toBe(look('hazy'));
    expect(await added(folder, 16, before[5] ?? '')).toBe(look('clear, ring'));
    expect(await added(folder, 17, before[6] ?? '')).toBe('');
    expect(ran.out).toContain('   14  beaker   10  hazy\n');
    expect(ran.err.match(/^wrote trials\/00\d\d/gm)).toHaveLength(6);
    expect((await neckring(['check', 'trials'], { folder, now })).code).toBe(0);
  });

  it.each([
    ['a comma without quotes', ['14', 'clear,', 'ring'], [14], 'look: clear, ring'],
    ['trials with commas', ['13,', '14,15', 'hazy'], [13, 14, 15], 'look: hazy'],
    ['zeros in front', ['0014', 'gel'], [14], 'look: gel'],
    ['a file', [fileOf(14), 'gel'], [14], 'look: gel'],
    ['same', ['14', 'same'], [14], 'look: bluish'],
  ])('takes %s', async (_, words, numbers, line) => {
    const folder = await exampleLedger();
    const before = await allTexts(folder);
    expect((await neckring(['look', ...words], { folder, now })).code).toBe(0);
    for (const number of [11, 12, 13, 14, 15, 16, 17]) {
      const text = await added(folder, number, before[number - 11] ?? '');
      if (numbers.includes(number)) expect(text).toContain(line);
      else expect(text).toBe('');
    }
  });

  it('writes --sample, --at, --viewed, --note and --by with every look', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, fileOf(17));
    const words = ['look', '17', 'bluish', '--sample', 'Cold Glass', '--at', 'yesterday 18:30'];
    const more = ['--viewed', 'black card', '--note', 'a trace', '--by', 'K'];
    expect((await neckring([...words, ...more], { folder, now })).code).toBe(0);
    const after = await readIn(folder, fileOf(17));
    expect(after).toContain(
      '  - at: 2026-03-11T18:30+00:00\n    sample: cold glass\n    look: bluish\n    viewed: black card\n    by: K\n    note: a trace\n',
    );
    expect(after.length - before.length).toBeLessThan(150);
  });

  it('the same line typed again adds only what is missing', async () => {
    const folder = await exampleLedger();
    const line = ['look', '13', '14', 'clear', '--at', '2026-03-11 09:00'];
    await neckring(['look', '13', 'clear', '--at', '2026-03-11 09:00'], { folder, now });
    const first = await readIn(folder, fileOf(13));
    const ran = await neckring(line, { folder, now });
    expect(ran.err).toMatch(/^trials\/0013.*says so already; nothing written\nwrote trials\/0014/);
    expect(await readIn(folder, fileOf(13))).toBe(first);
    const both = await allTexts(folder);
    expect((await neckring(line, { folder, now })).code).toBe(0);
    expect(await allTexts(folder)).toEqual(both);
  });

  it('with --dry-run shows the lines and writes nothing', async () => {
    const folder = await exampleLedger();
    const before = await allTexts(folder);
    const ran = await neckring(['look', '13-14', 'clear', '--dry-run'], { folder, now });
    expect(ran.out).toContain(`${fileOf(14)}\n  +   - at: 2026-03-12T12:00+00:00\n  +     look: clear\n`);
    expect(ran.err).toContain(`would write ${fileOf(13)}:`);
    expect(await allTexts(folder)).toEqual(before);
  });

  it('says what it wrote as JSON', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['look', '13-14', 'clear, ring', '--json'], { folder, now });
    const json = record(JSON.parse(out));
    expect(json['schema']).toBe('look@1');
    expect(rows(record(json['found'])['looks'])).toMatchObject([
      {
        trial: 13,
        sample: 'beaker',
        looks: ['clear', 'ring'],
        day: { value: 10, unit: 'd' },
        state: 'added',
      },
      { trial: 14, file: fileOf(14), at: '2026-03-12T12:00+00:00' },
    ]);
  });

  it('reads the trials that are named and no others', async () => {
    const folder = await exampleLedger();
    await writeIn(folder, 'trials/0015-orange-1-to-2.yaml', 'trial: [15');
    expect((await neckring(['look', '13-14', 'clear'], { folder, now })).code).toBe(0);
  });

  it('rounds written at once all land', async () => {
    const folder = await exampleLedger();
    const notes = ['one', 'two', 'three'];
    await Promise.all(
      notes.map((note) => neckring(['look', '11-14', 'clear', '--note', note], { folder, now })),
    );
    for (const number of [11, 12, 13, 14])
      for (const note of notes) expect(await readIn(folder, fileOf(number))).toContain(`note: ${note}\n`);
  });

  it('mentions a way of viewing that is not on the list of the bench', async () => {
    const bench = 'ledger: 1\nbench:\n  time zone: UTC\n  viewed:\n    - black card\n    - window\n';
    const trial = 'trial: 1\nmade: 2026-03-02\nstages:\n  mix:\n    - water: 1 g\n';
    const folder = await ledgerOf({ 'bench.yaml': bench, 'trials/1.yaml': trial });
    const ran = await neckring(['look', '1', 'clear', '--viewed', 'windo'], { folder, now });
    expect([ran.code, ran.err.split('\n')[0]]).toEqual([
      0,
      'warning: "windo" is not a way of viewing on the bench\'s list; they are black card; window; add it to bench.yaml if it is meant',
    ]);
  });
});

describe('look: bad input, with nothing written', () => {
  it.each([
    [['14-', 'clear'], '"14-" is not a trial or a range of trials; write 14 alone, or both ends: 14-17'],
    [['17-14', 'clear'], '"17-14" runs backwards; write 14-17'],
    [['14-14000', 'clear'], '"14-14000" is 13987 trials; look whether a digit is too many'],
    [['14x', 'clear'], '"14x" is not a trial or a range of trials; name a trial by its number'],
    [['13', 'clear', '99', 'clear'], 'there is no trial 99'],
    [['14-18', '--sample', 'beaker', 'clear'], 'there is no trial 18'],
    [['13', '14', 'blueish'], '"blueish" is not a look; did you mean bluish?'],
    [['14', 'pretty'], '"pretty" is not a look; say clear, bluish, hazy'],
    [['14'], 'no look stands after 14; say what was seen: 14 clear'],
    [['clear', '14'], 'no trial stands before "clear"'],
    [
      ['14', 'clear', 'ring'],
      'no trial stands before "ring"; name the trials first, and put several looks in quotes',
    ],
    [['14', ''], 'nothing stands there'],
    [
      ['13', 'clear', '13', 'hazy'],
      'the beaker of trial 13 is said to be clear and hazy; say one of the two',
    ],
    [
      ['13-14', 'clear', '--sample', 'beeker'],
      '--sample: trial 13 has no sample "beeker"; did you mean "beaker"?',
    ],
    [
      ['13', '17', 'clear'],
      'trial 17 has 2 samples: warm glass, cold glass; say which with --sample "warm glass"',
    ],
    [['13', 'clear', '--at', '2026-03-13 09:00'], '--at: 2026-03-13T09:00+00:00 has not come yet'],
    [
      ['13', 'clear', '--at', '2026-03-01 09:00'],
      'is before the beaker of trial 13 was made, 2026-03-02T11:20+00:00',
    ],
    [['13', 'clear', '--at', 'noon'], '--at: "noon" is not a time'],
    [['13', 'clear', '--note', ''], '--note: nothing stands there'],
    [['13', 'clear', '--note', 'a', '--note', 'b'], '--note: "a" and "b" are both given'],
  ])('%j', async (words, message) => {
    const folder = await exampleLedger();
    const before = await allTexts(folder);
    const ran = await neckring(['look', ...words], { folder, now });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
    expect(await allTexts(folder)).toEqual(before);
  });

  it('all faults at once, those of the line and those of the trials', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(['look', '14-', '11', 'clear', '17', 'ring', '99', 'hazzy', '--at', 'x'], {
      folder,
      now,
    });
    expect(ran.code).toBe(2);
    expect(ran.err.trimEnd().split('\n')).toEqual([
      expect.stringContaining('"14-" is not a trial'),
      expect.stringContaining('"hazzy" is not a look; did you mean hazy?'),
      expect.stringContaining('--at: "x" is not a time'),
      expect.stringContaining('trial 17 has 2 samples'),
      expect.stringContaining('there is no trial 99'),
    ]);
  });

  it('a trial among them that is not understood', async () => {
    const folder = await exampleLedger();
    await writeIn(folder, fileOf(15), 'trial: 15\nstages:\n  emulsion:\n    - water: 5\n');
    const before = await allTexts(folder);
    const ran = await neckring(['look', '14-16', 'clear'], { folder, now });
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(`${fileOf(15)}:4:`);
    expect(await allTexts(folder)).toEqual(before);
  });

  it('without words and without a terminal it says what to type', async () => {
    const folder = await exampleLedger();
    const message = 'look needs trials and what was seen; type neckring look 14-17 clear 18 bluish';
    const ran = await neckring(['look'], { folder, now });
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(message);
    expect((await neckring(['look', '--json'], { folder, now, answers: [] })).out).toContain(
      '"code": "usage"',
    );
  });
});

describe('look: is this meant?', () => {
  const trial = (number: number, look: string, stage = 'emulsion'): string =>
    `trial: ${number}
made: 2026-03-02T10:15+00:00
stages:
  ${stage}:
    - sweet orange oil: 2 g
    - polysorbate 80: 6 g
    - water: to 50 g
observations:
  - at: 2026-03-09T09:10+00:00
    look: ${look}
`;
  const threeTrials = () =>
    ledgerOf({
      'trials/0002.yaml': trial(2, 'clear'),
      'trials/0003.yaml': trial(3, 'hazy, broken'),
      'trials/0004.yaml': trial(4, 'clear, ring'),
      'trials/0005.yaml': trial(5, 'clear', 'drink'),
    });
  const plainly = (text: string): string => text.replace(/\s+/g, ' ');

  it('clear after broken or a ring is written, and asked about with the place of the look', async () => {
    const folder = await threeTrials();
    const { code, err } = await neckring(['look', '2-4', 'clear'], { folder, now });
    expect(code).toBe(0);
    expect(plainly(err)).toContain(
      'warning: is this meant? the emulsion of trial 3 was broken on 2026-03-09; open trials/0003.yaml:11 and take the lines of this look out if not',
    );
    expect(plainly(err)).toContain('is this meant? the emulsion of trial 4 had a ring on 2026-03-09;');
    expect(err).not.toContain('of trial 2 was');
    const lines = (await readIn(folder, 'trials/0003.yaml')).split('\n');
    expect(lines.slice(10, 12)).toEqual(['  - at: 2026-03-12T12:00+00:00', '    look: clear']);
    const again = await neckring(['look', '3', 'clear'], { folder, now });
    expect(again.err).not.toContain('is this meant?');
  });

  it('nothing is asked where the ring is still there, or what is worse is seen', async () => {
    const folder = await threeTrials();
    const { err } = await neckring(['look', '4', 'clear, ring', '2', 'broken', '3', 'same'], { folder, now });
    expect(err).not.toContain('is this meant?');
  });

  it('a range that reaches a drink beside beakers is asked about; the drink alone is not', async () => {
    const folder = await threeTrials();
    const ran = await neckring(['look', '4-5', 'hazy', '--dry-run', '--json'], { folder, now });
    const problems = rows(record(JSON.parse(ran.out))['problems']);
    expect([ran.code, problems.map(({ code, hint }) => [code, hint])]).toEqual([
      0,
      [['is-this-meant', 'leave it out if not']],
    ]);
    expect(String(problems[0]?.['message'])).toContain('trial 5 is a drink');
    expect((await neckring(['look', '5', 'hazy'], { folder, now })).err).not.toContain('is this meant?');
  });

  it('the help tells how a look is taken back', async () => {
    expect(plainly((await neckring(['look', '--help'])).out)).toContain(
      'To take a look back, delete its lines in the file of the trial',
    );
  });
});
