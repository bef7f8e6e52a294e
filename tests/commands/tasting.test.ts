import { describe, expect, it } from 'vitest';
import { optionName } from '../../src/calc/calculator.ts';
import { pair } from '../../src/calc/tasting/pair.ts';
import { triangle } from '../../src/calc/tasting/triangle.ts';
import { tastingCommands } from '../../src/commands/tasting-commands.ts';
import {
  exampleLedger,
  found,
  leafValue,
  neckring,
  readIn,
  rows,
  scratchFolder,
  writeIn,
} from './neckring.ts';

const typed = (line: string): readonly string[] => line.split(' ');

describe('triangle', () => {
  it('published: 9 of 15 is what ISO 4120 asks for at 5 %; 8 are too few', async () => {
    const nine = await found(typed('triangle --right 9 --of 15'));
    expect(leafValue(nine['rightNeeded'])).toBe(9);
    // 442347 of 3^15 ways to have 9 or more of 15, counted with whole numbers.
    expect(leafValue(nine['pValue'])).toBeCloseTo(442347 / 14348907, 12);
    expect(leafValue(nine['distinguisherFraction'])).toBeCloseTo(0.4, 12);
    expect(nine['reached']).toBe(true);
    expect((await found(typed('triangle --right 8 --of 15')))['reached']).toBe(false);
  });

  it('the number needed follows the risk', async () => {
    const strict = await found(typed('triangle --right 9 --of 15 --risk 1%'));
    expect(leafValue(strict['rightNeeded'])).toBe(10);
    expect(strict['reached']).toBe(false);
  });

  it('says how many it would take, with nothing tasted yet', async () => {
    const { out, code } = await neckring(typed('triangle --find 30% --power 90%'));
    expect(out).toContain('53 tastings find a difference that 30 % can tell with a chance of 90 %');
    expect(code).toBe(0);
  });

  it('a number that was not reached is never worded as no difference', async () => {
    for (const line of [
      'triangle --right 6 --of 15',
      'pair --prefer --right 8 --of 14',
      'triangle --right 0 --of 15',
    ]) {
      const { out, code } = await neckring(typed(line), { columns: 1000 });
      expect(out).toContain('not enough to say');
      expect(out).toContain('That does not show the contrary');
      expect(out).not.toMatch(/the same\b(?! one)|no difference|equal|identical|alike/i);
      expect(code).toBe(0);
    }
  });

  it('so few right that the key may have been misread', async () => {
    const { out } = await neckring(typed('triangle --right 1 --of 15'));
    expect(out.replace(/\s+/g, ' ')).toContain('look whether the key was read the wrong way round');
  });

  it.each([
    ['--right 16 --of 15', "16 right of 15 can't be"],
    ['--right 1.5 --of 15', '--right 1.5 is no whole number'],
    ['--right=-1 --of 15', '--right: "-1" has a sign'],
    ['--of 0', '--of 0 is too few'],
    ['--right 9', '--right 9 is of how many?'],
    ['', 'nothing is given'],
    ['--right 9 --of 15 --risk 5', '--risk: "5" has no unit'],
    ['--right 9 --of 15 --risk 0%', "--risk 0% can't be"],
    ['--right 9 --of 15 --risk 50%', "--risk 50% can't be"],
    ['--power 100%', "--power 100% can't be"],
    ['--find 101%', "--find 101% can't be"],
    ['--of 1e9', '--of 1000000000 is more than 100000'],
    ['--plan 0', '--plan 0 is too few'],
    ['--plan 2.5', '--plan 2.5 is no whole number'],
    ['--plan 500', 'there are three-digit codes for 195 tastings, not for 500'],
    ['--plan 12 --of 15', '--of does not go with --plan'],
    ['--plan 12 --trial 17 --against 17', 'trial 17 is to be tasted against itself'],
    ['--plan 12 --key k.txt --sheet ./k.txt', '--sheet and --key are the same file'],
    ['--plan 12 --key nowhere/k.txt', 'there is no folder for nowhere/k.txt'],
    ['--plan 12 --key .', 'is a folder'],
    ['--key k.txt', '--key goes with --plan'],
    ['--right 9 --of 15 --record', '--record needs a trial'],
  ])('refuses %s', async (line, message) => {
    const folder = await scratchFolder();
    const { code, err, out } = await neckring(typed(`triangle ${line}`.trim()), { folder });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });
});

describe('pair', () => {
  // Binomial sums counted with whole numbers: 470 of 2^14 ways to have 11 or more of 14.
  it('published: 11 of 14 one-sided is what ISO 5495 asks for at 5 %', async () => {
    const answer = await found(typed('pair --more soapy --right 11 --of 14'));
    expect(leafValue(answer['rightNeeded'])).toBe(11);
    expect(leafValue(answer['pValue'])).toBeCloseTo(470 / 16384, 12);
    expect(answer['reached']).toBe(true);
  });

  it('a preference is two-sided, and either may be counted', async () => {
    const eleven = await found(typed('pair --prefer --right 11 --of 14'));
    const three = await found(typed('pair --prefer --right 3 --of 14'));
    expect(leafValue(eleven['pValue'])).toBeCloseTo(940 / 16384, 12);
    expect(eleven).toEqual(three);
    expect(eleven['reached']).toBe(false);
    expect(leafValue(eleven['sureness'])).toBe(0.975);
  });

  it('says so where nobody knew beforehand', async () => {
    const { out } = await neckring(typed('pair --more soapy --two-sided --right 12 --of 14'));
    expect(out).toContain('two-sided');
    expect(out.replace(/\s+/g, ' ')).toContain('enough to say that it is more soapy (12 needed)');
  });

  it('refuses no question, and two', async () => {
    const none = await neckring(typed('pair --right 3 --of 4'));
    const two = await neckring(typed('pair --prefer --more soapy --right 3 --of 4'));
    expect([none.code, two.code]).toEqual([2, 2]);
    expect(none.err).toContain('add --more soapy, or --prefer');
    expect(two.err).toContain('a tasting asks one question');
  });

  it('a word that would drive a terminal is made visible', async () => {
    const { out } = await neckring(['pair', '--more', 'sweet\u001b[31m', '--right', '3', '--of', '4']);
    expect(out).not.toContain('\u001b');
  });
});

