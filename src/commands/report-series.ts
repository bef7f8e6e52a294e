/** The report of a series. */

import type { Caution, Citation } from '../calc/answer.ts';
import type { BreakPoint } from '../calc/ladder/break-point.ts';
import type { TrialCard } from '../ledger/cards.ts';
import type { Rung, SeriesRungs, Standing } from '../ledger/rungs.ts';
import { closingCaution } from '../output/answer-page.ts';
import type { Part, Report, Section } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';
import type { Here } from './open-ledger.ts';
import { rungName, seriesBoard, stateOf } from './report-board.ts';
import { chanceSection } from './report-chance.ts';
import { foamParts } from './report-foam.ts';
import { mapParts } from './report-map.ts';
import { photoParts } from './report-photos.ts';
import { tastingParts } from './report-tastes.ts';
import { cautionSection, problemPart, section, sourceSection } from './report-words.ts';
import { decisionBlocks } from './series-decision.ts';
import { seriesBreak } from './series-estimate.ts';
import { explainSources } from './series-explain.ts';
import { countRungs, type SeriesCounts, seriesNotes } from './series-notes.ts';
import { counted, figureText, ratioCell } from './series-words.ts';

export interface SeriesRead {
  readonly series: SeriesRungs;
  readonly counts: SeriesCounts;
  readonly estimate: BreakPoint | undefined;
  readonly notes: readonly Problem[];
}

export function readForReport(series: SeriesRungs, here: Here): SeriesRead {
  const counts = countRungs(series.rungs);
  return {
    series,
    counts,
    estimate: seriesBreak(series, here.bench),
    notes: seriesNotes({ series, counts }),
  };
}

export interface Reported {
  readonly report: Report;
  readonly cautions: readonly Caution[];
  readonly sources: readonly Citation[];
  readonly problems: readonly Problem[];
}

export async function seriesReport(here: Here, read: SeriesRead): Promise<Reported> {
  const { series, estimate, notes } = read;
  const { series: card, problems } = series;
  const foam = foamParts(series, here.bench);
  const hasHeads = foam.parts.length > 0;
  const isPoured = hasHeads && !isLookedAt(series);
  const shown = hasHeads
    ? notes.filter(({ code }) => !['no-outcome', 'all-held', 'all-failed'].includes(code))
    : notes;
  const sources = estimate ? explainSources(series) : [];
  const sections: readonly Section[] = [
    ...section('mind', 'Take care first', problemPart([...problems, ...shown])),
    ...section('board', 'The board', isPoured ? [] : seriesBoard(series), boardNote(read)),
    ...(isPoured ? section('foam', 'Foam', foam.parts) : chanceSection(here.bench, read)),
    ...section('map', 'The map', mapParts(placedOf(series)), mapNote),
    ...section(
      'tastes',
      'Taste',
      tastingParts(tastedOf(series), here.bench.tastes),
      'Scores beside the newest look before them.',
    ),
    ...(isPoured ? [] : section('foam', 'Foam', foam.parts)),
    ...section(
      'decision',
      'The decision',
      decisionBlocks(series, estimate).filter(({ kind }) => kind !== 'heading'),
    ),
    ...section('alike', 'Made the same way', alikeParts(series)),
    ...section('photos', 'Photos', await photoParts(here, trialsOf(series))),
    ...cautionSection(foam.cautions),
    ...sourceSection(sources),
  ];
  const report: Report = {
    kind: 'series',
    title: visible(card.name),
    lead: card.question,
    headline: isPoured ? pouredHeadline(foam.pours, foam.doses) : headlineOf(read),
    facts: factsOf(series),
    sections,
    closing: closingCaution,
  };
  return { report, cautions: foam.cautions, sources, problems };
}

/** Whoever pours for foam need not look at the beakers too, and what was made today has no look yet. */
export const isLookedAt = ({ rungs }: SeriesRungs): boolean =>
  rungs.some(({ trial }) => trial.observations.some(({ looks }) => looks.length > 0));

const mapNote =
  'Each beaker where its masses put it: upwards more oil, to the right more emulsifier with carrier, to the left more water. Percent by mass.';

function boardNote({ counts, series }: SeriesRead): string {
  const { beakers, held, failed, watching } = counts;
  const passes = series.series.passes.join(', ');
  return `${counted(beakers, 'beaker')}: ${held} held, ${failed} failed${watching > 0 ? `, ${watching} still watched` : ''}. What passes: ${passes}. The stronger the tone, the less light comes through.`;
}

