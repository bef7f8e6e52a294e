/** A batch on the screen. */

import { trimmedNumber } from '../calc/number-text.ts';
import type { PlannedStage } from '../calc/scaling/batch-plan.ts';
import { revisionWords } from '../ledger/git-revision.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Block, Column, Page } from '../output/view.ts';
import type { BatchReport } from './scale-report.ts';
import {
  benchRemarks,
  costWords,
  deviationWords,
  fillingHeading,
  gasNotes,
  gramsText,
  itemNotes,
  madeFor,
  percent,
  ratioWords,
  remarksOf,
  signedPercent,
  stageVolume,
  stageWhere,
  stockLines,
  titleOf,
  totalOfAll,
  totalText,
  volumeText,
} from './scale-words.ts';
import { stepText } from './show-stages.ts';

const column = (head: string, align: Column['align']): Column => ({ head, align });

export function scalePage(report: BatchReport, batch: string, explain: boolean): Page {
  const { plan, cautions } = report;
  const sentences = [deviationWords(plan), ratioWords(plan)].filter((one) => one !== undefined);
  return [
    {
      kind: 'heading',
      text: `${titleOf(report)}: ${madeFor(report)}, batch ${batch} (${revisionWords(report.revision)})`,
    },
    ...notes('-', [...remarksOf(report), ...benchRemarks(report)]),
    ...plan.stocks.flatMap(
      (stock): Page => [
        { kind: 'heading', text: `first, a stock for ${stock.stage}: ${stock.name}` },
        {
          kind: 'table',
          columns: [column('', 'left'), column('balance', 'right')],
          rows: stockLines(stock).map(({ text, balance }) => [text, balance]),
        },
      ],
    ),
    ...plan.stages.flatMap((stage) => stageBlocks(stage, report)),
    ...fillingBlocks(report),
    ...sentences.map((text): Block => ({ kind: 'text', text })),
    ...checkBlocks(report),
    { kind: 'heading', text: 'Cost' },
    ...notes(' ', costWords(report)),
    ...(explain ? explainBlocks(report) : []),
    ...cautionBlocks(cautions),
  ];
}

const notes = (mark: string, lines: readonly string[]): Page =>
  lines.length === 0 ? [] : [{ kind: 'notes', mark, notes: lines }];

function stageBlocks(stage: PlannedStage, { made }: BatchReport): Page {
  if (stage.isInBottle) return [];
  const { subBatches, scaled, items } = stage;
  const name = scaled.stage.name;
  const where = stageWhere(stage);
  const size = `${totalText(stage)}, ${stageVolume(stage)}${where ? `, ${where}` : ''}`;
  const steps = made.cardOf(scaled.stage)?.process.map(stepText) ?? [];
  return [
    { kind: 'heading', text: `${name}: ${subBatches > 1 ? `${subBatches} times ` : ''}${size}` },
    ...notes('-', steps),
    {
      kind: 'grid',
      columns: [
        column('in this order', 'left'),
        column(subBatches > 1 ? 'weigh, each time' : 'weigh', 'right'),
        column('balance', 'right'),
        column('off by', 'right'),
        column('', 'left'),
      ],
      rows: [
        ...items.map((item) => [
          item.name,
          `${item.portions > 1 ? `${item.portions} x ` : ''}${gramsText(item.portionGrams, item.divisionGrams)}`,
          `${trimmedNumber(item.divisionGrams, 4)} g`,
          signedPercent(item.deviation),
          itemNotes(item).join('; '),
        ]),
        ['together', totalText(stage), '', '', subBatches > 1 ? `in all ${totalOfAll(stage)}` : ''],
      ],
    },
  ];
}

function fillingBlocks(report: BatchReport): Page {
  const { filling, bottles } = report;
  if (!filling) return [];
  return [
    { kind: 'heading', text: `Filling: ${fillingHeading(report)}` },
    {
      kind: 'table',
      columns: [
        column('', 'left'),
        column('by volume', 'point'),
        column('by mass', 'point'),
        column('in all', 'point'),
      ],
      rows: filling.parts.map((part) => [
        partName(part, report),
        part.millilitres === undefined ? '-' : volumeText(part.millilitres),
        `${trimmedNumber(part.grams, 4)} g`,
        bottles === undefined
          ? ''
          : part.millilitres === undefined
            ? `${trimmedNumber(part.grams * bottles, 4)} g`
            : volumeText(part.millilitres * bottles),
      ]),
    },
    ...notes('-', gasNotes(filling)),
  ];
}

export const partName = (
  { name, isWater }: { readonly name: string; readonly isWater: boolean },
  { filling }: BatchReport,
): string => (isWater && filling?.gas ? `${name}, carbonated` : name);

function checkBlocks({ checks }: BatchReport): Page {
  if (checks.length === 0) return [];
  return [
    { kind: 'heading', text: 'Checks' },
    {
      kind: 'table',
      columns: [
        column('of', 'left'),
        column('check', 'left'),
        column('aim', 'left'),
        column('reckoned', 'left'),
      ],
      rows: checks.map((one) => [one.of, one.what, one.aim, one.reckoned]),
    },
  ];
}

/** The rule that pharmacies weigh by: at most 0.10 %, so no less than 2000 s, and s no less than 0.41 d. */
const pharmacyDivisions = 820;

function explainBlocks({ plan, here, request }: BatchReport): Page {
  const finest = plan.stages.flatMap(({ items, scaled }) =>
    items
      .filter(({ portionGrams, divisionGrams }) => portionGrams < pharmacyDivisions * divisionGrams)
      .map(
        (item) =>
          `${item.name} in ${scaled.stage.name}: ${gramsText(item.portionGrams, item.divisionGrams)} reads to ${percent(item.choice.relativeError)}; 0.10 % would need ${trimmedNumber(pharmacyDivisions * item.divisionGrams, 3)} g on this balance`,
      ),
  );
  return [
    { kind: 'heading', text: 'Working' },
    {
      kind: 'notes',
      mark: ' ',
      notes: [
        `made = needed / (1 - loss), loss ${percent(request.loss, 4)}; needed of a stage = what the stages after it take`,
        `an item = its share of the stage x what is made of it; the stage as written times ${plan.exact.map(({ stage, factor }) => `${trimmedNumber(factor, 6)} (${stage.name})`).join(', ')}`,
        `reading error = d/2 over the mass, accepted ${here.bench.weighing.written} (the bench); what makes up gets what the others were rounded by`,
        ...finest,
      ],
    },
    { kind: 'heading', text: 'Sources' },
    {
      kind: 'notes',
      mark: ' -',
      notes: [
        'smallest net weight: United States Pharmacopeia, general chapter 41, Balances: 2 s over the smallest net weight at most 0.10 %, s no less than 0.41 of a division; so 820 divisions at best. shown beside the figure of the bench, not asked for',
        'reading error of half a division, a pilot beyond ten times: common practice, no source',
        'carbonation: Weiss 1974; Carroll, Slupsky and Mather 1991',
      ],
    },
  ];
}
