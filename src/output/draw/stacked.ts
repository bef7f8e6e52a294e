/** Marks that would lie on each other are put into rows. */

/**
 * Formula   each in the first row whose last mark is at least `gap` away, in the order of their places
 * Output    the row of each, from 0; in the last row marks may touch
 * Example   stackedRows([10, 12, 40], 11, 4) -> 0, 1, 0
 */
export function stackedRows(places: readonly number[], gap: number, most: number): readonly number[] {
  const last: number[] = [];
  const rows = new Map<number, number>();
  const order = places.map((place, at) => ({ place, at })).sort((one, other) => one.place - other.place);
  for (const { place, at } of order) {
    const free = last.findIndex((before) => place - before >= gap);
    const row = free === -1 ? Math.min(last.length, most - 1) : free;
    last[row] = place;
    rows.set(at, row);
  }
  return places.map((_, at) => rows.get(at) ?? 0);
}

/** Whether labels of this width under each other's marks would touch. */
export function isRoomy(places: readonly number[], gap: number): boolean {
  const order = [...places].sort((one, other) => one - other);
  return order.every((place, at) => at === 0 || place - (order[at - 1] ?? 0) >= gap);
}

/** Of ticks in their order those whose texts don't touch. */
export function sparse<T>(ticks: readonly T[], placeOf: (tick: T) => number, widthOf: (tick: T) => number) {
  const kept: T[] = [];
  let end = Number.NEGATIVE_INFINITY;
  for (const tick of [...ticks].sort((one, other) => placeOf(one) - placeOf(other))) {
    const half = widthOf(tick) / 2;
    if (placeOf(tick) - half < end + 6) continue;
    kept.push(tick);
    end = placeOf(tick) + half;
  }
  return kept;
}
