/** The report of a whole ledger: every series in short, the newest first, then formulas and the trials beside them. */

import { basename } from 'node:path';
import type { Io } from '../io.ts';
import type { FormulaCard, SeriesCard, TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import type { Opened } from '../ledger/open-file.ts';
import { readFormulaCard } from '../ledger/read-formula.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { closingCaution } from '../output/answer-page.ts';
import type { Part, Section } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import { isProblemError } from '../problem.ts';
import type { Call } from './command.ts';
import { aimBlocks } from './drink-page.ts';
import { drinkReport } from './drink-report.ts';
import { figureLines } from './drink-words.ts';
import { bookOf } from './ledger-book.ts';
import type { Here } from './open-ledger.ts';
import { seriesBoard } from './report-board.ts';
import { trialBoard } from './report-design.ts';
import { headlineOf, isLookedAt, type Reported, readForReport } from './report-series.ts';
import { problemPart, section } from './report-words.ts';
import { rungsAmong } from './series-open.ts';
import { trialOutcomes } from './trial-outcomes.ts';

export async function ledgerReport(call: Call, io: Io, here: Here): Promise<Reported> {
  const all = {
    series: await openFolder(here, 'series', readSeriesCard),
    trials: await openFolder(here, 'trials', readTrialCard),
    formulas: await openFolder(here, 'formulas', readFormulaCard),
  };
  const trials = all.trials.flatMap(({ card }) => (card ? [card] : []));
  const problems = Object.values(all)
    .flat()
    .flatMap((one) => one.problems.filter(({ severity }) => severity === 'error'));
  const series = newestFirst(
    all.series.flatMap(({ card }) => (card?.isSound ? [card] : [])),
    trials,
  );
  const sections: readonly Section[] = [
    ...section('mind', 'Take care first', problemPart(problems)),
    ...(await seriesSections(here, series, all.trials)),
    ...(await formulaSections(
      call,
      io,
      here,
      all.formulas.flatMap(({ card }) => (card?.isSound ? [card] : [])),
    )),
    ...section('trials', 'Other trials', await looseTrials(here, trials, series)),
  ];
  const report = {
    kind: 'ledger',
    title: visible(here.bench.name ?? basename(here.root)),
    headline: [],
    facts: [
      ['series', String(series.length)],
      ['trials', String(trials.length)],
      ['formulas', String(all.formulas.length)],
      ['as of', writtenTime(here.port.now(), here.settings.zone).slice(0, 10)],
    ] as const,
    sections,
    closing: closingCaution,
  };
  return { report, cautions: [], sources: [], problems };
}

/** By the newest beaker in them. */
function newestFirst(series: readonly SeriesCard[], trials: readonly TrialCard[]): readonly SeriesCard[] {
  const newest = (card: SeriesCard): number =>
    Math.max(
      0,
      ...trials
        .filter((one) => one.series && isSameName(one.series.text, card.name))
        .map(({ made }) => made?.epochMilliseconds ?? 0),
    );
  return [...series].sort((one, other) => newest(other) - newest(one));
}

async function seriesSections(
  here: Here,
  series: readonly SeriesCard[],
  trials: readonly Opened<TrialCard>[],
): Promise<readonly Section[]> {
  const sections: Section[] = [];
  if (series.length === 0) return [];
  const book = await bookOf(here);
  for (const [at, card] of series.entries()) {
    const read = readForReport(await rungsAmong(here, card, trials, book), here);
    const pairs = headlineOf(read).map(
      ({ label, value, note }) => [label, `${value}${note === '' ? '' : ` (${note})`}`] as const,
    );
    const decided = card.decided?.text;
    const parts: readonly Part[] = [
      {
        kind: 'pairs',
        pairs: [...pairs, ...(decided === undefined ? [] : [['decided', visible(decided)] as const])],
        areSentences: true,
      },
      ...(isLookedAt(read.series) ? seriesBoard(read.series, true) : []),
      ...problemPart([...read.series.problems, ...read.notes]),
    ];
    sections.push(...section(`series-${at + 1}`, visible(card.name), parts, card.question));
  }
  return sections;
}

async function formulaSections(
  call: Call,
  io: Io,
  here: Here,
  formulas: readonly FormulaCard[],
): Promise<readonly Section[]> {
  const sections: Section[] = [];
  for (const [at, card] of formulas.entries()) {
    const parts = await formulaParts(call, io, here, card);
    sections.push(...section(`formula-${at + 1}`, visible(card.name), parts, card.title ?? 'formula'));
  }
  return sections;
}

async function formulaParts(call: Call, io: Io, here: Here, card: FormulaCard): Promise<readonly Part[]> {
  try {
    const report = await drinkReport(
      { ...call, words: [card.file], values: {}, flags: new Set(['yes']) },
      io,
      here,
    );
    return [
      {
        kind: 'table',
        columns: [
          { head: '', align: 'left' },
          { head: '', align: 'right' },
          { head: '', align: 'left' },
        ],
        rows: figureLines(report.drink),
      },
      ...aimBlocks(report.aims),
    ];
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return problemPart(thrown.problems);
  }
}

const mostTrials = 40;

/** Trials of no series that is shown, the newest first. */
async function looseTrials(
  here: Here,
  trials: readonly TrialCard[],
  series: readonly SeriesCard[],
): Promise<readonly Part[]> {
  const loose = trials
    .filter(
      (card) => card.isSound && !series.some(({ name }) => card.series && isSameName(card.series.text, name)),
    )
    .sort((one, other) => other.number - one.number);
  const parts: Part[] = [];
  for (const card of loose.slice(0, mostTrials)) {
    const title = card.title === undefined ? '' : `: ${card.title}`;
    parts.push(
      { kind: 'heading', text: visible(`trial ${card.number}${title}`) },
      ...trialBoard(card, await trialOutcomes(here, card), true),
    );
  }
  if (loose.length > mostTrials)
    parts.push({ kind: 'text', text: `and ${loose.length - mostTrials} older`, tone: 'faint' });
  return parts;
}
