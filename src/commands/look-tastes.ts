/** What a sample tasted of, as a table: a row a tasting, a column a word. */

import type { MadeCard, ObservationCard, SampleCard } from '../ledger/cards.ts';
import { dayOf } from '../ledger/look-strip.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { alignedOnPoint } from '../output/page.ts';
import type { Column, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';

export interface TastesOf {
  readonly card: MadeCard;
  readonly sample: SampleCard;
  /** The bench's own words, in their order. */
  readonly tastes: readonly string[];
}

interface Extra {
  readonly head: string;
  readonly of: (one: ObservationCard) => string | undefined;
}

const extras: readonly Extra[] = [
  { head: 'served', of: (one) => one.served },
  { head: 'against', of: (one) => one.against },
  { head: 'blind', of: (one) => one.blind },
  { head: 'by', of: (one) => one.by },
];

export function tasteBlocks({ card, sample, tastes }: TastesOf): Page {
  const tastings = observationsOf(card, sample).filter((one) => one.taste.length > 0);
  if (tastings.length === 0) return [];
  const words = wordsIn(tastings, tastes);
  const told = extras.filter(({ of }) => tastings.some((one) => of(one) !== undefined));
  const columns: readonly Column[] = [
    { head: 'tasted', align: 'left' },
    ...words.map((word) => ({ head: visible(word), align: 'point' as const })),
    ...told.map(({ head }) => ({ head, align: 'left' as const })),
  ];
  const scores = words.map((word) => alignedOnPoint(tastings.map((one) => scoreText(one, word))));
  const rows = tastings.map((one, row) => {
    const day = dayOf(card, sample, one.at.epochMilliseconds);
    return [
      day === undefined ? one.at.written.slice(0, 10) : `d${day}`,
      ...scores.map((column) => column[row] ?? ''),
      ...told.map(({ of }) => visible(of(one) ?? '')),
    ];
  });
  return [{ kind: 'grid', columns, rows }];
}

/** The bench's words that were scored, in its order, then the others as they came. */
function wordsIn(tastings: readonly ObservationCard[], tastes: readonly string[]): readonly string[] {
  const scored = tastings.flatMap(({ taste }) => taste.map(({ word }) => word));
  const known = tastes.filter((word) => scored.some((other) => isSameName(word, other)));
  const others = scored.filter((word) => !tastes.some((other) => isSameName(word, other)));
  return [...known, ...others.filter((word, at) => others.findIndex((one) => isSameName(one, word)) === at)];
}

const scoreText = ({ taste }: ObservationCard, word: string): string =>
  taste.find((one) => isSameName(one.word, word))?.score.toString() ?? '';
