import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const stages = (citricGrams: number): string => `formula: try
stages:
  drink:
    - sucrose: 100 g
    - citric acid: ${citricGrams} g
    - trisodium citrate dihydrate: 0.6 g
    - deionised water: to 1 L
`;

const tryLedger = (aim: string, citricGrams = 4): Promise<string> =>
  ledgerOf({ 'formulas/try.yaml': `${stages(citricGrams)}aim:\n${aim}` });

const aimsOf = async (folder: string) => rows((await found(['drink', 'try'], { folder }))['aims']);

describe('check', () => {
  it('finds no miss in the example', async () => {
    const { code, out } = await neckring(['check'], { folder: await exampleLedger() });
    expect([code, out]).toEqual([0, expect.stringContaining('no errors')]);
  });

  it('a miss is an error at the line of the aim, with by how much and what moves it', async () => {
    const folder = await tryLedger('  ph: at most 3.2\n  acid: 4.3 to 4.7 g/L\n');
    const { code, out } = await neckring(['check'], { folder });
    expect(code).toBe(1);
    expect(out).toMatch(
      /formulas\/try\.yaml:10:9: acid comes to 3\.99 g\/L, 0\.3\d? g\/L under the aim; 1 % more citric acid moves it by 0\.04 g\/L; about 7\.\d % more would do/,
    );
    expect(out.match(/under the aim/g)).toHaveLength(1);
  });

  it('refuses a serving of nothing, and an amount of another kind in few words', async () => {
    const ran = await neckring(['check'], { folder: await tryLedger('  serving: 0 mL\n  sodium: 10 mg\n') });
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('a serving of "0 mL" is nothing; write such as 330 mL');
    expect(ran.out).toContain('"10 mg" is a mass; give another kind of amount, such as 4 % or 4 % w/v');
  });

  it('law: what would do, does', async () => {
    const folder = await tryLedger('  acid: 4.3 to 4.7 g/L\n');
    const [aim] = await aimsOf(folder);
    const needed = -leafValue(aim?.['by']) / leafValue(aim?.['changePerPercent']);
    await writeIn(
      folder,
      'formulas/try.yaml',
      (await readIn(folder, 'formulas/try.yaml')).replace(
        /citric acid: 4 g/,
        `citric acid: ${4 * (1 + (needed + 0.01) / 100)} g`,
      ),
    );
    expect((await neckring(['check'], { folder })).code).toBe(0);
  });

  it('an aim whose range is reversed is an error of the file, with the mend', async () => {
    const { code, out } = await neckring(['check'], { folder: await tryLedger('  ph: 3.2 to 2.9\n') });
    expect(code).toBe(1);
    expect(out).toContain('write 2.9 to 3.2');
  });

  it('a formula without a drink has its aims not judged, which is a warning', async () => {
    const text = 'formula: try\nstages:\n  syrup:\n    - sucrose: 10 g\n    - water: 90 g\naim:\n  ph: 3\n';
    const { code, out } = await neckring(['check'], {
      folder: await ledgerOf({ 'formulas/try.yaml': text }),
    });
    expect([code, out]).toEqual([0, expect.stringContaining('the aims are not judged')]);
  });

  it('on another item than the drink itself: make-up lines and stages move everything and are not named', async () => {
    const text = `formula: try
stages:
  syrup:
    - citric acid: 20 g
    - water: to 500 mL
  drink:
    - syrup: 200 mL
    - water: to 1 L
aim:
  acid: 9 g/L
`;
    const { out } = await neckring(['check'], { folder: await ledgerOf({ 'formulas/try.yaml': text }) });
    expect(out).toContain('1 % more citric acid moves it');
  });
});

