import { beforeEach, describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';

const prices = `  polysorbate 80:
    price: 14 EUR/kg
  propylene glycol:
    price: 9.5 EUR/L
  sucrose:
    price: 1.1 EUR/kg
`;

let folder = '';
const run = (...words: string[]) => neckring(words, { folder });
const json = (...words: string[]) => found(words, { folder });

beforeEach(async () => {
  folder = await exampleLedger();
  const book = await readIn(folder, 'ingredients.yaml');
  await writeIn(folder, 'ingredients.yaml', book.replace(/ {2}polysorbate 80:.*/s, prices));
});

describe('cost', () => {
  it('law: arithmetic: a batch, a litre and a bottle from the prices, loss counted', async () => {
    const answer = await json('cost', 'orange cardamom', '--to', '500 x 330 mL');
    const [total] = rows(record(answer['cost'])['totals']);
    expect(total?.['currency']).toBe('EUR');
    expect(leafValue(total?.['batch'])).toBeCloseTo(leafValue(total?.['perLitre']) * 165, 8);
    expect(leafValue(total?.['batch'])).toBeCloseTo(leafValue(total?.['perBottle']) * 500, 8);
    const lossy = await json('cost', 'orange cardamom', '--to', '500 x 330 mL', '--loss', '50 %');
    const [more] = rows(record(lossy['cost'])['totals']);
    expect(leafValue(more?.['batch'])).toBeGreaterThan(3.9 * leafValue(total?.['batch']));
  });

  it('law: as written, only what goes into the drink counts: 95 g of sucrose, 1.5 g of emulsion', async () => {
    const answer = await json('cost', 'orange cardamom');
    const lines = rows(record(answer['cost'])['lines']);
    const gramsOf = (name: string) =>
      leafValue(lines.find(({ ingredient }) => ingredient === name)?.['mass']);
    expect(gramsOf('sucrose')).toBeCloseTo(95, 6);
    expect(gramsOf('polysorbate 80')).toBeCloseTo(1.5 * 0.12, 6);
    expect((await run('cost', 'orange cardamom')).out).toContain('the cost of 1 L of drink, as written');
  });

  it('lists what has no price, with the mend', async () => {
    const { code, out, err } = await run('cost', 'orange cardamom');
    expect([code, out]).toEqual([0, expect.stringContaining('not counted, having no price')]);
    expect(err).toContain(
      'citric acid is not in the cost: it has no price; add price: 42 EUR/kg to citric acid',
    );
  });

  it('is no answer where nothing has a price', async () => {
    const book = await readIn(folder, 'ingredients.yaml');
    await writeIn(folder, 'ingredients.yaml', book.replace(/^ +price: .*\n/gm, ''));
    const { code, err } = await run('cost', 'orange cardamom');
    expect([code, err]).toEqual([2, expect.stringContaining('add price: 42 EUR/kg to sucrose')]);
  });
});
