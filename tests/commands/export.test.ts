import { describe, expect, it } from 'vitest';
import { readCsv } from '../../src/ledger/csv/csv-read.ts';
import { exampleLedger, neckring, readIn, record, rows, writeIn } from './neckring.ts';
import { ledgerOf, plainTrial, trialLedger } from './small-ledger.ts';

async function table(
  folder: string,
  ...words: readonly string[]
): Promise<readonly Readonly<Record<string, string>>[]> {
  const { code, out } = await neckring(['export', ...words], { folder });
  expect(code).toBe(0);
  expect(out).toMatch(/\r\n$/u);
  const { head, rows: lines } = readCsv('out.csv', out, ',');
  return lines.map((cells) => Object.fromEntries(head.map(({ text }, at) => [text, cells[at]?.text ?? ''])));
}

describe('export observations', () => {
  it('a line each, with its age in days, units in the heads', async () => {
    const lines = await table(await exampleLedger(), 'observations', '14');
    expect(lines).toHaveLength(4);
    // Made 2026-03-02 11:55, seen 2026-03-09 09:14: 6 d 21 h 19 min = 6.8882 d. Arithmetic.
    expect(lines[3]).toMatchObject({
      kind: 'trial',
      'number or name': '14',
      sample: 'beaker',
      stage: 'emulsion',
      at: '2026-03-09T09:14+00:00',
      'age (d)': '6.8882',
      look: 'bluish',
      note: 'only against the black card',
    });
  });

  it('figures in the unit of their column, whatever they were typed in', async () => {
    const folder = await trialLedger(
      `${plainTrial}observations:\n  - at: 2026-03-03T09:10+00:00\n    temperature: 68 F\n    droplet: 0.12 um\n    acid: 0.45 %\n    ph: 3.05\n    mass: 0.05 kg\n    head: 1.2 cm\n    head life: 2 min\n    taste:\n      soapy: 2\n    note: "=1+1"\n`,
    );
    // 68 F = 20 C, 0.12 um = 120 nm, 0.05 kg = 50 g, 1.2 cm = 12 mm, 2 min = 120 s: by definition of the units.
    expect((await table(folder, 'observations'))[0]).toMatchObject({
      'temperature (C)': '20',
      'droplet (nm)': '120',
      'acid (g/L)': '',
      'acid (%)': '0.45',
      pH: '3.05',
      'mass (g)': '50',
      'head (mm)': '12',
      'head life (s)': '120',
      'taste soapy': '2',
      note: "'=1+1",
    });
  });

  it('of a series, and by several names', async () => {
    const folder = await exampleLedger();
    expect(await table(folder, 'observations', 'orange ladder')).toHaveLength(23);
    expect(await table(folder, 'observations', '13', '17')).toHaveLength(7);
  });

  it('as JSON: numbers are leaves', async () => {
    const { out } = await neckring(['export', 'observations', '14', '--json'], {
      folder: await exampleLedger(),
    });
    const found = record(record(JSON.parse(out))['found']);
    expect(rows(found['observations'])[3]).toMatchObject({
      of: 14,
      age: { value: 6.8882, unit: 'd' },
      look: 'bluish',
    });
  });
});

describe('export results and compositions', () => {
  it('a figure a line, its unit beside it', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '13'], { folder });
    const lines = await table(folder, 'results', '13');
    // Polysorbate 80 is the only emulsifier; its HLB of 15.0 is the figure of the reference.
    expect(lines.find(({ figure }) => figure === 'blended HLB')).toMatchObject({
      calculator: 'hlb',
      value: '15',
    });
  });

  it('the grams of each substance of a stage add up to the stage', async () => {
    const lines = await table(await exampleLedger(), 'compositions', 'orange cardamom');
    const grams = lines.filter(({ stage }) => stage === 'emulsion').map((line) => Number(line['mass (g)']));
    expect(grams.reduce((sum, one) => sum + one, 0)).toBeCloseTo(50, 9);
  });

  it('what can not be worked out is told, and the rest comes', async () => {
    const folder = await ledgerOf({
      'trials/1.yaml': plainTrial,
      'trials/2.yaml': 'trial: 2\nstages:\n  emulsion:\n    - no such oil: 2 g\n',
    });
    const { code, err } = await neckring(['export', 'compositions'], { folder });
    expect(code).toBe(0);
    expect(err).toContain('trials/2.yaml:4:7: warning: "no such oil" is not a known ingredient');
    expect(await table(folder, 'compositions')).toHaveLength(3);
  });
});

describe('export: where it goes', () => {
  it('into a file, another separator, a mark; never over a file that is there', async () => {
    const folder = await exampleLedger();
    const words = ['export', 'observations', '14', '--to', 'out.csv', '--separator', 'semicolon', '--bom'];
    expect(await neckring(words, { folder })).toEqual({ code: 0, out: '', err: 'wrote out.csv\n' });
    expect(await readIn(folder, 'out.csv')).toMatch(/^\ufeffkind;number or name;title;/u);
    await writeIn(folder, 'out.csv', 'mine');
    expect((await neckring(words, { folder })).code).toBe(2);
    expect(await readIn(folder, 'out.csv')).toBe('mine');
    expect((await neckring([...words, '--replace'], { folder })).code).toBe(0);
  });

  it.each([
    [['observation'], 'did you mean observations?'],
    [['observations', 'orange laddr'], 'there is nothing to export named "orange laddr"'],
    [['observations', '--separator', 'pipe'], 'say comma, semicolon, tab'],
  ])('refuses %j', async (words, message) => {
    const { code, err } = await neckring(['export', ...words], { folder: await exampleLedger() });
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});
