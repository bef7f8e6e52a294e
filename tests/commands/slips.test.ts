/** "Is this meant?" on real files. Bands: published where named, the others common practice, no source. */

import { describe, expect, it } from 'vitest';
import { found, neckring, record, rows } from './neckring.ts';
import { cautionsOf, drinkStages, emulsionStages, lineOf, slipLedger, warningsOf } from './slip-ledger.ts';

const drink = (changed?: Readonly<Record<string, string>>): string =>
  `trial: 2\nmade: 2026-03-10T10:00+00:00\n${drinkStages(changed)}`;

describe('a figure of the finished drink far outside its usual band', () => {
  it('pinned: an ordinary drink is not asked about', async () => {
    const folder = await slipLedger({ 'trials/0002.yaml': drink() });
    expect(await warningsOf(folder)).toEqual([]);
  });

  // 60 mg/L of oil comes of 1.5 g of a 4 % emulsion in a litre. Three times beyond the band is where it is asked.
  it.each([
    // common practice (from memory): 10 to 200 mg/L of flavour oil; 16 g make 640 mg/L, 0.08 g make 3.2 mg/L
    ['slip-flavour-oil', 'emulsion of 1', '16 g', '640 mg/L'],
    ['slip-flavour-oil', 'emulsion of 1', '0.08 g', '3.2 mg/L'],
    // common practice: 0.2 to 0.5 % w/v of acid, up to 0.7 %
    ['slip-acid', 'citric acid', '45 g/L', '45 g/L'],
    ['slip-acid', 'citric acid', '0.2 g/L', '0.2 g/L'],
    // common practice, no source: none or 20 to 140 g/L
    ['slip-sugar', 'sucrose', '450 g', '450 g/L'],
    ['slip-sugar', 'sucrose', '4 g', '4 g/L'],
    // from memory: EU, 1 g/L from all sources
    ['slip-propylene-glycol', 'propylene glycol', '4 g', '4.18 g/L'],
    // published: 21 CFR 173.340, 10 mg/kg of silicone; the emulsion counts as a tenth of it
    ['slip-antifoam', 'antifoam emulsion', '0.5 g', '48'],
    // published: 21 CFR 172.575, 83 mg/kg as quinine; 0.4 g of the hydrochloride hold 0.327 g of it
    ['slip-quinine', 'quinine hydrochloride', '0.4 g', '31'],
    // common practice, no source: under 320 mg/kg
    ['slip-caffeine', 'caffeine', '1.1 g', '1063 mg/kg'],
    // from memory: used at 0.01 to 1 ppb; ten times that is the band, thrice beyond it is asked about
    ['slip-potent-aroma', 'cassis stock', '20 g', '38.'],
  ])('common practice: %s at %s: %s', async (code, item, amount, shown) => {
    const text = drink({ [item]: amount });
    const folder = await slipLedger({ 'trials/0002.yaml': text });
    const warning = (await warningsOf(folder)).find((one) => one.code === code);
    expect(warning?.file).toBe('trials/0002.yaml');
    expect(warning?.message).toContain(shown);
    expect(warning?.message).toMatch(/is usual: is this meant\?$/);
    expect(lineOf(text, warning?.line ?? 0)).toBe(`- ${item}: ${amount}`);
    const told = (await cautionsOf(['reckon', '2', '--dry-run', '--yes'], folder)).filter(
      (one) => one.code === code,
    );
    const answers = await found(['reckon', '2', '--dry-run', '--yes'], { folder });
    const inAnswers = JSON.stringify(answers).split(`"${code}"`).length - 1;
    expect(told.length === 1 || inAnswers === 1).toBe(true);
    expect(JSON.stringify(answers)).not.toMatch(/\b(?:safe|legal|approved|compliant)\b/i);
  });

  it('common practice: a carbonation of 37 volumes that is aimed at is asked about', async () => {
    const folder = await slipLedger({
      'formulas/orange.yaml': `formula: orange\nstages:\n  drink:\n    - sucrose: 90 g\n    - water: to 1 L\naim:\n  co2: 37 vol\n`,
    });
    const [warning] = await warningsOf(folder);
    expect(warning).toMatchObject({ code: 'slip-co2', file: 'formulas/orange.yaml', line: 7 });
  });

  it('common practice: emulsifier per oil outside 0.5 to 10, where they meet', async () => {
    const much = `trial: 2\n${emulsionStages.replace('2 g', '0.4 g')}`;
    const little = `trial: 3\n${emulsionStages.replace('2 g', '20 g')}`;
    const folder = await slipLedger({ 'trials/0002.yaml': much, 'trials/0003.yaml': little });
    const warnings = await warningsOf(folder);
    expect(warnings.map(({ code, file, line }) => [code, file, line])).toEqual([
      ['slip-emulsifier-per-oil', 'trials/0002.yaml', 4],
      ['slip-emulsifier-per-oil', 'trials/0003.yaml', 4],
    ]);
    expect(warnings[0]?.message).toContain('1 part oil to 15 parts emulsifier');
    expect(await cautionsOf(['reckon', '3', '--dry-run'], folder)).toContainEqual({
      code: 'slip-emulsifier-per-oil',
      text: '1 part oil to 0.3 parts emulsifier, where 0.5 to 10 is usual: is this meant?',
      source: 'common practice, no source',
    });
  });

  it('common practice: shares are read alike, and 10 and 0.5 themselves are usual', async () => {
    const shares = emulsionStages
      .replace('lot 2231: 2 g', 'lot 2231: 0.6 %')
      .replace('polysorbate 80: 6 g', 'polysorbate 80: 6 %');
    const folder = await slipLedger({
      'trials/0002.yaml': `trial: 2\n${shares}`,
      'trials/0003.yaml': `trial: 3\n${shares.replace('0.6 %', '12 %')}`,
      'trials/0004.yaml': `trial: 4\n${shares.replace('0.6 %', '13 %')}`,
    });
    expect((await warningsOf(folder)).map(({ file }) => file)).toEqual(['trials/0004.yaml']);
  });
});

