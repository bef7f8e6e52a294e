/**
 * Text from files with everything that could drive a terminal made visible: C0 and C1 controls, line and
 * paragraph separators, and the marks that turn the direction of writing.
 */

const unruly = /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;

export function visible(text: string): string {
  return text.replace(unruly, (sign) => {
    const code = sign.charCodeAt(0);
    if (code < 0x20) return String.fromCharCode(0x2400 + code);
    if (code === 0x7f) return '\u2421';
    return `<U+${code.toString(16).toUpperCase().padStart(4, '0')}>`;
  });
}

/** The same, but line feeds stand: they are where a text goes on in a new line. */
export const tameText = (text: string): string => text.split('\n').map(visible).join('\n');

/** Unruly signs as JSON escapes them, for a text that is JSON already: it reads back letter for letter. */
export const escapedInJson = (json: string): string =>
  json.replace(unruly, (sign) =>
    sign === '\n' ? sign : `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
