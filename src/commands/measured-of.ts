/** Measured beside reckoned for a trial that is shown, reckoned or just observed. */

import type { Book } from '../calc/book.ts';
import type { Io } from '../io.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import { isProblemError } from '../problem.ts';
import { type MeasuredDrink, measuredDrink } from './drink-measured.ts';
import { bookOf } from './ledger-book.ts';
import { resolveDesign } from './open-formula.ts';
import { type Here, type OpenedTrial, openTrialNamed } from './open-ledger.ts';

/** Undefined where nothing was measured of the drink, or it can't be reckoned: that is said elsewhere. */
export async function measuredOf(
  here: Here,
  trial: OpenedTrial,
  book: Book,
): Promise<MeasuredDrink | undefined> {
  const { card } = trial;
  const isTitrated = card.results.some(({ calculator }) => calculator === 'titrate');
  if (!isTitrated && !card.observations.some(hasReading)) return undefined;
  return quietly(async () => {
    const { mixture, sources } = await resolveDesign(here, trial, book);
    return measuredDrink({
      card,
      mixture,
      sources,
      conditions: drinkConditions({ bench: here.bench, card }),
    });
  });
}

/** The same for a file that has just been written. */
export const measuredNow = (here: Here, io: Io, file: string): Promise<MeasuredDrink | undefined> =>
  quietly(async () =>
    measuredOf(here, await openTrialNamed(here, io, `${here.root}/${file}`), await bookOf(here)),
  );

const readings = ['ph', 'acid', 'brix', 'density', 'co2'] as const;

export const isReading = (key: string): boolean => readings.some((one) => one === key);

const hasReading = (observation: OpenedTrial['card']['observations'][number]): boolean =>
  readings.some((key) => observation[key] !== undefined);

async function quietly<T>(work: () => Promise<T>): Promise<T | undefined> {
  try {
    return await work();
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return undefined;
  }
}
