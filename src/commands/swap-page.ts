/** A swap on the screen and as JSON. */

import type { Caution } from '../calc/answer.ts';
import type { BookEntry } from '../calc/book.ts';
import type { FinishedDrink } from '../calc/drink/finished-drink.ts';
import { drinkCitations, drinkWorking } from '../calc/drink/working-lines.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { SwapFactor } from '../calc/swap.ts';
import { startWorking } from '../calc/working.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import type { Parsed, Problem } from '../problem.ts';
import type { FigureName } from '../reference/ingredient.ts';
import type { Explanation } from './command.ts';
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

export function swapPage(report: SwapReport): Page {
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
    ...cautionBlocks(cautions),
  ];
}

/** Figures of an ingredient on which each way of being equal rests. */
const restingOn: Readonly<Record<SwapFactor['equal'], readonly FigureName[]>> = {
  mass: [],
  moles: ['molar mass'],
  acidity: ['molar mass', 'acid equivalents'],
  flavour: [],
};

export function swapExplanation(
  { out, into, factor, items }: SwapReport,
  drink: Parsed<FinishedDrink>,
): Explanation {
  const { working, record } = startWorking();
  for (const entry of [out, into]) {
    for (const name of restingOn[factor.equal]) working.figure(entry, name);
    if (factor.equal === 'flavour') working.cite(`fold of ${entry.name}`, 'given with the ingredient');
  }
  return {
    working: [
      factor.working,
      ...items.map(({ stage, before, after }) => ({
        equation: `${before.name} in ${stage}: new amount = old amount x ${trimmedNumber(factor.factor, 6)}`,
        numbers: `${before.amount.written} -> ${after.amount.written}`,
      })),
      ...(drink.ok ? drinkWorking(drink.value) : []),
    ],
    sources: [...record.citations, ...(drink.ok ? drinkCitations(drink.value) : [])],
    restsOn: ['swap', ...(drink.ok ? ['drink'] : [])],
  };
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
