/**
 * What is refused before the YAML library sees a text: it can be made to hang, or to end the process from
 * inside. Counts here are never below what the library would nest; a text that people type comes nowhere near.
 */

import { Buffer, isUtf8 } from 'node:buffer';
import type { Problem } from '../problem.ts';
import { type Finding, problemAt, sourceText } from './places.ts';

export const largestBytes = 256 * 1024;
export const longestLine = 4096;
export const deepestBrackets = 16;
export const mostMarks = 8;
export const deepestIndentation = 32;
/** Of any kind: more than lines as they are typed fill the largest file with. */
export const mostLines = 12_000;
/** In a line. */
export const mostColons = 256;
/** In all: brackets, and marks that follow another, cost the library far more than their length. */
export const mostBrackets = 2000;
export const mostRepeatedMarks = 1000;

type Decoded = { readonly text: string } | { readonly problem: Problem };

/** Bytes as text, the byte order mark kept; refuses what is too large, and what is not UTF-8, at its line. */
export function decodeFile(file: string, bytes: Uint8Array): Decoded {
  if (bytes.length > largestBytes) return { problem: tooLarge(file, bytes.length) };
  // A TextDecoder would give strings of two bytes a character, which are slower in everything that follows.
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('utf8');
  if (isUtf8(bytes)) return { text };
  const at = firstInvalid(text, bytes);
  const finding = {
    code: 'not-utf-8',
    message: 'a character here is not written in UTF-8',
    hint: 'save the file as UTF-8 and type the character again',
  };
  return { problem: problemAt(sourceText(file, text), finding, { start: at, end: at + 1 }) };
}

export function tooLarge(file: string, bytes: number): Problem {
  const size = `${Math.ceil(bytes / 1024)} KiB`;
  const finding = {
    code: 'file-too-large',
    message: `the file is too large to be read (${size})`,
    hint: `keep it to ${largestBytes / 1024} KiB; move what is not part of it elsewhere`,
  };
  return problemAt(sourceText(file, ''), finding, { start: 0, end: 0 });
}

/** The first replacement character that the bytes do not spell out. */
function firstInvalid(text: string, bytes: Uint8Array): number {
  const encoder = new TextEncoder();
  let byte = 0;
  for (let at = 0; at < text.length; at += 1) {
    const point = text.codePointAt(at) ?? 0;
    const character = String.fromCodePoint(point);
    const isSame = encoder.encode(character).every((value, index) => bytes[byte + index] === value);
    if (point === 0xfffd && !isSame) return at;
    byte += encoder.encode(character).length;
    if (point > 0xffff) at += 1;
  }
  return 0;
}

/** What must not reach the YAML library, found in one pass; undefined where nothing is wrong. */
export function guardText(file: string, text: string): Problem | undefined {
  if (text.length > largestBytes) return tooLarge(file, text.length);
  const found = conflictMarker(text) ?? hostileShape(text);
  return found && problemAt(sourceText(file, text), found.finding, { start: found.at, end: found.end });
}

interface Found {
  readonly finding: Finding;
  readonly at: number;
  readonly end: number;
}

const marker = /^\ufeff?(?:<{7}|>{7}|\|{7}|={7})(?= |\r?$)[^\r\n]*/mu;

function conflictMarker(text: string): Found | undefined {
  const isPossible = text.includes('<<<<<<<') || text.includes('=======') || text.includes('>>>>>>>');
  const match = isPossible || text.includes('|||||||') ? marker.exec(text) : null;
  if (!match) return undefined;
  const finding = {
    code: 'conflict-marker',
    message: `a git conflict was left unsettled here ("${match[0].slice(0, 7)}")`,
    hint: 'keep one side, then delete the lines that begin with <<<<<<<, |||||||, ======= and >>>>>>>',
  };
  return { finding, at: match.index, end: match.index + match[0].length };
}

const refusal = (code: string, message: string, hint: string, at: number, end = at + 1): Found => ({
  finding: { code, message, hint },
  at,
  end,
});

