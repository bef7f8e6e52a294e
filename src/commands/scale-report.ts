/** All that is known of a batch before it is laid out. */

import type { Caution } from '../calc/answer.ts';
import { answered } from '../calc/answered.ts';
import { type Cost, costOf } from '../calc/cost.ts';
import { type BatchPlan, batchPlan } from '../calc/scaling/batch-plan.ts';
import { type Filling, fillingOf } from '../calc/scaling/fill.ts';
import { scaleStages } from '../calc/scaling/scale-stages.ts';
import { type BatchTarget, wholeOf } from '../calc/scaling/target.ts';
import { grams } from '../calc/typed-quantity.ts';
import type { Io } from '../io.ts';
import { servingOf } from '../ledger/check-slips.ts';
import { type FileRevision, fileRevision } from '../ledger/git-revision.ts';
import { fail, type Problem } from '../problem.ts';
import { largestDilution } from '../reference/dilution.ts';
import { bookOf } from './ledger-book.ts';
import { openDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { batchCautions } from './scale-cautions.ts';
import { type BatchCheck, batchChecks } from './scale-checks.ts';
import { type BatchDesign, batchDesign, isDrinkAsked } from './scale-design.ts';
import { type PilotNote, pilotNote } from './scale-pilot.ts';
import type { ScaleRequest } from './scale-request.ts';
import { scalesOf } from './weighing-plan.ts';

export interface BatchReport {
  readonly here: Here;
  readonly request: ScaleRequest;
  readonly made: BatchDesign;
  readonly target: BatchTarget;
  readonly plan: BatchPlan;
  /** What a bottle or keg gets; absent where none is filled. */
  readonly filling: Filling | undefined;
  /** How many bottles or kegs there are; absent where nobody said of what size. */
  readonly bottles: number | undefined;
  readonly bottleMillilitres: number | undefined;
  /** Of the target, after what stays behind. */
  readonly litres: number;
  readonly cost: Cost;
  readonly pilot: PilotNote | undefined;
  readonly checks: readonly BatchCheck[];
  readonly cautions: readonly Caution[];
  readonly revision: FileRevision;
  readonly warnings: readonly Problem[];
}

/** Plans the batch that is asked for. */
export async function batchReport(
  typed: string,
  request: ScaleRequest,
  { io, here }: { readonly io: Io; readonly here: Here },
): Promise<BatchReport> {
  const design = await openDesign(here, io, typed);
  const made = await batchDesign(here, design, { book: await bookOf(here), request });
  const target = request.target ?? asWritten(made);
  const size = bottleSize(made, request, target);
  const filling = request.isFilled ? fillingFor(made, request, { here, millilitres: size }) : undefined;
  const bottlesFilled = filling && isDrinkAsked(request) ? countOf(target, filling) : undefined;
  const plan = planOf({ here, made, request, target, bottlesFilled });
  const { resolved, neededGrams } = plan.target;
  const millilitres = neededGrams / resolved.densityGramsPerMillilitre;
  const bottled = resolved.name === 'drink' ? millilitres : undefined;
  return {
    here,
    request,
    made,
    target,
    plan,
    filling,
    bottles:
      bottlesFilled ??
      target.count ??
      (size === undefined || !bottled ? undefined : Math.floor(bottled / size + 1e-9)),
    bottleMillilitres: size,
    litres: millilitres / 1000,
    cost: costOf(request.target ? boughtIn(plan.exact) : boughtIn(neededFor(made, target, request.loss))),
    pilot: await pilotNote(here, made, { plan, target }),
    checks: batchChecks(made, plan),
    cautions: await batchCautions(here, made, { plan, filling }),
    revision: here.revision
      ? { short: here.revision.short, isChanged: false }
      : await fileRevision(here.root, design.file),
    warnings: made.warnings,
  };
}

/** The last stage, or the drink, as much as the file makes of it. */
function asWritten({ mixture }: BatchDesign): BatchTarget {
  const stage = mixture.drink ?? mixture.stages.at(-1);
  if (!stage) return fail('no-stages', 'there is nothing to make in it', 'give it stages with items');
  return { each: grams(stage.massGrams), stage: stage.name, written: `as written, ${stage.name}` };
}

function bottleSize(made: BatchDesign, { bottle }: ScaleRequest, target: BatchTarget): number | undefined {
  if (bottle) return bottle.inner;
  if (target.count !== undefined && target.each.dimension === 'volume') return target.each.inner;
  return servingOf(made.design.card, made.mixture);
}

function fillingFor(
  { mixture, conditions }: BatchDesign,
  { waterKelvin }: ScaleRequest,
  { here, millilitres }: { readonly here: Here; readonly millilitres: number | undefined },
): Filling | undefined {
  if (millilitres === undefined)
    return fail(
      'missing',
      'nothing says how large a bottle is',
      'give --to "500 x 330 mL", or --bottle 330 mL',
    );
  return answered(
    fillingOf({
      mixture,
      millilitres,
      carbonDioxideVolumes: conditions.carbonDioxideVolumes,
      waterKelvin,
      benchKelvin: here.bench.temperature.inner,
    }),
  );
}

/** Bottles that the target comes to; a last one that is not full counts. */
function countOf(target: BatchTarget, { millilitres, grams: mass }: Filling): number {
  if (target.count !== undefined) return target.count;
  const one = target.each.dimension === 'mass' ? mass : millilitres;
  return Math.max(1, Math.ceil(wholeOf(target) / one - 1e-9));
}

interface Planning {
  readonly here: Here;
  readonly made: BatchDesign;
  readonly request: ScaleRequest;
  readonly target: BatchTarget;
  readonly bottlesFilled: number | undefined;
}

function planOf({ here: { bench }, made, request, target, bottlesFilled }: Planning): BatchPlan {
  return answered(
    batchPlan({
      stages: made.stages,
      mixture: made.mixture,
      target,
      loss: request.loss,
      bottlesFilled,
      largestDilution: bench.largestDilution ?? largestDilution.value,
      bench: {
        scales: scalesOf(bench),
        weighing: bench.weighing.inner,
        vessels: [
          ...bench.vessels.map(({ name, volume, mass }) => ({
            name,
            millilitres: volume?.inner,
            massGrams: mass?.inner,
          })),
          ...request.vessels.map(({ inner, written }) => ({ name: written, millilitres: inner })),
        ],
      },
    }),
  );
}

/** What goes in, without what a stage is enlarged by so that a balance can weigh it. */
const neededFor = ({ stages, mixture }: BatchDesign, target: BatchTarget, loss: number) =>
  answered(scaleStages({ stages, mixture, target, loss })).stages;

const boughtIn = (stages: BatchPlan['exact']) =>
  stages.flatMap(({ items }) =>
    items.flatMap(({ item, exactGrams }) =>
      item.source.kind === 'ingredient' ? [{ entry: item.source.entry, grams: exactGrams }] : [],
    ),
  );
