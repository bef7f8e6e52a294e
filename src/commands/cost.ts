import { envelope } from '../output/answer-json.ts';
import type { Block, Page } from '../output/view.ts';
import { type Problem, ProblemError } from '../problem.ts';
import { atRevision } from './open-at.ts';
import { costJson, designJson } from './scale-json.ts';
import { type BatchReport, batchReport } from './scale-report.ts';
import { scaleRequest } from './scale-request.ts';
import { costWords, longTitleOf, madeFor, money } from './scale-words.ts';

export const runCost = atRevision(async (call, io, here) => {
  const report = await batchReport(call.words[0] ?? '', scaleRequest(call), { io, here });
  const unpriced = unpricedProblems(report);
  if (report.cost.totals.length === 0) throw new ProblemError(unpriced.map(asError), 2);
  return {
    exitCode: 0,
    page: costPage(report),
    json: envelope({
      schema: 'cost@1',
      given: { ...designJson(report), to: madeFor(report) },
      found: { cost: costJson(report) },
      problems: [...report.warnings, ...unpriced],
    }),
    problems: [...report.warnings, ...unpriced],
    explained: async () => (await import('./explain-bench.ts')).costExplanation(report.cost),
  };
});

function costPage(report: BatchReport): Page {
  const { cost } = report;
  const whole = new Map(cost.totals.map(({ currency, amount }) => [currency, amount]));
  const table: Block = {
    kind: 'table',
    columns: [
      { head: '', align: 'left' },
      { head: 'mass', align: 'point' },
      { head: 'cost', align: 'point' },
      { head: 'share', align: 'point' },
    ],
    rows: cost.lines.map(({ ingredient, grams, amount, currency }) => [
      ingredient,
      massText(grams),
      `${money(amount)} ${currency}`,
      `${((100 * amount) / (whole.get(currency) ?? 1)).toFixed(1)} %`,
    ]),
  };
  return [
    { kind: 'heading', text: `${longTitleOf(report)}: the cost of ${whatOf(report)}` },
    { kind: 'notes', mark: ' ', notes: costWords(report) },
    table,
    {
      kind: 'text',
      text: 'Of what is weighed in alone: no bottles, gas, work or duty.',
      tone: 'faint',
    },
  ];
}

const whatOf = (report: BatchReport): string =>
  report.request.target
    ? madeFor(report)
    : `${Number(report.litres.toPrecision(3))} L of ${report.plan.target.resolved.name}, as written`;

const massText = (grams: number): string =>
  grams >= 1000 ? `${(grams / 1000).toFixed(3)} kg` : `${Number(grams.toPrecision(4))} g`;

const isTap = (ingredient: string): boolean => /\bwater$/u.test(ingredient);

/** What is left out of the sum, each with its mend; water costs next to nothing. */
function unpricedProblems({ cost }: BatchReport): readonly Problem[] {
  return cost.unpriced
    .filter(({ ingredient }) => !isTap(ingredient) || cost.totals.length === 0)
    .map(({ ingredient, why }) => ({
      code: 'no-price',
      severity: 'warning',
      message: `${ingredient} is not in the cost: ${why}`,
      hint: `add price: 42 EUR/kg to ${ingredient} in ingredients.yaml`,
    }));
}

const asError = (one: Problem): Problem => ({ ...one, severity: 'error' });
