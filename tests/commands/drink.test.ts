import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, record, rows, scratchFolder } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

/** A litre of a still drink, made with water that has nothing in it. */
const litre = (items: readonly string[], rest = ''): string =>
  `formula: try\nstages:\n  drink:\n${items.map((item) => `    - ${item}\n`).join('')}${rest}`;

const formulaLedger = (text: string, bench = ''): Promise<string> =>
  ledgerOf({
    'formulas/try.yaml': text,
    ...(bench === '' ? {} : { 'bench.yaml': `ledger: 1\nbench:\n  time zone: Europe/Lisbon\n${bench}` }),
  });

const drinkOf = async (text: string, bench = ''): Promise<Readonly<Record<string, unknown>>> =>
  found(['drink', 'try'], { folder: await formulaLedger(text, bench) });

const cautionsOf = async (folder: string, design = 'try'): Promise<readonly string[]> => {
  const { out } = await neckring(['drink', design, '--json'], { folder });
  const parsed: unknown = JSON.parse(out);
  return rows(record(parsed)['cautions']).map((one) => `${String(one['code'])}: ${String(one['text'])}`);
};

describe('drink', () => {
  it('tells the example formula on one screen of 80 columns, with its aims met', async () => {
    const folder = await exampleLedger();
    const { code, out, err } = await neckring(['drink', 'orange cardamom'], { folder });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const lines = out.split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(lines.indexOf('Aims')).toBeLessThan(24);
    expect(out).toContain('allow 0.2 in a real drink');
    expect(out.match(/ met$/gm)).toHaveLength(3);
    expect(out).not.toMatch(/\b(?:compliant|legal|approved|safe)\b/);
  });

  it('takes a formula by its name or file, a trial by its number or file', async () => {
    const folder = await exampleLedger();
    const words = ['orange cardamom', 'Orange  Cardamom', 'formulas/orange-cardamom.yaml'];
    const answers = await Promise.all(words.map((word) => found(['drink', word], { folder })));
    expect(answers[1]).toEqual(answers[0]);
    expect(answers[2]).toEqual(answers[0]);
    const trial = await found(['drink', '17'], { folder });
    expect(await found(['drink', 'trials/0017-orange-cardamom-drink.yaml'], { folder })).toEqual(trial);
  });

  it('gives every figure as a leaf in the unit of its key', async () => {
    const answer = await found(['drink', '17'], { folder: await exampleLedger() });
    const units = Object.entries({
      ph: '',
      titratableAsCitric: 'g/L',
      brix: '',
      density: 'g/mL',
      volume: 'L',
      waterActivity: '',
    });
    for (const [key, unit] of units) expect(record(answer[key])['unit']).toBe(unit);
    expect(Array.isArray(answer['acids']) && Array.isArray(answer['aims'])).toBe(true);
    const substances = rows(answer['substances']);
    const whole = substances.reduce((sum, one) => sum + leafValue(one['massFraction']), 0);
    expect(whole).toBeCloseTo(1, 12);
    const density = leafValue(answer['density']);
    for (const one of substances)
      expect(leafValue(one['gramsPerLitre'])).toBeCloseTo(leafValue(one['massFraction']) * density * 1000, 9);
  });

  it('law: volume is mass over density, the ratio is Brix over per cent of acid', async () => {
    const answer = await found(['drink', '17'], { folder: await exampleLedger() });
    const [mass, density, volume] = ['mass', 'density', 'volume'].map((key) => leafValue(answer[key]));
    expect(volume).toBeCloseTo((mass ?? 0) / (density ?? 1) / 1000, 12);
    const percent = leafValue(answer['titratableAsCitric']) / (density ?? 1) / 10;
    expect(leafValue(answer['brixAcidRatio'])).toBeCloseTo(leafValue(answer['brix']) / percent, 9);
  });

  it('law: pH and acid are those of the quick calculator for the same litre', async () => {
    const answer = await drinkOf(litre(['sucrose: 100 g', 'citric acid: 4.5 g', 'deionised water: to 1 L']));
    const quick = await found(['ph', '4.5 g/L citric acid', '100 g/L sucrose', '--temperature', '20 C']);
    expect(leafValue(answer['ph'])).toBeCloseTo(leafValue(quick['ph']), 2);
    expect(leafValue(answer['titratableAsCitric'])).toBeCloseTo(leafValue(quick['titratableAsCitric']), 3);
  });

  it('law: ph --trial is at the temperature of the bench, as drink is', async () => {
    const folder = await exampleLedger();
    const drink = await found(['drink', '17'], { folder });
    const quick = await found(['ph', '--trial', '17'], { folder });
    expect(leafValue(quick['ph'])).toBeCloseTo(leafValue(drink['ph']), 3);
  });

  it('law: the volumes of CO2 that are aimed at lower the pH of a weak drink and leave its acid', async () => {
    const items = ['citric acid: 0.05 g', 'trisodium citrate dihydrate: 0.3 g', 'deionised water: to 1 L'];
    const still = await drinkOf(litre(items));
    const fizzy = await drinkOf(litre(items, 'aim:\n  co2: 3.3 to 3.7 vol\n'));
    expect(leafValue(fizzy['ph'])).toBeLessThan(leafValue(still['ph']) - 0.5);
    expect(leafValue(fizzy['titratableAsCitric'])).toBe(leafValue(still['titratableAsCitric']));
    expect(leafValue(fizzy['carbonation'])).toBeCloseTo(3.5, 12);
  });
});

