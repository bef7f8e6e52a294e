import { describe, expect, it } from 'vitest';
import { neckring, record, rows } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

interface Tried {
  readonly syrup?: readonly string[];
  readonly drink: readonly string[];
  readonly bench?: string;
  readonly temperature?: string;
}

const lines = (items: readonly string[]): string => items.map((item) => `    - ${item}\n`).join('');

/** The texts of the cautions on what crystallises. */
async function said({ syrup, drink, bench = '', temperature = '20 C' }: Tried): Promise<string> {
  const stages = `${syrup ? `  syrup:\n${lines(syrup)}` : ''}  drink:\n${lines(drink)}`;
  const folder = await ledgerOf({
    'bench.yaml': `ledger: 1\nbench:\n  time zone: Europe/Lisbon\n${bench}`,
    'formulas/try.yaml': `formula: try\nstages:\n${stages}`,
  });
  const { out } = await neckring(['drink', 'try', '--json', '--temperature', temperature], { folder });
  const parsed: unknown = JSON.parse(out);
  return rows(record(parsed)['cautions'])
    .filter(({ code }) => code === 'falls-out' || code === 'near-solubility')
    .map(({ code, text, source }) => `${String(code)}: ${String(text)} [${String(source)}]`)
    .join('\n');
}

describe('what falls out', () => {
  it('published: 0.1 % of sorbic acid dissolves in 40 % sucrose at 20 C (Food Additives Data Book): 1.8 g/L crystallises from the syrup and fits the drink', async () => {
    const text = await said({
      syrup: ['sucrose: 400 g', 'citric acid: 20 g', 'potassium sorbate: 1.2 g', 'water: to 500 mL'],
      drink: ['syrup: 100 mL', 'water: to 600 mL'],
    });
    expect(text).toMatch(
      /^falls-out: 1\.8 g\/L of sorbic acid in the syrup, where about 0\.8\d? g\/L dissolves/m,
    );
    expect(text).toContain('Add it to the drink instead, where it fits');
    expect(text).toMatch(/at a throw of 1\+1\.\d it fits/);
    expect(text).toContain('Food Additives Data Book');
  });

  it('law: the throw that is offered does fit', async () => {
    const drink = ['syrup: 200 mL', 'water: to 600 mL'];
    const syrup = ['sucrose: 200 g', 'citric acid: 10 g', 'potassium sorbate: 0.6 g', 'water: to 500 mL'];
    expect(await said({ syrup, drink })).not.toContain('falls-out');
  });

  it('published: 67.09 % of sucrose saturates water at 20 C, 64.18 % at 0 C (CRC Handbook, older editions)', async () => {
    const drink = ['sucrose: 66.8 g', 'water: 33.2 g'];
    expect(await said({ drink })).toMatch(/^near-solubility: .*sucrose/m);
    expect(await said({ drink: ['sucrose: 67.4 g', 'water: 32.6 g'] })).toMatch(/^falls-out: .*sucrose/m);
    expect(await said({ drink, temperature: '4 C' })).toMatch(/^falls-out: .*sucrose/m);
  });

  it.each([
    ['4 C', '2.2 g', true],
    ['18 C', '2.2 g', false],
    ['50 C', '8 g', false],
    ['18 C', '3.2 g', true],
  ])(
    'published: benzoic acid 0.18, 0.27, 0.95 %% at 4, 18, 50 C (Food Additives Data Book): at %s, %s a litre',
    async (temperature, benzoic, falls) => {
      const text = await said({
        drink: [`benzoic acid: ${benzoic}`, 'citric acid: 5 g', 'water: to 1 L'],
        temperature,
      });
      expect(text.includes('falls-out')).toBe(falls);
    },
  );

  it('published: fumaric acid 0.63 % at 25 C (Food Additives Data Book)', async () => {
    const of = (grams: number): readonly string[] => [`fumaric acid: ${grams} g`, 'water: to 1 L'];
    expect(await said({ drink: of(5), temperature: '25 C' })).not.toContain('falls-out');
    expect(await said({ drink: of(8), temperature: '25 C' })).toContain('of fumaric acid in the drink');
  });

  it('law: the salt of an acid counts as far as the pH sets the acid free', async () => {
    const salt = 'potassium sorbate: 4 g';
    expect(await said({ drink: [salt, 'citric acid: 5 g', 'water: to 1 L'] })).toContain('sorbic acid');
    expect(await said({ drink: [salt, 'trisodium citrate dihydrate: 5 g', 'water: to 1 L'] })).toBe('');
  });

  it('pinned: potassium finds tartrate, and a figure from memory says so', async () => {
    const tartaric = ['tartaric acid: 6 g', 'tripotassium citrate monohydrate: 8 g', 'water: to 1 L'];
    const text = await said({ drink: tartaric, temperature: '5 C' });
    expect(text).toContain('potassium hydrogen tartrate');
    expect(text).toContain('from memory');
    const sodium = ['tartaric acid: 6 g', 'trisodium citrate dihydrate: 8 g', 'water: to 1 L'];
    expect(await said({ drink: sodium, temperature: '5 C' })).toBe('');
  });

  it('pinned: very hard water and citrate (solubility of calcium citrate from memory, no ion pairs) make a haze near neutral, not in an acid drink', async () => {
    const bench = '  water:\n    alkalinity: 250 mg/L as CaCO3\n    hardness: 700 mg/L as CaCO3\n';
    const neutral = ['trisodium citrate dihydrate: 2 g', 'water: to 1 L'];
    expect(await said({ drink: neutral, bench })).toContain('calcium citrate');
    expect(await said({ drink: ['citric acid: 5 g', 'water: to 1 L'], bench })).toBe('');
    expect(
      await said({ drink: ['trisodium citrate dihydrate: 2 g', 'deionised water: to 1 L'], bench }),
    ).toBe('');
  });

  it('published: vanillin 11 g/L (AqSolDB 2019); caffeine and quinine from memory', async () => {
    const text = await said({
      syrup: ['vanillin: 6 g', 'caffeine: 12 g', 'quinine: 0.5 g', 'water: to 400 mL'],
      drink: ['syrup: 5 mL', 'water: to 1 L'],
      temperature: '25 C',
    });
    for (const name of ['vanillin', 'caffeine', 'quinine']) expect(text).toContain(`of ${name} in the syrup`);
    expect(text).toContain('an acid drink holds more');
  });

  it('law: colder than the published rows it is not called dissolved, nor warmer fallen out', async () => {
    const cold = await said({ drink: ['vanillin: 9.5 g', 'water: to 1 L'], temperature: '5 C' });
    expect(cold).toContain('at this temperature it is not known');
    const warm = await said({ drink: ['vanillin: 12 g', 'water: to 1 L'], temperature: '40 C' });
    expect(warm).toContain('at this temperature it is not known');
  });
});
