/** The word that was probably meant. */

const furthest = 40;

/** Up to `count` of the words that look like this one, best first; none where none does. */
export function nearestWords(word: string, words: readonly string[], count = 1): readonly string[] {
  const typed = word.toLowerCase();
  if (typed.length > furthest) return [];
  const allowed = Math.max(1, Math.floor(typed.length / 3));
  return words
    .map((known) => ({ known, distance: distanceOf(typed, known.toLowerCase()) }))
    .filter(({ distance }) => distance <= allowed)
    .sort((left, right) => left.distance - right.distance)
    .slice(0, count)
    .map(({ known }) => known);
}

/** Letters to add, drop, change or swap with their neighbour. */
function distanceOf(one: string, other: string): number {
  if (Math.abs(one.length - other.length) > furthest / 3) return Number.POSITIVE_INFINITY;
  if (one.length > 2 && other.startsWith(one)) return 1;
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let line = 1; line <= one.length; line += 1) {
    const next = [line];
    for (let column = 1; column <= other.length; column += 1) {
      const changed = one[line - 1] === other[column - 1] ? 0 : 1;
      const isSwap = one[line - 1] === other[column - 2] && one[line - 2] === other[column - 1];
      const swapped = isSwap ? (before[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY;
      const kept = (row[column - 1] ?? 0) + changed;
      next.push(Math.min(kept, (row[column] ?? 0) + 1, (next[column - 1] ?? 0) + 1, swapped));
    }
    before = row;
    row = next;
  }
  return row[other.length] ?? Number.POSITIVE_INFINITY;
}

/** A hint that offers the nearest word, or all of them where none is near and they are few. */
export function offer(word: string, words: readonly string[]): string {
  const near = nearestWords(word, words)[0];
  if (near !== undefined) return `write "${near}"`;
  return words.length === 0 ? 'delete it' : `write one of: ${words.join(', ')}`;
}
