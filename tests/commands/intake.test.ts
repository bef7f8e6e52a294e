import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, rows } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const intakesOf = async (...words: readonly string[]) => rows((await found(['intake', ...words]))['intakes']);

describe('intake', () => {
  it('published: 30 mg/L of polysorbate 80, two of 330 mL, 60 kg, are 0.33 mg/kg of the 25 of EFSA 2015', async () => {
    const [efsa] = await intakesOf(
      '30 mg/L polysorbate 80',
      ...['--serving', '330 mL', '--servings', '2', '--body', '60 kg'],
    );
    expect(leafValue(efsa?.['serving'])).toBeCloseTo(9.9, 9);
    expect(leafValue(efsa?.['day'])).toBeCloseTo(19.8, 9);
    expect(leafValue(efsa?.['perBodyMass'])).toBeCloseTo(0.33, 9);
    expect(leafValue(efsa?.['share'])).toBeCloseTo(0.33 / 25, 9);
    expect([efsa?.['by'], efsa?.['published']]).toEqual(['EFSA', '25 mg/kg a day']);
  });

  it('published: 350 mL at 50 g/L of glycerol are 17.5 g, 875 mg/kg of a child of 20 kg (UK FSA 2025), and EFSA gave no number', async () => {
    const [row] = await intakesOf('50 g/L glycerol', '--serving', '350 mL', '--body', '20 kg');
    expect(leafValue(row?.['serving'])).toBeCloseTo(17_500, 6);
    expect(leafValue(row?.['perBodyMass'])).toBeCloseTo(875, 6);
    expect(row?.['published']).toBe('none needed');
  });

  it('law: twice the servings are twice the share, twice the body half of it; a group is counted together', async () => {
    const share = async (...words: readonly string[]) => leafValue((await intakesOf(...words))[0]?.['share']);
    const one = await share('100 mg/L polysorbate 80', '--body', '60 kg');
    expect(await share('100 mg/L polysorbate 80', '--body', '60 kg', '--servings', '2')).toBeCloseTo(
      2 * one,
      12,
    );
    expect(await share('100 mg/L polysorbate 80', '--body', '120 kg')).toBeCloseTo(one / 2, 12);
    const both = await share('60 mg/L polysorbate 80', '40 mg/L polysorbate 20', '--body', '60 kg');
    expect(both).toBeCloseTo(one, 12);
  });

  it('law: mg in a serving, mg/L and ppm of a litre of 1 kg are the same', async () => {
    const day = async (typed: string) =>
      leafValue((await intakesOf(typed, '--body', '60 kg', '--serving', '250 mL'))[0]?.['day']);
    expect(await day('40 mg/L sucralose')).toBeCloseTo(10, 9);
    expect(await day('40 ppm sucralose')).toBeCloseTo(10, 9);
    expect(await day('10 mg sucralose')).toBeCloseTo(10, 9);
  });

  it('published: caffeine by people, 200 mg at once, 400 and 200 mg a day, 3 mg/kg (EFSA 2015); above is said and exits 0', async () => {
    const { code, out } = await neckring(['intake', '1 g/L caffeine', '--body', '60 kg']);
    expect(code).toBe(0);
    const text = out.replace(/\s+/g, ' ');
    expect(text).toContain(
      'one serving carries 330 mg, above the figure of 200 mg at once that EFSA gives for adults',
    );
    expect(text).not.toContain('above the figure of 400 mg');
    expect(text).not.toMatch(/\b(?:within|safe|legal|approved)\b/i);
  });

  it('marks what is from memory wherever it stands', async () => {
    const { out } = await neckring(['intake', '100 mg/L sodium benzoate', '--body', '60 kg', '--explain']);
    expect(out).toContain('JECFA *');
    expect(out).toContain('(from memory)');
    expect(out).toContain('* from memory');
  });

  it('takes the drink of a trial, files its answer, and check knows it again', async () => {
    const folder = await exampleLedger();
    const words = ['intake', '--trial', '17', '--body', '60 kg', '--record'];
    const { code, err } = await neckring(words, { folder });
    expect([code, err]).toEqual([0, expect.stringContaining('wrote 1 result')]);
    expect(await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml')).toContain('calculator: intake');
    expect((await neckring(['check'], { folder })).out).not.toContain('stale');
  });

  it.each([
    [['1 g/L caffeine'], '--body is needed'],
    [['--body', '60 kg'], 'nothing is given to reckon'],
    [['1 g/L caffeine', '--body', '0 kg'], 'more than nothing'],
    [['1 g/L caffein', '--body', '60 kg'], 'did you mean caffeine'],
  ])('refuses %j', async (words, said) => {
    const { code, err } = await neckring(['intake', ...words]);
    expect([code, err]).toEqual([2, expect.stringContaining(said)]);
  });

  it('leaves a trial without a drink alone', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': 'trial: 1\nstages:\n  emulsion:\n    - water: 1 g\n' });
    const { code, err } = await neckring(['intake', '--trial', '1', '--body', '60 kg'], { folder });
    expect([code, err]).toEqual([2, expect.stringContaining('no stage named drink')]);
  });
});
