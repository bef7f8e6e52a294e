import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, writeIn } from './neckring.ts';
import { ledgerOf, lisbonBench } from './small-ledger.ts';

const privateTrial = `# a comment about the boss
trial: 3
title: orange of lot 2231, for the fair
made: 2026-03-02T10:15
by: Kaneli
why: holds orange oil lot 2231 for a week?
from: 2
series: secret ladder
stages:
  emulsion:
    made: 2026-03-02T11:00
    by: Kaneli
    process:
      - do: warm
        what: orange oil lot 2231 and water
        to: 60 C
        by: Kaneli
    items:
      - orange oil lot 2231: 2 g   # the expensive one
        weighed: 2.03 g
        lot: 2231
        note: last of the bottle
      - own soap: 6 g
      - water: to 50 g
samples:
  beaker:
    of: emulsion
    note: on the left
observations:
  - at: 2026-03-03T09:10
    look: clear
    photo: photos/a.jpg
    by: Kaneli
concluded: held
`;

const privateShelf = `ingredients:
  orange oil lot 2231:
    like: sweet orange oil
    density: 0.846 g/mL
    lot: 2231
    opened: 2026-02-11
    price: 42 EUR/kg
    left: 120 g
    source: Hidden Supplier
    note: under the sink
    aliases:
      - the good one
  own soap:
    role: emulsifier
    hlb: 15
    price: 19 EUR/kg
  never used:
    like: cardamom oil
`;

const privateLedger = (): Promise<string> =>
  ledgerOf({
    'bench.yaml': lisbonBench,
    'ingredients.yaml': privateShelf,
    'trials/3.yaml': privateTrial,
    'trials/2.yaml': 'trial: 2\nstages:\n  emulsion:\n    - water: 2 g\n',
    'series/s.yaml': 'series: secret ladder\n',
  });

const given = async (folder: string, ...words: readonly string[]): Promise<string> =>
  (await neckring(['give', ...words], { folder })).out;

describe('give: what stays at home', () => {
  it.each(['yaml', 'markdown'])(
    'as %s: lots, prices, names, sources, notes of the shelf, comments',
    async (form) => {
      const text = await given(await privateLedger(), '3', '--as', form);
      expect(text).toContain('orange oil (own lot)');
      for (const word of [
        'Kaneli',
        'EUR',
        'Hidden Supplier',
        'under the sink',
        'last of the bottle',
        'on the left',
        '120 g',
        '2026-02-11',
        '2026-03',
        'photos',
        'boss',
        'expensive',
        'secret ladder',
        'never used',
        'the good one',
        'orange oil lot 2231',
      ])
        expect(text.includes(word), word).toBe(false);
    },
  );

  it('warns where a text that goes along still names what was left out', async () => {
    const { err } = await neckring(['give', '3', '--as', 'yaml'], { folder: await privateLedger() });
    expect(err).toContain('the lot "2231" was left out, and is named in a text that goes along');
    expect(err).toContain('left out: lots, prices, names, sources, notes, looks; --with gives them along\n');
  });

  it.each([
    ['lots', ['lot: 2231', 'opened: 2026-02-11', 'orange oil lot 2231']],
    ['prices', ['price: 42 EUR/kg']],
    ['names', ['by: Kaneli']],
    ['sources', ['source: Hidden Supplier']],
    ['notes', ['note: last of the bottle', 'left: 120 g', 'note: under the sink']],
    ['looks', ['look: clear', 'made: 2026-03-02T10:15+00:00', 'at: 2026-03-03T09:10+00:00']],
  ])('--with %s gives them along, and nothing else', async (word, texts) => {
    const folder = await privateLedger();
    const text = await given(folder, '3', '--as', 'yaml', '--with', word);
    for (const one of texts) expect(text).toContain(one);
    const others = ['EUR', 'Kaneli', 'Hidden Supplier', 'under the sink', 'look: clear'].filter(
      (one) => !texts.some((kept) => kept.includes(one)),
    );
    for (const one of others) expect(text.includes(one), one).toBe(false);
    expect(text).not.toContain('photo');
  });

  it('several words with commas, all, and a word that is none', async () => {
    const folder = await privateLedger();
    expect(await given(folder, '3', '--as', 'yaml', '--with', 'prices, names')).toMatch(/EUR[\s\S]*Kaneli/u);
    expect((await neckring(['give', '3', '--with', 'all'], { folder })).err).not.toContain('left out:');
    const wrong = await neckring(['give', '3', '--with', 'pricse'], { folder });
    expect([wrong.code, wrong.err]).toEqual([
      2,
      '--with: "pricse" is not understood; did you mean prices?\n',
    ]);
  });
});