describe('the water of the bench', () => {
  const water = (kind: string): string => litre(['citric acid: 5 g', `${kind}: to 1 L`]);
  const hard = '  water:\n    alkalinity: 100 mg/L as CaCO3\n';

  it('law: alkalinity takes two thirds of a mole of citric acid a mole of CaCO3, deionised water none', async () => {
    const bench = await drinkOf(water('water'), hard);
    const pure = await drinkOf(water('deionised water'), hard);
    const expected = ((0.1 / 100.09) * 2 * 192.124) / 3;
    expect(leafValue(bench['acidEatenByWater'])).toBeCloseTo(expected, 2);
    expect(leafValue(pure['acidEatenByWater'])).toBe(0);
    const lost = leafValue(pure['titratableAsCitric']) - leafValue(bench['titratableAsCitric']);
    expect(lost).toBeCloseTo(expected, 2);
    expect(leafValue(bench['ph'])).toBeGreaterThan(leafValue(pure['ph']));
  });

  it('says what alkalinity, hardness, chlorine and iron do, and nothing of them in deionised water', async () => {
    const traces = `${hard}    hardness: 250 mg/L as CaCO3\n    chlorine: 0.5 mg/L\n    iron: 0.5 mg/L\n`;
    const codes = (await cautionsOf(await formulaLedger(water('water'), traces))).map(
      (one) => one.split(':')[0],
    );
    expect(codes).toEqual(expect.arrayContaining(['alkalinity', 'hard-water', 'chlorine', 'iron']));
    const pure = (await cautionsOf(await formulaLedger(water('deionised water'), traces))).join('\n');
    expect(pure).not.toMatch(/^(?:alkalinity|hard-water|chlorine|iron):/m);
  });
});

