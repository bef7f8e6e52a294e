import { describe, expect, it } from 'vitest';
import {
  type Figure,
  type FigureName,
  figureUnits,
  type Ingredient,
} from '../../src/reference/ingredient.ts';
import { ingredients } from '../../src/reference/ingredients/index.ts';
import { normaliseName } from '../../src/reference/name.ts';
import { sources } from '../../src/reference/sources.ts';

const flat = (figure: Figure): readonly Figure[] => [figure, ...(figure.others ?? []).flatMap(flat)];

const figuresOf = (record: Ingredient) =>
  Object.entries(record.figures).flatMap(([name, figure]) =>
    figure ? flat(figure).map((one) => ({ where: `${record.name}: ${name}`, name, figure: one })) : [],
  );

const all = ingredients.flatMap(figuresOf);
const find = (name: string): Ingredient => {
  const record = ingredients.find((one) => one.name === name);
  if (!record) throw new Error(`no ingredient is called ${name}`);
  return record;
};
const figure = (name: string, wanted: FigureName): Figure => {
  const found = find(name).figures[wanted];
  if (!found) throw new Error(`${name} has no ${wanted}`);
  return found;
};

describe('the built-in ingredients', () => {
  it('law: there are at least 110, each name and alias once', () => {
    expect(ingredients.length).toBeGreaterThanOrEqual(110);
    const names = ingredients.flatMap((one) => [one.name, ...(one.aliases ?? [])]).map(normaliseName);
    const twice = names.filter((name, index) => names.indexOf(name) !== index);
    expect(twice).toEqual([]);
  });

  it('law: a name can be typed as a key of YAML and in a list between brackets without quotes', () => {
    for (const { name } of ingredients) expect(name).toMatch(/^[A-Za-z0-9][^,:#[\]{}"']*$/);
  });

  it('law: every source is in the bibliography, and every work of the bibliography has words', () => {
    expect(
      all.filter(({ figure }) => !Object.hasOwn(sources, figure.source)).map(({ where }) => where),
    ).toEqual([]);
    for (const [key, source] of Object.entries(sources)) {
      expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(source.text.length, key).toBeGreaterThan(10);
      expect(source.text, key).not.toMatch(/https?:|www\./);
    }
  });

  it('law: a figure lies within its range and has a unit', () => {
    for (const { where, name, figure } of all) {
      expect(Object.hasOwn(figureUnits, name), where).toBe(true);
      expect(Number.isFinite(figure.value), where).toBe(true);
      expect(figure.low ?? figure.value, where).toBeLessThanOrEqual(figure.value);
      expect(figure.high ?? figure.value, where).toBeGreaterThanOrEqual(figure.value);
      expect(figure.low === undefined, where).toBe(figure.high === undefined);
    }
  });

  it('law: what cannot be negative is not', () => {
    const signed = ['log p', 'optical rotation', 'flash point'];
    for (const { where, name, figure } of all)
      if (!signed.includes(name)) expect(figure.value, where).toBeGreaterThanOrEqual(0);
  });

  it('law: general knowledge is always marked as memory', () => {
    for (const { where, figure } of all)
      if (figure.source === 'general-knowledge') expect(figure.fromMemory, where).toBe(true);
  });

  it('law: potent compounds are aromas, polymers have no HLB', () => {
    for (const record of ingredients) {
      if (record.potent) expect(record.role, record.name).toBe('aroma');
      if (record.polymer) expect(record.figures.hlb, record.name).toBe(undefined);
      if (record.role === 'emulsifier' && !record.polymer)
        expect(record.figures.hlb?.value, record.name).toBeGreaterThan(0);
    }
  });

  // ISO 6353 and the CAS registry: the last digit is the sum of the others times their place from the right, modulo 10.
  it('law: the check digit of every CAS number is right', () => {
    for (const { name, cas } of ingredients) {
      if (cas === undefined) continue;
      expect(cas, name).toMatch(/^\d{2,7}-\d\d-\d$/);
      const digits = [...cas.replaceAll('-', '')].map(Number).reverse();
      const sum = digits.slice(1).reduce((total, digit, index) => total + digit * (index + 1), 0);
      expect(sum % 10, `${name} ${cas}`).toBe(digits[0]);
    }
  });

  it('law: every liquid carrier and oil has a density that a liquid can have', () => {
    for (const record of ingredients) {
      const density = record.figures.density?.value;
      if (record.role === 'carrier' || record.role === 'water')
        expect(density, record.name).toBeGreaterThan(0.7);
      if (density !== undefined) expect(density, record.name).toBeLessThan(1.5);
    }
  });

  it('law: what is acid, salt or sugar and pure has its molar mass and its volume in water', () => {
    for (const record of ingredients) {
      if (!record.formula || !['acid', 'salt', 'sugar'].includes(record.role)) continue;
      expect(record.figures['molar mass']?.value, record.name).toBeGreaterThan(0);
      expect(record.figures['apparent density']?.value, record.name).toBeGreaterThan(0);
      if (record.role === 'acid')
        expect(record.figures['acid equivalents']?.value, record.name).toBeGreaterThan(0);
    }
  });
});

describe('figures against what was published', () => {
  // United States Pharmacopeia 32 (orange, cardamom) and 35 (lemon, peppermint, coriander), specific gravity at 25 C;
  // water 0.99705 g/mL at 25 C (Kell 1975).
  it.each([
    ['sweet orange oil', 0.842, 0.846],
    ['cardamom oil', 0.917, 0.947],
    ['lemon oil', 0.849, 0.855],
    ['peppermint oil', 0.896, 0.908],
    ['coriander oil', 0.863, 0.875],
    ['clove bud oil', 1.038, 1.06],
  ])('published: %s weighs what its monograph says', (name, low, high) => {
    const density = figure(name, 'density');
    expect(density.temperatureCelsius).toBe(25);
    expect(density.low).toBeCloseTo(low * 0.99705, 3);
    expect(density.high).toBeCloseTo(high * 0.99705, 3);
    expect(density.value).toBeCloseTo(((low + high) / 2) * 0.99705, 3);
  });

  // CRC Handbook, 102nd edition, Concentrative Properties of Aqueous Solutions, 20 C: per cent by mass, g/mL.
  // The volume that a gram adds: (1/rho - (1 - w)/rho_water)/w; water 0.99821 g/mL at 20 C.
  it.each([
    ['citric acid', 5, 1.0189],
    ['trisodium citrate dihydrate', 10, 1.0708],
    ['phosphoric acid', 5, 1.0254],
    ['lactic acid', 5, 1.0086],
    ['glucose', 10, 1.0375],
    ['fructose', 5, 1.0181],
    ['maltose', 10, 1.0385],
    ['glycerol', 5, 1.0097],
    ['ethanol', 5, 0.9893],
  ])('published: %s in solution', (name, percent, solution) => {
    const share = percent / 100;
    const volume = (1 / solution - (1 - share) / 0.99821) / share;
    expect(figure(name, 'apparent density').value).toBeCloseTo(1 / volume, 3);
  });

  // Open-access article PMC3969497, Table I.
  it.each([
    ['polysorbate 20', 16.7],
    ['polysorbate 80', 15],
    ['sorbitan monolaurate', 8.6],
    ['sorbitan oleate', 4.3],
    ['polyoxyl 35 castor oil', 13],
    ['PEG-40 hydrogenated castor oil', 15],
  ])('published: the HLB of %s is %d', (name, hlb) => {
    expect(figure(name, 'hlb').value).toBe(hlb);
  });

  // Griffin 1954: HLB = 20 (1 - S/A), S the saponification number of the ester in the middle of its specification,
  // A the acid number of the fatty acid, 56105.6 over its molar mass. He rounded freely: up to 0.6 between the two.
  it.each([
    ['polysorbate 20', 280.1, 0.2],
    ['polysorbate 40', 218.8, 0.2],
    ['polysorbate 60', 197.2, 0.1],
    ['polysorbate 65', 197.2, 0.1],
    ['polysorbate 80', 198.6, 0.1],
    ['sorbitan monolaurate', 280.1, 0.25],
    ['sorbitan monopalmitate', 218.8, 0.1],
    ['sorbitan monostearate', 197.2, 0.15],
    ['sorbitan oleate', 198.6, 0.4],
    ['sorbitan trioleate', 198.6, 0.6],
    ['sorbitan tristearate', 197.2, 0.6],
  ])('published: the HLB of %s follows from its saponification number', (name, acidNumber, apart) => {
    const worked = 20 * (1 - figure(name, 'saponification number').value / acidNumber);
    expect(Math.abs(worked - figure(name, 'hlb').value)).toBeLessThanOrEqual(apart);
  });

  // Belitz, Grosch and Schieberle 2009; the trade uses about 1 ppb of it (common practice, no source).
  it('published: cassis thiol is smelled at 0.02 ng/kg', () => {
    const record = ingredients.find((one) => one.aliases?.includes('cassis thiol'));
    expect(record?.name).toBe('4-methoxy-2-methyl-2-butanethiol');
    expect(record?.figures['odour threshold']?.value).toBe(0.00002);
    expect(record?.figures['use level']?.value).toBe(0.001);
  });
});
