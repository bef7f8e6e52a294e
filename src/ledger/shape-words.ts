/** The words in which the shape of a ledger file is written down, as plain data: every scalar is text. */

export type FileShape =
  | { readonly is: 'text' }
  | { readonly is: 'word'; readonly words: readonly string[] }
  | { readonly is: 'anything' }
  | { readonly is: 'optional'; readonly of: FileShape }
  | { readonly is: 'list'; readonly of: FileShape }
  | { readonly is: 'either'; readonly of: readonly FileShape[] }
  /** Any names, each with the same under it. */
  | { readonly is: 'names'; readonly of: FileShape }
  /** These keys; others only where `rest` says what may stand under them. */
  | { readonly is: 'keys'; readonly keys: KeyShapes; readonly rest?: FileShape };

export interface KeyShapes {
  readonly [key: string]: FileShape;
}

export const text: FileShape = { is: 'text' };
export const anything: FileShape = { is: 'anything' };
export const optional = (of: FileShape): FileShape => ({ is: 'optional', of });
export const list = (of: FileShape): FileShape => ({ is: 'list', of });
export const oneOf = (words: readonly string[]): FileShape => ({ is: 'word', words });
export const either = (...of: readonly FileShape[]): FileShape => ({ is: 'either', of });
export const names = (of: FileShape): FileShape => ({ is: 'names', of });
export const keys = (shapes: KeyShapes): FileShape => ({ is: 'keys', keys: shapes });
/** These keys and any others, with `rest` under those. */
export const keysAnd = (shapes: KeyShapes, rest: FileShape): FileShape => ({
  is: 'keys',
  keys: shapes,
  rest,
});

export const optionalText = optional(text);
export const texts = optional(list(text));
/** One text, or several. */
export const textOrTexts = optional(either(text, list(text)));
