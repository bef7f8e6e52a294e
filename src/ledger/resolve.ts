/** Cards to the mixture: what each item's name means, the stages of other trials first. */

import type { Book } from '../calc/book.ts';
import type { ItemInput, ItemSource, Mixture, MixtureFault, StageInput } from '../calc/mixture/picture.ts';
import { resolveMixture } from '../calc/mixture/resolve-mixture.ts';
import { normaliseName } from '../reference/name.ts';
import { benchDefaults } from './bench-defaults.ts';
import type { BenchCard, ItemCard, Moment, StageCard, TrialCard } from './cards.ts';
import { meterStandard, unknownIngredient } from './ingredient-finding.ts';
import type { Finding } from './places.ts';
import { isPlainlySolvable } from './plainly-solvable.ts';
import { otherStageOf } from './stage-name.ts';
import type { Span } from './tree.ts';
import { wayTo } from './used-loop.ts';

/** Where names are looked up. Trials that were resolved are remembered here. */
export interface Sources {
  readonly book: Book;
  readonly bench: BenchCard | undefined;
  readonly trialOf: (number: number) => TrialCard | undefined;
  /** Whether a trial is there that could not be read. */
  readonly isUnread?: (number: number) => boolean;
  readonly resolved: Map<number, Resolution>;
  readonly uses: Map<number, readonly number[]>;
}

/** What is wrong, in the file that is resolved. */
export interface Found {
  readonly finding: Finding;
  readonly span: Span;
}

export interface Resolution {
  /** Absent where something is wrong that leaves it open. */
  readonly mixture: Mixture | undefined;
  readonly found: readonly Found[];
}

/** Stages with what is known of where they stand. */
export interface StagesOf {
  readonly stages: readonly StageCard[];
  readonly made?: Moment | undefined;
  /** The trial that they are of, so that it is not used in itself. */
  readonly number?: number | undefined;
}

export const makeSources = (parts: Omit<Sources, 'resolved' | 'uses'>): Sources => ({
  ...parts,
  resolved: new Map(),
  uses: new Map(),
});

/** The mixture of a trial, read once however many use it. */
export function resolveTrial(trial: TrialCard, sources: Sources): Resolution {
  const known = sources.resolved.get(trial.number);
  if (known) return known;
  const resolution = resolveStages(trial, sources);
  sources.resolved.set(trial.number, resolution);
  return resolution;
}

/**
 * The mixture of stages of any file.
 * Output    the mixture, and what is wrong with it at the stage or item that shows it; codes `used-loop`,
 *           `made-after-use` and the like for stages of other trials, those of the mixture for the rest
 */
export function resolveStages(of: StagesOf, sources: Sources): Resolution {
  const { stages, found } = inputsOf(of, sources);
  if (hasError(found)) return { mixture: undefined, found };
  const { mixture, found: more } = solved(of, stages, sources);
  return { mixture, found: [...found, ...more] };
}

/** What is wrong with stages; those that any eye sees to be in order are not solved. */
export function stageFaults(of: StagesOf, sources: Sources): readonly Found[] {
  const { stages, found } = inputsOf(of, sources);
  if (isPlainlySolvable(stages) || hasError(found)) return found;
  return [...found, ...solved(of, stages, sources).found];
}

interface Inputs {
  readonly stages: readonly StageInput[];
  readonly found: readonly Found[];
}

function inputsOf(of: StagesOf, sources: Sources): Inputs {
  const found: Found[] = [];
  const places = stagePlaces(of.stages);
  const stages = of.stages.map((stage, index) =>
    stageInput(stage, { of, index, places, sources, report: (one) => found.push(one) }),
  );
  return { stages, found };
}

const hasError = (found: readonly Found[]): boolean =>
  found.some(({ finding }) => finding.severity !== 'warning');

function solved(of: StagesOf, stages: readonly StageInput[], { bench }: Sources): Resolution {
  const { mixture, faults } = resolveMixture({
    stages,
    temperatureKelvin: (bench?.temperature ?? benchDefaults.temperature).inner,
    ...(bench?.drop ? { dropGrams: bench.drop.massGrams } : {}),
  });
  return { mixture, found: faults.map((fault) => atCard(of.stages, fault)) };
}

const stagePlaces = (stages: readonly StageCard[]): ReadonlyMap<string, number> =>
  new Map(stages.map((stage, index): [string, number] => [normaliseName(stage.name), index]).reverse());

interface Surroundings {
  readonly of: StagesOf;
  readonly index: number;
  readonly places: ReadonlyMap<string, number>;
  readonly sources: Sources;
  readonly report: (found: Found) => void;
}

function stageInput(stage: StageCard, around: Surroundings): StageInput {
  const items = stage.items.flatMap((item) => {
    const source = sourceOf(item, around);
    return source ? [itemInput(item, source)] : [];
  });
  return {
    name: stage.name,
    items,
    ...(stage.makes ? { makes: stage.makes } : {}),
    ...(stage.density ? { densityGramsPerMillilitre: stage.density.inner } : {}),
  };
}

