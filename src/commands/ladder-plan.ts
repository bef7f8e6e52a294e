/** A ladder as it is going to be: the rungs solved, the control and the blank beside them, in the order of making. */

import type { Book } from '../calc/book.ts';
import type { Kept } from '../calc/rungs/ratio-masses.ts';
import { shuffled } from '../calc/shuffled.ts';
import { balanceFor, type Scale } from '../calc/weighing/balance.ts';
import type { Io } from '../io.ts';
import type { StageCard, TrialCard } from '../ledger/cards.ts';
import { type RungValue, type Variation, type VariedRung, varying } from '../ledger/ladder-vary.ts';
import { problemAt } from '../ledger/places.ts';
import { resolveStages, type Sources } from '../ledger/resolve.ts';
import { entryOf } from '../ledger/tree.ts';
import type { Varied } from '../ledger/varied.ts';
import { type Fault, type Problem, ProblemError } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { labelOf } from './ladder-words.ts';
import { designWords, type OpenedDesign, resolveDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { scalesOf } from './weighing-plan.ts';

export interface LadderStart {
  readonly here: Here;
  readonly design: OpenedDesign;
  /** The design as a plan: nothing weighed. A formula stands as trial 0. */
  readonly trial: TrialCard;
  readonly sources: Sources;
  readonly book: Book;
  readonly warnings: readonly Problem[];
}

const unknownDivision = 0.01;

export async function startFrom(here: Here, design: OpenedDesign, book: Book): Promise<LadderStart> {
  const { sources, warnings } = await resolveDesign(here, design, book);
  return { here, design, trial: planOf(design), sources, book, warnings };
}

function planOf({ card }: OpenedDesign): TrialCard {
  const stages = card.stages.map(unmade);
  if (card.kind === 'trial') return { ...card, stages, made: undefined };
  const { file, root, isSound, nameSpan } = card;
  const nothing = { samples: [], observations: [], results: [] };
  return { kind: 'trial', number: 0, numberSpan: nameSpan, file, root, isSound, stages, ...nothing };
}

/** What a copy of the stage has: nothing of what happened at the bench. */
const unmade = (stage: StageCard): StageCard => ({
  ...stage,
  made: undefined,
  density: undefined,
  weighs: undefined,
  items: stage.items.map((item) => ({ ...item, weighed: undefined })),
});

export interface VaryAsked {
  readonly start: LadderStart;
  readonly varied: Varied;
  readonly kept: Kept;
}

/** The variation; refused at the stages of the file where the thing varied is not there. */
export function openVariation({ start, varied, kept }: VaryAsked): Variation {
  const { trial, sources, here, design } = start;
  const of = { stages: trial.stages, number: trial.number === 0 ? undefined : trial.number };
  const { mixture, found } = resolveStages(of, sources);
  if (!mixture)
    throw new ProblemError(
      found.map(({ finding, span }) => problemAt(design.document.source, finding, span)),
    );
  const scales = scalesOf(here.bench);
  const divisionOf = (grams: number): number => balanceFor(scales, grams)?.divisionGrams ?? unknownDivision;
  const variation = varying({ trial, mixture, sources, varied, kept, divisionOf });
  if (variation.ok) return variation.value;
  const { fault } = variation;
  const isMissing = fault.code === 'rung-without';
  throw new ProblemError([
    atStages(start, isMissing ? { ...fault, hint: whatIsThere(start, varied) } : fault),
  ]);
}

/** For what is not in the trial: the names that are near, or all. */
function whatIsThere({ trial }: LadderStart, { text }: Varied): string {
  const names = [...new Set(trial.stages.flatMap(({ items }) => items.map(({ name }) => name)))];
  const near = nearestNames(text, names, 2);
  if (near.length > 0) return `did you mean ${near.join(' or ')}?`;
  return `add its line to the file, or vary something that is there: ${names.slice(0, 6).join(', ')}`;
}

/** At the stages of the file from which the ladder starts. */
function atStages({ design }: LadderStart, { code, message, hint }: Fault): Problem {
  const words = message.replace(/\btrial 0\b/gu, designWords(design));
  const key = entryOf(design.card.root, 'stages')?.key ?? { start: 0, end: 1 };
  return problemAt(design.document.source, { code, message: words, hint }, key);
}

export type BeakerRole = 'rung' | 'control' | 'blank';

export interface PlannedBeaker {
  readonly role: BeakerRole;
  readonly value: RungValue | undefined;
  /** `1 : 3`, `4 g`, `control, 1 : 8`, `blank` */
  readonly label: string;
  readonly rung: VariedRung;
}

export interface BeakersAsked {
  readonly start: LadderStart;
  readonly variation: Variation;
  readonly varied: Varied;
  readonly values: readonly RungValue[];
  readonly control?: RungValue | undefined;
  readonly blank?: boolean;
}

/** Every beaker, in a shuffled order of making; all that can't be made are told at once. */
export function plannedBeakers(asked: BeakersAsked, io: Io): readonly PlannedBeaker[] {
  const { start, variation, varied, values, control, blank } = asked;
  const wanted: readonly { readonly role: BeakerRole; readonly value: RungValue | undefined }[] = [
    ...values.map((value) => ({ role: 'rung' as const, value })),
    ...(control === undefined ? [] : [{ role: 'control' as const, value: control }]),
    ...(blank ? [{ role: 'blank' as const, value: undefined }] : []),
  ];
  const problems: Problem[] = [];
  const beakers = wanted.flatMap(({ role, value }): PlannedBeaker[] => {
    const label = labelOf(role, varied, value);
    const rung = value === undefined ? variation.blank() : variation.rungAt(value);
    if (rung.ok) return [{ role, value, label, rung: rung.value }];
    const { fault } = rung;
    problems.push(atStages(start, { ...fault, message: `${label}: ${fault.message}` }));
    return [];
  });
  if (problems.length > 0) throw new ProblemError(problems);
  return shuffled(beakers, io.random);
}

/** The balance on which the varied stage is weighed out. */
export function balanceOf(here: Here, variation: Variation): Scale | undefined {
  const grams = variation.base.mixture.stages[variation.base.stageAt]?.massGrams ?? 0;
  return balanceFor(scalesOf(here.bench), grams);
}