describe('what is typed', () => {
  it('every input of the calculators has its option', () => {
    for (const calculator of [triangle, pair]) {
      const options = tastingCommands.find(({ name }) => name === calculator.name)?.options ?? [];
      expect(options.map(({ name }) => name)).toEqual(
        expect.arrayContaining(Object.keys(calculator.fields).map(optionName)),
      );
    }
  });

  it('--record writes the answer into the trial once, under what is drunk', async () => {
    const folder = await exampleLedger();
    const line = typed('triangle --right 9 --of 15 --trial 17 --against 13 --record');
    expect((await neckring(line, { folder })).err).toContain('wrote 1 result');
    expect((await neckring(line, { folder })).err).toContain('nothing new');
    const text = await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml');
    expect(text).toContain('calculator: triangle\n    stage: drink');
    expect(text).toContain('against: 13');
    expect((await neckring(['check'], { folder })).code).toBe(0);
  });
});

describe('a serving plan', () => {
  const plan = typed('triangle --plan 12 --trial 17 --against 13 --key key.txt');

  it('prints the codes, and keeps what is in the glasses to the key', async () => {
    const folder = await scratchFolder();
    const { out, err, code } = await neckring(plan, { folder });
    expect([code, err]).toEqual([0, 'wrote key.txt\n']);
    expect(out).not.toMatch(/trial 1[37]|\bA\b|\bB\b/);
    const codes = [...out.matchAll(/\b\d{3}\b(?= )/g)].map(([one]) => one);
    expect(codes).toHaveLength(36);
    expect(new Set(codes).size).toBe(36);
    const key = await readIn(folder, 'key.txt');
    expect(key).toContain('A  trial 17\nB  trial 13\n');
    for (const glass of codes) expect(key).toMatch(new RegExp(`${glass} [AB]`));
  });

  it('the odd one that the key names is the one that stands alone', async () => {
    const folder = await scratchFolder();
    await neckring(plan, { folder });
    const lines = (await readIn(folder, 'key.txt'))
      .split('\n')
      .filter((line) => /^ +\d+ {2}\d{3} [AB]/.test(line));
    expect(lines).toHaveLength(12);
    for (const line of lines) {
      const glasses = [...line.matchAll(/(\d{3}) ([AB])/g)].map(([, glass, drink]) => ({ glass, drink }));
      const alone = glasses.filter(({ drink }) => glasses.filter((one) => one.drink === drink).length === 1);
      expect(line.trim().endsWith(`  ${alone[0]?.glass}`)).toBe(true);
    }
  });

  it('never writes over a key, or over anything, unasked', async () => {
    const folder = await scratchFolder();
    await neckring(plan, { folder });
    const first = await readIn(folder, 'key.txt');
    const second = await neckring(plan, { folder });
    expect([second.code, second.out]).toEqual([2, '']);
    expect(second.err).toContain('key.txt is there already');
    expect(await readIn(folder, 'key.txt')).toBe(first);
    await writeIn(folder, 'note.txt', 'mine\n');
    expect((await neckring([...plan.slice(0, -1), 'note.txt'], { folder })).code).toBe(2);
    expect(await readIn(folder, 'note.txt')).toBe('mine\n');
    expect((await neckring([...plan, '--replace'], { folder })).code).toBe(0);
  });

  it('goes into a file too, and into JSON without the key', async () => {
    const folder = await scratchFolder();
    const line = typed('pair --more soapy --plan 4 --sheet sheet.txt --json');
    const answer = await found(line, { folder });
    expect(rows(answer['servings'])).toHaveLength(4);
    expect(JSON.stringify(answer)).not.toMatch(/"[AB]"/);
    expect(await readIn(folder, 'sheet.txt')).toContain('Which of the two is more soapy?');
    expect(await readIn(folder, String(answer['key']))).toContain('A  the one');
  });

  it('ends with what to type, and says where the orders are not even', async () => {
    const folder = await scratchFolder();
    const odd = await neckring(['pair', '--more', "clove's bite", '--plan', '5'], { folder });
    expect(odd.out).toContain("neckring pair --more 'clove'\\''s bite' --right N --of 5\n");
    expect(odd.err).toContain('with 6 each would come equally often');
  });

  it('asks what is to be asked', async () => {
    const { err } = await neckring(typed('pair --plan 4'), { folder: await scratchFolder() });
    expect(err).toContain('what is to be asked is not given');
  });
});
