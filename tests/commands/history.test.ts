import { describe, expect, it } from 'vitest';
import { formulaFile, gitLedger } from './git-ledger.ts';
import { found, leafValue, neckring, record, rows } from './neckring.ts';

const name = 'orange cardamom';

describe('history', () => {
  it('tells one line a commit, from the oldest to the newest, under every name of the file', async () => {
    const { folder, change, commit, git } = await gitLedger();
    await change(formulaFile, 'polysorbate 80: 12 %', 'polysorbate 80: 10 %');
    await commit('less', 'Ben');
    await git('mv', formulaFile, 'formulas/orange und härz.yaml');
    await commit('rename');
    await change('formulas/orange und härz.yaml', 'aim:', '# a remark\naim:');
    await commit('remark');
    await change('formulas/orange und härz.yaml', 'ph: 2.8', 'ph: 2.9');
    const { code, out } = await neckring(['history', name], { folder, columns: 100 });
    expect(code).toBe(0);
    expect(out).toContain('formula "orange cardamom": 4 commits');
    const lines = out.split('\n').filter((line) => line.startsWith('2026-03-12') || line.startsWith('not'));
    expect(lines.map((line) => line.replace(/^\S+ \S+ [0-9a-f]{7}|^not committed/, '').trim())).toEqual([
      'Ada  begins: emulsion, syrup, drink',
      'Ben  polysorbate 80 12 % -> 10 %',
      'Ada  renamed from formulas/orange-cardamom.yaml',
      'Ada  spelling and remarks only',
      'aim ph 2.8 to 3.2 -> 2.9 to 3.2',
    ]);
  });

  it('reckons the figures of each version with the ledger of its time, and draws them', async () => {
    const { folder, change, commit } = await gitLedger();
    const brix = async (): Promise<number> => leafValue((await found(['drink', name], { folder }))['brix']);
    const values = [await brix()];
    for (const [from, to] of [
      ['95 g', '80 g'],
      ['80 g', '100 g'],
    ] as const) {
      await change(formulaFile, `sucrose: ${from}`, `sucrose: ${to}`);
      await commit(to);
      values.push(await brix());
    }
    const answer = await found(['history', name, '--show', 'ph,brix,oil'], { folder });
    const told = rows(answer['commits']).map((one) => leafValue(record(one['figures'])['brix']));
    for (const [at, value] of values.entries()) expect(told[at]).toBeCloseTo(value, 9);
    const { out } = await neckring(['history', name, '--show', 'brix'], { folder });
    expect(out).toContain('Brix, from the oldest to the newest');
    expect(out).toContain('*');
    expect([...out].every((character) => character === '\n' || (character >= ' ' && character <= '~'))).toBe(
      true,
    );
  });

  it('does not take the history of the trial that another was written from for its own', async () => {
    const { folder, commit, change } = await gitLedger();
    await change('trials/0017-orange-cardamom-drink.yaml', 'sucrose: 90 g', 'sucrose: 91 g');
    await commit('more sugar');
    const made = await neckring(['new', '--from', '17'], { folder });
    expect(made.code).toBe(0);
    await commit('the next');
    const { out } = await neckring(['history', '18'], { folder });
    expect(out).toContain('trial 18: 1 commit\n');
  });

  it('goes on over a version that could not be read', async () => {
    const { folder, change, commit, read, write } = await gitLedger();
    const text = await read(formulaFile);
    await write(formulaFile, `<<<<<<< a\n${text}`);
    await commit('half a merge');
    await write(formulaFile, text);
    await commit('settled');
    await change(formulaFile, '12 %', '11 %');
    await commit('less');
    const { code, out } = await neckring(['history', name, '--show', 'ph'], { folder });
    expect(code).toBe(0);
    expect(out).toContain("can't be read here");
    expect(out).toContain('can be read again');
    expect(out).toContain('polysorbate 80 12 % -> 11 %');
  });

  it('says what was seen, and of many looks how many', async () => {
    const { folder, commit } = await gitLedger();
    const look = async (word: string, at: string) =>
      neckring(['observe', '17', '--sample', 'cold glass', '--look', word, '--at', at], { folder });
    expect((await look('hazy', '2026-03-12T09:00+00:00')).code).toBe(0);
    await commit('a look');
    for (const hour of ['10', '11', '12']) await look('hazy', `2026-03-12T${hour}:00+00:00`);
    await commit('looks');
    const { out } = await neckring(['history', '17'], { folder });
    expect(out).toMatch(/cold glass hazy\n/);
    expect(out).toContain('3 observations');
  });

  it('refuses what is not in git, and figures that there are none of', async () => {
    const { folder } = await gitLedger();
    await neckring(['new', '--from', '17'], { folder });
    const fresh = await neckring(['history', '18'], { folder });
    expect(fresh.code).toBe(2);
    expect(fresh.err).toContain('is in no commit yet');
    const odd = await neckring(['history', '17', '--show', 'phh'], { folder });
    expect(odd.code).toBe(2);
    expect(odd.err).toContain('did you mean ph');
  });

  it('follows a merge of two branches', async () => {
    const { folder, git, change, commit } = await gitLedger();
    await git('checkout', '-qb', 'sugar');
    await change(formulaFile, 'sucrose: 95 g', 'sucrose: 90 g');
    await commit('sugar', 'Ben');
    await git('checkout', '-q', 'main');
    await change(formulaFile, 'polysorbate 80: 12 %', 'polysorbate 80: 11 %');
    await commit('emulsifier');
    await git('merge', '-q', 'sugar', '-m', 'both');
    const { code, out } = await neckring(['history', name, '--show', 'brix'], { folder });
    expect(code).toBe(0);
    expect(out).toContain('sucrose 95 g -> 90 g');
    expect(out).toContain('polysorbate 80 12 % -> 11 %');
  });
});
