/** Where it holds: the section of a series that its shape asks for. */

import type { BreakPoint } from '../calc/ladder/break-point.ts';
import type { BenchCard } from '../ledger/cards.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import type { Section } from '../output/report/model.ts';
import { curveParts } from './report-curve.ts';
import { gridChartParts, windowChartParts } from './report-window.ts';
import { section } from './report-words.ts';
import { edgeBlocks } from './series-edge.ts';
import { windowBlocks } from './series-window.ts';

interface Held {
  readonly series: SeriesRungs;
  readonly estimate: BreakPoint | undefined;
}

/** An edge with its curve, a window with its sides, or the grid of two things varied. */
export function chanceSection(bench: BenchCard, { series, estimate }: Held): readonly Section[] {
  if (series.scales.length > 1)
    return section(
      'grid',
      'What held',
      gridChartParts(series),
      'Every beaker where the two that are varied meet.',
    );
  if (series.shape === 'window')
    return section(
      'window',
      'The window',
      [...windowChartParts(series), ...windowBlocks(series).filter(({ kind }) => kind !== 'heading')],
      'It fails when there is too little and when there is too much. What held stands on the shelf, what failed hangs below it; the paler part has not been tried.',
    );
  if (!estimate || estimate.side === 'none') return [];
  const words = edgeBlocks({ series, estimate, bench, width: 80 }).filter(({ kind }) => kind === 'pairs');
  return section('chance', 'The break', [...curveParts(series, estimate), ...words], curveNote);
}

const curveNote =
  'The curve is the chance that a new beaker, made on a new day, holds. The shaded span holds the break with 90 % chance.';
