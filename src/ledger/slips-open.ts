/** Quotes and brackets that are never closed: the library names the end of the file, we name the opening. */

import type { Seen, Slip } from './slips.ts';

const quoteOpened = /(?:^|[:\-,[{] +|^[ \t]*)(["'])/gmu;

export function unclosedQuote({ code, span }: Seen, text: string): Slip | undefined {
  if (code !== 'MISSING_CHAR' || text.slice(span.start).trim() !== '') return undefined;
  for (const match of text.matchAll(quoteOpened)) {
    const at = match.index + match[0].length - 1;
    const quote = match[1] ?? '"';
    if (isClosed(text, at, quote)) continue;
    const message = `the quote ${quote} is opened here and never closed`;
    const finding = { code: 'open-quote', message, hint: 'close it at the end of the text' };
    return { finding, span: { start: at, end: at + 1 } };
  }
  return undefined;
}

/** Whether the same quote stands again on the line, at the end of its text. */
function isClosed(text: string, at: number, quote: string): boolean {
  const newline = text.indexOf('\n', at);
  const rest = text.slice(at + 1, newline === -1 ? text.length : newline);
  return rest.replace(/\\./gu, '').includes(quote);
}

export function unclosedBracket({ code, span }: Seen, text: string): Slip | undefined {
  if (code !== 'MISSING_CHAR' && code !== 'BAD_INDENT') return undefined;
  const before = text.slice(0, span.start).trimEnd();
  const at = lastOpen(before);
  if (at === undefined) return undefined;
  const sign = before.charAt(at);
  const message = `"${sign}" is opened here and not closed before the next line`;
  const hint = `close it with "${sign === '[' ? ']' : '}'}"`;
  return { finding: { code: 'open-bracket', message, hint }, span: { start: at, end: at + 1 } };
}

/** The bracket that begins a value above the error and is still open at its end. */
function lastOpen(before: string): number | undefined {
  let depth = 0;
  for (let at = before.length - 1; at >= Math.max(0, before.length - 4096); at -= 1) {
    const sign = before.charAt(at);
    if (sign === ']' || sign === '}') depth += 1;
    if (sign !== '[' && sign !== '{') continue;
    if (depth > 0) depth -= 1;
    else if (/(?:^|[:\-,[{] +|\n[ \t]*)$/u.test(before.slice(Math.max(0, at - 40), at))) return at;
  }
  return undefined;
}
