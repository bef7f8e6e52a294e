import { describe, expect, it } from 'vitest';
import { ingredients } from '../../src/reference/ingredients/index.ts';
import { dailyIntakes, noIntakeNumbers } from '../../src/reference/limits/daily-intakes.ts';
import { type Form, type FormName, forms } from '../../src/reference/limits/forms.ts';
import { limits } from '../../src/reference/limits/index.ts';
import { limitSources } from '../../src/reference/limits/limit-sources.ts';
import type { LimitBody } from '../../src/reference/limits/published-figure.ts';

const figure = (form: FormName, body: LimitBody, unit: string): number | undefined =>
  limits.find(
    (one) =>
      one.form === form && one.body === body && one.unit === unit && one.isDrink && one.kind === 'most',
  )?.value;

const intake = (form: FormName, by: string): number | undefined =>
  dailyIntakes.find((one) => one.form === form && one.by === by)?.value;

describe('published figures', () => {
  // 21 CFR (edition of 2015), Codex CXS 192 category 14.1.4, and EU Regulations as named in each record.
  it.each([
    ['propylene glycol', 'us', 'mg/kg', 20_000, '21 CFR 184.1666(d), 2.0 %'],
    ['propylene glycol', 'eu', 'mg/L', 1000, 'Regulation 1333/2008, Annex III Part 1'],
    ['sodium benzoate', 'us', 'mg/kg', 1000, '21 CFR 184.1733(d), 0.1 %'],
    ['benzoic', 'eu', 'mg/L', 150, 'UK FSA survey 2008'],
    ['benzoic', 'codex', 'mg/kg', 250, 'Food Addit Contam A 2021;38:701'],
    ['sorbic', 'codex', 'mg/kg', 500, 'CXS 192, 14.1.4'],
    ['polysorbates', 'codex', 'mg/kg', 500, 'CXS 192, 14.1.4'],
    ['quinine', 'us', 'mg/kg', 83, '21 CFR 172.575'],
    ['caffeine', 'us', 'mg/kg', 200, '21 CFR 182.1180, 0.02 %'],
    ['silicone', 'us', 'mg/kg', 10, '21 CFR 173.340'],
    ['silicone', 'codex', 'mg/kg', 20, 'CXS 192, 14.1.4'],
    ['sucrose acetate isobutyrate', 'us', 'mg/kg', 300, '21 CFR 172.833(d)'],
    ['rosin esters', 'us', 'mg/kg', 100, '21 CFR 172.735(b)'],
    ['edta', 'us', 'mg/kg', 33, '21 CFR 172.120(b)(1)'],
    ['malic', 'us', 'mg/kg', 34_000, '21 CFR 184.1069(d), 3.4 %'],
    ['gum arabic', 'us', 'mg/kg', 20_000, '21 CFR 184.1330(c), 2.0 %'],
    ['acesulfame', 'eu', 'mg/L', 350, 'Austrian sweetener ordinance, Annex I'],
    ['aspartame', 'eu', 'mg/L', 600, 'Austrian sweetener ordinance, Annex I'],
    ['sucralose', 'eu', 'mg/L', 300, 'Scottish SI 2002/61'],
    ['phosphorus pentoxide', 'eu', 'mg/L', 700, 'Northern Ireland SR 1999/244'],
  ] as const)('published: %s, %s, in %s is %d (%#, %s)', (form, body, unit, value, _source) => {
    expect(figure(form, body, unit)).toBe(value);
  });

  it('published: 12 mg of saccharin in a US fluid ounce (21 CFR 180.37) is 405.8 mg/L; the ounce holds 29.5735 mL', () => {
    expect(figure('saccharin', 'us', 'mg/L')).toBeCloseTo(12 / 0.0295735295625, 1);
  });

  it.each([
    ['polysorbates', 'EFSA', 25, 'EFSA Journal 2015;13(7):4152'],
    ['propylene glycol', 'EFSA', 25, 'EFSA Journal 2018;16(4):5235'],
    ['benzoic', 'EFSA', 5, 'EFSA Journal 2016;14(3):4433'],
    ['sorbic', 'EFSA', 11, 'EFSA Journal 2019;17(3):5625'],
    ['sucrose esters', 'EFSA', 40, 'EFSA Journal 2018;16(1):5087'],
    ['silicone', 'EFSA', 17, 'EFSA Journal 2020;18(5):6107'],
    ['acesulfame', 'EFSA', 15, 'EFSA Journal 2025;23(4):9317'],
    ['sucralose', 'US FDA', 5, 'Cochrane CD012885, table'],
    ['aspartame', 'US FDA', 50, 'Cochrane CD012885, table'],
    ['neotame', 'US FDA', 0.3, 'Cochrane CD012885, table'],
    ['vanillin', 'JECFA', 10, 'JECFA, 11th meeting'],
    ['edta', 'JECFA', 2.5, 'JECFA, 17th meeting'],
  ] as const)('published: the daily intake of %s by %s is %d mg/kg (%#, %s)', (form, by, value, _source) => {
    expect(intake(form, by)).toBe(value);
  });
});

