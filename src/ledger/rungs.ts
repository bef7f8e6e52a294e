/** A series and its trials as rungs: what is varied, what became of the samples, how alike they were made. */

import type { Book } from '../calc/book.ts';
import type { Beaker } from '../calc/ladder/beaker.ts';
import type { FailingSide } from '../calc/ladder/direction.ts';
import type { Making } from '../calc/ladder/priors.ts';
import { type Difference, differences } from '../calc/rungs-alike.ts';
import type { Problem } from '../problem.ts';
import type { SeriesCard, TrialCard } from './cards.ts';
import { lastedShare } from './outcome.ts';
import { type Finding, problemAt } from './places.ts';
import { type Scale, scaled } from './rung-scale.ts';

export type { SampleFate, Standing } from './rung-standing.ts';

import { type RungsFrom, type SampleFate, type Standing, standingOf } from './rung-standing.ts';
import { madeOf } from './sample-record.ts';
import type { Member } from './series-members.ts';
import { isSameName } from './stage-name.ts';
import { entryOf } from './tree.ts';
import {
  hasOptimum,
  isHomogenised,
  namedByBook,
  readVaried,
  usualFailingSide,
  type Varied,
  type VariedFigure,
  variedIn,
} from './varied.ts';

export interface Rung extends Standing {
  /** What is varied, in the unit of its scale; one for each. */
  readonly values: readonly number[];
  /** The day of making as it was typed, `2026-03-02`; empty where nobody wrote it. */
  readonly day: string;
  readonly isControl: boolean;
  /** As the statistics see it; undefined where its value is not above 0 or there is no sample to judge it by. */
  readonly beaker: Beaker | undefined;
}

export interface SeriesRungs {
  readonly series: SeriesCard;
  readonly scales: readonly Scale[];
  readonly shape: 'edge' | 'window';
  readonly making: Making;
  /** On which side beakers fail, by what is varied; undefined where that is not known. */
  readonly usualSide: FailingSide | undefined;
  /** By what is varied, going up; the blank is not among them, the control is where it belongs to the series. */
  readonly rungs: readonly Rung[];
  readonly control: Standing | undefined;
  readonly blank: Standing | undefined;
  /** Of the first varied thing; samples that ended early count as watched for as long as they lasted. */
  readonly beakers: readonly Beaker[];
  readonly differences: readonly Difference[];
  /** What is wrong, with its place where it has one. A rung with an error is left out. */
  readonly problems: readonly Problem[];
  readonly leftOut: readonly string[];
}

/** The rungs of a series. Nothing is thrown for what is wrong in a file. */
export function seriesRungs(from: RungsFrom): SeriesRungs {
  const { series, book } = from;
  const varied = readVaried(series.varies).map((one) => namedByBook(one, book));
  const gathered = gather(from, varied);
  const { standings, blank, control } = gathered;
  const scales = varied.map((one, at) =>
    scaled(
      one,
      standings.flatMap(({ trial, figures }) => {
        const figure = figures[at];
        return figure ? [{ trial: trial.number, figure }] : [];
      }),
    ),
  );
  const rungs = standings
    .map((standing, row) =>
      rungOf(
        standing,
        series,
        scales.map(({ values }) => values[row] ?? 0),
      ),
    )
    .sort(byValue);
  const doubts = scales.flatMap(({ doubt }) => (doubt ? [warning(doubt)] : []));
  return {
    series,
    scales: scales.map(({ scale }) => scale),
    shape: shapeOf(series, varied, book),
    making: makingOf(rungs),
    usualSide: varied[0] && usualFailingSide(varied[0], (name) => book.find(name)?.record.role),
    rungs,
    control: rungs.find(({ isControl }) => isControl) ?? control,
    blank,
    beakers: rungs.flatMap(({ beaker }) => (beaker ? [beaker] : [])),
    differences: differences(rungs.map(({ trial, facts }) => ({ trial: trial.number, facts }))),
    problems: [...gathered.problems, ...doubts],
    leftOut: gathered.leftOut,
  };
}

interface WithFigures extends Standing {
  readonly figures: readonly VariedFigure[];
}

