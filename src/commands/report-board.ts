/** Looks of samples as rows of the board. */

import type { MadeCard, SampleCard } from '../ledger/cards.ts';
import { dayOf } from '../ledger/look-strip.ts';
import type { Rung, SampleFate, SeriesRungs, Standing } from '../ledger/rungs.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import type { BeakerState } from '../output/draw/vessel.ts';
import type { BoardCell, BoardRow, Part } from '../output/report/model.ts';
import { outcomeWords } from './outcome-words.ts';
import { figureText, ratioCell } from './series-words.ts';

/** What was seen on each day; of several looks of a day the last. */
export function cellsOf(card: MadeCard, sample: SampleCard): ReadonlyMap<number, BoardCell> {
  const cells = new Map<number, BoardCell>();
  for (const { at, looks, ended } of observationsOf(card, sample)) {
    const day = dayOf(card, sample, at.epochMilliseconds);
    if (day === undefined || (looks.length === 0 && ended === undefined)) continue;
    const before = cells.get(day);
    cells.set(day, {
      looks: looks.length > 0 ? looks : (before?.looks ?? []),
      ended: ended ?? before?.ended,
    });
  }
  return cells;
}

/** Control and blank that are no rungs first, then the rungs going up; samples beside the judged one as rows of their own. */
export function seriesBoard(series: SeriesRungs, isShort = false): readonly Part[] {
  const { rungs, control, blank, scales } = series;
  const outside = [
    ...(control && !rungs.some((rung) => rung === control) ? [{ standing: control, name: 'control' }] : []),
    ...(blank ? [{ standing: blank, name: 'blank' }] : []),
  ];
  const rows = [
    ...outside.flatMap(({ standing, name }) => standingRows(standing, name)),
    ...rungs.flatMap((rung) => rungRows(rung, series)),
  ];
  if (rows.length === 0) return [];
  const head = scales.map(({ text, isOilRatio }) => (isOilRatio ? 'oil : emulsifier' : text)).join(', ');
  return [
    {
      kind: 'board',
      board: { caption: 'What was seen, day by day', head: head === '' ? 'beaker' : head, rows, isShort },
    },
  ];
}

const rungRows = (rung: Rung, series: SeriesRungs): readonly BoardRow[] =>
  standingRows(rung, rungName(rung, series), rung.isControl ? 'control' : undefined);

/** `1 : 3`, `2.00 g`, `12.0, 60.0 C` */
export const rungName = ({ values }: Rung, { scales }: SeriesRungs): string =>
  scales
    .map((scale, at) => {
      const value = values[at] ?? 0;
      return scale.isOilRatio && value > 0 ? ratioCell(value) : figureText(scale, value);
    })
    .join(', ');

function standingRows(standing: Standing, head: string, beside?: string): readonly BoardRow[] {
  const { trial, judged, others } = standing;
  const fates = judged ? [judged, ...others] : others;
  return fates.map((fate, at) => ({
    head: at === 0 ? head : '',
    about: aboutOf(standing, fate, fates.length > 1),
    cells: cellsOf(trial, fate.sample),
    outcome: outcomeWords({ card: trial, sample: fate.sample, outcome: fate.outcome }),
    beside: at === 0 ? beside : undefined,
  }));
}

function aboutOf({ trial }: Standing, { sample }: SampleFate, isOneOfMany: boolean): string {
  const place = sample.at ? ` at ${sample.at.written}` : '';
  return `trial ${trial.number}${isOneOfMany ? `, ${sample.name}` : ''}${place}`;
}

export const stateOf = ({ judged }: Standing): BeakerState => judged?.outcome.outcome ?? 'ended';
