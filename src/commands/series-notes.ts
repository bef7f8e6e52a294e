/** What must be read before the figures of a series: what is missing, one-sided, or in doubt. */

import { numberText } from '../calc/number-text.ts';
import type { Rung, SeriesRungs, Standing } from '../ledger/rungs.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';
import { outcomeWords } from './outcome-words.ts';
import { counted, valuesList, valueWords } from './series-words.ts';

export interface SeriesCounts {
  readonly beakers: number;
  readonly held: number;
  readonly failed: number;
  readonly watching: number;
  readonly ended: number;
}

/** The rungs by what became of the sample that decides. */
export function countRungs(rungs: readonly Rung[]): SeriesCounts {
  const outcomes = rungs.flatMap(({ judged }) => (judged ? [judged.outcome.outcome] : []));
  const of = (outcome: string): number => outcomes.filter((one) => one === outcome).length;
  return {
    beakers: outcomes.length,
    held: of('held'),
    failed: of('failed'),
    watching: of('watching'),
    ended: of('ended'),
  };
}

interface NotesOf {
  readonly series: SeriesRungs;
  readonly counts: SeriesCounts;
}

/** Each needs attention; the message alone is shown on the page, as one sentence after the other. */
export const seriesNotes = (of: NotesOf): readonly Problem[] => [
  ...variedNotes(of),
  ...sideNotes(of),
  ...besideNotes(of.series),
  ...leftOutNotes(of.series),
];

const note = (code: string, message: string, hint: string): Problem => ({
  code,
  severity: 'warning',
  message,
  hint,
});

function variedNotes({ series: { series, scales, rungs } }: NotesOf): readonly Problem[] {
  if (scales.length === 0) {
    const hint = `add "varies: oil per emulsifier" to ${series.file}`;
    return [note('nothing-varied', 'the series does not say what it varies', hint)];
  }
  if (rungs.length === 0) {
    const message = `no trial that could be read says "series: ${visible(series.name)}"`;
    return [
      note('no-rungs', message, `write it into the trials, or neckring ladder --series "${series.name}"`),
    ];
  }
  const values = rungs.map((rung) => rung.values[0] ?? 0);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (rungs.length < 2 || scales.length > 1 || high - low > 1e-3 * Math.abs(high)) return [];
  const message = `all rungs have the same ${scales[0]?.text ?? ''}: ${valueWords(scales[0], high)}`;
  return [note('one-value', message, 'make others, or change what the series varies')];
}

function sideNotes({ series, counts }: NotesOf): readonly Problem[] {
  const { held, failed, watching, beakers } = counts;
  if (beakers === 0 || series.scales.length === 0) return [];
  if (held + failed === 0) {
    const watched = watching > 0 ? `${counted(watching, 'beaker')} still watched` : 'looking at all stopped';
    const hint = 'look on; neckring due says which and when';
    return [note('no-outcome', `no outcome yet: ${watched}`, hint)];
  }
  if (held > 0 && failed > 0) return [];
  return [oneSided(series, counts, held > 0 ? 'held' : 'failed')];
}

/** How far beyond what was tried the next beakers go; a step that a break seldom lies beyond twice. */
const [further, furthest] = [1.5, 2];

/** Which side is missing, and what to make there; of what is still watched on that side, to look on first. */
function oneSided(series: SeriesRungs, { watching }: SeriesCounts, seen: 'held' | 'failed'): Problem {
  const { usualSide, beakers, scales } = series;
  const [scale] = scales;
  const code = `all-${seen}`;
  const [said, missing] = seen === 'held' ? ['all held', 'failed'] : ['all failed', 'held'];
  const so = watching > 0 ? `${said} so far` : said;
  if (series.shape === 'window' || scales.length > 1 || usualSide === undefined) {
    const hint = `go on in both directions until one ${seen === 'held' ? 'fails' : 'holds'}`;
    return note(code, `${so}: no side has ${missing} yet`, hint);
  }
  const goesUp = (usualSide === 'above') === (seen === 'held');
  const values = beakers.filter(({ outcome }) => outcome === seen).map(({ ratio }) => ratio);
  const last = goesUp ? Math.max(...values) : Math.min(...values);
  const message = `${so}, ${goesUp ? 'up' : 'down'} to ${valueWords(scale, last)}: the break lies ${goesUp ? 'above' : 'below'}`;
  const between = beakers.filter(({ outcome, ratio }) => outcome === 'watching' && ratio > last === goesUp);
  if (between.length > 0) {
    const watched = `${counted(between.length, 'beaker')} there ${between.length === 1 ? 'is' : 'are'} still watched`;
    return note(code, message, `look on: ${watched}; neckring due says when`);
  }
  const steps = goesUp ? [further, furthest] : [1 / furthest, 1 / further];
  const make = valuesList(
    scale,
    steps.map((step) => last * step),
  );
  return note(code, message, `make next: ${make}; ${planned(series)}`);
}

const planned = ({ series }: SeriesRungs): string => `neckring next "${visible(series.name)}" plans them`;

function besideNotes({ series, control, blank, leftOut }: SeriesRungs): readonly Problem[] {
  const missing = [
    ...(series.control !== undefined && !control ? [['control', series.control] as const] : []),
    ...(series.blank !== undefined && !blank ? [['blank', series.blank] as const] : []),
  ];
  return [
    ...(leftOut.length > 0 ? [] : missing).map(([what, number]) =>
      note(
        `no-${what}`,
        `the ${what}, trial ${number}, is not there`,
        `write the number of a trial that is, or take "${what}" out of ${series.file}`,
      ),
    ),
    ...failedOf(control).map((words) =>
      note(
        'control-failed',
        `the control ${words}`,
        'something besides what is varied was different that day: make it and the rungs of its day again',
      ),
    ),
    ...(oilGrams(blank) > 0
      ? [
          note(
            'blank-with-oil',
            `the blank, trial ${blank?.trial.number}, has ${numberText(oilGrams(blank), 3)} g of oil in it, so it is none`,
            `put what was weighed right, or take "blank" out of ${series.file}`,
          ),
        ]
      : []),
    ...failedOf(blank).map((words) =>
      note(
        'blank-failed',
        `the blank ${words}: what is seen there does not come from the oil`,
        'look at the water, the emulsifier and the carrier first',
      ),
    ),
  ];
}

/** The most oil in any of its stages. */
const oilGrams = (standing: Standing | undefined): number =>
  Math.max(
    0,
    ...(standing?.mixture?.stages ?? []).map(({ substances }) =>
      substances.reduce((sum, { role, massGrams }) => (role === 'oil' ? sum + massGrams : sum), 0),
    ),
  );

/** Each with the first thing that is wrong in its file; the others are among the problems. */
const leftOutNotes = ({ leftOut, problems }: SeriesRungs): readonly Problem[] =>
  leftOut.map((file) => {
    const first = problems.find((one) => one.severity === 'error' && one.place?.file === file);
    const why = first === undefined ? '' : `: ${first.message}`;
    return note('left-out', `left out: ${visible(file)}${why}`, first?.hint ?? 'neckring check says why');
  });

function failedOf(standing: Standing | undefined): readonly string[] {
  const { judged, trial } = standing ?? {};
  if (!judged || !trial || judged.outcome.outcome !== 'failed') return [];
  const words = outcomeWords({ card: trial, sample: judged.sample, outcome: judged.outcome });
  const seen = judged.outcome.firstFail?.looks.join(', ') ?? '';
  return [`(trial ${trial.number}) ${words} (${seen})`];
}
