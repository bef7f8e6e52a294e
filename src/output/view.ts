/** What is shown, as data: a page of blocks. Laid out once, in `page.ts`. */

import type { Problem } from '../problem.ts';

export type Tone = 'plain' | 'strong' | 'faint' | 'good' | 'bad' | 'warn';

export type Align = 'left' | 'right' | 'point';

export interface Column {
  readonly head: string;
  readonly align: Align;
}

export type Block =
  /** Problems with their places and excerpts. */
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'heading'; readonly text: string }
  /** Running text, wrapped to the width. */
  | { readonly kind: 'text'; readonly text: string; readonly tone?: Tone }
  /** Lines shown as they are. */
  | { readonly kind: 'lines'; readonly lines: readonly string[]; readonly tone?: Tone }
  /** A label and its value on each line, values aligned on the decimal point unless they are sentences. */
  | {
      readonly kind: 'pairs';
      readonly pairs: readonly (readonly [string, string])[];
      readonly areSentences?: boolean;
    }
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
    }
  /** A table with long text in its cells, wrapped to the width. */
  | {
      readonly kind: 'grid';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
    }
  /** Text after a mark, wrapped and indented under it: cautions, sources, steps. */
  | {
      readonly kind: 'notes';
      readonly mark: string;
      readonly notes: readonly string[];
      readonly tone?: Tone;
    };

export type Page = readonly Block[];
