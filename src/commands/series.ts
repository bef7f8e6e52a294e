/** `series`: the rungs of a ladder in order, what became of them, and where the break lies. */

import type { Caution } from '../calc/answer.ts';
import type { BreakPoint } from '../calc/ladder/break-point.ts';
import type { Io } from '../io.ts';
import { isFoamSeries, notedHeads } from '../ledger/head-pours.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { envelope } from '../output/answer-json.ts';
import type { Block, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail, type Problem } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { type Here, openHere } from './open-ledger.ts';
import { againstBlocks, compareSeries, type SeriesCompared } from './series-against.ts';
import { decisionBlocks } from './series-decision.ts';
import { edgeBlocks, restsOn } from './series-edge.ts';
import { seriesBreak } from './series-estimate.ts';
import { explainSources, seriesExplanation } from './series-explain.ts';
import type { Foam } from './series-foam.ts';
import { seriesFound } from './series-json.ts';
import { listSeries } from './series-list.ts';
import { countRungs, type SeriesCounts, seriesNotes } from './series-notes.ts';
import { openRungs, openSeriesNamed } from './series-open.ts';
import { rungBlocks } from './series-rows.ts';
import { gridBlocks, seriesWindow, windowBlocks } from './series-window.ts';
import { counted, listed } from './series-words.ts';

export async function runSeries(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const name = call.words.join(' ').trim();
  const against = optionValue(call, 'against');
  if (name === '') {
    if (against !== undefined)
      return fail('missing', '--against needs a series to compare', 'name one before it');
    return listSeries(here);
  }
  const read = await readSeries(here, io, name);
  const compared =
    against === undefined ? undefined : compareSeries(read, await readSeries(here, io, against));
  const foam = await readFoam(call, io, here, read.series);
  return outcomeOfSeries({ here, read, compared, foam, width: io.columns });
}

/** Heads over the dose of an antifoam; loaded only where they are what is asked. */
async function readFoam(call: Call, io: Io, here: Here, series: SeriesRungs): Promise<ShownFoam | undefined> {
  const { bench } = here;
  const head = optionValue(call, 'head');
  if (series.scales[0]?.isOilRatio || !isFoamSeries(series)) {
    if (head === undefined) return undefined;
    return fail('not-foam', '--head is for a series over antifoam', 'leave it out, or vary the antifoam');
  }
  const { foamBlocks, foamJson, foamOf } = await import('./series-foam.ts');
  const { wantedHead } = await import('./series-foam-wanted.ts');
  const of = { series, bench, wanted: await wantedHead(here, io, { head, series: series.series }) };
  const hasHeads = notedHeads(series).length > 0;
  const found = foamOf(of);
  return { page: foamBlocks(of), json: foamJson(of), cautions: found.cautions, hasHeads, found };
}

interface ShownFoam {
  readonly page: Page;
  readonly json: Readonly<Record<string, unknown>>;
  readonly cautions: readonly Caution[];
  readonly hasHeads: boolean;
  readonly found: Foam;
}

export interface ReadSeries {
  readonly series: SeriesRungs;
  readonly counts: SeriesCounts;
  readonly estimate: BreakPoint | undefined;
  readonly notes: readonly Problem[];
}

async function readSeries(here: Here, io: Io, name: string): Promise<ReadSeries> {
  const series = await openRungs(here, (await openSeriesNamed(here, io, name)).card);
  const counts = countRungs(series.rungs);
  const estimate = seriesBreak(series, here.bench);
  return { series, counts, estimate, notes: seriesNotes({ series, counts }) };
}

interface Shown {
  readonly here: Here;
  readonly read: ReadSeries;
  readonly compared: SeriesCompared | undefined;
  readonly foam: ShownFoam | undefined;
  readonly width: number;
}

function outcomeOfSeries(shown: Shown): Outcome {
  const { here, read, compared, foam } = shown;
  const { series, counts, estimate } = read;
  const notes = notesOf(shown);
  const isWindow = series.shape === 'window' && series.scales.length === 1;
  const isWrong = series.problems.some(({ severity }) => severity === 'error');
  const needsCare = isWrong || notes.length > 0 || (compared?.problems.length ?? 0) > 0;
  const found = seriesFound({
    series,
    counts,
    estimate,
    window: isWindow ? seriesWindow(series) : undefined,
    restsOn: estimate ? restsOn({ series, estimate, bench: here.bench }) : '',
  });
  return {
    exitCode: needsCare ? 1 : 0,
    page: seriesPage(shown),
    json: envelope({
      schema: 'series@1',
      given: {
        series: series.series.name,
        ...(compared ? { against: compared.other.series.series.name } : {}),
      },
      found: {
        ...found,
        ...(compared ? { against: compared.json } : {}),
        ...(foam ? { foam: foam.json } : {}),
      },
      cautions: foam?.cautions ?? [],
      sources: estimate ? explainSources(series) : [],
      problems: [...series.problems, ...notes, ...(compared?.problems ?? [])],
    }),
    problems: [...series.problems, ...(compared?.other.series.problems ?? [])],
    explained: async () => {
      const edge = seriesExplanation(series, estimate);
      return foam ? (await import('./explain-foam.ts')).foamExplanation(series, foam.found, edge) : edge;
    },
  };
}

