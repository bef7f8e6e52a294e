/** Real files with signs put into them at random places, the same ones in every run. */

/** Numbers from 0 to 1 that are the same in every run (a linear congruence). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const controls = [...Array(32).keys(), ...Array.from({ length: 33 }, (_, at) => 127 + at)];
const overrides = [0x61c, 0x200e, 0x200f, 0x2028, 0x2029, 0x202a, 0x202e, 0x2066, 0x2069, 0xfeff, 0xfffe];
const odd = [...controls, ...overrides].map((code) => String.fromCharCode(code));
const pieces = [
  ...odd,
  ...'[]{}:-?#&*!|>%@`"\'\\,'.split(''),
  ...['\n', '\r\n', '  ', ': ', '- ', '__proto__: x\n', 'constructor: x\n', '<<: ', '1e999', '-0', 'NaN g'],
  ...['9'.repeat(400), '? ? ? ', '[['.repeat(9), '}'.repeat(40), '"'.repeat(41), '&a [*a, *a] '],
];

/** Each time one of the texts, with one to four changes. */
export function* spoiltTexts(texts: readonly string[], rounds: number): Generator<string> {
  const next = numbersFrom(7);
  const pick = (from: readonly string[]): string => from[Math.floor(next() * from.length)] ?? '';
  for (let round = 0; round < rounds; round += 1) {
    let text = pick(texts);
    for (let change = 1 + Math.floor(next() * 4); change > 0; change -= 1) {
      const at = Math.floor(next() * text.length);
      const cut = next() < 0.4 ? Math.floor(next() * 20) : 0;
      text = text.slice(0, at) + pick(pieces) + text.slice(at + cut);
    }
    yield text;
  }
}
