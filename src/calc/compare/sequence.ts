/** Lists laid beside each other: what stayed in order, what moved. */

export interface Pair {
  readonly before: number;
  readonly after: number;
}

/**
 * Pairs equal entries of two lists, each once: rule after rule, each in the order of the lists.
 *
 * Input     two lists; rules, the strictest first
 * Output    pairs of places, in the order of the second list
 * Example   a b c with c a d, by equality -> (2, 0) (0, 1)
 */
export function pairUp<T>(
  before: readonly T[],
  after: readonly T[],
  rules: readonly ((one: T, other: T) => boolean)[],
): readonly Pair[] {
  const free = new Set(before.keys());
  const found = new Map<number, number>();
  for (const isPair of rules) {
    for (const [place, one] of after.entries()) {
      if (found.has(place)) continue;
      for (const at of free) {
        const other = before[at];
        if (other === undefined || !isPair(other, one)) continue;
        found.set(place, at);
        free.delete(at);
        break;
      }
    }
  }
  return [...found]
    .map(([place, at]) => ({ before: at, after: place }))
    .sort((left, right) => left.after - right.after);
}

/**
 * Pairs that are out of order: those outside the longest run that kept its order.
 *
 * Example   a b c d become d a b c -> d moved, nothing else
 */
export function movedPairs(pairs: readonly Pair[]): ReadonlySet<Pair> {
  const best: number[] = [];
  const from: number[] = [];
  for (const [at, pair] of pairs.entries()) {
    best[at] = 1;
    from[at] = -1;
    for (let earlier = 0; earlier < at; earlier += 1) {
      const length = (best[earlier] ?? 0) + 1;
      if ((pairs[earlier]?.before ?? 0) < pair.before && length > (best[at] ?? 0)) {
        best[at] = length;
        from[at] = earlier;
      }
    }
  }
  const kept = new Set<number>();
  let at = best.indexOf(Math.max(...best));
  while (at >= 0) {
    kept.add(at);
    at = from[at] ?? -1;
  }
  return new Set(pairs.filter((_, place) => !kept.has(place)));
}
