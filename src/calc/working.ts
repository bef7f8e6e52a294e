/**
 * The working of one answer: the lines of arithmetic, the figures that went in with their sources, and the
 * cautions. A calculator writes into it while it works; it belongs to that one answer and to nothing else.
 */

import { figureRange } from '../reference/figure-range.ts';
import type { FigureName } from '../reference/ingredient.ts';
import type { Caution, Citation, WorkingLine } from './answer.ts';
import type { BookEntry } from './book.ts';

/** A sourced constant as `src/reference` keeps it. */
export interface Constant {
  readonly value: number;
  readonly source: string;
  readonly locator?: string;
  readonly fromMemory?: boolean;
}

export interface Working {
  /** The figure of an ingredient, noted with its source; undefined where the record has none. */
  readonly figure: (entry: BookEntry, name: FigureName) => number | undefined;
  /** A constant, noted with its source. */
  readonly constant: (purpose: string, constant: Constant) => number;
  readonly cite: (purpose: string, source: string, fromMemory?: boolean, range?: string) => void;
  readonly line: (equation: string, numbers: string) => void;
  readonly caution: (code: string, text: string, source: string) => void;
}

export interface WorkingRecord {
  readonly lines: readonly WorkingLine[];
  readonly cautions: readonly Caution[];
  readonly citations: readonly Citation[];
  /** What the answer rests on besides its inputs, as `name=value`, for the mark that tells a stale answer. */
  readonly basis: readonly string[];
}

export function startWorking(): { readonly working: Working; readonly record: WorkingRecord } {
  const lines: WorkingLine[] = [];
  const cautions: Caution[] = [];
  const citations: Citation[] = [];
  const basis: string[] = [];

  const cite = (purpose: string, source: string, fromMemory = false, range?: string): void => {
    if (!citations.some((one) => one.for === purpose && one.source === source)) {
      citations.push({ for: purpose, source, fromMemory, ...(range === undefined ? {} : { range }) });
    }
  };
  const working: Working = {
    cite,
    line: (equation, numbers) => void lines.push({ equation, numbers }),
    caution: (code, text, source) => {
      if (!cautions.some((one) => one.code === code && one.text === text))
        cautions.push({ code, text, source });
    },
    figure: (entry, name) => {
      const figure = entry.record.figures[name];
      if (!figure) return undefined;
      cite(
        `${name} of ${entry.name}`,
        withLocator(figure.source, figure.locator),
        figure.fromMemory ?? false,
        figureRange(figure),
      );
      basis.push(`${entry.name} ${name}=${figure.value}`);
      return figure.value;
    },
    constant: (purpose, constant) => {
      cite(purpose, withLocator(constant.source, constant.locator), constant.fromMemory ?? false);
      basis.push(`${purpose}=${constant.value}`);
      return constant.value;
    },
  };
  return { working, record: { lines, cautions, citations, basis } };
}

/** A source key with the place in it, `usp32-orange-oil#specific gravity`; worded where it is shown. */
export function withLocator(source: string, locator?: string): string {
  return locator ? `${source}#${locator}` : source;
}
