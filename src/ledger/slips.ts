/** The usual slips of a hand that types YAML, recognised by the line, so that the advice fits. */

import type { Finding, SourceText } from './places.ts';
import { unclosedBracket, unclosedQuote } from './slips-open.ts';
import type { Span } from './tree.ts';

export interface Slip {
  readonly finding: Finding;
  readonly span: Span;
  /** The character that, put at the span's start, lets the rest of the file be read. */
  readonly mask?: string;
}

/** An error of the library on its line: the line's text and offset, and where the error stands in it. */
export interface Seen {
  readonly code: string;
  readonly span: Span;
  readonly line: string;
  readonly lineStart: number;
  readonly at: number;
}

/** The slip behind an error of the library; undefined where the line shows none that we know. */
export function slipOn(source: SourceText, code: string, span: Span): Slip | undefined {
  const { text } = source;
  const start = Math.min(span.start, text.length);
  const lineStart = start === 0 ? 0 : text.lastIndexOf('\n', start - 1) + 1;
  const lineEnd = text.indexOf('\n', start);
  const line = text.slice(lineStart, lineEnd === -1 ? text.length : lineEnd).replace(/\r$/u, '');
  const seen = { code, span, line, lineStart, at: start - lineStart };
  for (const recognise of recognisers) {
    const slip = recognise(seen, text);
    if (slip) return slip;
  }
  return undefined;
}

type Recogniser = (seen: Seen, text: string) => Slip | undefined;

const spanIn = (seen: Seen, from: number, length: number): Span => ({
  start: seen.lineStart + from,
  end: seen.lineStart + from + length,
});

const tabIndent: Recogniser = (seen) => {
  const indent = /^\s*/u.exec(seen.line)?.[0] ?? '';
  const tab = indent.indexOf('\t');
  if (tab === -1) return undefined;
  const finding = { code: 'tab', message: 'the line is indented with a tab', hint: 'use spaces' };
  return { finding, span: spanIn(seen, tab, 1), mask: ' ' };
};

