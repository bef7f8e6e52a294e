/** Text laid out in columns of character cells. */

/**
 * Text wrapped to a width at spaces; a word longer than the width stands on a line of its own. What a paragraph is
 * indented by stands before each of its lines.
 */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    const [indent = ''] = /^ */.exec(paragraph) ?? [];
    let line = '';
    for (const word of paragraph.slice(indent.length).split(' ')) {
      if (line !== '' && indent.length + cellWidth(line) + 1 + cellWidth(word) > width) {
        lines.push(indent + line);
        line = word;
      } else {
        line = line === '' ? word : `${line} ${word}`;
      }
    }
    lines.push(line === '' ? '' : indent + line);
  }
  return lines;
}

const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}]/u;
const empty = /[\p{Mn}\p{Me}\p{Cf}]/u;

/** How many cells a text takes on a terminal: marks take none, East Asian signs two. */
export function cellWidth(text: string): number {
  if (/^[\x20-\x7e]*$/.test(text)) return text.length;
  let cells = 0;
  for (const sign of text) cells += empty.test(sign) ? 0 : wide.test(sign) ? 2 : 1;
  return cells;
}

export const padEnd = (text: string, cells: number): string =>
  text + ' '.repeat(Math.max(0, cells - cellWidth(text)));
export const padStart = (text: string, cells: number): string =>
  ' '.repeat(Math.max(0, cells - cellWidth(text))) + text;
