/** The person's own meter: every observation of the ledger that has both a droplet size and a turbidity. */

import type { Book } from '../calc/book.ts';
import { type Calibration, calibrate, uncalibrated } from '../calc/light/calibration.ts';
import type { OwnReading } from '../calc/light/meter-reading-field.ts';
import type { TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { makeSources, resolveTrial } from '../ledger/resolve.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Here } from './open-ledger.ts';
import { stageModel } from './why-model.ts';

/** Set by three readings or more; the published factor of two with fewer. */
export async function ownMeter(here: Here, book: Book): Promise<Calibration> {
  const readings = await ownReadings(here, book);
  const set = calibrate(readings.map(({ modelled, turbidity }) => ({ modelled, measured: turbidity.inner })));
  return set.ok ? set.value : uncalibrated;
}

export type KeptReading = OwnReading & { readonly modelled: number };

export async function ownReadings(here: Here, book: Book): Promise<readonly KeptReading[]> {
  const opened = await openFolder(here, 'trials', readTrialCard);
  const cards = new Map(opened.flatMap(({ card }) => (card?.isSound ? [[card.number, card] as const] : [])));
  const sources = makeSources({ book, bench: here.bench, trialOf: (number) => cards.get(number) });
  return [...cards.values()]
    .filter(({ observations }) => observations.some((one) => one.droplet && one.turbidity))
    .flatMap((card) => readingsIn(card, resolveTrial(card, sources).mixture?.stages ?? []));
}

type Stages = NonNullable<ReturnType<typeof resolveTrial>['mixture']>['stages'];

function readingsIn(card: TrialCard, stages: Stages): readonly KeptReading[] {
  return card.observations.flatMap(({ droplet, turbidity, sample }): readonly KeptReading[] => {
    if (!droplet || !turbidity || droplet.inner <= 0 || turbidity.inner <= 0) return [];
    const of = sample ? card.samples.find(({ name }) => isSameName(name, sample.text)) : card.samples[0];
    const stage = stages.find(({ name }) => of && isSameName(name, of.of));
    const model = stage && stageModel(stage);
    const modelled = model?.curve.at(droplet.inner * 1e9).ntu;
    return modelled === undefined ? [] : [{ droplet, dose: undefined, turbidity, modelled }];
  });
}
