import { describe, expect, it } from 'vitest';
import { ingredients } from '../../src/reference/ingredients/index.ts';

// IUPAC CIAAW standard atomic weights, conventional or abridged values.
const atomicWeights: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.98976928,
  Mg: 24.305,
  P: 30.973761998,
  S: 32.06,
  Cl: 35.45,
  K: 39.0983,
  Ca: 40.078,
};

const weigh = (formula: string): number =>
  formula.split('.').reduce((total, part) => {
    const [, times, atoms = ''] = /^(\d*)(.*)$/.exec(part) ?? [];
    return total + Number(times || 1) * weighAtoms(atoms);
  }, 0);

const weighAtoms = (atoms: string): number =>
  [...atoms.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce((total, [, symbol = '', count]) => {
    const weight = atomicWeights[symbol];
    if (weight === undefined) throw new Error(`${symbol} is not an element here`);
    return total + weight * Number(count || 1);
  }, 0);

const withFormula = ingredients.filter((one) => one.formula !== undefined);

describe('molar masses', () => {
  it('law: every formula weighs what its record says, within 0.02 g/mol', () => {
    expect(withFormula.length).toBeGreaterThan(90);
    for (const { name, formula = '', figures } of withFormula) {
      const mass = figures['molar mass']?.value ?? Number.NaN;
      expect(Math.abs(mass - weigh(formula)), `${name} ${formula} ${mass} ${weigh(formula)}`).toBeLessThan(
        0.02,
      );
    }
  });

  it('law: a hydrate is its anhydrous substance with so many waters', () => {
    const hydrates = ingredients.filter((one) => one.hydrateOf !== undefined);
    expect(hydrates.length).toBeGreaterThanOrEqual(5);
    for (const hydrate of hydrates) {
      const dry = ingredients.find((one) => one.name === hydrate.hydrateOf?.name);
      const waters = hydrate.hydrateOf?.waterPerMolecule ?? 0;
      const mass = (dry?.figures['molar mass']?.value ?? Number.NaN) + waters * weigh('H2O');
      expect(hydrate.figures['molar mass']?.value, hydrate.name).toBeCloseTo(mass, 1);
      expect(hydrate.formula, hydrate.name).toBe(`${dry?.formula}.${waters === 1 ? '' : waters}H2O`);
    }
  });

  // The usual chemistry tables, to the digits printed (citric acid and its monohydrate, sucrose, trisodium citrate).
  it.each([
    ['citric acid', 192.12],
    ['citric acid monohydrate', 210.14],
    ['malic acid', 134.09],
    ['phosphoric acid', 97.99],
    ['sucrose', 342.3],
    ['trisodium citrate dihydrate', 294.1],
    ['potassium sorbate', 150.22],
  ])('published: %s is %d g/mol', (name, printed) => {
    const record = ingredients.find((one) => one.name === name);
    expect(record?.figures['molar mass']?.value).toBeCloseTo(printed, 1);
  });
});
