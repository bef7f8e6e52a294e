/** An optimum instead of an edge: between which values it held. */

export interface Tried {
  readonly value: number;
  readonly outcome: 'held' | 'failed' | 'watching';
}

export interface HeldWindow {
  readonly lowestHeld: number | null;
  readonly highestHeld: number | null;
  /** The nearest failure on each side; null where nothing failed there yet. */
  readonly failedBelow: number | null;
  readonly failedAbove: number | null;
  /** Values that failed between two that held, going up. */
  readonly failedInside: readonly number[];
}

/**
 * The window in which it held; no curve and no chance, since few beakers would carry two edges.
 *
 * Formula   lowest and highest value held; greatest failed below the one, least failed above the other
 * Input     values in any one unit with their outcomes
 * Output    in the same unit, null where there is none
 * Example   heldWindow([{ value: 12, outcome: 'held' }, { value: 15, outcome: 'failed' }]).failedAbove -> 15
 */
export function heldWindow(tried: readonly Tried[]): HeldWindow {
  const values = (outcome: Tried['outcome']): readonly number[] =>
    tried.filter((one) => one.outcome === outcome).map(({ value }) => value);
  const held = values('held');
  const failed = [...values('failed')].sort((one, other) => one - other);
  if (held.length === 0)
    return { lowestHeld: null, highestHeld: null, failedBelow: null, failedAbove: null, failedInside: [] };
  const lowestHeld = Math.min(...held);
  const highestHeld = Math.max(...held);
  return {
    lowestHeld,
    highestHeld,
    failedBelow: failed.findLast((value) => value < lowestHeld) ?? null,
    failedAbove: failed.find((value) => value > highestHeld) ?? null,
    failedInside: failed.filter((value) => value >= lowestHeld && value <= highestHeld),
  };
}
