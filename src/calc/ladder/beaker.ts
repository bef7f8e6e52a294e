/** A beaker of a ladder as the statistics see it. */
export interface Beaker {
  /** Oil per emulsifier, or whatever is varied; above 0. */
  readonly ratio: number;
  readonly outcome: 'held' | 'failed' | 'watching';
  /** Share of the watch that a beaker still watched has lasted, 0 to 1; without one it tells nothing. */
  readonly lasted?: number;
  /** The making day: beakers with the same text share a shift. */
  readonly day: string;
}

export interface Counts {
  readonly held: number;
  readonly failed: number;
  readonly watching: number;
}

export function countOutcomes(beakers: readonly Beaker[]): Counts {
  const count = (outcome: Beaker['outcome']): number =>
    beakers.filter((beaker) => beaker.outcome === outcome).length;
  return { held: count('held'), failed: count('failed'), watching: count('watching') };
}

/** The beakers of each making day. */
export function byDay(beakers: readonly Beaker[]): readonly (readonly Beaker[])[] {
  const days = new Map<string, Beaker[]>();
  for (const beaker of beakers) {
    const day = days.get(beaker.day);
    if (day) day.push(beaker);
    else days.set(beaker.day, [beaker]);
  }
  return [...days.values()];
}

/** The plain bracket: no model, only what was seen. */
export interface Bracket {
  /** The highest ratio that held below the lowest that failed; null where none did. */
  readonly lastHeld: number | null;
  /** The lowest ratio that failed; null where none did. */
  readonly firstFailed: number | null;
  /** Beakers that held above one that failed. */
  readonly crossed: number;
}

/**
 * Last ratio that held and first that failed, going up.
 *
 * Formula   firstFailed = least ratio failed; lastHeld = greatest ratio held below it
 * Input     beakers
 * Output    lastHeld and firstFailed in the unit of the ratio, null where there is none; how many cross
 * Example   plainBracket([{ ratio: 0.3, outcome: 'held', day: '1' }]).lastHeld -> 0.3
 */
export function plainBracket(beakers: readonly Beaker[]): Bracket {
  const ratios = (outcome: Beaker['outcome']): number[] =>
    beakers.filter((beaker) => beaker.outcome === outcome).map(({ ratio }) => ratio);
  const held = ratios('held');
  const firstFailed = Math.min(...ratios('failed'));
  const lastHeld = Math.max(...held.filter((ratio) => ratio < firstFailed));
  return {
    lastHeld: Number.isFinite(lastHeld) ? lastHeld : null,
    firstFailed: Number.isFinite(firstFailed) ? firstFailed : null,
    crossed: held.filter((ratio) => ratio > firstFailed).length,
  };
}