describe('drink --label', () => {
  it('law: a stock is what it holds: the carrier of an emulsion and of a stock are one line', async () => {
    const folder = await exampleLedger();
    const of = async (key: string) => rows((await found(['drink', '17', '--label'], { folder }))[key]);
    const carrier = (await of('label')).find(({ ingredient }) => ingredient === 'propylene glycol');
    const dosed = (await of('substances')).find(({ substance }) => substance === 'propylene glycol');
    expect(leafValue(carrier?.['massFraction'])).toBeCloseTo(leafValue(dosed?.['massFraction']), 12);
  });

  it('lists ingredients by mass through every stage, lots under their plain name', async () => {
    const { code, out } = await neckring(['drink', '17', '--label'], { folder: await exampleLedger() });
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, ' ')).toContain(
      'water, sucrose, citric acid (E 330), trisodium citrate dihydrate (E 331), propylene glycol (E 1520), polysorbate 80 (E 433), sweet orange oil, 4-methoxy-2-methyl-2-butanethiol.',
    );
  });

  it('published: 100 g of sucrose and 2 g of citric acid a litre are 1726 kJ, 406 kcal (Regulation (EU) 1169/2011, Annex XIV)', async () => {
    const answer = await drinkOf(litre(['sucrose: 100 g', 'citric acid: 2 g', 'water: to 1 L']));
    expect(leafValue(answer['energy'])).toBeCloseTo(172.6, 9);
    expect(leafValue(answer['energyKilocalories'])).toBeCloseTo(40.6, 9);
    expect(leafValue(answer['sugar'])).toBeCloseTo(10, 9);
  });

  it('law: sodium is that of the salt by its formula, with that of the water where it is known', async () => {
    const items = ['trisodium citrate dihydrate: 2 g', 'citric acid: 5 g', 'water: to 1 L'];
    const plain = await drinkOf(litre(items));
    const ofSalt = ((2 * 3 * 22.98977) / 294.1) * 100;
    expect(leafValue(plain['sodium'])).toBeCloseTo(ofSalt, 1);
    const salty = await drinkOf(litre(items), '  water:\n    sodium: 50 mg/L\n');
    expect(leafValue(salty['sodium']) - leafValue(plain['sodium'])).toBeCloseTo(5, 1);
  });
});

describe('bad input', () => {
  it.each([
    ['a trial without a drink', '13', 'there is no stage named drink'],
    ['a name that is near', 'orange cardamon', 'did you mean "orange cardamom"?'],
    ['a trial that is not there', '99', 'there is no trial 99'],
    ['a file that is not there', 'formulas/other.yaml', 'the formulas here are orange cardamom'],
  ])('refuses %s', async (_, design, said) => {
    const { code, err } = await neckring(['drink', design], { folder: await exampleLedger() });
    expect(code).toBe(2);
    expect(err).toContain(said);
  });

  it('refuses a temperature outside the constants, and one that is none', async () => {
    const folder = await exampleLedger();
    const hot = await neckring(['drink', '17', '--temperature', '90 C'], { folder });
    expect([hot.code, hot.err]).toEqual([2, expect.stringContaining('give a temperature in that range')]);
    const wrong = await neckring(['drink', '17', '--temperature', '3 g'], { folder });
    expect([wrong.code, wrong.err]).toEqual([2, expect.stringContaining('--temperature')]);
  });

  it('refuses a standard for pH meters in a stage', async () => {
    const folder = await ledgerOf({
      'ingredients.yaml': 'ingredients:\n  borax:\n    role: salt\n',
      'formulas/try.yaml': litre(['borax: 1 g', 'water: to 1 L']),
    });
    const { code, err } = await neckring(['drink', 'try'], { folder });
    expect([code, err]).toEqual([2, expect.stringContaining('nothing to drink')]);
  });

  it('refuses two formulas of one name', async () => {
    const text = litre(['citric acid: 1 g', 'water: to 1 L']);
    const folder = await ledgerOf({ 'formulas/a.yaml': text, 'formulas/b.yaml': text });
    const { code, err } = await neckring(['drink', 'try'], { folder });
    expect([code, err]).toEqual([2, expect.stringContaining('formulas/a.yaml and of formulas/b.yaml')]);
  });

  it('names acids, salts and preservatives without acid data, and reckons the rest', async () => {
    const folder = await formulaLedger(
      litre(['citric acid: 4 g', 'sodium metabisulfite: 0.02 g', 'water: to 1 L']),
    );
    expect((await cautionsOf(folder)).join('\n')).toContain('no acid data for sodium metabisulfite');
  });

  it('has nothing to say where there is no ledger', async () => {
    const { code, err } = await neckring(['drink', 'try'], { folder: await scratchFolder() });
    expect([code, err]).toEqual([2, expect.stringContaining('no ledger')]);
  });
});
