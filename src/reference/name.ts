/** How names are compared, and which known name was probably meant. */

/** Longer words are not compared letter by letter. */
const longestWord = 80;

/** ASCII words with single spaces between them, as most names are. */
const plain = /^[!-~]+(?: [!-~]+)*$/;

/**
 * A name as it is compared: Unicode NFC, runs of white space as one space, case folded.
 *
 * Input     any text
 * Output    the text to compare; never shown
 * Source    Unicode Standard Annex 15 (NFC); case folding as upper case, then lower case, so that the German
 *           sharp s and the long s fall together with what people type for them
 * Example   normaliseName('  Sweet\tORANGE  oil ') is 'sweet orange oil'
 */
export function normaliseName(text: string): string {
  if (plain.test(text)) return text.toLowerCase();
  return text.normalize('NFC').replace(/\s+/gu, ' ').trim().toUpperCase().toLowerCase().normalize('NFC');
}

/**
 * The known names that look most like a word, best first; none where none is near.
 *
 * Formula   letters added, dropped, changed or swapped with a neighbour; at most a third of the word's letters,
 *           and at least one. A name that holds every typed word whole comes right after those one letter away.
 * Input     the word as typed, the names, how many to give at most
 * Output    names as they stand in the list
 * Example   nearestNames('polysorbat 80', ['polysorbate 20', 'polysorbate 80', 'water'], 1) is ['polysorbate 80']
 */
export function nearestNames(word: string, names: readonly string[], count: number): readonly string[] {
  const typed = normaliseName(word);
  if (typed === '' || typed.length > longestWord) return [];
  const furthest = Math.max(1, Math.floor(typed.length / 3));
  const near: { readonly name: string; readonly distance: number }[] = [];
  for (const name of names) {
    const known = normaliseName(name);
    const distance = known !== typed && holdsAll(known, typed) ? 1.5 : editDistance(typed, known, furthest);
    if (distance <= furthest || distance === 1.5) near.push({ name, distance });
  }
  return near
    .sort((left, right) => left.distance - right.distance)
    .slice(0, count)
    .map((one) => one.name);
}

function holdsAll(known: string, typed: string): boolean {
  const parts = known.split(' ');
  return typed.length > 2 && typed.split(' ').every((word) => parts.includes(word));
}

/**
 * Letters to add, drop, change or swap with their neighbour to turn one word into the other.
 *
 * Output    a whole number, or Infinity as soon as it is sure to be above `furthest`
 * Source    Damerau 1964, Commun. ACM 7:171; the restricted form, in which no letter moves twice
 * Example   editDistance('orgnae', 'orange', 3) is 2
 */
export function editDistance(one: string, other: string, furthest: number): number {
  if (Math.abs(one.length - other.length) > furthest) return Number.POSITIVE_INFINITY;
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let line = 1; line <= one.length; line += 1) {
    const next = [line];
    for (let column = 1; column <= other.length; column += 1) {
      const change = one[line - 1] === other[column - 1] ? 0 : 1;
      const isSwap =
        line > 1 && column > 1 && one[line - 1] === other[column - 2] && one[line - 2] === other[column - 1];
      next.push(
        Math.min(
          at(row, column - 1) + change,
          at(row, column) + 1,
          at(next, column - 1) + 1,
          isSwap ? at(before, column - 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    if (Math.min(...next) > furthest && Math.min(...row) > furthest) return Number.POSITIVE_INFINITY;
    before = row;
    row = next;
  }
  const distance = at(row, other.length);
  return distance <= furthest ? distance : Number.POSITIVE_INFINITY;
}

const at = (row: readonly number[], index: number): number => row[index] ?? Number.POSITIVE_INFINITY;
