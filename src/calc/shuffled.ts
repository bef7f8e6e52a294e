/**
 * A list in an order of chance: rungs, so that the order of making says nothing of what is varied; glasses, so that none is guessed.
 *
 * Input     the list; numbers from 0 to 1, one for each place
 * Output    the same things, each order as likely
 * Source    Durstenfeld 1964, Algorithm 235: Random permutation, Commun. ACM 7:420 (from memory)
 */
export function shuffled<T>(things: readonly T[], random: () => number): readonly T[] {
  const mixed = [...things];
  for (let last = mixed.length - 1; last > 0; last -= 1) {
    const pick = Math.min(last, Math.floor(random() * (last + 1)));
    const [one, other] = [mixed[last], mixed[pick]];
    if (one === undefined || other === undefined) continue;
    mixed[last] = other;
    mixed[pick] = one;
  }
  return mixed;
}
