import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, writeIn } from './neckring.ts';

const now = '2026-03-12T12:00:00Z';
const third = 'trials/0013-orange-1-to-3.yaml';

describe('--trial', () => {
  it('law: takes its inputs from the trial, as if they were typed', async () => {
    const folder = await exampleLedger();
    const typed = await found(
      ['hlb', '--oil', '2.01 g sweet orange oil', '--emulsifier', '6.02 g polysorbate 80'],
      { folder },
    );
    expect(await found(['hlb', '--trial', '13'], { folder })).toEqual(typed);
  });

  it('law: what is typed stands over what the trial says', async () => {
    const folder = await exampleLedger();
    const target = await found(['hlb', '--trial', '13', '--target', '12'], { folder });
    expect(leafValue(target['requiredHlb'])).toBe(12);
    expect(leafValue(target['blendedHlb'])).toBe(15);
  });

  it.each([
    [['emulsifier', '--trial', '13', '--ratio', '1:2'], 'oilPerEmulsifier', 0.5],
    [['acid', '--trial', '17', '--target', '4.2 g/L citric acid'], 'totalGramsPerLitre', 4.2],
    [['acid', '--trial', '17', '--syrup', '1 L', '--throw', '1+4'], 'drinkVolume', 5],
    [['drops', '--trial', '17', '--target', '0.5 ppb'], 'achieved', 0.4869],
    [['drops', '--trial', '17', '--drops', '6'], 'wholeDrops', 6],
  ])('law: what is typed stands instead of what it excludes: %j', async (words, key, value) => {
    const answer = await found(words, { folder: await exampleLedger() });
    expect(leafValue(answer[key])).toBeCloseTo(value, 4);
  });

  it('law: acid of the drink is the citric acid that was asked for in it', async () => {
    const folder = await exampleLedger();
    expect(leafValue((await found(['acid', '--trial', '17'], { folder }))['totalGramsPerLitre'])).toBeCloseTo(
      4.5,
      9,
    );
  });

  it('law: dose --emulsion-of N is the dose with the strength of that emulsion typed', async () => {
    const folder = await exampleLedger();
    const line = ['dose', '--oil', '60 mg/L', '--in', '6 L', '--throw', '1+4'];
    const of = await found([...line, '--emulsion-of', '13'], { folder });
    const typed = await found(
      [...line, '--emulsion', '4.02 %', '--ratio', '2.01:6.02', '--carrier', '12 %'],
      { folder },
    );
    expect(leafValue(of['emulsionMass'])).toBeCloseTo((0.06 * 6) / 0.0402, 9);
    for (const key of [
      'emulsionMass',
      'emulsionPerLitreDrink',
      'emulsionPerLitreSyrup',
      'emulsifierInDrink',
      'carrierInDrink',
    ])
      expect(leafValue(of[key])).toBeCloseTo(leafValue(typed[key]), 9);
  });

  it.each([
    [['acid', '--trial', '13'], 'no'],
    [['dose', '--trial', '13'], '--oil is needed'],
    [['hlb', '--trial', '99'], 'there is no trial 99'],
    [['dose', '--oil', '60 mg/L', '--in', '6 L', '--emulsion-of', '99'], 'there is no trial 99'],
    [
      ['hlb', '--emulsifier', '6 g polysorbate 80', '--target', '12', '--record'],
      '--record needs a trial to write into; add --trial N',
    ],
  ])('%j says what is missing', async (words, message) => {
    const ran = await neckring(words, { folder: await exampleLedger() });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
  });
});

describe('--record', () => {
  it('writes the answer into the trial as reckon would, and reckon finds it there', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, third);
    const ran = await neckring(['hlb', '--trial', '13', '--record'], { folder, now });
    expect([ran.code, ran.err]).toEqual([0, `wrote 1 result to ${third}\n`]);
    const recorded = await readIn(folder, third);
    expect(
      recorded.startsWith(`${before}results:\n  - at: 2026-03-12T12:00:00+00:00\n    calculator: hlb\n`),
    ).toBe(true);
    await neckring(['reckon', '13'], { folder, now });
    expect((await readIn(folder, third)).match(/calculator: hlb$/gm)?.length).toBe(1);
  });

  it('keeps what was typed over the trial, so that check can give the answer again', async () => {
    const folder = await exampleLedger();
    await neckring(['hlb', '--trial', '13', '--target', '12', '--record'], { folder, now });
    expect(await readIn(folder, third)).toMatch(/ {4}typed:\n {6}target: "?12"?\n/);
    expect((await neckring(['check'], { folder, now })).out).toContain('no errors, no warnings');
    const text = await readIn(folder, third);
    await writeIn(folder, third, text.replace('weighed: 6.02 g', 'weighed: 6.20 g'));
    expect((await neckring(['check'], { folder, now })).out).toContain('this hlb answer is no longer');
  });

  it('does not write the same answer twice', async () => {
    const folder = await exampleLedger();
    const words = ['hlb', '--trial', '13', '--target', '12', '--record'];
    await neckring(words, { folder, now });
    const once = await readIn(folder, third);
    const again = await neckring(words, { folder, now: '2026-03-14T12:00:00Z' });
    expect(again.err).toBe(`${third}: nothing new; nothing written\n`);
    expect(await readIn(folder, third)).toBe(once);
  });

  it('records a dose from another emulsion into a trial', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(
      ['dose', '--oil', '60 mg/L', '--emulsion-of', '14', '--trial', '17', '--record'],
      { folder, now },
    );
    expect(ran.code).toBe(0);
    expect(await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml')).toContain(
      '    calculator: dose\n',
    );
    expect((await neckring(['check'], { folder, now })).out).toContain('no errors, no warnings');
  });
});
