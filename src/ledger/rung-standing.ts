/** What one trial of a series comes to: its mixture, what became of its samples, how it was made. */

import type { Book } from '../calc/book.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import type { AlikeFact } from '../calc/rungs-alike.ts';
import type { Problem } from '../problem.ts';
import type { BenchCard, SampleCard, SeriesCard, TrialCard } from './cards.ts';
import { outcomeOf, type SampleOutcome, type WatchRules, watchRules } from './outcome.ts';
import { problemAt } from './places.ts';
import { resolveTrial, type Sources } from './resolve.ts';
import { rungFacts } from './rung-facts.ts';
import type { Member } from './series-members.ts';
import { isSameName } from './stage-name.ts';
import { entryOf } from './tree.ts';
import type { Varied } from './varied.ts';

/** A sample and what became of it. */
export interface SampleFate {
  readonly sample: SampleCard;
  readonly rules: WatchRules;
  readonly outcome: SampleOutcome;
}

/** A trial of the series, or one named beside it. */
export interface Standing {
  readonly trial: TrialCard;
  readonly mixture: Mixture | undefined;
  /** The sample that decides; undefined where the trial has none of that name. */
  readonly judged: SampleFate | undefined;
  readonly others: readonly SampleFate[];
  readonly facts: readonly AlikeFact[];
}

export interface RungsFrom {
  readonly series: SeriesCard;
  readonly members: readonly Member[];
  readonly bench: BenchCard;
  readonly book: Book;
  /** For mixtures; knows the trials that the members use. */
  readonly sources: Sources;
}

export interface Stood {
  readonly standing: Standing;
  readonly problems: readonly Problem[];
}

export function standingOf(
  trial: TrialCard,
  member: Member,
  varied: readonly Varied[],
  from: RungsFrom,
): Stood {
  const { series, bench, book, sources } = from;
  const { mixture, found } = resolveTrial(trial, sources);
  const fates = trial.samples.map((sample): SampleFate => {
    const rules = watchRules({ sample, bench, series });
    return { sample, rules, outcome: outcomeOf({ card: trial, sample, rules }) };
  });
  const deciding = judgedSample(trial.samples, series);
  const judged = fates.find(({ sample }) => sample === deciding);
  const facts = rungFacts({ trial, sample: judged?.sample, mixture, varied, series, bench, book });
  const faults = found.map(({ finding, span }) => problemAt(member.document.source, finding, span));
  return {
    standing: { trial, mixture, judged, others: fates.filter((one) => one !== judged), facts },
    problems: [
      ...(mixture ? [] : faults),
      ...(judged || fates.length === 0 ? [] : [noJudge(member, series, fates)]),
    ],
  };
}

/** The sample that the series names; the only one where its file names none. */
export function judgedSample(samples: readonly SampleCard[], { judge }: SeriesCard): SampleCard | undefined {
  const [first] = samples;
  if (!judge || (first?.isImplied && samples.length === 1)) return first;
  return samples.find(({ name }) => isSameName(name, judge.text));
}

function noJudge(member: Member, { judge }: SeriesCard, fates: readonly SampleFate[]): Problem {
  const names = fates.map(({ sample }) => `"${sample.name}"`).join(', ');
  const message = `trial ${member.number ?? ''} has no sample "${judge?.text ?? ''}", by which the series is judged, so its looks do not count`;
  const hint = `it has ${names}: name the sample so, or change "judge" of the series`;
  const entry = member.card && entryOf(member.card.root, 'samples');
  const finding = { code: 'no-judged-sample', severity: 'warning' as const, message, hint };
  return problemAt(member.document.source, finding, entry?.key ?? { start: 0, end: 1 });
}
