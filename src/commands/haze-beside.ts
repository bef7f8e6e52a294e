/** What a trial's turbidity and droplet readings say beside the model; loaded only where there are some. */

import type { Book } from '../calc/book.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import type { Io } from '../io.ts';
import type { Page } from '../output/view.ts';
import { isProblemError } from '../problem.ts';
import { bookOf } from './ledger-book.ts';
import { resolveDesign } from './open-formula.ts';
import { type Here, type OpenedTrial, openTrialNamed } from './open-ledger.ts';

export interface HazeBeside {
  readonly blocks: Page;
  readonly json: readonly object[];
}

export const isHazeReading = (key: string): boolean => key === 'turbidity' || key === 'droplet';

export async function hazeBeside(
  here: Here,
  trial: OpenedTrial,
  known: { readonly mixture: Mixture; readonly book: Book },
): Promise<HazeBeside> {
  if (!trial.card.observations.some(({ turbidity, droplet }) => turbidity || droplet))
    return { blocks: [], json: [] };
  const { hazeBlocks, hazeJson, hazeRowsOf } = await import('./why-compared.ts');
  const rows = await hazeRowsOf(here, trial, known);
  return { blocks: hazeBlocks(rows), json: hazeJson(rows) };
}

/** The same for a file that has just been written; nothing where it can't be reckoned, which is said elsewhere. */
export async function hazeNow(here: Here, io: Io, file: string): Promise<HazeBeside | undefined> {
  try {
    const trial = await openTrialNamed(here, io, `${here.root}/${file}`);
    const book = await bookOf(here);
    const { mixture } = await resolveDesign(here, trial, book);
    return await hazeBeside(here, trial, { mixture, book });
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return undefined;
  }
}