describe('what they count', () => {
  const molar = (name: string): number => {
    const found = ingredients.find((one) => one.name === name)?.figures['molar mass']?.value;
    if (found === undefined) throw new Error(`${name} has no molar mass`);
    return found;
  };
  // g/mol by IUPAC atomic weights, and how many of them come of a molecule.
  const asGrams: Readonly<Partial<Record<FormName, number>>> = {
    benzoic: 122.123,
    'sodium benzoate': 144.105,
    sorbic: 112.127,
    'sulfur dioxide': 64.058 * 2,
    'phosphorus pentoxide': 141.943 / 2,
    phosphorus: 30.974,
    quinine: 324.42,
    cyclamic: 179.234,
    saccharin: 183.182,
    steviol: 318.45,
    sorbitan: 164.157,
    citric: 192.124,
  };
  const molecules: Readonly<Record<string, number>> = { 'quinine sulfate dihydrate': 2 };

  it('law: a gram of each holds so much of the form as its molar mass says, to 0.1 %', () => {
    for (const [name, grams] of Object.entries(asGrams)) {
      const form: Form | undefined = Object.entries(forms).find(([one]) => one === name)?.[1];
      for (const [member, share] of Object.entries(form?.members ?? {}))
        expect(
          share / ((grams * (molecules[member] ?? 1)) / molar(member)),
          `${name}: ${member}`,
        ).toBeCloseTo(1, 3);
    }
  });

  it('law: every name that is counted is an ingredient, every text is in the bibliography', () => {
    const names = new Set(ingredients.map(({ name }) => name));
    for (const [name, { members }] of Object.entries(forms))
      for (const member of Object.keys(members)) expect(names.has(member), `${name}: ${member}`).toBe(true);
    for (const { source, form } of [...limits, ...dailyIntakes, ...noIntakeNumbers])
      expect(Object.hasOwn(limitSources, source), `${form}: ${source}`).toBe(true);
  });

  it('law: a number has a unit, and the words never judge', () => {
    for (const one of limits) {
      expect(one.value === undefined, one.form).toBe(one.unit === undefined);
      expect(JSON.stringify(one)).not.toMatch(
        /\b(?:legal|safe|compliant|approved|permitted|allowed|banned)\b/i,
      );
    }
  });

  it('pinned: what no copy could be read of says so (EU figures for polysorbates, alcohol, quinine; some JECFA ones)', () => {
    const remembered = (form: FormName, body: LimitBody): boolean =>
      limits.some((one) => one.form === form && one.body === body && one.read === 'from memory');
    expect([
      remembered('polysorbates', 'eu'),
      remembered('ethanol', 'us'),
      remembered('quinine', 'eu'),
    ]).toEqual([true, true, true]);
    expect(dailyIntakes.find(({ form, by }) => form === 'benzoic' && by === 'JECFA')?.read).toBe(
      'from memory',
    );
    expect(limits.some(({ body, read }) => body === 'codex' && read === 'text')).toBe(true);
  });
});