describe('a bare figure', () => {
  it.each([
    ['acid: 4.1 g/L', 'met'],
    ['acid: 4.15 g/L', 'missed'],
    ['brix: 9.8', 'met'],
    ['brix: 10', 'missed'],
    ['sucrose: 100 g/L', 'met'],
    ['sucrose: 120 g/L', 'missed'],
  ])(
    '%s is %s: acid within 3 %%, Brix 0.2, a substance 10 %% (common practice, no source)',
    async (line, state) => {
      const [aim] = await aimsOf(await tryLedger(`  ${line}\n`));
      expect(aim?.['state']).toBe(state);
    },
  );

  it('pH within 0.1 (common practice, no source)', async () => {
    const folder = await tryLedger('  ph: at least 0\n');
    const ph = leafValue((await found(['drink', 'try'], { folder }))['ph']);
    for (const [aim, state] of [
      [ph + 0.099, 'met'],
      [ph - 0.099, 'met'],
      [ph + 0.101, 'missed'],
    ] as const) {
      const [judged] = await aimsOf(await tryLedger(`  ph: ${aim}\n`));
      expect(judged?.['state']).toBe(state);
    }
  });

  it('says the tolerance that it took', async () => {
    const { out } = await neckring(['drink', 'try'], { folder: await tryLedger('  brix: 9.8\n') });
    expect(out).toContain('9.8 (9.6 to 10)');
  });
});

describe('aims of every kind', () => {
  it.each([
    ['density: 1.03 to 1.05 g/mL', 'met'],
    ['water activity: at least 0.98', 'met'],
    ['brix acid ratio: 20 to 30', 'met'],
    ['alcohol: at most 0.5 % v/v', 'met'],
    ['citric acid: 3900 to 4100 mg/L', 'met'],
    ['citric acid: 0.35 to 0.4 %', 'met'],
    ['citric acid: 20 to 22 mmol/L', 'met'],
    ['caffeine: 100 to 200 mg/L', 'missed'],
    ['co2: 3.3 to 3.7 vol', 'to measure'],
    ['turbidity: at most 1 NTU', 'to measure'],
    ['look: clear', 'to measure'],
    ['serving: 330 mL', 'given'],
  ])('%s: %s', async (line, state) => {
    const folder = await tryLedger(`  ${line}\n`);
    const [aim] = await aimsOf(folder);
    expect(aim?.['state']).toBe(state);
    const { code } = await neckring(['drink', 'try'], { folder });
    expect(code).toBe(state === 'missed' ? 1 : 0);
  });

  it('names a substance by another of its names, and of its own lot', async () => {
    const folder = await exampleLedger();
    const file = 'formulas/orange-cardamom.yaml';
    const text = await readIn(folder, file);
    await writeIn(folder, file, `${text}  cassis thiol: 0.4 to 0.6 ppb\n  sweet orange oil: 40 to 60 mg/L\n`);
    const aims = rows((await found(['drink', 'orange cardamom'], { folder }))['aims']);
    expect(aims.slice(-2).map(({ state }) => state)).toEqual(['met', 'met']);
  });
});

describe('reckon', () => {
  it('judges a formula, writes nothing, and exits 1 on a miss', async () => {
    const folder = await tryLedger('  acid: 4.3 to 4.7 g/L\n');
    const before = await readIn(folder, 'formulas/try.yaml');
    const { code, out } = await neckring(['reckon', 'try'], { folder });
    expect([code, out]).toEqual([1, expect.stringContaining('MISSED, 0.3')]);
    expect(await readIn(folder, 'formulas/try.yaml')).toBe(before);
  });

  it('law: every answer is there for a formula as for a trial, in JSON too', async () => {
    const folder = await tryLedger('  acid: at most 5 g/L\n');
    const { code, out } = await neckring(['reckon', 'try', '--json'], { folder });
    expect(code).toBe(0);
    const parsed: unknown = JSON.parse(out);
    const [formula] = rows(record(record(parsed)['found'])['formulas']);
    expect(rows(formula?.['answers']).map(({ schema }) => schema)).toEqual(
      expect.arrayContaining(['ph@1', 'brix@1']),
    );
    expect(rows(formula?.['aims']).map(({ state }) => state)).toEqual(['met']);
  });
});