describe('give: what goes along', () => {
  it('the stage of another trial that is used, and no more of that trial', async () => {
    const folder = await exampleLedger();
    const text = await given(folder, '17', '--as', 'yaml');
    expect(text).toContain('  - trial: 13\n');
    expect(text).toContain('emulsion of 13: 1.5 g');
    expect(text).not.toContain('reads small print');
    expect(text).not.toContain('polysorbate 80: {}');
  });

  it('drops of the dropper of this bench are given as grams, those of a stock as typed', async () => {
    const folder = await ledgerOf({
      'bench.yaml': `${lisbonBench}  drop: 0.030 g\n`,
      'ingredients.yaml':
        'ingredients:\n  stock:\n    contains:\n      cassis thiol: 2 ppm\n      propylene glycol: rest\n    drop: 0.021 g\n',
      'formulas/f.yaml':
        'formula: f\nstages:\n  drink:\n    - stock: 12 drops\n    - cardamom oil: 4 drops\n    - water: to 1 L\n',
    });
    const text = await given(folder, 'f', '--as', 'yaml');
    expect(text).toContain('- stock: 12 drops\n');
    // 4 drops of 0.030 g: arithmetic.
    expect(text).toContain('- cardamom oil: 0.12 g\n');
  });
});

describe('give: the card', () => {
  it('amounts as typed and in grams, process, aims, cautions, sources', async () => {
    const text = await given(await exampleLedger(), 'orange cardamom');
    for (const line of [
      '# Orange cardamom',
      '## Take care',
      '| orange oil (own lot) | 3.6 % | 1.800 g | 3.6 % |',
      '| water | to 50 g | 36.00 g | 72 % |',
      '| acid | 4.3 to 4.7 g/L |',
      '## In the finished drink, as dosed',
      '## Sources',
      'Figures here are for your own judgement: local food law and a qualified person decide.',
    ])
      expect(text).toContain(line);
  });

  it('--batch gives the masses for so much, and no more of an emulsion than goes in', async () => {
    const text = await given(await exampleLedger(), '17', '--batch', '10 L');
    // Ten times what is typed for 1 L: 45 g of citric acid, 15 g of the emulsion. Arithmetic.
    expect(text).toContain('| citric acid | 4.5 g/L in drink | 45.00 g |');
    expect(text).toMatch(/## 1\. emulsion of 13\n\n15\.00 g/u);
    // 2.01 g weighed in 50 g, 15 g of that. Arithmetic: 0.6030 g.
    expect(text).toContain('2 g, weighed 2.01 g | 0.6030 g |');
    expect(text).toContain('1. warm oil and emulsifier to 60 C, stir 400 rpm\n');
  });

  it.each([
    [['--batch', '0 L'], 'is nothing'],
    [['--batch', '10'], 'has no unit'],
    [['--batch', '10 L', '--as', 'yaml'], '--batch goes with a card'],
    [['--as', 'html'], 'say markdown or yaml'],
    [['--as', 'markdown', '--to', 'a.yaml'], 'a card in Markdown is no .yaml'],
    [['--to', 'formulas/x.yaml'], 'would be taken for a file of the ledger'],
    [['--to', 'ingredients.yaml'], 'would be taken for a file of the ledger'],
    [['--to', 'none/card.md'], 'there is no folder'],
  ])('refuses %j', async (words, message) => {
    const { code, err } = await neckring(['give', 'orange cardamom', ...words], {
      folder: await exampleLedger(),
    });
    expect(code).toBe(2);
    expect(err).toContain(message);
  });

  it('writes a file of its own again, and none of others without --replace', async () => {
    const folder = await exampleLedger();
    await writeIn(folder, 'mine.md', '# my own words\n');
    const card = (to: string, ...more: readonly string[]) =>
      neckring(['give', '17', '--to', to, ...more], { folder });
    expect((await card('mine.md')).code).toBe(2);
    expect(await readIn(folder, 'mine.md')).toBe('# my own words\n');
    expect((await card('mine.md', '--replace')).code).toBe(0);
    expect((await card('mine.md')).code).toBe(0);
    expect((await card('gift.yaml')).code).toBe(0);
    expect((await card('gift.yaml')).code).toBe(0);
    expect(await readIn(folder, 'gift.yaml')).toContain('given: 1\n');
    expect((await neckring(['check'], { folder })).err).not.toContain('gift');
  });

  it('JSON says what goes along and what does not', async () => {
    const { out } = await neckring(['give', '17', '--json'], { folder: await exampleLedger() });
    expect(JSON.parse(out).found).toMatchObject({
      what: 'trial 17',
      trials: [13],
      ingredients: ['orange oil (own lot)', 'cassis stock'],
      leftOut: ['lots', 'prices', 'names', 'sources', 'notes', 'looks'],
    });
  });

  it('texts that would be Markdown or drive a terminal stay texts', async () => {
    const folder = await ledgerOf({
      'formulas/f.yaml':
        'formula: "<b>*x*</b>"\nnote: "\\e[31mred | pipe"\nstages:\n  "a|b":\n    - water: 2 g\n    - ethanol: 3 g\n',
    });
    const text = await given(folder, '<b>*x*</b>');
    expect(text).toContain('# \\<b\\>\\*x\\*\\</b\\>');
    expect(text).toContain('## 1. a\\|b');
    expect(text).not.toContain('\u001b');
  });
});
