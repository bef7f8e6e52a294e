/** A report as data: what it says, in the order in which it says it. Laid out in this folder, and nowhere else. */

import type { AimsChart } from '../draw/aims.ts';
import type { Amounts } from '../draw/amounts.ts';
import type { Course } from '../draw/course.ts';
import type { FoamHeads } from '../draw/foam-heads.ts';
import type { WindowChart } from '../draw/held-window.ts';
import type { HoldCurve } from '../draw/hold-curve.ts';
import type { OutcomeGrid } from '../draw/outcome-grid.ts';
import type { TriangleMap } from '../draw/triangle.ts';
import type { Block } from '../view.ts';

/** One look at a sample. */
export interface BoardCell {
  /** What was seen, the words of the ledger; empty where looking ended. */
  readonly looks: readonly string[];
  readonly ended?: string | undefined;
}

export interface BoardRow {
  readonly head: string;
  readonly about: string;
  /** By the day, whole days since the make. */
  readonly cells: ReadonlyMap<number, BoardCell>;
  readonly outcome: string;
  /** What the row stands for when it is not one of the rungs: `control`. */
  readonly beside?: string | undefined;
}

export interface Board {
  readonly caption: string;
  /** What the rows go by. */
  readonly head: string;
  readonly rows: readonly BoardRow[];
  /** The beakers in a row, each as it was last seen. */
  readonly isShort?: boolean;
}

export type Chart =
  | { readonly draws: 'hold'; readonly of: HoldCurve }
  | { readonly draws: 'window'; readonly of: WindowChart }
  | { readonly draws: 'grid'; readonly of: OutcomeGrid }
  | { readonly draws: 'map'; readonly of: TriangleMap }
  | { readonly draws: 'foam'; readonly of: FoamHeads }
  | { readonly draws: 'amounts'; readonly of: Amounts }
  | { readonly draws: 'aims'; readonly of: AimsChart }
  | { readonly draws: 'course'; readonly of: Course };

export interface Table {
  readonly caption: string;
  readonly columns: readonly { readonly head: string; readonly align: 'left' | 'right' }[];
  readonly rows: readonly (readonly string[])[];
}

export interface Tasting {
  readonly head: string;
  readonly about: string;
  readonly look: readonly string[];
  readonly when: string;
  /** 0 to 5, in the order of the words. */
  readonly scores: readonly (number | undefined)[];
  readonly notes: string;
}

export interface Photo {
  readonly caption: string;
  /** `data:image/jpeg;base64,…` */
  readonly data: string;
}

export type Part =
  | Block
  | { readonly kind: 'board'; readonly board: Board }
  /** No chart without its table. */
  | { readonly kind: 'chart'; readonly chart: Chart; readonly table: Table }
  | { readonly kind: 'tastings'; readonly words: readonly string[]; readonly tastings: readonly Tasting[] }
  | { readonly kind: 'photos'; readonly photos: readonly Photo[] };

export interface Section {
  /** One word, of a report only once. */
  readonly id: string;
  readonly title: string;
  /** What to see in it, in a sentence. */
  readonly note?: string;
  readonly parts: readonly Part[];
}

export interface Report {
  /** `series`, `trial 17` */
  readonly kind: string;
  readonly title: string;
  readonly lead?: string | undefined;
  /** What is to be known first, large. */
  readonly headline: readonly { readonly label: string; readonly value: string; readonly note: string }[];
  readonly facts: readonly (readonly [label: string, value: string])[];
  readonly sections: readonly Section[];
  readonly closing: string;
}
