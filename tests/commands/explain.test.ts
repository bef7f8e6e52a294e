import { describe, expect, it } from 'vitest';
import { allCommands } from '../../src/commands/families.ts';
import { gitLedger } from './git-ledger.ts';
import { exampleLedger, neckring, record, rows } from './neckring.ts';

/** A line for every command that answers with a figure, on the example ledger. */
const lines: Readonly<Record<string, readonly string[]>> = {
  hlb: ['--oil', '2 g sweet orange oil', '--emulsifier', '4 g polysorbate 80'],
  'hlb-of': ['--saponification', '45.5', '--acid', '276'],
  emulsifier: ['--batch', '50 g', '--oil', '4%', '--ratio', '1:2'],
  dose: ['--oil', '60 mg/L', '--in', '6 L', '--emulsion', '4%'],
  acid: ['--acid', '40 g citric acid', '--drink', '8 L'],
  drops: ['--target', '0.5 ppb', '--in', '6 L', '--stock', '10 ppm', '--drop', '0.021 g'],
  ph: ['4.5 g/L citric acid', '0.6 g/L trisodium citrate dihydrate'],
  adjust: ['--acidity', '4.5 g/L', '--ph', '3'],
  titrate: ['--trial', '17', '--base', '0.1 mol/L', '--used', '13.1 mL', '--sample', '20 mL'],
  brix: ['--brix', '10'],
  'water-activity': ['65 % sucrose', '35 % water'],
  carbonation: ['--temperature', '4 C', '--pressure', '2 bar'],
  clarity: ['60 mg/L sweet orange oil', '--droplet', '40 nm'],
  ring: ['60 mg/L sweet orange oil', '--droplet', '200 nm'],
  coat: ['4 % sweet orange oil', '--batch', '50 g', '--droplet', '100 nm'],
  lasts: ['ethyl butyrate', '--ph', '3', '--temperature', '20 C'],
  intake: ['180 mg/L polysorbate 80', '--servings', '2', '--body', '60 kg'],
  reckon: ['17', '--dry-run'],
  drink: ['17'],
  weigh: ['14', 'water', '35.7 g', '--dry-run', '--again'],
  overpoured: ['14', 'polysorbate 80', '7 g'],
  due: ['--all'],
  why: ['15'],
  uses: ['sweet orange oil'],
  ladder: ['14', '--rungs', '1:4, 1:3'],
  next: ['orange ladder'],
  decide: ['orange ladder', 'one to three', '--ratio', '1:3', '--again', '--dry-run'],
  series: ['orange ladder'],
  dilute: ['--of', 'cassis thiol', '--to', '0.5 ppb', '--in', '20 kg'],
  stocks: [],
  dropper: ['--weighings', '0.612 g / 20', '--weighings', '0.604 g / 20'],
  batch: ['record', '17', '--to', '20 L', '--dry-run'],
  correct: ['17', '--brix', '9.6', '--acid', '4.9'],
  scale: ['17', '--to', '20 L'],
  cost: ['17'],
  swap: ['17', '--out', 'citric acid', '--in', 'citric acid monohydrate'],
  triangle: ['--right', '9', '--of', '15'],
  pair: ['--more', 'soapy', '--right', '11', '--of', '14'],
  compare: ['14', '17'],
  history: ['17', '--show', 'ph'],
};

const oneLine = (text: string): string => text.replace(/\s+/gu, ' ');
const folderFor = async (command: string): Promise<string> =>
  command === 'history' ? (await gitLedger()).folder : await exampleLedger();

describe('--explain', () => {
  it('law: every command with the option is asked here', async () => {
    const names = (await allCommands())
      .filter(({ options }) => options.some(({ name }) => name === 'explain'))
      .map(({ name }) => name);
    expect(names.sort()).toEqual(Object.keys(lines).sort());
  });

  it.each(Object.entries(lines))(
    '%s: equations with their numbers, each source with its range, in text as in JSON',
    async (command, words) => {
      const folder = await folderFor(command);
      const run = async (...more: readonly string[]) => neckring([command, ...words, ...more], { folder });
      const { out } = await run('--explain');
      const json = record(JSON.parse((await run('--explain', '--json')).out));
      const text = oneLine(out);
      const working = rows(json['working']);
      expect(working.length).toBeGreaterThan(0);
      expect(working.some(({ numbers }) => /\d/u.test(String(numbers)))).toBe(true);
      for (const { equation, numbers } of working) {
        expect(text).toContain(oneLine(String(equation)));
        expect(text).toContain(oneLine(String(numbers)));
      }
      const sources = rows(json['sources']);
      expect(sources.length).toBeGreaterThan(0);
      for (const one of sources) {
        const memory = one['fromMemory'] ? ' (from memory)' : '';
        const range = String(one['range']);
        const shown = range === 'not stated by the source' ? `range ${range}` : `range: ${range}`;
        expect(String(one['for']).length).toBeGreaterThan(2);
        expect(text).toContain(oneLine(String(one['for'])));
        expect(text).toContain(oneLine(`${String(one['source'])}${memory} ${shown}`));
        expect(String(one['source'])).not.toMatch(/#|^[a-z0-9]+(-[a-z0-9]+)+$/u);
      }
      expect(out.split('\n').filter((line) => line.length > 80 && /^ - |^ {3}\S/u.test(line))).toEqual([]);
    },
  );

  it.each(Object.entries(lines))('%s: nothing of it without the option', async (command, words) => {
    const { out } = await neckring([command, ...words], { folder: await folderFor(command) });
    expect(out).not.toMatch(/^Working$|^Sources$|^ {3}range/mu);
  });

  it.each(['brix', 'drink', 'series', 'why', 'cost'])('%s: as JSON too', async (command) => {
    const { out } = await neckring([command, ...(lines[command] ?? []), '--json'], {
      folder: await exampleLedger(),
    });
    const json = record(JSON.parse(out));
    expect(json).not.toHaveProperty('working');
    for (const one of rows(json['sources']))
      expect(Object.keys(one)).toEqual(['for', 'source', 'fromMemory']);
  });
});
