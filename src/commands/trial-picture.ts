/** A trial as calculators see it: its mixture resolved, stages of other trials included. */

import type { Book } from '../calc/book.ts';
import type { TrialPicture } from '../calc/calculator.ts';
import type { Io } from '../io.ts';
import type { TrialCard } from '../ledger/cards.ts';
import { benchFacts, pictureFacts } from '../ledger/picture-facts.ts';
import { problemAt } from '../ledger/places.ts';
import { makeSources, resolveTrial } from '../ledger/resolve.ts';
import { openTrialsUsedBy } from '../ledger/single-trial.ts';
import { type Problem, ProblemError } from '../problem.ts';
import { bookOf } from './ledger-book.ts';
import { type OpenedDesign, openDesign, resolveDesign } from './open-formula.ts';
import { type Here, type OpenedTrial, openHere } from './open-ledger.ts';

export interface Pictured {
  readonly picture: TrialPicture;
  readonly warnings: readonly Problem[];
}

/** The picture of a trial that was opened; refused with its problems where it can't be solved. */
export async function pictureOf(here: Here, trial: OpenedTrial, book: Book): Promise<Pictured> {
  const used = await openTrialsUsedBy(here, trial.card);
  const trialOf = (number: number): TrialCard | undefined =>
    number === trial.card.number ? trial.card : used.get(number)?.card;
  const { mixture, found } = resolveTrial(trial.card, makeSources({ book, bench: here.bench, trialOf }));
  const problems = found.map(({ finding, span }) => problemAt(trial.document.source, finding, span));
  if (!mixture) throw new ProblemError(problems);
  return {
    picture: { mixture, ...pictureFacts(trial.card, here.bench) },
    warnings: problems,
  };
}

/** Of a trial by its number or file, or of a formula by its name; with the readings of the own meter if they are wanted. */
export async function openPicture(typed: string, io: Io, withMeter: boolean): Promise<Pictured> {
  const here = await openHere(io);
  const book = await bookOf(here);
  const design = await openDesign(here, io, typed);
  const pictured = await picturedOf(here, design, book);
  if (!withMeter) return pictured;
  const { ownReadings } = await import('./why-meter.ts');
  return { ...pictured, picture: { ...pictured.picture, meter: await ownReadings(here, book) } };
}

async function picturedOf(here: Here, design: OpenedDesign, book: Book): Promise<Pictured> {
  if (design.card.kind === 'trial') return pictureOf(here, { ...design, card: design.card }, book);
  const { mixture, warnings } = await resolveDesign(here, { ...design, card: design.card }, book);
  return { picture: { mixture, ...benchFacts(here.bench) }, warnings };
}