function hostileShape(text: string): Found | undefined {
  const nul = text.indexOf('\0');
  if (nul !== -1) return refusal('nul', 'there is a NUL character here', 'delete it', nul);
  const seen: Seen = { lines: 0, marks: 0, opened: 0, depth: 0, indent: 0, atHead: false };
  const indents: number[] = [0];
  for (let start = 0; start < text.length; ) {
    const newline = text.indexOf('\n', start);
    const end = newline === -1 ? text.length : newline;
    const found = hostileLine({ text, start, end }, seen, indents);
    if (found) return found;
    start = end + 1;
  }
  return undefined;
}

interface Line {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** What was counted so far; of the brackets that are open, the line on which the first of them was opened. */
interface Seen {
  lines: number;
  /** Marks that follow another. */
  marks: number;
  /** Brackets, closed ones too. */
  opened: number;
  depth: number;
  indent: number;
  atHead: boolean;
}

function hostileLine(line: Line, seen: Seen, indents: number[]): Found | undefined {
  const { text, start, end } = line;
  if (end - start > longestLine) {
    const message = `the line is ${end - start} characters long`;
    return refusal('line-too-long', message, `keep it to ${longestLine}; break it into several`, start, end);
  }
  seen.lines += 1;
  if (seen.lines > mostLines) return refusal('too-many-lines', ...tooMany(mostLines, 'lines'), start);
  let head = start;
  while (head < end && text.charCodeAt(head) === 32) head += 1;
  const first = text.charCodeAt(head);
  if (head === end || first === 35 || first === 13) return undefined;
  const indent = head - start;
  while ((indents.at(-1) ?? 0) > indent) indents.pop();
  if ((indents.at(-1) ?? 0) < indent) indents.push(indent);
  if (indents.length > deepestIndentation) {
    const message = `more than ${deepestIndentation} levels of indentation`;
    return refusal('too-deep', message, 'no ledger file needs so many; start the line further left', head);
  }
  if (seen.depth > 0 && !seen.atHead && indent <= seen.indent) seen.depth = 0;
  return hostileMarks(line, head, seen) ?? tooOften(seen, head);
}

const tooMany = (most: number, what: string): readonly [message: string, hint: string] => [
  `more than ${most} ${what} in one file`,
  'move what is not part of it elsewhere',
];

function tooOften({ opened, marks }: Seen, head: number): Found | undefined {
  if (opened > mostBrackets) return refusal('too-deep', ...tooMany(mostBrackets, 'brackets'), head);
  return marks > mostRepeatedMarks
    ? refusal('too-deep', ...tooMany(mostRepeatedMarks, 'marks in a row'), head)
    : undefined;
}

const isBlank = (code: number): boolean => code === 32 || code === 9 || code === 13 || Number.isNaN(code);

/** Runs of `- `, `? ` and `: `, and open brackets. */
function hostileMarks({ text, start, end }: Line, head: number, seen: Seen): Found | undefined {
  let run = 0;
  let runStart = head;
  let colons = 0;
  for (let at = head; at < end; at += 1) {
    const code = text.charCodeAt(at);
    if (code === 32 || code === 9) continue;
    if (code === 45 || code === 63 || code === 58) {
      if (run === 0) runStart = at;
      run = at + 1 === end || isBlank(text.charCodeAt(at + 1)) ? run + 1 : 0;
      if (run > 1) seen.marks += 1;
      if (run > 0 && code === 58) colons += 1;
      if (colons > mostColons)
        return refusal('too-deep', `more than ${mostColons} colons on one line`, 'write one fact a line', at);
      if (run > mostMarks) {
        const message = `more than ${mostMarks} marks "${text.charAt(at)}" in a row`;
        return refusal('too-deep', message, 'write text in quotes, or one "- " a line', runStart, at + 1);
      }
      continue;
    }
    run = 0;
    if (code === 91 || code === 123) {
      if (seen.depth === 0 && !opensToken(text, at, start)) continue;
      if (seen.depth === 0) Object.assign(seen, { indent: head - start, atHead: at === head });
      seen.depth += 1;
      seen.opened += 1;
      if (seen.depth > deepestBrackets) {
        const message = `more than ${deepestBrackets} brackets are open here`;
        return refusal('too-deep', message, 'close them, or write one fact a line without brackets', at);
      }
    } else if ((code === 93 || code === 125) && seen.depth > 0) seen.depth -= 1;
  }
  return undefined;
}

const opensToken = (text: string, at: number, start: number): boolean =>
  at === start || /[\s"'\ufeff]/u.test(text.charAt(at - 1));
