/** What is worth a word about a stage of another trial on the day it is used: `emulsion of 14`. */

import { trimmedNumber } from '../calc/number-text.ts';
import type { PlacedCaution } from '../calc/slip-guard/placed-caution.ts';
import { type Advice, adviceAt, adviceProblem } from './advice.ts';
import type { BenchCard, Moment, ResultCard, SeriesCard, StageCard, TrialCard } from './cards.ts';
import type { Check } from './check.ts';
import { outcomeOf, type SampleOutcome, watchRules } from './outcome.ts';
import type { Sources, StagesOf } from './resolve.ts';
import { isSameName, otherStageOf } from './stage-name.ts';

export interface UsedContext {
  readonly sources: Sources;
  /** How the samples of a stage came out, where there are any. */
  readonly outcomeOf: (trial: TrialCard, stage: StageCard) => SampleOutcome['outcome'] | undefined;
  /** Results of a trial that today's amounts would not give any more. */
  readonly staleResults: (trial: TrialCard) => readonly ResultCard[];
  /** Milliseconds since 1970. */
  readonly now: number;
}

/** As a check; how results are reckoned is known elsewhere. */
export const checkUsedStages =
  (staleResults: (trial: TrialCard, sources: Sources) => readonly ResultCard[]): Check =>
  (context) => {
    const { ledger, sources } = context;
    const { trials, formulas, batches, series, bench, now } = ledger;
    const used: UsedContext = {
      sources,
      now,
      outcomeOf: (trial, stage) => stageOutcome({ trial, stage, bench, series }),
      staleResults: (trial) => staleResults(trial, sources),
    };
    return [...trials, ...formulas, ...batches].flatMap((card) =>
      card.isSound ? usedAdvice(card, used).map((advice) => adviceProblem(context, card, advice)) : [],
    );
  };

export interface StageOutcomeOf {
  readonly trial: TrialCard;
  readonly stage: StageCard;
  readonly bench: BenchCard | undefined;
  /** Of the ledger; the one that the trial belongs to is found here. */
  readonly series: readonly SeriesCard[];
}

/**
 * The worst of its samples: failed before watching before held; undefined where nothing tells. What is under stress
 * tells nothing of what stands on the bench.
 */
export function stageOutcome({
  trial,
  stage,
  bench,
  series: all,
}: StageOutcomeOf): SampleOutcome['outcome'] | undefined {
  if (!bench) return undefined;
  const name = trial.series?.text;
  const series = name === undefined ? undefined : all.find((one) => isSameName(one.name, name));
  const outcomes = trial.samples
    .filter((sample) => isSameName(sample.of, stage.name) && !sample.stress)
    .map(
      (sample) => outcomeOf({ card: trial, sample, rules: watchRules({ sample, bench, series }) }).outcome,
    );
  return (['failed', 'watching', 'held', 'ended'] as const).find((one) => outcomes.includes(one));
}

/** A stage of another trial where it is used. */
export interface UsedStage {
  readonly name: string;
  readonly trial: TrialCard;
  readonly stage: StageCard;
  /** Of the file that uses it. */
  readonly at: { readonly stage: string; readonly item: number };
  readonly made: Moment | undefined;
  readonly usedAt: Moment | undefined;
  /** From its making to its use, or to now; undefined where nobody wrote when it was made. */
  readonly ageSeconds: number | undefined;
}

export function usedStages(
  of: StagesOf,
  { sources, now }: Pick<UsedContext, 'sources' | 'now'>,
): readonly UsedStage[] {
  return of.stages.flatMap((user) =>
    user.items.flatMap(({ name }, item): readonly UsedStage[] => {
      const other = otherStageOf(name);
      if (!other || of.stages.some((stage) => isSameName(stage.name, name)) || sources.book.find(name))
        return [];
      const trial = sources.trialOf(other.trial);
      const stage = trial?.stages.find((one) => isSameName(one.name, other.stage));
      if (!trial || !stage) return [];
      const made = stage.made ?? trial.made;
      const usedAt = user.made ?? of.made;
      const until = usedAt?.epochMilliseconds ?? now;
      const ageSeconds = made && Math.max(0, (until - made.epochMilliseconds) / 1000);
      return [{ name, trial, stage, at: { stage: user.name, item }, made, usedAt, ageSeconds }];
    }),
  );
}

