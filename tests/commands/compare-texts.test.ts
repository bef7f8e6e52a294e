import { cp, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { comparisonText, notebookText } from '../../src/commands/compare-texts.ts';
import type { Io } from '../../src/io.ts';
import { ledgerFolder } from './git-ledger.ts';
import { scratchFolder } from './neckring.ts';

const io = (folder: string): Io => ({
  out: () => {},
  err: () => {},
  outIsTerminal: false,
  errIsTerminal: false,
  canAsk: false,
  ask: async () => undefined,
  columns: 80,
  environment: {},
  workingFolder: folder,
  now: () => Date.parse('2026-03-12T12:00:00Z'),
  random: () => 0.5,
});

async function ledger(): Promise<{ readonly io: Io; readonly read: (file: string) => Promise<string> }> {
  const folder = await scratchFolder();
  await cp(ledgerFolder, folder, { recursive: true });
  return { io: io(folder), read: (file) => readFile(join(folder, file), 'utf8') };
}

describe('comparisonText', () => {
  it('tells two texts of a formula as compare does, without git', async () => {
    const { io: port, read } = await ledger();
    const before = await read('formulas/orange-cardamom.yaml');
    const after = before.replace('polysorbate 80: 12 %', 'polysorbate 80: 10 %');
    const text = await comparisonText(port, { file: 'formulas/orange-cardamom.yaml', before, after });
    expect(text).toMatch(/~ {2}polysorbate 80 +12 % +10 % +0\.180 -> 0\.150 g\/L +-17 %\n/);
  });

  it('tells other files fact by fact, and a number typed otherwise as none', async () => {
    const { io: port, read } = await ledger();
    const before = await read('ingredients.yaml');
    const told = (after: string): Promise<string> =>
      comparisonText(port, { file: 'ingredients.yaml', before, after });
    expect(await told(before.replace('42 EUR/kg', '45 EUR/kg'))).toContain(
      '- ingredients, orange oil lot 2231, price: 42 EUR/kg -> 45 EUR/kg\n',
    );
    expect(await told(before.replace('drop: 0.021 g', 'drop: 21 mg'))).toContain(
      'No change in what it says.',
    );
  });

  it('tells a file that is new in whole, and of one that is no YAML what is wrong', async () => {
    const { io: port, read } = await ledger();
    const text = await read('trials/0013-orange-1-to-3.yaml');
    const fresh = await comparisonText(port, { file: 'trials/0013.yaml', before: undefined, after: text });
    expect(fresh).toContain('trials/0013.yaml (new)\n');
    expect(fresh).toContain('polysorbate 80: 6 g');
    const broken = await comparisonText(port, {
      file: 'trials/0013.yaml',
      before: text,
      after: `<<<<<<< ours\n${text}`,
    });
    expect(broken).toContain('conflict');
  });
});

describe('notebookText', () => {
  it('tells a fact a line with what it comes to, whatever the file is called', async () => {
    const { io: port, read } = await ledger();
    const text = await read('formulas/orange-cardamom.yaml');
    const before = (await notebookText(port, { file: 'a1b2c3_x', text })).split('\n');
    expect(before[0]).toBe('formula "orange cardamom"');
    expect(before).toContain('  polysorbate 80: 12 %, 6.00 g, 0.180 g/L in the drink');
    const after = (
      await notebookText(port, {
        file: 'x',
        text: text.replace('polysorbate 80: 12 %', 'polysorbate 80: 10 %'),
      })
    ).split('\n');
    const changed = after.filter((line) => !before.includes(line));
    expect(changed).toEqual([
      '  polysorbate 80: 10 %, 5.00 g, 0.150 g/L in the drink',
      expect.stringMatching(/^ {2}water: to 50 g, 37\.0 g, 1\.11 g\/L in the drink$/),
      '  oil to a part of emulsifier: 0.4000',
      '  emulsifier to a part of oil: 2.500',
      '  emulsifier in the drink: 150 mg/L',
    ]);
  });

  it('keeps the remarks of the file, and leaves a text that it cannot read as it is', async () => {
    const { io: port, read } = await ledger();
    const text = await read('formulas/orange-cardamom.yaml');
    const remarked = text.replace('aim:', '# try less sugar\naim: # of the house');
    const lines = (await notebookText(port, { file: 'x', text: remarked })).split('\n');
    expect(lines).toContain('  # try less sugar');
    expect(lines).toContain('  # of the house');
    expect(await notebookText(port, { file: 'x', text: 'a: [1\n' })).toBe('a: [1\n');
  });
});
