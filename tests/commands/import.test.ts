import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { found, neckring, type Ran, readIn, rows, writeIn } from './neckring.ts';
import { ledgerOf, plainTrial } from './small-ledger.ts';

const map = `Date: made
Title: title
Oil (g): stages.emulsion.sweet orange oil in g
Soap (g): stages.emulsion.polysorbate 80 in g
always:
  stages.emulsion.propylene glycol: 6 g
Total: stages.emulsion.water in g, made up
Stir: stages.emulsion, process
Day 7: observations look at 7 d
Soapy: observations taste soapy at 7 d
`;
const head = 'Date,Title,Oil (g),Soap (g),Total,Stir,Day 7,Soapy';
const good = '2026-01-05,"orange, one to three",2,6,50,warm to 60 C; stir,clear,2';

async function notes(lines: readonly string[], mapping = map): Promise<string> {
  const folder = await ledgerOf({});
  await writeIn(folder, 'notes.csv', lines.join('\r\n'));
  await writeIn(folder, 'map.yaml', mapping);
  return folder;
}

const take = (folder: string, ...more: readonly string[]): Promise<Ran> =>
  neckring(['import', 'notes.csv', '--map', 'map.yaml', ...more], { folder });

const trialsIn = (folder: string): Promise<readonly string[]> =>
  readdir(join(folder, 'trials')).catch(() => []);

describe('import', () => {
  it('makes a trial of each row, in order, that passes check', async () => {
    const folder = await notes([head, good, '2026-01-06T10:30,weak,1.5,6,50,,"clear, bluish",']);
    expect((await take(folder)).code).toBe(0);
    expect(await readIn(folder, 'trials/0001-orange-one-to-three.yaml')).toBe(`trial: 1
title: orange, one to three
made: 2026-01-05
stages:
  emulsion:
    process:
      - warm to 60 C
      - stir
    items:
      - sweet orange oil: 2 g
      - polysorbate 80: 6 g
      - propylene glycol: 6 g
      - water: to 50 g
observations:
  - at: 2026-01-12T00:00+00:00
    look: clear
    taste:
      soapy: 2
`);
    expect(await readIn(folder, 'trials/0002-weak.yaml')).toContain('at: 2026-01-13T10:30+00:00\n');
    const checked = await neckring(['check', '--json'], { folder, now: '2026-03-12T12:00:00Z' });
    expect(JSON.parse(checked.out).found.errors.value).toBe(0);
    // 2 + 6 + 6 g and water made up to 50 g: arithmetic.
    const { trials } = await found(['list'], { folder });
    expect(rows(trials)).toHaveLength(2);
  });

  it('takes numbers after the last one', async () => {
    const folder = await notes([head, good]);
    const other = await ledgerOf({ 'trials/7.yaml': plainTrial.replace('trial: 1', 'trial: 7') });
    await writeIn(other, 'notes.csv', await readIn(folder, 'notes.csv'));
    await writeIn(other, 'map.yaml', map);
    await take(other);
    expect(await trialsIn(other)).toEqual(['0008-orange-one-to-three.yaml', '7.yaml']);
  });

  it('with --dry-run shows what would become of the rows and writes nothing', async () => {
    const folder = await notes([head, good]);
    const { code, out, err } = await take(folder, '--dry-run');
    expect(code).toBe(0);
    expect(out).toContain('      - water: to 50 g\n');
    expect(err).toContain('would write trials/0001-orange-one-to-three.yaml');
    expect(await trialsIn(folder)).toEqual([]);
  });

  it('the same table a second time adds nothing', async () => {
    const folder = await notes([head, good]);
    await take(folder);
    const again = await take(folder);
    expect([again.code, again.err]).toEqual([0, '0 of 1 rows are new trials, 1 here already\n']);
    expect(await trialsIn(folder)).toHaveLength(1);
  });

  it.each([
    ['semicolons', head.replaceAll(',', ';'), '2026-01-05;plain;2;6;50;;;'],
    ['tabs', head.replaceAll(',', '\t'), '2026-01-05\tplain\t2\t6\t50\t\t\t'],
    ['a byte order mark', `\ufeff${head}`, '2026-01-05,plain,2,6,50,,,'],
  ])('reads %s', async (_, heading, row) => {
    const folder = await notes([heading, row]);
    expect((await take(folder)).code).toBe(0);
    expect(await trialsIn(folder)).toEqual(['0001-plain.yaml']);
  });

  it('works out arithmetic in a cell, and takes the apostrophe of an exported text away', async () => {
    const folder = await notes([head, "2026-01-05,'=odd,2 * 1.5 g,6,50,,,"]);
    await take(folder);
    const text = await readIn(folder, 'trials/0001-odd.yaml');
    expect(text).toContain('title: =odd\n');
    expect(text).toContain('sweet orange oil: 2 * 1.5 g\n');
  });
});