/** It failed or is still watched, is older than it keeps, or was changed since. */
export function usedAdvice(of: StagesOf, context: UsedContext): readonly Advice[] {
  return usedStages(of, context).flatMap((used) =>
    [...outcomeCautions(used, context), ...keepCautions(used), ...changeCautions(used, context)].map(
      (caution) => adviceAt(of.stages, caution),
    ),
  );
}

const source = 'common practice, no source';

function caution({ name, at }: UsedStage, code: string, what: string, hint: string): PlacedCaution {
  const short = `"${name}" ${what}`;
  return { code, short, text: `${short}: ${hint}`, hint, source, at };
}

/** It failed, or is still watched. */
export function outcomeCautions(
  used: UsedStage,
  { outcomeOf }: Pick<UsedContext, 'outcomeOf'>,
): readonly PlacedCaution[] {
  const outcome = outcomeOf(used.trial, used.stage);
  if (outcome === 'failed')
    return [caution(used, 'used-failed', 'did not hold in its own trial', 'use one that held')];
  if (outcome === 'watching')
    return [caution(used, 'used-watching', 'is still being watched', 'whether it holds is not known yet')];
  return [];
}

function keepCautions(used: UsedStage): readonly PlacedCaution[] {
  const { stage, ageSeconds, usedAt } = used;
  if (!stage.keep || ageSeconds === undefined || ageSeconds <= stage.keep.inner) return [];
  const when = usedAt ? 'on the day of use' : 'today';
  const what = `is ${ageText(ageSeconds)} old ${when} and keeps ${stage.keep.written}`;
  return [caution(used, 'used-too-old', what, 'make it fresh, or look at it first')];
}

/**
 * Files carry no history, but results carry a mark of what they were reckoned from: it changed where a later result
 * of the same calculator has another mark than the last before the use, or where the newest is no longer right today.
 */
function changeCautions(used: UsedStage, { staleResults }: UsedContext): readonly PlacedCaution[] {
  const { trial, stage, usedAt } = used;
  const isOfStage = (result: ResultCard): boolean =>
    result.stage === undefined || isSameName(result.stage, stage.name);
  const results = trial.results.filter(isOfStage);
  const since = usedAt && changedSince(results, usedAt.epochMilliseconds);
  const stale = since ?? (results.length > 0 ? staleResults(trial).find(isOfStage) : undefined);
  if (!stale) return [];
  const what = since
    ? `was changed since it was used: its ${stale.calculator} of ${dayText(stale.at)} differs from the one before`
    : `was changed since its ${stale.calculator} of ${dayText(stale.at)}`;
  return [caution(used, 'used-edited', what, 'what was used then is not what its file says now')];
}

/** The first result after the use whose mark differs from the last before it. */
function changedSince(results: readonly ResultCard[], usedAt: number): ResultCard | undefined {
  const inTime = [...results].sort((one, other) => one.at.epochMilliseconds - other.at.epochMilliseconds);
  return inTime.find((after) => {
    if (after.at.epochMilliseconds <= usedAt) return false;
    const before = inTime.findLast(
      (one) =>
        one.at.epochMilliseconds <= usedAt &&
        one.calculator === after.calculator &&
        one.stage === after.stage,
    );
    return before?.of !== undefined && after.of !== undefined && before.of !== after.of;
  });
}

const dayText = ({ written }: Moment): string => written.slice(0, 10);

const secondsInDay = 86_400;

/** `8 days`, `5 hours`. */
export function ageText(seconds: number): string {
  const days = seconds / secondsInDay;
  const [count, word] = days >= 1 ? [days, 'day'] : [seconds / 3600, 'hour'];
  const text = trimmedNumber(Math.floor(count), 6);
  return `${text} ${word}${text === '1' ? '' : 's'}`;
}