describe('an amount that is ten, a hundred or a thousand times what it was', () => {
  const from = (text: string): string => `trial: 2\nfrom: 1\n${text}`;

  it.each([
    ['2231: 2 g', '2231: 20 g', '10 times more'],
    ['2231: 2 g', '2231: 0.2 g', '10 times less'],
    ['2231: 2 g', '2231: 2 kg', '1000 times more'],
    ['80: 6 g', '80: 6.3 mg', '1000 times less'],
    ['to 50 g', 'to 5 kg', '100 times more'],
    ['2231: 2 g', '2231: 19 g', '10 times more'],
    ['2231: 2 g', '2231: 18 g', undefined],
  ])('common practice: %j, then %j', async (was, now, words) => {
    const folder = await slipLedger({ 'trials/0002.yaml': from(emulsionStages.replace(was, now)) });
    const { out } = await neckring(['check', '--json'], { folder });
    const parsed: unknown = JSON.parse(out);
    const slips = rows(record(parsed)['problems']).filter((one) => one['code'] === 'slip-factor');
    expect(slips.map(({ message }) => /\d+ times (?:more|less)/.exec(String(message))?.[0])).toEqual(
      words === undefined ? [] : [words],
    );
  });

  it('pinned: a batch of which everything grew alike is a bigger batch, not a slip', async () => {
    const tenfold = emulsionStages
      .replace('2 g', '20 g')
      .replaceAll('6 g', '60 g')
      .replace('to 50 g', 'to 500 g');
    const folder = await slipLedger({ 'trials/0002.yaml': from(tenfold) });
    expect(await warningsOf(folder)).toEqual([]);
  });

  it('common practice: another lot of the same oil and another unit are seen through', async () => {
    const folder = await slipLedger({
      'trials/0002.yaml': from(emulsionStages.replace('orange oil lot 2231: 2 g', 'sweet orange oil: 20 g')),
      'trials/0003.yaml': from(
        emulsionStages.replace('polysorbate 80: 6 g', 'polysorbate 80: 1.2 %'),
      ).replace('trial: 2', 'trial: 3'),
    });
    const slips = (await warningsOf(folder)).filter(({ code }) => code === 'slip-factor');
    expect(slips.map(({ file, line }) => [file, line])).toEqual([
      ['trials/0002.yaml', 5],
      ['trials/0003.yaml', 6],
    ]);
  });

  it('common practice: a weighing ten times its plan', async () => {
    const text = `trial: 2\n${emulsionStages.replace('2 g\n', '2 g\n      weighed: 20.3 g\n')}`;
    const folder = await slipLedger({ 'trials/0002.yaml': text });
    expect((await warningsOf(folder)).map(({ code }) => code)).toContain('slip-weighed');
  });
});

describe('quick commands', () => {
  it('common practice: dose asks about oil, emulsifier and carrier', async () => {
    const usual = ['dose', '--oil', '60 mg/L', '--emulsion', '4%', '--ratio', '1:3', '--in', '6 L'];
    expect(await cautionsOf(usual)).toEqual([]);
    const odd = [
      'dose',
      '--oil',
      '60 g/L',
      '--emulsion',
      '4%',
      '--ratio',
      '1:12',
      '--carrier',
      '20%',
      '--in',
      '6 L',
    ];
    expect((await cautionsOf(odd)).map(({ code }) => code)).toEqual([
      'slip-flavour-oil',
      'slip-emulsifier-per-oil',
      'slip-propylene-glycol',
    ]);
  });

  it.each([
    ['0.5 ppb', []],
    ['1 ppm', []],
    ['5 ppm', ['slip-target']],
    ['0.5 ppt', ['slip-target']],
  ])('common practice: drops for a target of %s', async (target, codes) => {
    const words = ['drops', '--target', target, '--in', '6 kg', '--stock', '10 ppm', '--drop', '0.021 g'];
    expect((await cautionsOf(words)).map(({ code }) => code)).toEqual(codes);
  });
});