const itemInput = ({ name, amount, weighed, role }: ItemCard, source: ItemSource): ItemInput => ({
  name,
  source,
  amount,
  ...(weighed ? { weighedGrams: weighed.inner } : {}),
  ...(role ? { role } : {}),
});

function sourceOf(item: ItemCard, around: Surroundings): ItemSource | undefined {
  const { of, index, places, sources, report } = around;
  const place = places.get(normaliseName(item.name));
  if (place !== undefined) {
    const fault = orderFinding(item.name, place, index);
    if (fault) report({ finding: fault, span: item.nameSpan });
    return fault ? undefined : { kind: 'stage', stage: of.stages[place]?.name ?? item.name };
  }
  const entry = sources.book.find(item.name);
  const standard = meterStandard(item.name, [entry?.name ?? '', ...(entry?.like ?? [])]);
  if (standard) {
    report({ finding: standard, span: item.nameSpan });
    return undefined;
  }
  if (entry) return { kind: 'ingredient', entry };
  const other = otherStageOf(item.name);
  if (other) return otherTrial(item, other, around);
  const stageNames = of.stages.slice(0, index).map(({ name }) => name);
  report({
    finding: unknownIngredient(item.name, sources.book, stageNames),
    span: item.nameSpan,
  });
  return undefined;
}

function orderFinding(name: string, place: number, index: number): Finding | undefined {
  if (place === index)
    return {
      code: 'own-stage',
      message: `"${name}" is used in itself`,
      hint: 'use an earlier stage, or an ingredient',
    };
  if (place < index) return undefined;
  const message = `"${name}" is a stage that is made only after this one`;
  return { code: 'later-stage', message, hint: `move the stage "${name}" above this one` };
}

function otherTrial(
  item: ItemCard,
  { stage, trial: number }: { readonly stage: string; readonly trial: number },
  { of, index, sources, report }: Surroundings,
): ItemSource | undefined {
  const say = (code: string, message: string, hint: string): undefined => {
    report({ finding: { code, message, hint }, span: item.nameSpan });
  };
  const way = of.number === undefined ? undefined : wayTo(number, of.number, sources);
  if (way) {
    const chain = [of.number, ...way].join(' uses ');
    const message = `"${item.name}" is made with this very trial (${chain})`;
    return say('used-loop', message, 'use a stage of another trial');
  }
  const trial = sources.trialOf(number);
  if (!trial && sources.isUnread?.(number)) return say(brokenTrial, ...broken(number, 'its file'));
  if (!trial) {
    const hint = 'write the number of a trial that is there, or the name of an ingredient';
    return say('unknown-trial', `there is no trial ${number}`, hint);
  }
  const used = trial.stages.find(({ name }) => normaliseName(name) === normaliseName(stage));
  if (!used) {
    const names = trial.stages.map(({ name }) => `"${name} of ${number}"`);
    const hint = names.length > 0 ? `write ${names.join(' or ')}` : `give trial ${number} its stages`;
    return say('unknown-stage', `trial ${number} has no stage "${stage}"`, hint);
  }
  if (isMadeAfter(used.made ?? trial.made, of.stages[index]?.made ?? of.made))
    return say(
      'made-after-use',
      `"${item.name}" was made after this: ${(used.made ?? trial.made)?.written}`,
      'put the times right, or use another trial',
    );
  const mixture = trial.isSound ? resolveTrial(trial, sources).mixture : undefined;
  const resolved = mixture?.stages.find(({ name }) => name === used.name);
  if (resolved) return { kind: 'other trial', stage: resolved };
  return say(brokenTrial, ...broken(number, trial.file));
}

const broken = (number: number, file: string): readonly [message: string, hint: string] => [
  `trial ${number} can't be worked out itself`,
  `mend ${file} first`,
];

/** The code of an item whose trial is at fault; that trial's own problems say why. */
export const brokenTrial = 'broken-trial';

const day = 86_400_000;

/** A day alone is only later when it is over before the other begins. */
function isMadeAfter(made: Moment | undefined, used: Moment | undefined): boolean {
  if (!made || !used) return false;
  return made.epochMilliseconds > used.epochMilliseconds + (used.isDay ? day - 1 : 0);
}

/** A fault of the mixture at the amount of its item, or at the name of its stage. */
function atCard(stages: readonly StageCard[], { code, severity, message, hint, ...at }: MixtureFault): Found {
  const stage = stages.find(({ name }) => name === at.stage);
  const item = at.item === undefined ? undefined : stage?.items[at.item];
  const span = item?.amountSpan ?? stage?.nameSpan ?? { start: 0, end: 0 };
  return { finding: { code, severity, message, hint }, span };
}
