/** HTML from data: every text becomes text, never markup. */

import { visible } from './visible.ts';

/** A piece of HTML that was made here. */
export interface Html {
  readonly html: string;
}

const signs: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text as it may stand between tags and in quoted attributes. */
export const escaped = (text: string): string =>
  visible(text).replace(/[&<>"']/gu, (sign) => signs[sign] ?? '');

type Part = string | number | Html | readonly Html[];

/** HTML with texts in it: pieces made here go in as they are, all else is escaped. */
export function html(words: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return { html: words.reduce((made, word, at) => made + word + partHtml(parts[at]), '') };
}

function partHtml(part: Part | undefined): string {
  if (part === undefined) return '';
  if (typeof part === 'string') return escaped(part);
  if (typeof part === 'number') return String(part);
  return 'html' in part ? part.html : part.map((one) => one.html).join('');
}

/** A text as a quoted string of a style sheet. */
export const cssString = (text: string): string =>
  `"${visible(text).replace(/[^a-zA-Z0-9 .,:()-]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 32).toString(16)} `)}"`;

export interface Document {
  readonly title: string;
  /** Made here; no text from files but through `cssString`. */
  readonly style: string;
  readonly body: Html;
}

/** One self-contained file: nothing is loaded from elsewhere, and nothing in it runs. The first line says whose it is. */
export const htmlDocument = ({ title, style, body }: Document): string =>
  html`<!doctype html><!-- neckring -->
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>${title}</title>
<style>
${{ html: style }}
</style>
</head>
<body>
${body}
</body>
</html>
`.html;
