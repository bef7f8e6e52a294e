/** What is said of a slip shows a line that the same command takes. */

import { beforeEach, describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn } from './neckring.ts';
import { ledgerOf, plainTrial } from './small-ledger.ts';

let folder = '';
beforeEach(async () => {
  folder = await exampleLedger();
});

const errOf = async (words: readonly string[]) => (await neckring(words, { folder })).err;

describe('a number without a unit', () => {
  it.each([
    [['dose', '--oil', '45'], 'write 45 mg/L'],
    [['dose', '--in', '6'], 'write 6 L'],
    [['drops', '--in', '6'], 'write 6 L or 6 kg'],
    [['acid', '--target', '4.5'], 'write "4.5 g/L citric acid"'],
    [['acid', '--target', '4.5 malic acid'], 'write "4.5 g/L malic acid"'],
    [['hlb', '--oil', '2 sweet orange oil'], 'write "2 g sweet orange oil"'],
    [['ph', '4.5 citric acid'], 'write "4.5 g/L citric acid"'],
    [['ph', '4.5'], 'write "4.5 g/L citric acid"'],
  ])('%j is shown the unit of the example in its help', async (words, mend) => {
    const lines = (await errOf(words)).split('\n').filter((line) => line.includes('has no unit'));
    expect(lines).toHaveLength(1);
    expect(lines[0]?.endsWith(`; ${mend}`)).toBe(true);
  });

  it('every mend of an item is taken', async () => {
    expect((await neckring(['ph', '4.5 g/L citric acid'], { folder })).code).toBe(0);
  });
});

describe('items without quotes', () => {
  it.each([
    [['4.5', 'g/L', 'citric', 'acid'], '"4.5 g/L citric acid"'],
    [['4.5g/L', 'citric', 'acid', '100', 'g/L', 'sucrose'], '"4.5g/L citric acid" "100 g/L sucrose"'],
    [['citric', 'acid', '4.5', 'g/L'], '"citric acid 4.5 g/L"'],
  ])('ph %j', async (words, quoted) => {
    const err = await errOf(['ph', ...words]);
    expect(err).toContain(`put quotes around an item: ${quoted}`);
    expect(err).not.toContain('ITEMS');
  });
});

describe('an item of a new trial', () => {
  it.each([
    ['1,5 g cardamom oil', '"1,5" has a comma where the decimal point belongs; write 1.5 g cardamom oil'],
    ['2 g', '"2 g" names no ingredient; type it after the amount: "2 g sweet orange oil"'],
    ['to 50 g', '"to 50 g" names no ingredient; type it after the amount: "to 50 g water"'],
    ['2 cardamom oil', '"2" has no unit; write "2 g cardamom oil"'],
  ])('"%s"', async (typed, said) => {
    expect(await errOf(['new', '--title', 'x', '--item', typed])).toBe(`--item: ${said}\n`);
    const walked = await neckring(['new'], {
      folder,
      answers: ['x', typed],
      terminal: true,
      columns: 200,
      environment: { NO_COLOR: '1' },
    });
    expect(walked.out).toContain(said);
  });
});

describe('a number of bottles without a size', () => {
  it.each([[['40', 'bottles']], [['40 bottles']]])('scale --to %j', async (typed) => {
    const err = await errOf(['scale', '11', '--to', ...typed]);
    expect(err).toContain('"40 bottles" does not say of what size; write --to "40 x 330 mL"');
  });
});

describe('new with several stages', () => {
  it('each --stage takes the items and steps after it', async () => {
    const own = await ledgerOf({ 'trials/1.yaml': plainTrial });
    const line = [
      'new',
      '--title',
      'x',
      '--stage',
      'syrup',
      '--item',
      '500 g sucrose',
      '--item',
      'to 1 L water',
    ];
    const more = ['--step', 'stir', '--stage', 'drink', '--item', '200 mL syrup', '--item', 'to 1 L water'];
    const { code, err } = await neckring([...line, ...more], { folder: own });
    expect([code, err]).toEqual([0, 'wrote trials/0002-x.yaml\n']);
    const text = await readIn(own, 'trials/0002-x.yaml');
    expect(text.slice(text.indexOf('stages:'))).toBe(
      'stages:\n  syrup:\n    process:\n      - stir\n    items:\n      - sucrose: 500 g\n      - water: to 1 L\n  drink:\n    items:\n      - syrup: 200 mL\n      - water: to 1 L\n',
    );
    expect((await neckring(['check'], { folder: own })).code).toBe(0);
    expect((await neckring(['reckon', '2'], { folder: own })).out).toContain('ph, drink');
  });

  it.each([
    [
      ['--item', '1 L water', '--stage', 'a', '--item', '1 L water', '--stage', 'b', '--item', '1 L water'],
      'stands before',
    ],
    [['--stage', 'a', '--stage', 'b', '--item', '1 L water'], 'nothing goes into "a"'],
    [['--stage', 'a', '--item', '1 L water', '--stage', 'A', '--item', '1 L water'], 'is given twice'],
    [['--stage', 'a', '--item', '1 L b', '--stage', 'b', '--item', '1 L water'], '"b" is not an ingredient'],
  ])('refuses %j', async (words, said) => {
    const { code, err } = await neckring(['new', '--dry-run', ...words], { folder });
    expect(code).toBe(2);
    expect(err).toContain(said);
  });
});

describe('what an answer rests on is said', () => {
  const blend = ['--emulsifier', '4 g polysorbate 80', '--emulsifier', '2 g sorbitan oleate'];

  it('hlb: the table is not what was typed', async () => {
    const { out } = await neckring(['hlb', '--oil', '2 g sweet orange oil', ...blend], { folder });
    expect(out).toMatch(/^The blend given has HLB 11\.4\. The table is not that blend/);
  });

  it('hlb: no oil is spoken of where none was given', async () => {
    const { out } = await neckring(['hlb', '--target', '12', ...blend], { folder });
    expect(out.replace(/\s+/g, ' ')).not.toContain('the 12.0 that the oil asks for');
  });

  it('drops: the density that was taken', async () => {
    const line = ['drops', '--target', '0.5 ppb', '--stock', '10 ppb', '--drop', '0.021 g', '--in'];
    const said = '1 L is taken as 1 kg: give the mass, or --density';
    expect((await neckring([...line, '1 L'], { folder })).out.replace(/\s+/g, ' ')).toContain(said);
    expect((await neckring([...line, '1 kg'], { folder })).out).not.toContain('is taken as');
    expect((await neckring([...line, '1 L', '--density', '1.04 g/mL'], { folder })).out).not.toContain(
      'is taken as',
    );
  });

  it('emulsifier: a ratio with more oil than emulsifier is asked about', async () => {
    const line = ['emulsifier', '--batch', '50 g', '--oil', '4%', '--ratio'];
    const said = async (ratio: string) =>
      (await neckring([...line, ratio], { folder })).out.replace(/\s+/g, ' ');
    expect(await said('3:1')).toContain('A ratio is oil to emulsifier: 3:1 is more oil than emulsifier');
    expect(await said('3:1')).toContain('--ratio 1:3');
    expect(await said('1:1')).not.toContain('A ratio is oil to emulsifier');
  });
});
