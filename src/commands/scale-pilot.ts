/** Whether a pilot comes before a batch, beside what was made of the same design before. */

import type { Mixture } from '../calc/mixture/picture.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import type { BatchPlan } from '../calc/scaling/batch-plan.ts';
import { largestJump, pilotFor } from '../calc/scaling/pilot.ts';
import type { BatchTarget } from '../calc/scaling/target.ts';
import { openFolder } from '../ledger/folder.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { resolveStages, resolveTrial } from '../ledger/resolve.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Here } from './open-ledger.ts';
import type { BatchDesign } from './scale-design.ts';

export interface PilotNote {
  readonly stage: string;
  /** The batch over the largest that was made before. */
  readonly times: number;
  readonly grams: number;
  /** As it is typed: `10 L drink`. */
  readonly to: string;
  readonly text: string;
}

export async function pilotNote(
  here: Here,
  made: BatchDesign,
  { plan, target }: { readonly plan: BatchPlan; readonly target: BatchTarget },
): Promise<PilotNote | undefined> {
  const { resolved, exactGrams, stage } = plan.target;
  const before = Math.max(
    ...(await madeBefore(here, made, stage.name)),
    made.mixture.stages.find(({ name }) => name === stage.name)?.massGrams ?? 0,
  );
  const pilot = pilotFor({ made: before, batch: exactGrams });
  if (!pilot) return undefined;
  const amount =
    target.each.dimension === 'volume'
      ? volumeWords(pilot.amount / resolved.densityGramsPerMillilitre)
      : massWords(pilot.amount);
  const to = `${amount} ${stage.name}`;
  const others = plan.exact.filter(
    (one) => one.stage !== stage && one.factor > largestJump && one.stage.name !== made.finished?.dose,
  );
  const more = others.map((one) => `${one.stage.name}: ${numberText(one.factor, 2)} times`).join(', ');
  const text = [
    `This is ${numberText(pilot.times, 2)} times as much ${stage.name} as was made before${more ? ` (${more})` : ''}: how it is made counts as much as what is in it.`,
    `Make a pilot first (${to}), by the same steps, and watch it ${here.bench.watch.written}.`,
  ].join(' ');
  return { stage: stage.name, times: pilot.times, grams: pilot.amount, to, text };
}

/** g of the stage in the trial that the design came from and in batches of the design. */
async function madeBefore(
  here: Here,
  { design, sources }: BatchDesign,
  stage: string,
): Promise<readonly number[]> {
  const { card } = design;
  const from = card.from === undefined ? undefined : sources.trialOf(card.from);
  const batches = (await openFolder(here, 'batches', readBatchCard)).flatMap(({ card: batch }) =>
    batch?.isSound && isOfDesign(batch) ? [batch] : [],
  );
  function isOfDesign(batch: {
    readonly formula?: { readonly text: string } | undefined;
    readonly trial?: number | undefined;
  }): boolean {
    return card.kind === 'trial'
      ? batch.trial === card.number
      : batch.formula !== undefined && isSameName(batch.formula.text, card.name);
  }
  const mixtures = [
    ...(from ? [resolveTrial(from, sources).mixture] : []),
    ...batches.map((batch) => resolveStages(batch, sources).mixture),
  ];
  return mixtures.flatMap((mixture) => massIn(mixture, stage));
}

function massIn(mixture: Mixture | undefined, stage: string): readonly number[] {
  const found = mixture?.stages.find(({ name }) => isSameName(name, stage));
  return found ? [found.massGrams] : [];
}

/** A round figure near it. */
function rounded(value: number): string {
  const decade = 10 ** Math.floor(Math.log10(value));
  const steps = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];
  const nearest = steps.toSorted(
    (one, other) => Math.abs(one * decade - value) - Math.abs(other * decade - value),
  )[0];
  return trimmedNumber((nearest ?? 1) * decade, 4);
}

const volumeWords = (millilitres: number): string =>
  millilitres >= 1000 ? `${rounded(millilitres / 1000)} L` : `${rounded(millilitres)} mL`;
const massWords = (grams: number): string =>
  grams >= 1000 ? `${rounded(grams / 1000)} kg` : `${rounded(grams)} g`;
