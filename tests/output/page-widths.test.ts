import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/output/page.ts';
import type { Block } from '../../src/output/view.ts';
import { cellWidth } from '../../src/output/wrap.ts';

const plain = (_: string, text: string): string => text;
const at = async (block: Block, width: number): Promise<readonly string[]> =>
  (await layOut([block], { width, paint: plain })).trimEnd().split('\n');
const widest = (lines: readonly string[]): number => Math.max(...lines.map(cellWidth));

const table: Block = {
  kind: 'table',
  columns: [
    { head: 'item', align: 'left' },
    { head: 'weighed', align: 'point' },
    { head: 'trial', align: 'right' },
    { head: 'what was seen of it, and by whom', align: 'left' },
  ],
  rows: [
    ['sweet orange oil', '2.4 g', '9', 'clear, and a thread of oil at the wall above the water'],
    ['trisodium citrate dihydrate', '120.25 g', '14', ''],
    ['4-methoxy-2-methyl-2-butanethiol', '-', '120', 'ring'],
  ],
};

describe('a table', () => {
  it.each([40, 60, 80, 120, 200])('fits %i columns, and nothing in it is lost', async (width) => {
    const lines = await at(table, width);
    expect(widest(lines)).toBeLessThanOrEqual(width);
    const words = lines.join(' ').split(/\s+/);
    for (const row of table.rows.flat())
      for (const word of row.split(' ').filter((one) => one !== '' && one.length <= 24))
        expect(words).toContain(word);
  });

  it('uses more where there is more: from the width of its longest row on, a line a row', async () => {
    expect((await at(table, 200)).length).toBe(4);
    expect(await at(table, 200)).toEqual(await at(table, 120 + 10));
    expect((await at(table, 80)).length).toBeGreaterThan(4);
  });

  it.each([80, 120, 200])('has its decimal points under each other at %i columns', async (width) => {
    const points = (await at(table, width)).flatMap((line) => /\b(\d+)\.\d+ +g\b/u.exec(line) ?? []);
    expect(points.length).toBeGreaterThan(0);
    const places = (await at(table, width)).flatMap((line) => {
      const found = /\d\.\d+ +g\b/u.exec(line);
      return found ? [found.index] : [];
    });
    expect(new Set(places).size).toBe(1);
  });

  it('where its columns do not fit beside each other, each row stands by itself', async () => {
    const lines = await at(table, 40);
    expect(lines).toContain('  weighed  120.25 g');
    expect(lines).toContain('item trisodium citrate dihydrate');
  });
});

describe('labels and values', () => {
  const pairs: Block = {
    kind: 'pairs',
    pairs: [
      ['titratable acidity as citric acid', '4.5 g/L'],
      ['pH', '12.25'],
    ],
  };

  it.each([40, 60, 80])('fit %i columns, points under each other', async (width) => {
    const lines = await at(pairs, width);
    expect(widest(lines)).toBeLessThanOrEqual(width);
    const places = lines.flatMap((line) => (/\d\.\d/u.test(line) ? [line.indexOf('.')] : []));
    expect(new Set(places).size).toBe(1);
  });
});

describe('headings and text', () => {
  const words = 'a sentence that goes on for longer than a narrow terminal is wide, and then some';

  it.each([20, 40])('are broken at %i columns', async (width) => {
    expect(widest(await at({ kind: 'heading', text: words }, width))).toBeLessThanOrEqual(width);
    const indented = await at({ kind: 'text', text: `  ${words}` }, width);
    expect(widest(indented)).toBeLessThanOrEqual(width);
    expect(indented.every((line) => line.startsWith('  '))).toBe(true);
  });
});
