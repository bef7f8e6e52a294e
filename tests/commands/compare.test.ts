import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formulaFile, gitLedger, ledgerFolder } from './git-ledger.ts';
import { found, leafValue, neckring, record, rows, scratchFolder, writeIn } from './neckring.ts';

const name = 'orange cardamom';

describe('compare', () => {
  it('finds nothing between a record and itself, and exits 0', async () => {
    const folder = await scratchFolder();
    await cp(ledgerFolder, folder, { recursive: true });
    const { code, out } = await neckring(['compare', '13', '13'], { folder });
    expect(code).toBe(0);
    expect(out).toContain('No change.');
  });

  it('law: what a line comes to is its share of the stage times the share of the stage in the drink', async () => {
    const { folder, change, git } = await gitLedger();
    await git('tag', 'v1');
    await change(formulaFile, 'polysorbate 80: 12 %', 'polysorbate 80: 10 %');
    const { code, out } = await neckring(['compare', `${name}@v1`, name], { folder });
    expect(code).toBe(1);
    expect(out).toMatch(/~ {2}polysorbate 80 +12 % +10 % +0\.180 -> 0\.150 g\/L +-17 %/);
    const answer = await found(['compare', `${name}@v1`, name], { folder });
    const [stage] = rows(answer['stages']);
    const [line] = rows(stage?.['items']);
    const comes = record(record(record(line)['comesTo'])['gramsPerLitre']);
    // 12 % of the emulsion, of which 1.5 g go into a litre: 0.18 g/L; 10 %: 0.15 g/L.
    expect(leafValue(comes['before'])).toBeCloseTo(0.18, 9);
    expect(leafValue(comes['after'])).toBeCloseTo(0.15, 9);
    const ratio = record(record(answer['properties'])['emulsifierPerOil']);
    expect(leafValue(ratio['before'])).toBeCloseTo(12 / 4, 9);
    expect(leafValue(ratio['after'])).toBeCloseTo(10 / 4, 9);
  });

  it('takes another name and another unit for no change', async () => {
    const { folder, change } = await gitLedger();
    await change(formulaFile, 'sucrose: 95 g', 'sucrose: 0.095 kg');
    await change(formulaFile, 'orange oil lot 2231: 3.6 %', 'sweet orange oil: 1.8 g');
    await change(
      formulaFile,
      'propylene glycol: 12 %',
      'Propylene  Glycol: 0.12 kg/kg'.replace('0.12 kg/kg', '12.0 %'),
    );
    const { code, out } = await neckring(['compare', name, '--only', 'formula'], { folder });
    expect(out).toContain('No change in the formula');
    expect(out).toContain('orange oil lot 2231 -> sweet orange oil');
    expect(code).toBe(0);
  });

  it('does not take another fold of the same oil for the same', async () => {
    const { folder, change, read, write } = await gitLedger();
    await write(
      'ingredients.yaml',
      `${await read('ingredients.yaml')}  fivefold orange oil:\n    like: sweet orange oil\n    fold: 5\n`,
    );
    await change(formulaFile, 'orange oil lot 2231: 3.6 %', 'fivefold orange oil: 3.6 %');
    const { code, out } = await neckring(['compare', name], { folder });
    expect(code).toBe(1);
    expect(out).toContain('orange oil lot 2231 -> fivefold orange oil');
  });

  it('tells added, taken out, moved, and the step of each figure', async () => {
    const { folder, change } = await gitLedger();
    await change(formulaFile, '    - propylene glycol: 12 %\n', '');
    await change(formulaFile, '    - orange oil lot 2231', '    - glycerol: 12 %\n    - orange oil lot 2231');
    await change(formulaFile, '  ph: 2.8 to 3.2', '  ph: 2.9 to 3.2');
    const { out } = await neckring(['compare', name], { folder });
    expect(out).toMatch(/- {2}propylene glycol +12 %/);
    expect(out).toMatch(/\+ {2}glycerol +- +12 %/);
    expect(out).toContain('ph: 2.8 to 3.2 -> 2.9 to 3.2');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('shows why figures move where no line of the formula did', async () => {
    const { folder, change } = await gitLedger();
    await change('ingredients.yaml', 'cassis thiol: 2 ppm', 'cassis thiol: 4 ppm');
    const { code, out } = await neckring(['compare', name], { folder });
    expect(code).toBe(1);
    expect(out).toContain('486 ppt');
    expect(out).toContain('cassis stock: holds');
  });

  it('follows a trial whose stage is used to what it was then', async () => {
    const { folder, change } = await gitLedger();
    await change('trials/0013-orange-1-to-3.yaml', 'weighed: 6.02 g', 'weighed: 5.02 g');
    const { code, out } = await neckring(['compare', '17'], { folder });
    expect(code).toBe(1);
    expect(out).toContain('emulsion of 13: polysorbate 80');
  });

  it('finds the one record alone under another name of its file or its own', async () => {
    const { folder, change, commit, git } = await gitLedger();
    await git('tag', 'v1');
    await git('mv', formulaFile, 'formulas/other.yaml');
    await change('formulas/other.yaml', '12 %', '11 %');
    await commit('rename');
    const byFile = await neckring(['compare', 'orange-cardamom@v1'], { folder });
    expect(byFile.out).toMatch(/polysorbate 80 +12 % +11 %/);
    await change('formulas/other.yaml', 'formula: orange cardamom', 'formula: orange and cardamom');
    const byName = await neckring(['compare', 'orange and cardamom'], { folder });
    expect(byName.out).toContain('formula "orange and cardamom"');
    expect(byName.out).toContain('compared with formula "orange cardamom" at HEAD');
  });

  it('keeps to a part where one is asked for', async () => {
    const { folder } = await gitLedger();
    const observe = ['observe', '17', '--sample', 'cold glass', '--look', 'hazy'];
    expect((await neckring(observe, { folder })).code).toBe(0);
    const only = async (part: string) => neckring(['compare', '17', '--only', part], { folder });
    expect((await only('formula')).code).toBe(0);
    const seen = await only('observations');
    expect(seen.code).toBe(1);
    expect(seen.out).toMatch(/new: 2026-03-12 \d\d:\d\d, cold glass: look hazy/);
    expect((await only('results')).code).toBe(0);
    const wrong = await only('formulas');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('formula, observations, results');
  });

  it('compares what can be read of a file that was not valid then', async () => {
    const { folder, change, commit } = await gitLedger();
    await change(formulaFile, 'cardamom oil lot 7: 0.4 %', 'cardamom oil lot 7: 0,4 %');
    await commit('slip');
    await change(formulaFile, 'cardamom oil lot 7: 0,4 %', 'cardamom oil lot 7: 0.4 %');
    const { code, out, err } = await neckring(['compare', `${name}@HEAD`], { folder });
    expect(code).toBe(1);
    expect(out).toMatch(/~ {2}cardamom oil lot 7 +0,4 % +0\.4 %/);
    expect(out).toContain('What follows is left out');
    expect(err).toContain(`${formulaFile}@HEAD:5:27`);
  });

  it('refuses a file with conflict markers in it, and names the line', async () => {
    const { folder, read, write } = await gitLedger();
    const text = await read(formulaFile);
    await write(formulaFile, `<<<<<<< ours\n${text}=======\n${text}>>>>>>> theirs\n`);
    const { code, err } = await neckring(['compare', `${formulaFile}@HEAD`, formulaFile], { folder });
    expect(code).toBe(2);
    expect(err).toContain('conflict');
    expect(err).toContain(`${formulaFile}:1:1`);
  });

  it('says which published figures were crossed, and leaves the judging to others', async () => {
    const { folder, change } = await gitLedger();
    await change(
      formulaFile,
      '    - citric acid',
      '    - sodium benzoate: 0.5 g/L in drink\n    - citric acid',
    );
    const { out } = await neckring(['compare', name], { folder });
    expect(out).toContain('Published figures crossed');
    expect(out).toContain('now above');
    expect(out).toContain('local food law');
    const answer = await found(['compare', name], { folder });
    expect(rows(answer['figuresCrossed']).map(({ above }) => above)).toContain(true);
  });

  it('law: the cost of a litre is the sum of g times price', async () => {
    const { folder } = await gitLedger();
    const answer = await found(['compare', name], { folder });
    const [cost] = rows(answer['cost']);
    // 3.6 % and 0.4 % of 1.5 g of emulsion at 42 and 310 EUR/kg, in a litre.
    const euro = (1.5 * (0.036 * 42 + 0.004 * 310)) / 1000;
    expect(leafValue(cost?.['after'])).toBeCloseTo(euro, 5);
  });

  it('compares a trial with the formula that came of it, stage by stage', async () => {
    const folder = await scratchFolder();
    await cp(ledgerFolder, folder, { recursive: true });
    const { code, out } = await neckring(['compare', '13', name], { folder });
    expect(code).toBe(1);
    expect(out).toContain('in the emulsion');
    expect(out).toContain('syrup (new stage)');
  });

  it('works without git where no revision is named, and says so where one is', async () => {
    const folder = await scratchFolder();
    await cp(ledgerFolder, folder, { recursive: true });
    expect((await neckring(['compare', '13', '14'], { folder })).code).toBe(1);
    const { code, err } = await neckring(['compare', '13@HEAD', '13'], { folder });
    expect(code).toBe(2);
    expect(err).toContain('is not in a git repository');
  });
});

describe('a ledger below the top of its repository, in folders with spaces and letters of other alphabets', () => {
  it('is compared by name, by number and by path', async () => {
    const { folder, change, git } = await gitLedger({ below: 'größe/ledger 1' });
    await git('mv', formulaFile, 'formulas/orange und härz.yaml');
    await git('-c', 'core.quotepath=on', 'commit', '-qm', 'rename');
    await change('formulas/orange und härz.yaml', '12 %', '11 %');
    for (const typed of [name, 'formulas/orange und härz.yaml']) {
      const { code, out } = await neckring(['compare', `${typed}@HEAD`], { folder });
      expect(code).toBe(1);
      expect(out).toMatch(/polysorbate 80 +12 % +11 %/);
    }
    expect((await neckring(['compare', '17@HEAD'], { folder })).code).toBe(0);
  });

  it('says that the ledger was not there yet', async () => {
    const { folder } = await gitLedger();
    const inner = join(folder, 'later');
    await cp(ledgerFolder, inner, { recursive: true });
    const { code, err } = await neckring(['compare', '17@HEAD'], { folder: inner });
    expect(code).toBe(2);
    expect(err).toContain('was not in the repository');
  });
});

describe('an ingredients file that could not be read then', () => {
  it('gives way to the one as it is now, and that is said', async () => {
    const { folder, change, commit } = await gitLedger();
    await change('ingredients.yaml', 'density: 0.846 g/mL', 'density: 0,846 g/mL');
    await commit('slip');
    await change('ingredients.yaml', 'density: 0,846 g/mL', 'density: 0.846 g/mL');
    const { code, err } = await neckring(['compare', `${name}@HEAD`], { folder });
    expect(code).toBe(0);
    expect(err).toContain("ingredients.yaml can't be read (at HEAD)");
  });
});

it('names what is wrong where nothing is committed yet', async () => {
  const folder = await scratchFolder();
  await writeIn(folder, 'bench.yaml', 'ledger: 1\n');
  const { code, err } = await neckring(['drink', '17@HEAD'], { folder });
  expect(code).toBe(2);
  expect(err).toContain('git');
});
