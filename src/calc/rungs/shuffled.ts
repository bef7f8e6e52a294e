/**
 * A list in an order of chance, so that the order of making says nothing of what is varied.
 *
 * Input     the list; numbers from 0 to 1, one for each place
 * Output    the same things, each order as likely
 * Source    Durstenfeld 1964, Algorithm 235: Random permutation, Commun. ACM 7:420 (from memory)
 */
export function shuffled<T>(things: readonly T[], random: () => number): readonly T[] {
  const left = [...things];
  const drawn: T[] = [];
  while (left.length > 0) {
    const at = Math.min(left.length - 1, Math.floor(random() * left.length));
    drawn.push(...left.splice(at, 1));
  }
  return drawn;
}
