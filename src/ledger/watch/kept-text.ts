/**
 * What is kept of a folder as bytes: a sum of all that follows, what it holds for, and a line for each file.
 *
 * Lines are looked up by the name of their file and not taken apart before somebody asks for what is in them. All of
 * it is ASCII; fields are parted by tabs.
 */

/** Sum and length, in front of everything. */
const headLength = 20;

/** A text as a field: tabs, ends of lines and all that is not ASCII as in JSON. */
export function fieldOf(text: string): string {
  if (simple.test(text)) return text;
  return asciiOf(JSON.stringify(text).slice(1, -1));
}

const simple = /^[ !#-[\]-~]*$/;

export const textOf = (field: string): string => (field.includes('\\') ? openText(`"${field}"`) : field);

function openText(json: string): string {
  const text: string = JSON.parse(json);
  return text;
}

/** JSON whose strings hold ASCII only. */
export const asciiOf = (json: string): string =>
  json.replace(/[^ -~]/gu, (sign) =>
    [...Array(sign.length).keys()]
      .map((at) => `\\u${sign.charCodeAt(at).toString(16).padStart(4, '0')}`)
      .join(''),
  );

export interface KeptFile {
  /** What the disk said of the file before it was read. */
  readonly mark: string;
  readonly errors: number;
  /** What the reading came to, as its fields. */
  readonly row: string;
}

/** `of` is what the lines hold for: another is another program, bench or zone. */
export function keptBytes(of: string, files: ReadonlyMap<string, KeptFile>): Uint8Array {
  const lines = [fieldOf(of)];
  for (const [name, { mark, errors, row }] of files)
    lines.push(`${fieldOf(name)}\t${mark}\t${errors}\t${row}`);
  const text = `${lines.join('\n')}\n`;
  const bytes = Buffer.from(' '.repeat(headLength) + text, 'latin1');
  bytes.write(headOf(bytes), 'latin1');
  return bytes;
}

/** Finds the line of a file; undefined where the whole is torn, not ours, or holds for something else. */
export function openKept(
  bytes: Uint8Array,
  of: string,
): ((name: string, mark: string) => KeptFile | undefined) | undefined {
  const whole = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (whole.toString('latin1', 0, headLength) !== headOf(whole)) return undefined;
  const lines = whole.toString('latin1', headLength).split('\n');
  if (lines[0] !== fieldOf(of)) return undefined;
  const byName = new Map<string, string>();
  for (const line of lines) byName.set(line.slice(0, line.indexOf('\t')), line);
  return (name, mark) => {
    const field = fieldOf(name);
    const line = byName.get(field);
    if (!line?.startsWith(`${mark}\t`, field.length + 1)) return undefined;
    const rest = field.length + mark.length + 2;
    const end = line.indexOf('\t', rest);
    return { mark, errors: Number(line.slice(rest, end)), row: line.slice(end + 1) };
  };
}

const headOf = (whole: Buffer): string =>
  `${`${sumOf(whole)} ${whole.length}`.padEnd(headLength - 1)}\n`.slice(-headLength);

/** Of all bytes after the head, four at a time. */
function sumOf(whole: Buffer): string {
  const tail = whole.subarray(headLength);
  const even = tail.length - (tail.length % 4);
  const aligned = tail.byteOffset % 4 === 0 ? tail : Uint8Array.from(tail);
  let sum = 1;
  const words = new Int32Array(aligned.buffer, aligned.byteOffset, even / 4);
  for (let at = 0; at < words.length; at += 1) sum = (Math.imul(sum, 31) + (words[at] ?? 0)) | 0;
  for (const byte of tail.subarray(even)) sum = (Math.imul(sum, 31) + byte) | 0;
  return (sum >>> 0).toString(16);
}
