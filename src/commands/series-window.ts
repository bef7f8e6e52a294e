/** Series with an optimum, and series that vary two things: what held, without a curve. */

import { type HeldWindow, heldWindow } from '../calc/window.ts';
import type { Rung, SeriesRungs } from '../ledger/rungs.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { shortOutcome } from './outcome-words.ts';
import { figureText, listed, valueWords } from './series-words.ts';

/** The window of the first varied thing; a sample that ended early is not told of. */
export function seriesWindow({ rungs }: SeriesRungs): HeldWindow {
  return heldWindow(
    rungs.flatMap(({ values, judged }) => {
      const outcome = judged?.outcome.outcome;
      const [value] = values;
      const isTold = outcome === 'held' || outcome === 'failed';
      return value !== undefined && isTold ? [{ value, outcome }] : [];
    }),
  );
}

export function windowBlocks(series: SeriesRungs): Page {
  const window = seriesWindow(series);
  const [scale] = series.scales;
  const { lowestHeld, highestHeld, failedBelow, failedAbove, failedInside } = window;
  if (lowestHeld === null || highestHeld === null) return [];
  const end = (failed: number | null): string =>
    failed === null
      ? 'open: nothing failed on this side yet, try further'
      : `failed at ${valueWords(scale, failed)}`;
  const inside = failedInside.map((value) => figureText(scale, value));
  return [
    { kind: 'heading', text: 'The window' },
    {
      kind: 'pairs',
      areSentences: true,
      pairs: [
        ['held from', valueWords(scale, lowestHeld)],
        ['held to', valueWords(scale, highestHeld)],
        ['below', end(failedBelow)],
        ['above', end(failedAbove)],
        ...(inside.length > 0 ? [['failed inside', listed(inside)] as const] : []),
      ],
    },
  ];
}

/** Values that differ by less than this share are one row or column: weighing is no finer. */
const oneStep = 0.02;

/** Values drawn together, each by the first of its group, going up. */
export function steps(values: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (const value of [...values].sort((one, other) => one - other)) {
    const last = found.at(-1);
    if (last === undefined || value - last > oneStep * Math.abs(value)) found.push(value);
  }
  return found;
}

export const stepOf = (value: number, among: readonly number[]): number =>
  among.findLast((step) => value >= step) ?? value;

/** A table of what was seen: the first varied thing downwards, the second across. */
export function gridBlocks({ scales, rungs }: SeriesRungs): Page {
  const [down, across] = scales;
  if (!down || !across || rungs.length === 0) return [];
  const rows = steps(rungs.map(({ values }) => values[0] ?? 0));
  const columns = steps(rungs.map(({ values }) => values[1] ?? 0));
  const cellOf = (row: number, column: number): string =>
    rungs
      .filter(
        ({ values }) => stepOf(values[0] ?? 0, rows) === row && stepOf(values[1] ?? 0, columns) === column,
      )
      .map(gridCell)
      .join(', ');
  return [
    {
      kind: 'heading',
      text: `What held: ${visible(down.text)} downwards, ${visible(across.text)} across`,
    },
    {
      kind: 'grid',
      columns: [
        { head: '', align: 'right' },
        ...columns.map((value) => ({ head: figureText(across, value), align: 'left' as const })),
      ],
      rows: rows.map((row) => [
        figureText(down, row),
        ...columns.map((column) => cellOf(row, column) || '.'),
      ]),
    },
  ];
}

function gridCell({ trial, judged }: Rung): string {
  if (!judged) return `no sample (${trial.number})`;
  const words = shortOutcome({ card: trial, sample: judged.sample, outcome: judged.outcome });
  return `${words} (${trial.number})`;
}
