/** Taste scores beside what was seen. */

import type { MadeCard, ObservationCard, SampleCard } from '../ledger/cards.ts';
import { dayOf } from '../ledger/look-strip.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Part, Tasting } from '../output/report/model.ts';

export interface Tasted {
  readonly card: MadeCard;
  readonly sample: SampleCard;
  readonly head: string;
  readonly about: string;
}

/** A row a tasting; the bench's own words first, then the others as they came. */
export function tastingParts(tasted: readonly Tasted[], known: readonly string[]): readonly Part[] {
  const all = tasted.flatMap((one) =>
    observationsOf(one.card, one.sample)
      .filter(({ taste }) => taste.length > 0)
      .map((observation) => ({ ...one, observation })),
  );
  if (all.length === 0) return [];
  const words = wordsOf(
    all.map(({ observation }) => observation),
    known,
  );
  return [{ kind: 'tastings', words, tastings: all.map((one) => tastingOf(one, one.observation, words)) }];
}

function wordsOf(tastings: readonly ObservationCard[], known: readonly string[]): readonly string[] {
  const scored = tastings.flatMap(({ taste }) => taste.map(({ word }) => word));
  const own = known.filter((word) => scored.some((other) => isSameName(word, other)));
  const others = scored.filter((word) => !known.some((other) => isSameName(word, other)));
  return [...own, ...others.filter((word, at) => others.findIndex((one) => isSameName(one, word)) === at)];
}

function tastingOf(one: Tasted, observation: ObservationCard, words: readonly string[]): Tasting {
  const { card, sample, head, about } = one;
  const day = dayOf(card, sample, observation.at.epochMilliseconds);
  const { served, against, blind, by, note } = observation;
  const notes = [
    served && `served ${served}`,
    against && `against ${against}`,
    blind && `blind: ${blind}`,
    by,
    note,
  ];
  return {
    head,
    about,
    look: lookThen(one, observation),
    when: day === undefined ? observation.at.written.slice(0, 10) : `day ${day}`,
    scores: words.map((word) => observation.taste.find((score) => isSameName(score.word, word))?.score),
    notes: notes.filter(Boolean).join(', '),
  };
}

/** Its own look, else the newest before it. */
function lookThen({ card, sample }: Tasted, { at, looks }: ObservationCard): readonly string[] {
  if (looks.length > 0) return looks;
  const before = observationsOf(card, sample).findLast(
    (one) => one.looks.length > 0 && one.at.epochMilliseconds <= at.epochMilliseconds,
  );
  return before?.looks ?? [];
}
