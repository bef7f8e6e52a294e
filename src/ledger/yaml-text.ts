/**
 * How the ledger writes a text as a YAML scalar in block style, so that it reads back letter for letter under
 * the failsafe schema: plain where nothing can be mistaken, else quoted, several lines as a literal block.
 */

/** Characters that would be lost, changed or unseen in plain text: controls, line ends, marks, overrides. */
const unseen =
  /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff\ufffe\uffff]|\p{Surrogate}/u;
const unseenAll = new RegExp(`${unseen.source}|["\\\\]`, 'gu');
const indicator = /^[-?:,[\]{}#&*!|>'"%@`]/;
/** `-5 C` and `-.5` are what people type; only a dash and a blank make a bullet. */
const negativeNumber = /^-\.?\d/;
const mistaken = /^(---|\.\.\.)|^\s|\s$|:(\s|$)|\s#/;

const named: ReadonlyMap<string, string> = new Map([
  ['"', '\\"'],
  ['\\', '\\\\'],
  ['\n', '\\n'],
  ['\r', '\\r'],
  ['\t', '\\t'],
]);

function escaped(character: string): string {
  const code = character.charCodeAt(0);
  const digits = code.toString(16);
  return (
    named.get(character) ?? (code < 0x100 ? `\\x${digits.padStart(2, '0')}` : `\\u${digits.padStart(4, '0')}`)
  );
}

const doubleQuoted = (text: string): string => `"${text.replace(unseenAll, escaped)}"`;

function singleLine(text: string): string {
  if (unseen.test(text)) return doubleQuoted(text);
  const isPlain = text !== '' && !mistaken.test(text) && (!indicator.test(text) || negativeNumber.test(text));
  if (isPlain) return text;
  return /["\\]/.test(text) && !text.includes("'") ? `'${text}'` : doubleQuoted(text);
}

/** Whether a literal block shows each line as it is: no blanks at its ends that an editor would eat. */
function isLiteral(lines: readonly string[]): boolean {
  const [first = ''] = lines;
  return first !== '' && !/^\s/.test(first) && lines.every((line) => !unseen.test(line) && !/\s$/.test(line));
}

/**
 * Writes any text as the value after `key: ` or `- `.
 * Input     the text; `indent`, the spaces before the lines of a literal block, more than the key has
 * Output    one line, or several joined by line feeds (none at the end)
 * Example   plainOrQuoted('held: 3 d', 2) -> "held: 3 d" with its double quotes
 */
export function plainOrQuoted(text: string, indent: number): string {
  if (!text.includes('\n')) return singleLine(text);
  const body = text.endsWith('\n') ? text.slice(0, -1) : text;
  const lines = body.split('\n');
  if (lines.at(-1) === '' || !isLiteral(lines)) return doubleQuoted(text);
  const margin = ' '.repeat(indent);
  const block = lines.map((line) => (line === '' ? '' : margin + line));
  return [body === text ? '|-' : '|', ...block].join('\n');
}

/** Writes any text as the key of a block map, always on one line. */
export function keyText(text: string): string {
  return singleLine(text);
}

/** Writes any text as a value or key inside a flow list or map, always on one line. */
export function flowText(text: string): string {
  const line = singleLine(text);
  return line === text && /[,[\]{}]/.test(text) ? doubleQuoted(text) : line;
}

/** Writes any text in double quotes on one line: right in every place of a document. */
export function quotedText(text: string): string {
  return doubleQuoted(text);
}