const head = String.raw`^\s*(?:- +)*`;
const markedValue = new RegExp(String.raw`${head}(?:[^:#"'\s][^:#]*:\s+)?([@%*&!${'`'}]|-\s)(.*)$`, 'u');

/** `water: @ 5 g`, and a note that begins with a sign. */
const mark: Recogniser = (seen) => {
  const [whole, sign = '', rest = ''] = markedValue.exec(seen.line) ?? [];
  if (whole === undefined) return undefined;
  const at = whole.length - rest.length - sign.length;
  const isBullet = sign.startsWith('-') && (seen.at !== at || !/:\s+$/u.test(seen.line.slice(0, at)));
  if (isBullet) return undefined;
  return { finding: markFinding(sign.trim(), rest.trim()), span: spanIn(seen, at, 1), mask: ' ' };
};

/** A value that begins with a sign that means something else in YAML. */
export function markFinding(sign: string, rest: string): Finding {
  const message = `the value begins with "${sign}", which has a meaning of its own here`;
  if (!/^[\d.]/u.test(rest))
    return { code: 'mark', message, hint: 'put quotes around the whole value, or leave the sign out' };
  const isShare = sign === '%' && /^[\d.]+$/u.test(rest);
  return { code: 'mark', message, hint: `write ${isShare ? `${rest} %` : rest}` };
}

const gluedColon = new RegExp(String.raw`${head}(\p{L}[\p{L}\d _-]*):([^\s:/].*)$`, 'u');

/** `trial:14` */
const missingSpace: Recogniser = (seen) => {
  const glued = gluedColonIn(seen.line);
  return glued && { finding: glued.finding, span: spanIn(seen, glued.at, 1) };
};

/** A word glued to its value by a colon without a space. */
export function gluedColonIn(line: string): { readonly finding: Finding; readonly at: number } | undefined {
  const [, typed = '', value = ''] = gluedColon.exec(line) ?? [];
  if (typed === '') return undefined;
  const key = typed.trim();
  const hint = `write "${key}: ${value.trim()}"`;
  const finding = { code: 'colon-space', message: `no space after the colon of "${key}"`, hint };
  return { finding, at: line.indexOf(`${typed}:`) + typed.length };
}

/** `note: it said: no` */
const secondColon: Recogniser = (seen) => {
  if (seen.code !== 'BLOCK_AS_IMPLICIT_KEY') return undefined;
  const at = seen.line.indexOf(': ', seen.at);
  const value = seen.line.slice(seen.at).trim();
  if (at === -1 || /^["']/u.test(value)) return undefined;
  const finding = {
    code: 'colon-in-text',
    message: 'the text holds ": ", which begins a value of its own',
    hint: `put quotes around it: ${quoted(value)}`,
  };
  return { finding, span: spanIn(seen, at, 1), mask: ';' };
};

const quoted = (value: string): string => (value.includes('"') ? `'${value}'` : `"${value}"`);

/** `note: 'it's gone'`, `note: "clear" at last` */
const afterQuote: Recogniser = (seen) => {
  const before = seen.line.slice(0, seen.at);
  const quote = /(["'])\s*$/u.exec(before)?.[1];
  if (seen.code !== 'UNEXPECTED_TOKEN' || quote === undefined) return undefined;
  const finding = {
    code: 'text-after-quote',
    message: `there is text after the closing ${quote}`,
    hint: `put the whole text in ${quote === "'" ? 'double' : 'single'} quotes`,
  };
  return { finding, span: spanIn(seen, seen.at, Math.max(1, seen.line.length - seen.at)) };
};

/** `note: | text` */
const afterBlockMark: Recogniser = (seen) => {
  if (!/:\s+[|>][-+\d]*\s*$/u.test(seen.line.slice(0, seen.at))) return undefined;
  const message = 'text stands on the line of "|" or ">"';
  const finding = { code: 'not-yaml', message, hint: 'start the text on the next line, indented' };
  return { finding, span: spanIn(seen, seen.at, Math.max(1, seen.line.length - seen.at)) };
};

const open: Recogniser = (seen, text) => unclosedQuote(seen, text) ?? unclosedBracket(seen, text);

/** A line of plain words among keys. */
const noColon: Recogniser = (seen) => {
  const words = seen.line.trim();
  if (!/KEY|MISSING_CHAR/u.test(seen.code) || !/^\p{L}[^:]*$/u.test(words)) return undefined;
  const message = `"${words}" has no colon after it`;
  const finding = { code: 'not-yaml', message, hint: 'write "word: value", or indent it under its text' };
  return { finding, span: spanIn(seen, seen.line.indexOf(words), words.length) };
};

const looseBracket: Recogniser = (seen) => {
  const sign = seen.line.charAt(seen.at);
  if (seen.code !== 'UNEXPECTED_TOKEN' || !/[\]}]/u.test(sign)) return undefined;
  const message = `"${sign}" closes nothing`;
  const finding = { code: 'not-yaml', message, hint: 'delete it, or put quotes around the text' };
  return { finding, span: spanIn(seen, seen.at, 1), mask: ' ' };
};

/** A line that starts a little to the right or left of those that it belongs with. */
const wrongColumn: Recogniser = (seen) => {
  const indent = /^ +(?=\S)/u.exec(seen.line)?.[0].length ?? 0;
  if (!/MISSING_CHAR|BAD_INDENT/u.test(seen.code) || seen.at >= indent) return undefined;
  const message = 'the line does not start in the column of the lines that it belongs with';
  const finding = { code: 'indent', message, hint: 'start it right below them' };
  return { finding, span: spanIn(seen, indent, 1) };
};

/** `- item` among lines of `word: value`. */
const strayDash: Recogniser = (seen) => {
  if (!/KEY|MISSING_CHAR|UNEXPECTED/u.test(seen.code) || !/^\s*-(?:\s|$)/u.test(seen.line)) return undefined;
  if (seen.line.charAt(seen.at) !== '-' || seen.line.slice(0, seen.at).trim() !== '') return undefined;
  const finding = {
    code: 'indent',
    message: 'a line with a dash stands here among lines of "word: value"',
    hint: 'put it under the word that it belongs to',
  };
  return { finding, span: spanIn(seen, seen.at, 1) };
};

const recognisers: readonly Recogniser[] = [
  tabIndent,
  open,
  wrongColumn,
  strayDash,
  mark,
  missingSpace,
  secondColon,
  afterQuote,
  afterBlockMark,
  looseBracket,
  noColon,
];
