/** On which balance a mass is weighed, and in how many portions. */

import type { Scale } from '../weighing/balance.ts';

export interface WeighingBench {
  /** In no order; empty where the bench names none. */
  readonly scales: readonly Scale[];
  /** The relative error accepted for a weighing: half a division over the mass. */
  readonly weighing: number;
  /** What is weighed stands in one of these; those without a mass are not counted. */
  readonly vessels: readonly {
    readonly millilitres?: number | undefined;
    readonly massGrams?: number | undefined;
  }[];
}

export interface WeighingChoice {
  readonly scale: Scale;
  readonly portions: number;
  /** Half a division over one portion. */
  readonly relativeError: number;
  /** True where no balance weighs it within the error that is accepted. */
  readonly isTooSmall: boolean;
  /** True where it stands in for a bench without balances. */
  readonly isAssumed: boolean;
}

/** Taken where the bench names no balance. */
const assumed: Scale = { divisionGrams: 0.01, limitGrams: undefined };

/**
 * The balance for a mass.
 *
 * Formula   the finest that takes it at once, its vessel included, with d/2 over the mass within the accepted error;
 *           else equal portions, as few as can be; else the finest that takes it
 * Input     massGrams above 0, about how many mL it fills; the bench
 * Output    balance, portions, relative reading error
 * Source    reading error of half a division: common practice, no source
 * Example   20 kg on 0.01 g up to 600 g and 1 g up to 15 kg -> 2 portions on 1 g
 */
export function weighingFor(
  massGrams: number,
  millilitres: number,
  { scales, weighing, vessels }: WeighingBench,
): WeighingChoice {
  const isAssumed = scales.length === 0;
  const finestFirst = (isAssumed ? [assumed] : scales).toSorted(
    (one, other) => one.divisionGrams - other.divisionGrams,
  );
  const ways = finestFirst.map((scale) =>
    way(scale, { massGrams, millilitres, vessels, isAssumed, weighing }),
  );
  const good = ways.filter(({ isTooSmall }) => !isTooSmall);
  const [first] = (good.length > 0 ? good : ways).toSorted((one, other) => one.portions - other.portions);
  if (!first) throw new Error('a bench without a balance gave no weighing');
  return first;
}

interface ToWeigh {
  readonly massGrams: number;
  readonly millilitres: number;
  readonly vessels: WeighingBench['vessels'];
  readonly isAssumed: boolean;
  readonly weighing: number;
}

function way(scale: Scale, to: ToWeigh): WeighingChoice {
  const portions = portionsOn(scale, to);
  const relativeError = (scale.divisionGrams / 2 / to.massGrams) * portions;
  return {
    scale,
    portions,
    relativeError,
    isTooSmall: relativeError > to.weighing * (1 + 1e-9),
    isAssumed: to.isAssumed,
  };
}

/** As few equal portions as the balance takes, each with the smallest vessel that holds it. */
function portionsOn({ limitGrams }: Scale, { massGrams, millilitres, vessels }: ToWeigh): number {
  if (limitGrams === undefined) return 1;
  const least = Math.max(1, Math.ceil((massGrams / limitGrams) * (1 - 1e-12)));
  for (let portions = least; portions <= least + 2; portions += 1) {
    const vessel = vesselMass(millilitres / portions, vessels);
    if (massGrams / portions + vessel <= limitGrams) return portions;
  }
  const room = limitGrams - Math.min(...vessels.map((one) => one.massGrams ?? limitGrams));
  return room > 0 ? Math.ceil((massGrams / room) * (1 - 1e-12)) : least;
}

function vesselMass(millilitres: number, vessels: WeighingBench['vessels']): number {
  const fitting = vessels.flatMap((one) =>
    one.massGrams !== undefined && (one.millilitres ?? 0) >= millilitres ? [one.massGrams] : [],
  );
  return fitting.length === 0 ? 0 : Math.min(...fitting);
}
