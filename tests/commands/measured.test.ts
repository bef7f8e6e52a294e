import { describe, expect, it } from 'vitest';
import { found, leafValue, neckring, rows } from './neckring.ts';
import { trialLedger } from './small-ledger.ts';

const made = { sucrose: 100, citric: 5, citrate: 0.8 };

const trial = (grams: typeof made, readings = ''): string => `trial: 1
made: 2026-03-02T10:15+00:00
stages:
  drink:
    - sucrose: ${grams.sucrose} g
    - citric acid: ${grams.citric} g
    - trisodium citrate dihydrate: ${grams.citrate} g
    - deionised water: to 1 L
${readings}`;

/** What a drink that was made so would read. */
async function readingsOf(grams: typeof made): Promise<string> {
  const answer = await found(['drink', '1'], { folder: await trialLedger(trial(grams)) });
  const of = (key: string): string => String(leafValue(answer[key]));
  return `observations:
  - at: 2026-03-03T09:00+00:00
    ph: ${of('ph')}
    acid: ${of('titratableAsCitric')} g/L
    brix: ${of('refractometerBrix')}
    density: ${of('density')} g/mL
`;
}

describe('measured beside reckoned', () => {
  it('law: a drink that was made as written agrees in everything', async () => {
    const folder = await trialLedger(trial(made, await readingsOf(made)));
    const answer = await found(['drink', '1'], { folder });
    const measured = rows(answer['measured']);
    expect(measured.map(({ reading }) => reading)).toEqual(['ph', 'acid', 'brix', 'density']);
    expect(measured.every(({ agrees }) => agrees === true)).toBe(true);
    expect(answer['explainedBy']).toEqual([]);
  });

  it.each([
    ['citric acid', { ...made, citric: 4.4 }, 0.88],
    ['sucrose', { ...made, sucrose: 112 }, 1.12],
    ['citric acid', { ...made, citric: 10 }, 2],
  ])('law: with %s mis-weighed, that item is found and by how much', async (item, grams, factor) => {
    const folder = await trialLedger(trial(made, await readingsOf(grams)));
    const slips = rows((await found(['drink', '1'], { folder }))['explainedBy']);
    const slip = slips.find((one) => one['item'] === item);
    expect(leafValue(slip?.['factor'])).toBeCloseTo(factor, 1);
    expect(leafValue(slip?.['mass'])).toBeCloseTo(leafValue(slip?.['planned']) * factor, 0);
  });

  it('says where no single item explains it', async () => {
    const readings =
      'observations:\n  - at: 2026-03-03T09:00+00:00\n    ph: 5.5\n    acid: 9 g/L\n    brix: 3\n';
    const { code, out } = await neckring(['drink', '1'], {
      folder: await trialLedger(trial(made, readings)),
    });
    expect(code).toBe(0);
    expect(out).toContain('No single item, weighed wrong, explains all of it');
  });

  it('stands in show and reckon, with the tolerance of each reading', async () => {
    const folder = await trialLedger(trial(made, await readingsOf({ ...made, citric: 4.4 })));
    for (const words of [
      ['show', '1'],
      ['reckon', '1', '--dry-run'],
      ['drink', '1'],
    ]) {
      const { out } = await neckring(words, { folder });
      expect(out).toContain('Measured beside reckoned');
      expect(out).toMatch(/acid as citric .*DIFFERS/);
      expect(out).toContain('less citric acid (4.4');
    }
  });

  it('is told at once when a reading is written down, and not for a look', async () => {
    const folder = await trialLedger(trial(made));
    const look = await neckring(['observe', '1', '--look', 'clear'], { folder });
    expect(look.out).not.toContain('reckoned');
    const reading = await neckring(['observe', '1', '--acid', '4.4 g/L'], { folder });
    expect([reading.code, reading.out]).toEqual([0, expect.stringContaining('Measured beside reckoned')]);
  });

  it('takes measured CO2 into the pH, and says that no recipe tells it', async () => {
    const readings = 'observations:\n  - at: 2026-03-03T09:00+00:00\n    co2: 3.2 vol\n';
    const { out } = await neckring(['drink', '1'], { folder: await trialLedger(trial(made, readings)) });
    expect(out).toMatch(/CO2 +3\.20? vol .*measured/);
    expect(out).toContain('measured only');
  });

  it('leaves readings of another stage alone', async () => {
    const text = `trial: 1
made: 2026-03-02T10:15+00:00
stages:
  syrup:
    - citric acid: 20 g
    - water: to 500 mL
  drink:
    - syrup: 100 mL
    - water: to 1 L
samples:
  jug:
    of: syrup
observations:
  - at: 2026-03-03T09:00+00:00
    ph: 1.9
`;
    const answer = await found(['drink', '1'], { folder: await trialLedger(text) });
    expect(answer['measured']).toEqual([]);
  });
});
