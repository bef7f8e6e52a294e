import { beforeEach, describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, rows } from './neckring.ts';

let folder = '';
const formula = 'formulas/orange-cardamom.yaml';
const run = (...words: string[]) => neckring(['swap', ...words], { folder });

beforeEach(async () => {
  folder = await exampleLedger();
});

describe('swap', () => {
  const hydrate = ['orange cardamom', '--out', 'citric acid', '--in', 'citric acid monohydrate'];

  it('a hydrate at equal moles leaves the drink as it was', async () => {
    const { code, out } = await run(...hydrate);
    expect(code).toBe(0);
    expect(out).toMatch(/citric acid monohydrate: 4\.922 g\/L in\s+drink/u);
    expect(out).toMatch(/What stays: pH 2\.8\d, acid, as citric/);
  });

  it('--write changes the line and nothing else', async () => {
    const before = await readIn(folder, formula);
    const { code, err } = await run(...hydrate, '--write');
    expect([code, err]).toEqual([0, `wrote ${formula}\n`]);
    expect(await readIn(folder, formula)).toBe(
      before.replace('citric acid: 4.5 g/L in drink', 'citric acid monohydrate: 4.922 g/L in drink'),
    );
  });

  it('--dry-run shows the line and writes nothing', async () => {
    const before = await readIn(folder, formula);
    expect((await run(...hydrate, '--dry-run')).err).toContain(
      '+     - citric acid monohydrate: 4.922 g/L in drink',
    );
    expect(await readIn(folder, formula)).toBe(before);
  });

  it('another acid at equal acidity moves the pH, and says so', async () => {
    const words = [
      'swap',
      'orange cardamom',
      '--out',
      'citric acid',
      '--in',
      'malic acid',
      '--equal',
      'acidity',
    ];
    const answer = await found(words, { folder });
    const ph = rows(answer['figures']).find(({ figure }) => figure === 'ph');
    expect(leafValue(ph?.['after'])).toBeGreaterThan(leafValue(ph?.['before']) + 0.02);
  });

  it('names what was withdrawn from food and doses none of it', async () => {
    const { code, out, err } = await run(
      'orange cardamom',
      '--out',
      'polysorbate 80',
      '--in',
      'brominated vegetable oil',
    );
    expect([code, out]).toEqual([2, '']);
    // 89 FR 55040, 3 July 2024.
    expect(err).toMatch(/US FDA withdrew .*89 FR 55040[\s\S]*no dose is given/);
  });

  it('drops become grams, and an emulsifier changes the HLB', async () => {
    const drops = await run('17', '--out', 'cassis stock', '--in', 'propylene glycol');
    expect(drops.out).toContain('propylene glycol: 0.252 g');
    const emulsifier = await run('orange cardamom', '--out', 'polysorbate 80', '--in', 'polysorbate 20');
    expect(emulsifier.out).toMatch(/HLB of the emulsifiers +15\.0 +16\.7/);
    expect(emulsifier.out).toContain('make a beaker and');
  });

  it.each([
    [['orange cardamom', '--in', 'malic acid'], '--out is needed'],
    [['orange cardamom', '--out', 'citric acid', '--in', 'malick acid'], 'malic acid'],
    [['orange cardamom', '--out', 'malic acid', '--in', 'citric acid'], 'is not weighed into'],
    [['orange cardamom', '--out', 'citric acid', '--in', 'citric acid'], 'name another one'],
    [[...hydrate, '--equal', 'colour'], 'say moles, acidity, mass, flavour'],
    [['17', '--out', 'citric acid', '--in', 'malic acid', '--write'], 'neckring new --from 17'],
  ])('refuses %j', async (words, says) => {
    const { code, err } = await run(...words);
    expect([code, err.includes(says) ? says : err]).toEqual([2, says]);
  });
});