/** The value of what is varied, short. */
function pointText({ scales }: SeriesRungs, value: number): string {
  const [scale] = scales;
  return scale?.isOilRatio ? ratioCell(value) : figureText(scale, value);
}

export function headlineOf({ series, estimate, counts }: SeriesRead): Report['headline'] {
  const { held, failed, watching, ended, beakers } = counts;
  const points = estimate ? pointLines(series, estimate) : [];
  const parts = [
    `${held} held`,
    `${failed} failed`,
    ...(watching > 0 ? [`${watching} still watched`] : []),
    ...(ended > 0 ? [`${ended} ended early`] : []),
  ];
  return [...points, { label: 'beakers', value: String(beakers), note: parts.join(', ') }];
}

/** Where heads are measured nothing holds or fails. */
const pouredHeadline = (pours: number, doses: number): Report['headline'] => [
  { label: 'pours', value: String(pours), note: counted(doses, 'dose') },
];

function pointLines(series: SeriesRungs, estimate: BreakPoint): Report['headline'] {
  const { workingPoint, breakPoint, breakLow, breakHigh } = estimate;
  const isRatio = series.scales[0]?.isOilRatio === true;
  const end = (value: number | null): string => (value === null ? 'open' : pointText(series, value));
  return [
    ...(workingPoint === null
      ? []
      : [
          {
            label: 'work at',
            value: pointText(series, workingPoint),
            note: isRatio ? 'oil to emulsifier, by mass' : (series.scales[0]?.text ?? ''),
          },
        ]),
    ...(breakPoint === null
      ? []
      : [
          {
            label: 'breaks at',
            value: pointText(series, breakPoint),
            note: `with 90 % chance from ${end(breakLow)} to ${end(breakHigh)}`,
          },
        ]),
  ];
}

function factsOf({ series, scales, rungs }: SeriesRungs): Report['facts'] {
  const days = rungs
    .map(({ day }) => day)
    .filter((day) => day !== '')
    .sort();
  const [first, last] = [days[0], days.at(-1)];
  return [
    ...(scales.length > 0
      ? [['varies', scales.map(({ text }) => visible(text)).join(' and ')] as const]
      : []),
    ...(first === undefined ? [] : [['made', first === last ? first : `${first} to ${last}`] as const]),
    ...(series.same.length > 0 ? [['kept the same', visible(series.same.join(', '))] as const] : []),
  ];
}

const placedOf = (series: SeriesRungs) => [
  ...series.rungs.map((rung) => ({
    mixture: rung.mixture,
    label: String(rung.trial.number),
    state: stateOf(rung),
  })),
  ...besideOf(series).map((one) => ({
    mixture: one.mixture,
    label: String(one.trial.number),
    state: stateOf(one),
  })),
];

const isRung = (rungs: readonly Rung[], standing: Standing): boolean =>
  rungs.some((rung) => rung.trial === standing.trial);

const besideOf = ({ control, blank, rungs }: SeriesRungs): readonly Standing[] =>
  [control, blank].filter((one) => one !== undefined).filter((one) => !isRung(rungs, one));

const tastedOf = (series: SeriesRungs) =>
  [
    ...besideOf(series).map((standing) => ({ standing, head: '' })),
    ...series.rungs.map((rung) => ({ standing: rung, head: rungName(rung, series) })),
  ].flatMap(({ standing, head }) =>
    standing.trial.samples.map((sample) => ({
      card: standing.trial,
      sample,
      head: head === '' ? `trial ${standing.trial.number}` : head,
      about: head === '' ? sample.name : `trial ${standing.trial.number}, ${sample.name}`,
    })),
  );

export const trialsOf = (series: SeriesRungs): readonly TrialCard[] =>
  [...besideOf(series), ...series.rungs].map(({ trial }) => trial);

function alikeParts({ differences, rungs }: SeriesRungs): readonly Part[] {
  if (rungs.length < 2) return [];
  if (differences.length === 0)
    return [{ kind: 'text', text: 'Besides what is varied, every beaker was made alike.' }];
  return [
    {
      kind: 'table',
      columns: [
        { head: 'trial', align: 'left' },
        { head: 'what', align: 'left' },
        { head: 'is', align: 'left' },
        { head: 'the others', align: 'left' },
      ],
      rows: differences.map(({ trial, what, text, others }) =>
        [String(trial), what, text, others].map(visible),
      ),
    },
  ];
}
