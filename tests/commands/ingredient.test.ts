import { describe, expect, it } from 'vitest';
import { ingredients } from '../../src/reference/library.ts';
import { exampleLedger, neckring, scratchFolder } from './neckring.ts';

interface Shown {
  readonly name: string;
  readonly role: string;
  readonly own: boolean;
  readonly figures: readonly {
    readonly figure: string;
    readonly source: string;
    readonly fromMemory: boolean;
  }[];
}

const elsewhere = async () => ({ folder: await scratchFolder() });
async function found(words: readonly string[], folder?: string): Promise<readonly Shown[]> {
  const { out } = await neckring(['ingredient', ...words, '--json'], {
    folder: folder ?? (await scratchFolder()),
  });
  return JSON.parse(out).found.ingredients;
}

describe('ingredient', () => {
  it('shows one record whole, each figure with its source', async () => {
    const { code, out, err } = await neckring(['ingredient', 'polysorbate 80'], await elsewhere());
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^polysorbate 80\nrole +emulsifier\n/);
    expect(out).toMatch(/^hlb +15$/m);
    expect(out).toMatch(/^ - hlb: .*PMC3969497/m);
    const [shown] = await found(['polysorbate 80']);
    for (const figure of shown?.figures ?? []) expect(figure.source.length).toBeGreaterThan(10);
  });

  it('takes words without quotes, in any letters', async () => {
    const quoted = await neckring(['ingredient', 'polysorbate 80'], await elsewhere());
    expect((await neckring(['ingredient', 'Polysorbate', '80'], await elsewhere())).out).toBe(quoted.out);
  });

  it.each([
    ['cassis thiol', '4-methoxy-2-methyl-2-butanethiol'],
    ['5989-27-5', 'limonene'],
    ['E 433', 'polysorbate 80'],
    ['E433', 'polysorbate 80'],
  ])('finds by another name or number: %s', async (words, name) => {
    expect((await found([words])).map((one) => one.name)).toContain(name);
  });

  it('lists several with their roles', async () => {
    const { code, out } = await neckring(['ingredient', 'polysorbate'], await elsewhere());
    expect(code).toBe(0);
    expect(out).toMatch(/^name +role +also called\n/);
    expect(out.trimEnd().split('\n').length).toBe(1 + (await found(['polysorbate'])).length);
    for (const name of ['polysorbate 20', 'polysorbate 60', 'polysorbate 80'])
      expect(out).toMatch(new RegExp(`^${name} +emulsifier`, 'm'));
  });

  it.each([
    ['polysrbate 80', 'polysorbate 80'],
    ['citrc acid', 'citric acid'],
    ['swet ornge oil', 'sweet orange oil'],
  ])('for "%s" it names the nearest, and exits 1', async (words, nearest) => {
    const ran = await neckring(['ingredient', words], await elsewhere());
    expect(ran.code).toBe(1);
    expect(ran.out).toContain(`Nothing is known by "${words}". Did you mean `);
    expect(ran.out.replace(/\n/g, ' ')).toContain(nearest);
  });

  it('for a word that is like none it says how to see all', async () => {
    const ran = await neckring(['ingredient', 'qqqqqqqq'], await elsewhere());
    expect([ran.code, ran.out]).toEqual([
      1,
      'Nothing is known by "qqqqqqqq". neckring ingredient alone lists every name.\n',
    ]);
  });

  it('alone lists every name by its role', async () => {
    const { out, code } = await neckring(['ingredient'], await elsewhere());
    expect(code).toBe(0);
    const flat = out.replace(/\s+/g, ' ');
    for (const { name } of ingredients) expect(flat).toContain(name);
    expect((await found([])).length).toBe(ingredients.length);
    expect(ingredients.length).toBeGreaterThanOrEqual(90);
  });

  it('marks what is from memory, in text and in JSON', async () => {
    const { out } = await neckring(['ingredient', 'cassis thiol'], await elsewhere());
    const [shown] = await found(['cassis thiol']);
    const remembered = shown?.figures.filter((one) => one.fromMemory).map((one) => one.figure) ?? [];
    expect(remembered).toContain('density');
    const flat = out.replace(/\n {3}/g, ' ');
    for (const figure of remembered) expect(flat).toMatch(new RegExp(`^ - ${figure}: .*from memory`, 'm'));
    expect(flat).toMatch(/^ - molar mass: (?!.*from memory)/m);
  });

  it('says that HLB means nothing for a polymer', async () => {
    expect((await neckring(['ingredient', 'gum arabic'], await elsewhere())).out).toMatch(
      /^HLB +means nothing for a polymer$/m,
    );
  });
});

describe('ingredient in a ledger', () => {
  it('has the own entries among them, first', async () => {
    const folder = await exampleLedger();
    const names = (await found(['orange oil'], folder)).map((one) => [one.name, one.own]);
    expect(names[0]).toEqual(['orange oil lot 2231', true]);
    expect(names).toContainEqual(['sweet orange oil', false]);
  });

  it('shows what an own stock contains, and its lot and drop', async () => {
    const folder = await exampleLedger();
    const stock = await neckring(['ingredient', 'cassis stock'], { folder });
    expect(stock.out).toMatch(/ 4-methoxy-2-methyl-2-butanethiol +2 ppm/);
    expect(stock.out).toMatch(/ propylene glycol +100 %/);
    const lot = await neckring(['ingredient', 'orange oil lot 2231'], { folder });
    expect(lot.out).toMatch(/^lot +2231$/m);
    expect(lot.out).toMatch(/^density +0\.846 g\/mL/m);
    expect(lot.out).toContain('supplier sheet');
  });

  it('outside of it they are not known', async () => {
    expect((await neckring(['ingredient', 'orange oil lot 2231'], await elsewhere())).code).toBe(1);
  });
});

describe('brand words', () => {
  const branded = ingredients.flatMap((one) =>
    (one.searchWords ?? []).map((word) => ({ word, name: one.name })),
  );
  const holds = (text: string, word: string): boolean =>
    new RegExp(`(?<![a-z])${word.toLowerCase()}(?![a-z])`).test(text.toLowerCase());

  it.each(branded)('$word finds $name, and is not printed in text or JSON', async ({ word, name }) => {
    const text = await neckring(['ingredient', word], await elsewhere());
    expect(text.code).toBe(0);
    const json = JSON.parse((await neckring(['ingredient', word, '--json'], await elsewhere())).out);
    expect(json.found.ingredients.map((one: Shown) => one.name)).toContain(name);
    // A source keeps its own title.
    const withoutSources = text.out.replace(/^ - .*(\n {3}.*)*/gm, '');
    const figures = (key: string, value: unknown): unknown => (key === 'source' ? undefined : value);
    expect([holds(withoutSources, word), holds(JSON.stringify(json, figures), word)]).toEqual([false, false]);
  });

  it('are not in the list of all', async () => {
    expect(branded.length).toBeGreaterThan(5);
    const { out } = await neckring(['ingredient'], await elsewhere());
    const flat = out.replace(/\s+/g, ' ');
    expect(branded.filter(({ word }) => holds(flat, word))).toEqual([]);
  });

  it('as an item name the plain name first', async () => {
    const word = branded.find((one) => one.name === 'polysorbate 80')?.word ?? '';
    const line = ['hlb', '--target', '12', '--emulsifier', `2 g ${word}`];
    const ran = await neckring(line, await elsewhere());
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/did you mean polysorbate 80/);
  });
});
