/** A swap on the screen and as JSON. */

import type { Caution } from '../calc/answer.ts';
import type { BookEntry } from '../calc/book.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { SwapFactor } from '../calc/swap.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import type { Problem } from '../problem.ts';
import { designWords, type OpenedDesign } from './open-formula.ts';
import type { SwapFigure } from './swap-figures.ts';
import type { SwappedItem } from './swap-items.ts';

export interface SwapReport {
  readonly design: OpenedDesign;
  readonly out: BookEntry;
  readonly into: BookEntry;
  readonly factor: SwapFactor;
  readonly items: readonly SwappedItem[];
  readonly before: readonly SwapFigure[];
  readonly after: readonly SwapFigure[];
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Problem[];
}

export function swapPage(report: SwapReport, explain: boolean): Page {
  const { design, out, into, factor, items, cautions } = report;
  const rows = report.before.flatMap((figure, at) => {
    const after = report.after[at];
    if (!after || (figure.value === undefined && after.value === undefined)) return [];
    return after.text === figure.text ? [] : [[figure.label, figure.text, after.text]];
  });
  const same = report.before.filter(
    (figure, at) => figure.value !== undefined && report.after[at]?.text === figure.text,
  );
  return [
    {
      kind: 'heading',
      text: `${designWords(design)}: ${into.name} for ${out.name}, at equal ${factor.equal}`,
    },
    {
      kind: 'text',
      text: `For 1 g of ${out.name} take ${trimmedNumber(factor.factor, 5)} g of ${into.name}. The new lines:`,
    },
    {
      kind: 'table',
      columns: [
        { head: 'stage', align: 'left' },
        { head: 'was', align: 'left' },
        { head: 'becomes', align: 'left' },
      ],
      rows: items.map(({ stage, before, after }) => [
        stage,
        `${before.name}: ${before.amount.written}`,
        `${after.name}: ${after.amount.written}`,
      ]),
    },
    ...(rows.length > 0
      ? ([
          {
            kind: 'table',
            columns: [
              { head: '', align: 'left' },
              { head: 'before', align: 'point' },
              { head: 'after', align: 'point' },
            ],
            rows,
          },
        ] as const)
      : []),
    ...(same.length > 0
      ? ([
          {
            kind: 'text',
            text: `What stays: ${same.map(({ label, text }) => `${label} ${text}`).join(', ')}.`,
          },
        ] as const)
      : []),
    ...(explain
      ? ([
          { kind: 'heading', text: 'Working' },
          { kind: 'lines', lines: [`  ${factor.working.equation}`, `      ${factor.working.numbers}`] },
        ] as const)
      : []),
    ...cautionBlocks(cautions),
  ];
}

const leaf = (value: number | undefined, unit: string): object => ({ value: value ?? null, unit });

export function swapEnvelope(report: SwapReport): Envelope {
  const { design, out, into, factor, items } = report;
  const { card } = design;
  return envelope({
    schema: 'swap@1',
    given: {
      ...(card.kind === 'trial' ? { trial: card.number } : { formula: card.name }),
      out: out.name,
      in: into.name,
      equal: factor.equal,
    },
    found: {
      factor: leaf(factor.factor, 'g/g'),
      lines: items.map(({ stage, before, after }) => ({
        stage,
        ingredient: after.name,
        was: before.amount.written,
        amount: after.amount.written,
      })),
      figures: report.before.flatMap((figure, at) => {
        const after = report.after[at];
        if (!after || (figure.value === undefined && after.value === undefined)) return [];
        return [
          {
            figure: figure.key,
            before: leaf(figure.value, figure.unit),
            after: leaf(after.value, after.unit),
          },
        ];
      }),
    },
    cautions: report.cautions,
    problems: report.warnings,
  });
}
