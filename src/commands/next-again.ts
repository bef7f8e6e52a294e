/** `next --write` typed again, as after a power cut: what it wrote just before is what it would write. */

import type { Io } from '../io.ts';
import type { TrialCard } from '../ledger/cards.ts';
import { ladderFiles } from './ladder-write.ts';
import type { NextAsked, Planned } from './next.ts';
import { openRungs } from './series-open.ts';

/** After this a beaker that was not looked at yet is one of the series like any other. */
const againMilliseconds = 600_000;

const isUntouched = ({ observations, stages }: TrialCard): boolean =>
  observations.length === 0 && stages.every(({ items }) => items.every(({ weighed }) => !weighed));

export interface AskedAgain {
  readonly asked: NextAsked;
  readonly planned: Planned;
}

/**
 * Plans as if the beakers that were made just now were not there.
 * Output    that plan, where all of them are among its beakers; undefined where they are of another one
 */
export async function askedAgain(
  asked: NextAsked,
  plan: (asked: NextAsked) => Promise<Planned>,
  io: Io,
): Promise<AskedAgain | undefined> {
  const { here, opened, book } = asked;
  const fresh = asked.rungs.rungs
    .map(({ trial }) => trial)
    .filter((trial) => {
      const age = io.now() - (trial.made?.epochMilliseconds ?? 0);
      return age >= 0 && age <= againMilliseconds && isUntouched(trial);
    })
    .map(({ number }) => number);
  if (fresh.length === 0 || fresh.length >= asked.rungs.rungs.length) return undefined;
  const rungs = await openRungs(here, opened.card, book, (trial) => !fresh.includes(trial));
  if (rungs.beakers.length === 0) return undefined;
  const before = { ...asked, rungs };
  const planned = await plan(before);
  if (!planned.plan) return undefined;
  const { numbered } = await ladderFiles(planned.plan.ladder, io);
  const there = numbered.filter(({ isThere }) => isThere).map(({ number }) => number);
  return fresh.every((trial) => there.includes(trial)) ? { asked: before, planned } : undefined;
}
