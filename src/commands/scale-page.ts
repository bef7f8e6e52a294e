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

export function scalePage(report: BatchReport, batch: string): Page {
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
