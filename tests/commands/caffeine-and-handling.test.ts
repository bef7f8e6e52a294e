/** More caffeine a serving than asks for a yes, and what is handled at the bench. */

import { describe, expect, it } from 'vitest';
import { found, neckring, writeIn } from './neckring.ts';
import { cautionsOf, drinkStages, slipLedger, warningsOf } from './slip-ledger.ts';

const drink = (changed?: Readonly<Record<string, string>>): string =>
  `trial: 2\nmade: 2026-03-10T10:00+00:00\n${drinkStages(changed)}`;

describe('caffeine', () => {
  // published: EFSA 2015, 200 mg in a single dose; 0.61 g/L make 201 mg in 330 mL, 0.60 g/L make 198 mg
  const caffeinated = (grams: string): string => drink({ caffeine: `${grams} g/L` });

  it('published: 201 mg in 330 mL are refused without --yes, and nothing is written', async () => {
    const folder = await slipLedger({ 'trials/0002.yaml': caffeinated('0.61') });
    const refused = await neckring(['reckon', '2'], { folder });
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('a serving of 330 mL holds 201 mg of caffeine');
    expect(refused.err).toContain('--yes');
    const shown = await found(['show', '2'], { folder });
    expect(shown['results']).toEqual([]);
    expect((await neckring(['reckon', '2', '--yes'], { folder })).code).toBe(0);
  });

  it('published: 198 mg in 330 mL are not asked about', async () => {
    const folder = await slipLedger({ 'trials/0002.yaml': caffeinated('0.60') });
    expect((await neckring(['reckon', '2'], { folder })).code).toBe(0);
  });

  it('pinned: a terminal asks, and anything but yes refuses', async () => {
    const folder = await slipLedger({ 'trials/0002.yaml': caffeinated('0.61') });
    const yes = await neckring(['reckon', '2', '--dry-run'], { folder, answers: ['yes'] });
    expect(yes.code).toBe(0);
    expect(yes.out).toContain('Is this meant? yes or no: ');
    expect((await neckring(['reckon', '2'], { folder, answers: ['no'] })).code).toBe(2);
    expect((await neckring(['reckon', '2'], { folder, answers: [] })).code).toBe(2);
  });

  it('published: the serving that a formula aims at counts', async () => {
    const formula = (serving: string): string =>
      `formula: lively\nstages:\n  drink:\n    - caffeine: 0.3 g/L\n    - water: to 1 L\naim:\n  serving: ${serving}\n`;
    const folder = await slipLedger({ 'formulas/lively.yaml': formula('330 mL') });
    expect(await warningsOf(folder)).toEqual([]);
    await writeIn(folder, 'formulas/lively.yaml', formula('700 mL'));
    expect((await warningsOf(folder)).map(({ code }) => code)).toEqual(['caffeine-serving']);
  });
});

describe('handling', () => {
  it.each([
    // published: FDA consumer advice on pure powdered caffeine
    ['pure-caffeine', 'caffeine', '0.1 g', ''],
    // published: 21 CFR 172.575
    ['pure-quinine', 'quinine', '0.05 g', ''],
    // common practice, no source
    ['neat-potent-aroma', 'cassis thiol', '1 ug', ''],
    ['concentrated-acid', 'phosphoric acid', '0.5 g', ''],
    // from memory, with the hazard statements of a supplier sheet
    [
      'flammable-near-heat',
      'sweet orange oil',
      '0.05 g',
      '    process:\n      - do: warm\n        to: 60 C\n',
    ],
  ])('common practice: %s', async (code, item, amount, process) => {
    const items = drinkStages({ [item]: amount });
    const text = process === '' ? items : items.replace('drink:\n', `drink:\n${process}    items:\n`);
    const folder = await slipLedger({ 'trials/0002.yaml': `trial: 2\n${text}` });
    const [told] = (await cautionsOf(['show', '2'], folder)).filter((one) => one.code === code);
    expect(told?.text).toContain(`${item}: `);
    expect(told?.source).toMatch(/FDA|practice/);
    expect((await cautionsOf(['reckon', '2', '--dry-run'], folder)).map((one) => one.code)).toContain(code);
    const page = await neckring(['show', '2'], { folder });
    expect(page.out).toContain('local food law and a qualified person');
  });

  it('pinned: a weak stock and an oil that is not warmed are not spoken of', async () => {
    const folder = await slipLedger({ 'trials/0002.yaml': drink({ 'cassis stock': '12 drops' }) });
    expect(await cautionsOf(['show', '2'], folder)).toEqual([]);
  });
});
