/** Foam over the dose of an antifoam, as a chart and its table. */

import type { Caution } from '../calc/answer.ts';
import type { BenchCard } from '../ledger/cards.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import type { Part, Table } from '../output/report/model.ts';
import { foamBlocks, foamOf, isFoamSeries } from './series-foam.ts';

export interface FoamParts {
  readonly parts: readonly Part[];
  readonly cautions: readonly Caution[];
  readonly pours: number;
  readonly doses: number;
}

export function foamParts(series: SeriesRungs, bench: BenchCard): FoamParts {
  if (!isFoamSeries(series)) return { parts: [], cautions: [], pours: 0, doses: 0 };
  const { heads, steps, cautions } = foamOf({ series, bench });
  const blocks = foamBlocks({ series, bench });
  const table = blocks.find((block) => block.kind === 'table');
  if (steps.length === 0 || table?.kind !== 'table')
    return { parts: [], cautions, pours: heads.length, doses: steps.length };
  const [scale] = series.scales;
  const chart: Part = {
    kind: 'chart',
    chart: {
      draws: 'foam',
      of: {
        id: 'foam-drawing',
        title: 'Head of foam over the dose of antifoam',
        about: `${heads.length} pours at ${steps.length} doses; the table has the figures.`,
        pours: heads.map(({ dose, headMetres }) => ({ dose, millimetres: headMetres * 1000 })),
        steps: steps.map(({ dose, meanMetres, lowMetres, highMetres }) => ({
          dose,
          mean: meanMetres * 1000,
          low: lowMetres * 1000,
          high: highMetres * 1000,
        })),
        unit: scale?.unit ?? '',
        axis: scale?.text ?? '',
      },
    },
    table: tableOf(table),
  };
  const words = blocks.filter(
    ({ kind }, at) =>
      (kind === 'text' || kind === 'notes') && at < blocks.length - (cautions.length > 0 ? 2 : 0),
  );
  return { parts: [chart, ...words], cautions, pours: heads.length, doses: steps.length };
}

const tableOf = ({
  columns,
  rows,
}: Pick<Table, 'rows'> & {
  readonly columns: readonly { readonly head: string; readonly align: string }[];
}): Table => ({
  caption: 'circles are pours, bars the mean of each dose',
  columns: columns.map(({ head, align }) => ({ head, align: align === 'left' ? 'left' : 'right' })),
  rows,
});