describe('rows that can not be read', () => {
  const bad = [
    '2026-01-06,weak,"1,5",6,50,,hazzy,9',
    '06.01.2026,day first,2,6,50,,,',
    '2026-01-07,shifted, by a comma,2,6,50,,,',
  ];

  it('are all named with their lines, and nothing is written', async () => {
    const folder = await notes([head, good, ...bad]);
    const { code, err } = await take(folder);
    expect(code).toBe(2);
    for (const told of [
      'notes.csv:3:17: "1,5" has a comma where the decimal point belongs; write 1.5 g',
      'notes.csv:3:29: "hazzy" is not a look; write hazy',
      'notes.csv:3:35: "9" is not a score',
      'notes.csv:4:1: "06.01.2026" is not a time; write 2026-03-02T10:15',
      'notes.csv:5:',
      "3 of 4 rows can't be read, so nothing was written",
    ])
      expect(err).toContain(told);
    expect(await trialsIn(folder)).toEqual([]);
  });

  it('with --skip are left out, exit 1', async () => {
    const folder = await notes([head, ...bad, good]);
    const { code, err } = await take(folder, '--skip');
    expect(code).toBe(1);
    expect(err).toContain('1 of 4 rows are new trials, 3 left out');
    expect(await trialsIn(folder)).toEqual(['0001-orange-one-to-three.yaml']);
    const again = await take(folder, '--skip', '--json');
    expect(JSON.parse(again.out).found).toMatchObject({
      rows: { value: 4, unit: '' },
      trials: [],
      here: [{ line: 5, trial: 1 }],
      rejected: [{ line: 2 }, { line: 3 }, { line: 4 }],
      isWritten: false,
    });
  });

  it('are those that would not pass the checks, too', async () => {
    const folder = await notes([head, '2026-01-05,too much,60,6,50,,,', good], map);
    const { err } = await take(folder, '--skip');
    expect(err).toContain('notes.csv:2:1:');
    expect(await trialsIn(folder)).toEqual(['0001-orange-one-to-three.yaml']);
  });

  it.each([
    ['2026-01-05,empty,,,,,,', 'nothing goes into a beaker'],
    [',no day,2,6,50,,clear,', 'does not say when it was made'],
    ['2026-01-05,a\u0007b,2,6,50,,,', 'a sign that is not seen stands in the cell (U+0007)'],
    [`2026-01-05,${'x'.repeat(5000)},2,6,50,,,`, 'the cell holds 5000 characters'],
  ])('%#: %j', async (row, message) => {
    const folder = await notes(
      [head, row],
      map.replace('  stages.emulsion.propylene glycol: 6 g', '  by: K'),
    );
    const { code, err } = await take(folder);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});

describe('what the mapping gets wrong', () => {
  it.each([
    ['Dat: made\n', 'did you mean "Date"?'],
    ['Date: made\nTitle: tilte\n', 'did you mean title?'],
    ['Oil (g): stages.emulsion.sweet ornage oil in g\n', 'write "sweet orange oil"'],
    ['Date: made\nTitle: made\n', 'two columns lead to "made"'],
    ['Date:\n', '"Date" leads nowhere'],
    ['- Date: made\n', 'there are no "column: path" lines here'],
    ['Date: &a made\n', 'map.yaml:1'],
    ['__proto__: made\n', 'there is no column "__proto__"'],
  ])('%j', async (mapping, message) => {
    const folder = await notes([head, good], mapping);
    const { code, err } = await take(folder);
    expect(code).toBe(2);
    expect(err).toContain(message);
    expect(await trialsIn(folder)).toEqual([]);
  });

  it('a column of which it says nothing is a warning, unless it is left out', async () => {
    const row = `${good},red`;
    const folder = await notes([`${head},Cap`, row]);
    expect((await take(folder)).err).toContain('says nothing of the column "Cap"');
    const other = await notes([`${head},Cap`, row], `${map}Cap: leave out\n`);
    expect((await take(other)).err).not.toContain('Cap');
  });

  it('no mapping, no file, no such separator', async () => {
    const folder = await notes([head, good]);
    expect((await neckring(['import', 'notes.csv'], { folder })).err).toContain('--map is needed');
    expect((await neckring(['import', 'none.csv', '--map', 'map.yaml'], { folder })).err).toContain(
      'there is no file none.csv',
    );
    expect((await take(folder, '--separator', 'pipe')).err).toContain('say comma, semicolon, tab');
  });
});
