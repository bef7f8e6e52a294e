/** The usual slips of a hand that types YAML, recognised by the line, so that the advice fits. */

import type { Finding, SourceText } from './places.ts';
import type { Span } from './tree.ts';

export interface Slip {
  readonly finding: Finding;
  readonly span: Span;
}

interface Seen {
  readonly code: string;
  readonly span: Span;
}

/** The slip behind an error of the library; undefined where the line shows none that we know. */
export function slipOn(source: SourceText, seen: Seen): Slip | undefined {
  for (const recognise of recognisers) {
    const slip = recognise(source, seen);
    if (slip) return slip;
  }
  return undefined;
}

const recognisers: readonly ((source: SourceText, seen: Seen) => Slip | undefined)[] = [];
