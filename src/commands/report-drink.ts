/** The finished drink in a report: what it comes to, its aims, what is in a litre. */

import { aimFigure, aimWords } from '../calc/drink/aims.ts';
import type { ResolvedStage } from '../calc/mixture/picture.ts';
import type { AimReport } from '../ledger/check-aims.ts';
import type { AimSpan } from '../output/draw/aims.ts';
import { partsText } from '../output/leaf-text.ts';
import type { Part, Section, Table } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import { besideBlocks } from './drink-additives.ts';
import { measuredBlocks } from './drink-measured.ts';
import { aimBlocks, stagesBlock } from './drink-page.ts';
import type { DrinkReport } from './drink-report.ts';
import { figureLines } from './drink-words.ts';
import { section } from './report-words.ts';
import { perLitre } from './show-stages.ts';

export function drinkSections(report: DrinkReport): readonly Section[] {
  const { drink, aims, measured, additives } = report;
  const headed = (parts: readonly Part[]): readonly Part[] => parts.filter(({ kind }) => kind !== 'heading');
  return [
    ...section(
      'drink',
      'The drink',
      [figureTable(report)],
      'Reckoned from what is in it; each with how far to trust it.',
    ),
    ...section(
      'aims',
      'Aims',
      aimParts(aims),
      'The bar is what was aimed at. A full drop lies in it, a cross beside it.',
    ),
    ...section('measured', 'Measured', headed(measuredBlocks(measured))),
    ...section(
      'litre',
      'In a litre',
      litreParts(drink.stage),
      'As dosed, water left out. Each line is ten times the one before.',
    ),
    ...section('stages', 'Stages', headed(stagesBlock(drink))),
    ...section(
      'figures',
      'Beside published figures',
      headed(besideBlocks(additives)),
      'No judgement: local food law and a qualified person decide.',
    ),
  ];
}

const figureTable = ({ drink }: DrinkReport): Part => ({
  kind: 'table',
  columns: [
    { head: '', align: 'left' },
    { head: '', align: 'right' },
    { head: '', align: 'left' },
  ],
  rows: figureLines(drink),
});

function aimParts(aims: readonly AimReport[]): readonly Part[] {
  const spans = aims.flatMap(({ judged }): readonly AimSpan[] => {
    const { name, value, low, high, state } = judged;
    if (value === undefined || (low === undefined && high === undefined)) return [];
    return [
      {
        name: visible(aimWords(name)),
        value,
        low,
        high,
        text: aimFigure(judged, value),
        isMet: state !== 'missed',
      },
    ];
  });
  const [table, ...rest] = aimBlocks(aims).filter(({ kind }) => kind !== 'heading');
  if (table?.kind !== 'table') return [];
  if (spans.length === 0) return [table, ...rest];
  const missed = spans.filter(({ isMet }) => !isMet).map(({ name }) => name);
  return [
    {
      kind: 'chart',
      chart: {
        draws: 'aims',
        of: {
          id: 'aims-drawing',
          title: 'Aims, and what the drink comes to',
          about:
            missed.length === 0 ? 'Every aim that can be reckoned is met.' : `Missed: ${missed.join(', ')}.`,
          aims: spans,
        },
      },
      table: aimTable(table),
    },
    ...rest,
  ];
}

const aimTable = ({
  columns,
  rows,
}: {
  readonly columns: readonly { readonly head: string }[];
  readonly rows: Table['rows'];
}): Table => ({
  caption: '',
  columns: columns.map(({ head }, at) => ({ head, align: at === 1 ? 'right' : 'left' })),
  rows,
});

export function litreParts(stage: ResolvedStage): readonly Part[] {
  const shown = stage.substances
    .filter(({ role, gramsPerLitre }) => role !== 'water' && gramsPerLitre > 0)
    .sort((one, other) => other.gramsPerLitre - one.gramsPerLitre);
  if (shown.length === 0) return [];
  return [
    {
      kind: 'chart',
      chart: {
        draws: 'amounts',
        of: {
          id: 'litre-drawing',
          title: `What is in a litre of the ${visible(stage.name)}`,
          about: 'On a ladder of tens, the greatest first; the table has the figures.',
          amounts: shown.map(({ name, gramsPerLitre }) => ({ name: visible(name), gramsPerLitre })),
        },
      },
      table: {
        caption: '',
        columns: [
          { head: '', align: 'left' },
          { head: 'role', align: 'left' },
          { head: 'per litre', align: 'right' },
          { head: 'by mass', align: 'right' },
        ],
        rows: shown.map((one) => [
          visible(one.name),
          one.role,
          perLitre(one.gramsPerLitre),
          partsText(one.massFraction),
        ]),
      },
    },
  ];
}