/** Where heads were measured, looks are not what the series waits for. */
const notesOf = ({ read, foam }: Shown): readonly Problem[] =>
  foam?.hasHeads
    ? read.notes.filter(({ code }) => !['no-outcome', 'all-held', 'all-failed'].includes(code))
    : read.notes;

function seriesPage(shown: Shown): Page {
  const { here, read, compared, foam, width } = shown;
  const { series, counts, estimate } = read;
  const { bench } = here;
  return [
    ...headBlocks(series, counts),
    ...noteBlocks([...notesOf(shown), ...(compared?.problems ?? [])]),
    ...alikeBlocks(series),
    ...rungBlocks(series, bench.tastes, width),
    ...(series.scales.length > 1 ? gridBlocks(series) : []),
    ...(series.scales.length === 1 && series.shape === 'window' ? windowBlocks(series) : []),
    ...(estimate && estimate.side !== 'none' ? edgeBlocks({ series, estimate, bench, width }) : []),
    ...(foam?.page ?? []),
    ...(compared ? againstBlocks(compared) : []),
    ...decisionBlocks(series, estimate),
  ];
}

function headBlocks({ series, scales }: SeriesRungs, counts: SeriesCounts): Page {
  const varies = scales.map(({ text }) => visible(text)).join(' and ');
  const { beakers, held, failed, watching, ended } = counts;
  const parts = [
    `${held} held`,
    `${failed} failed`,
    `${watching} watching`,
    ...(ended > 0 ? [`${ended} ended`] : []),
  ];
  return [
    { kind: 'heading', text: `Series ${visible(series.name)}${varies === '' ? '' : `: ${varies}`}` },
    ...(series.question ? [{ kind: 'text', text: visible(series.question) } as const] : []),
    { kind: 'text', text: `${counted(beakers, 'beaker')}: ${parts.join(', ')}` },
  ];
}

/** One sentence each, with what to do. */
const noteBlocks = (notes: readonly Problem[]): Page =>
  notes.length === 0
    ? []
    : [
        {
          kind: 'notes',
          mark: '!',
          notes: notes.map(({ message, hint }) => `${message}; ${hint}`),
          tone: 'warn',
        },
      ];

function alikeBlocks({ differences, rungs }: SeriesRungs): Page {
  if (rungs.length < 2) return [];
  if (differences.length === 0) return [{ kind: 'text', text: 'made the same way: yes' }];
  const groups = grouped(differences);
  const days = groups.filter(({ what }) => what === 'day made');
  const isManyDays = days.length > mostDays;
  const notes = groups
    .filter((group) => !(isManyDays && days.includes(group)))
    .map(({ trials, what, text, others }) => `${listed(trials)}: ${what} ${text}, against ${others}`);
  const block: Block = {
    kind: 'notes',
    mark: '-',
    notes: [...(isManyDays ? [daysText(rungs)] : []), ...notes].map(visible),
  };
  return [{ kind: 'text', text: 'made the same way: no' }, block];
}

/** Of more than so many days that differ, which trial was made on which is not told one by one. */
const mostDays = 2;

function daysText(rungs: SeriesRungs['rungs']): string {
  const days = [...new Set(rungs.map(({ day }) => day).filter((day) => day !== ''))].sort();
  return `made on ${days.length} days, ${days[0]} to ${days.at(-1)}`;
}

/** Trials that differ in the same way are told of in one line. */
function grouped(differences: SeriesRungs['differences']) {
  const groups = new Map<string, { trials: number[]; what: string; text: string; others: string }>();
  for (const { trial, what, text, others } of differences) {
    const key = JSON.stringify([what, text]);
    const group = groups.get(key) ?? { trials: [], what, text, others };
    group.trials.push(trial);
    groups.set(key, group);
  }
  return [...groups.values()];
}