interface Gathered {
  readonly standings: readonly WithFigures[];
  readonly blank: Standing | undefined;
  readonly control: Standing | undefined;
  readonly problems: readonly Problem[];
  readonly leftOut: readonly string[];
}

function gather(from: RungsFrom, varied: readonly Varied[]): Gathered {
  const { series } = from;
  const problems: Problem[] = [];
  const leftOut: string[] = [];
  const standings: WithFigures[] = [];
  let blank: Standing | undefined;
  let control: Standing | undefined;
  for (const member of from.members) {
    const { card } = member;
    const found = card?.isSound ? standingOf(card, member, varied, from) : undefined;
    problems.push(...(found?.problems ?? errorsOf(member)));
    if (!found) leftOut.push(member.file);
    if (!card || !found) continue;
    const isMember = card.series !== undefined && isSameName(card.series.text, series.name);
    if (card.number === series.blank) blank = found.standing;
    else if (!isMember) control = found.standing;
    else {
      const figures = varied.map((one) =>
        found.standing.mixture
          ? variedIn(one, { trial: card, mixture: found.standing.mixture })
          : unsolved(card),
      );
      const lacking = figures.flatMap((one) => ('lacks' in one ? [one.lacks] : []));
      problems.push(...lacking.map((one) => problemIn(member, one)));
      if (lacking.length > 0) leftOut.push(member.file);
      else
        standings.push({
          ...found.standing,
          figures: figures.flatMap((one) => ('lacks' in one ? [] : [one])),
        });
    }
  }
  return { standings, blank, control, problems, leftOut };
}

const errorsOf = (member: Member): readonly Problem[] =>
  member.problems.filter(({ severity }) => severity === 'error');

const unsolved = ({ number, file }: TrialCard) => ({
  lacks: {
    code: 'rung-unsolved',
    message: `trial ${number} can't be worked out, so it is left out`,
    hint: `mend ${file} first`,
  },
});

/** At the stages of the file: that is where a line is missing. */
function problemIn({ document, card }: Member, finding: Finding): Problem {
  const entry = card && entryOf(card.root, 'stages');
  return problemAt(document.source, finding, entry?.key ?? { start: 0, end: 1 });
}

const warning = (finding: Finding): Problem => ({ ...finding, severity: 'warning' });

function rungOf(standing: WithFigures, series: SeriesCard, values: readonly number[]): Rung {
  const { trial, judged } = standing;
  const made = judged ? madeOf(trial, judged.sample) : trial.made;
  const day = made?.written.slice(0, 10) ?? '';
  const [ratio = 0] = values;
  return {
    ...standing,
    values,
    day,
    isControl: trial.number === series.control,
    beaker:
      judged && ratio > 0
        ? { ratio, day: day === '' ? `trial ${trial.number}` : day, ...beakerOutcome(trial, judged) }
        : undefined,
  };
}

function beakerOutcome(
  trial: TrialCard,
  { sample, rules, outcome }: SampleFate,
): Pick<Beaker, 'outcome' | 'lasted'> {
  if (outcome.outcome === 'held' || outcome.outcome === 'failed') return { outcome: outcome.outcome };
  return { outcome: 'watching', lasted: lastedShare({ card: trial, sample, rules }, outcome) };
}

function byValue(one: Rung, other: Rung): number {
  for (const [at, value] of one.values.entries()) {
    const apart = value - (other.values[at] ?? 0);
    if (apart !== 0) return apart;
  }
  return one.trial.number - other.trial.number;
}

/** As the file says; else by what is varied. */
function shapeOf(series: SeriesCard, varied: readonly Varied[], book: Book): 'edge' | 'window' {
  if (entryOf(series.root, 'shape')) return series.shape;
  const [first] = varied;
  return first && hasOptimum(first, (name) => book.find(name)?.record.role) ? 'window' : 'edge';
}

/** Homogenised where more than half of the rungs were. */
function makingOf(rungs: readonly Rung[]): Making {
  const made = rungs.filter(({ trial }) => isHomogenised(trial.stages.flatMap(({ process }) => process)));
  return made.length * 2 > rungs.length ? 'homogenised' : 'stirred';
}
