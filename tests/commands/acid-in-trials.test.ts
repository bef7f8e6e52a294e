import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';

const codesOf = async (words: readonly string[]): Promise<readonly string[]> => {
  const { out } = await neckring([...words, '--json']);
  const parsed: unknown = JSON.parse(out);
  return rows(record(parsed)['cautions']).map(({ code }) => String(code));
};

const burette = ['--base', '0.1 mol/L', '--sample', '10 mL'];

describe('titrate into a trial', () => {
  it('law: is written down, stands beside what is reckoned, and is told as one slip where it is off', async () => {
    const folder = await exampleLedger();
    const reckoned = leafValue((await found(['drink', '17'], { folder }))['titratableAsCitric']);
    const used = `${((0.87 * reckoned * 3) / 192.124 / 0.1) * 10} mL`;
    const wrote = await neckring(['titrate', ...burette, '--used', used, '--trial', '17', '--record'], {
      folder,
    });
    expect([wrote.code, wrote.err]).toEqual([0, expect.stringContaining('wrote 1 result')]);
    expect(await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml')).toContain('acid hydrogens');
    const answer = await found(['drink', '17'], { folder });
    const [acid] = rows(answer['measured']);
    expect([acid?.['reading'], acid?.['agrees']]).toEqual(['acid', false]);
    expect(leafValue(acid?.['measured'])).toBeCloseTo(0.87 * reckoned, 4);
    expect(rows(answer['explainedBy']).map(({ item }) => item)).toContain('citric acid');
    expect((await neckring(['show', '17'], { folder })).out).toContain('Measured beside reckoned');
    expect((await neckring(['check'], { folder })).out).not.toContain('no longer');
  });

  it('law: counts protons, so malic acid in the burette is the same acidity', async () => {
    const folder = await exampleLedger();
    const words = [
      'titrate',
      ...burette,
      '--used',
      '6 mL',
      '--as',
      'malic acid',
      '--trial',
      '17',
      '--record',
    ];
    await neckring(words, { folder });
    const [acid] = rows((await found(['drink', '17'], { folder }))['measured']);
    expect(leafValue(acid?.['measured'])).toBeCloseTo((0.06 * 192.124) / 3, 4);
  });

  it('says to drive the gas off first', async () => {
    expect(await codesOf(['titrate', ...burette, '--used', '6 mL'])).toContain('degas');
  });
});

describe('questions on the drink of a trial', () => {
  it('law: adjust takes its sugar and its water; what it doses makes the drink so', async () => {
    const folder = await exampleLedger();
    const words = ['adjust', '--trial', '17', '--acidity', '4.5 g/L', '--ph', '3.2', '--temperature', '20 C'];
    const answer = await found(words, { folder });
    expect([leafValue(answer['ph']), leafValue(answer['titratableAsCitric'])]).toEqual([
      expect.closeTo(3.2, 6),
      expect.closeTo(4.5, 6),
    ]);
    const [acid, salt] = rows(answer['doses']);
    const text = await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml');
    const changed = text
      .replace(
        'citric acid: 4.5 g/L in drink',
        `citric acid: ${leafValue(acid?.['gramsPerLitre'])} g/L in drink`,
      )
      .replace(
        'trisodium citrate dihydrate: 0.6 g/L in drink',
        `trisodium citrate dihydrate: ${leafValue(salt?.['gramsPerLitre'])} g/L in drink`,
      );
    expect(changed).not.toBe(text);
    await writeIn(folder, 'trials/0017-orange-cardamom-drink.yaml', changed);
    const drink = await found(['drink', '17', '--temperature', '20 C'], { folder });
    expect(leafValue(drink['ph'])).toBeCloseTo(3.2, 1);
    expect(leafValue(drink['titratableAsCitric'])).toBeCloseTo(4.5, 1);
  });

  it('law: alkalinity asks for as much more acid as it eats: 0.128 g/L of citric a 100 mg/L as CaCO3', async () => {
    const dose = async (...more: readonly string[]) =>
      leafValue(
        rows((await found(['adjust', '--acidity', '4.5 g/L', '--ph', '3', ...more]))['doses'])[0]?.[
          'gramsPerLitre'
        ],
      );
    const more = (await dose('--alkalinity', '100 mg/L as CaCO3')) - (await dose());
    expect(more).toBeGreaterThan(0);
    expect(more).toBeLessThan(0.1281);
  });

  it.each([
    ['water-activity', []],
    ['carbonation', ['--volumes', '3.5']],
    ['brix', ['--density', '1.04 g/mL']],
  ])('%s may be filed with a trial', async (name, more) => {
    const folder = await exampleLedger();
    const ran = await neckring([name, ...more, '--trial', '17', '--record'], { folder });
    expect([ran.code, ran.err]).toEqual([0, expect.stringContaining('wrote 1 result')]);
    expect((await neckring(['check'], { folder })).out).not.toContain('no longer');
  });
});

describe('more than dissolves', () => {
  // Food Additives Data Book 2003: 0.63 % of fumaric acid at 25 C, 0.29 % of benzoic acid at 20 C; CRC Handbook: 67.09 % of
  // sucrose at 20 C.
  it.each([
    [['ph', '12 g/L fumaric acid'], true],
    [['ph', '5 g/L fumaric acid'], false],
    [['ph', '4 g/L benzoic acid', '--temperature', '20 C'], true],
    [['ph', '1100 g/L sucrose', '--temperature', '20 C'], true],
    [['ph', '800 g/L sucrose', '--temperature', '20 C'], false],
    [['brix', '--brix', '68'], true],
    [['brix', '--brix', '66'], false],
  ])('published: %j is over: %s', async (words, isOver) => {
    expect((await codesOf(words)).includes('falls-out')).toBe(isOver);
  });
});

describe('brix', () => {
  it('published: a syrup of 65 Brix at 1+5 makes 13.545 Brix, 142.63 g/L (ICUMSA density); the ratio is Brix over % of acid', async () => {
    const answer = await found(['brix', '--brix', '65', '--throw', '1+5', '--acidity', '20 g/L']);
    expect(leafValue(answer['drinkBrix'])).toBeCloseTo(13.5453, 3);
    expect(leafValue(answer['drinkGramsPerLitre'])).toBeCloseTo(142.627, 2);
    expect(leafValue(answer['brixAcidRatio'])).toBeCloseTo(65 / (2 / 1.31656), 3);
  });

  it('published: viscosity of sucrose, CRC Handbook: 1.592 mPa s at 15 Brix, 10.301 at 46, 20 C, within 4 %', async () => {
    for (const [brix, printed] of [
      [15, 1.592],
      [46, 10.301],
    ] as const) {
      const { viscosity } = await found(['brix', '--brix', String(brix), '--temperature', '20 C']);
      expect(leafValue(viscosity) / printed).toBeCloseTo(1, 1);
    }
  });
});

describe('what moves what', () => {
  it('law: 1 % more of an item moves each property as the drink says when it is weighed so', async () => {
    const folder = await exampleLedger();
    const answer = await found(['drink', 'orange cardamom'], { folder });
    const acid = rows(answer['sensitivity']).find(({ item }) => item === 'citric acid');
    const text = await readIn(folder, 'formulas/orange-cardamom.yaml');
    await writeIn(
      folder,
      'formulas/orange-cardamom.yaml',
      text.replace('citric acid: 4.5 g/L', 'citric acid: 4.545 g/L'),
    );
    const moved = await found(['drink', 'orange cardamom'], { folder });
    const by = (key: string) => leafValue(moved[key]) - leafValue(answer[key]);
    expect(leafValue(acid?.['ph'])).toBeCloseTo(by('ph'), 9);
    expect(leafValue(acid?.['acid'])).toBeCloseTo(by('titratableAsCitric'), 9);
    expect(leafValue(acid?.['density'])).toBeCloseTo(by('density'), 9);
    expect((await neckring(['drink', 'orange cardamom', '--all'], { folder })).out).toContain(
      'For 1 % more of an item',
    );
  });
});
