/** What a file says of one sample: what was seen of it, when it was made, whether looking has ended. */

import type { MadeCard, ObservationCard, SampleCard } from './cards.ts';
import { isSameName } from './stage-name.ts';

/** The observations of a sample in the order of time; those without a sample belong to the first. */
export function observationsOf(card: MadeCard, sample: SampleCard): readonly ObservationCard[] {
  const known = sorted.get(card.observations)?.get(sample);
  if (known) return known;
  const own = observationsInOrder(card, sample);
  const bySample = sorted.get(card.observations) ?? new Map<SampleCard, readonly ObservationCard[]>();
  sorted.set(card.observations, bySample.set(sample, own));
  return own;
}

/** Asked for many times of the same sample. */
const sorted = new WeakMap<readonly ObservationCard[], Map<SampleCard, readonly ObservationCard[]>>();

function observationsInOrder(card: MadeCard, sample: SampleCard): readonly ObservationCard[] {
  const [first] = card.samples;
  const own = card.observations.filter((one) =>
    one.sample ? isSameName(one.sample.text, sample.name) : sample === first,
  );
  return isInOrder(own)
    ? own
    : own.sort((left, right) => left.at.epochMilliseconds - right.at.epochMilliseconds);
}

const isInOrder = (observations: readonly ObservationCard[]): boolean =>
  observations.every(
    ({ at }, index) =>
      index === 0 || (observations[index - 1]?.at.epochMilliseconds ?? 0) <= at.epochMilliseconds,
  );

/** When the stage of a sample was made: its own time, else that of the file. */
export const madeOf = (card: MadeCard, sample: SampleCard): MadeCard['made'] =>
  card.stages.find((one) => isSameName(one.name, sample.of))?.made ?? card.made;

export const madeEpoch = (card: MadeCard, sample: SampleCard): number | undefined =>
  madeOf(card, sample)?.epochMilliseconds;

/** The observation that says why looking stopped; the first, where there are several. */
export const endOf = (card: MadeCard, sample: SampleCard): ObservationCard | undefined =>
  observationsOf(card, sample).find((one) => one.ended !== undefined);

/** The newest observation with a look, not later than `until`. */
export const lastLookOf = (
  card: MadeCard,
  sample: SampleCard,
  until = Number.POSITIVE_INFINITY,
): ObservationCard | undefined =>
  observationsOf(card, sample).findLast((one) => one.looks.length > 0 && one.at.epochMilliseconds <= until);
