/** Which balance, and to how many decimals. */

export interface Scale {
  readonly divisionGrams: number;
  /** The most it takes, vessel included. */
  readonly limitGrams: number | undefined;
}

/** Decimals that a division shows: 0.01 g shows 2. */
export function decimalsOf(divisionGrams: number): number {
  const decimals = Math.ceil(-Math.log10(divisionGrams) - 1e-9);
  return Math.max(0, Math.min(9, decimals));
}

/** The finest balance that takes the load; the finest of all where none does, `undefined` where there is none. */
export function balanceFor(scales: readonly Scale[], loadGrams: number): Scale | undefined {
  const finestFirst = [...scales].sort((left, right) => left.divisionGrams - right.divisionGrams);
  return (
    finestFirst.find((scale) => scale.limitGrams === undefined || loadGrams <= scale.limitGrams) ??
    finestFirst[0]
  );
}

/** True where no balance takes the load at once. */
export const isOverEvery = (scales: readonly Scale[], loadGrams: number): boolean =>
  scales.length > 0 &&
  scales.every((scale) => scale.limitGrams !== undefined && loadGrams > scale.limitGrams);

/**
 * A mass as a balance shows it: rounded to its division, with its decimals.
 *
 * Example   asShown(6.0166, 0.01) -> 6.02
 */
export function asShown(massGrams: number, divisionGrams: number): string {
  const steps = Math.round(massGrams / divisionGrams);
  return (steps * divisionGrams).toFixed(decimalsOf(divisionGrams));
}
