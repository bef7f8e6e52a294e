/** What calculators may read of a trial beside its mixture: the bench's figures and the newest droplet size. */

import type { TrialPicture } from '../calc/calculator.ts';
import type { BenchCard, TrialCard } from './cards.ts';

export function pictureFacts(card: TrialCard, bench: BenchCard | undefined): Omit<TrialPicture, 'mixture'> {
  const measured = card.observations
    .filter(({ droplet }) => droplet && droplet.inner > 0)
    .sort((left, right) => left.at.epochMilliseconds - right.at.epochMilliseconds)
    .at(-1);
  return { ...benchFacts(bench), number: card.number, droplet: measured?.droplet };
}

/** What a formula has too. */
export const benchFacts = (bench: BenchCard | undefined): Omit<TrialPicture, 'mixture'> => ({
  number: undefined,
  dropGrams: bench?.drop?.massGrams,
  alkalinity: bench?.water.alkalinity,
  temperature: bench?.temperature,
});
