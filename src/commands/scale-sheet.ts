/** The batch sheet of a batch, every figure a text. */

import { trimmedNumber } from '../calc/number-text.ts';
import type { PlannedStage } from '../calc/scaling/batch-plan.ts';
import { revisionWords } from '../ledger/git-revision.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { closingCaution } from '../output/answer-page.ts';
import type { BatchSheet, SheetFilling, SheetStage } from '../output/batch-sheet.ts';
import { partName } from './scale-page.ts';
import type { BatchReport } from './scale-report.ts';
import {
  deviationWords,
  fillingHeading,
  gasNotes,
  gramsText,
  itemNotes,
  madeFor,
  percent,
  remarksOf,
  stageVolume,
  stageWhere,
  stockLines,
  titleOf,
  totalOfAll,
  totalText,
  volumeText,
} from './scale-words.ts';
import { stepText } from './show-stages.ts';

export function batchSheetOf(report: BatchReport, batch: string): BatchSheet {
  const { plan, request, here, revision, made } = report;
  const deviation = deviationWords(plan);
  return {
    batch,
    design: titleOf(report),
    revision: revisionWords(revision),
    facts: [
      ['makes', madeFor(report)],
      ['stays in vessels', request.loss > 0 ? percent(request.loss, 4) : 'nothing counted'],
      ['planned on', writtenTime(here.port.now(), here.settings.zone).slice(0, 10)],
    ],
    remarks: [...remarksOf(report), ...(deviation ? [deviation] : [])],
    stocks: plan.stocks.map((stock) => ({
      name: `${stock.name}, for ${stock.stage}`,
      lines: stockLines(stock),
    })),
    stages: plan.stages
      .filter(({ isInBottle }) => !isInBottle)
      .map((stage) => sheetStage(stage, made.cardOf(stage.scaled.stage))),
    filling: sheetFilling(report),
    checks: report.checks,
    cautions: report.cautions.map(({ text, source }) => `${text} [${source}]`),
    closing: closingCaution,
  };
}

type StageCard = ReturnType<BatchReport['made']['cardOf']>;

function sheetStage(stage: PlannedStage, card: StageCard): SheetStage {
  return {
    name: stage.scaled.stage.name,
    subBatches: stage.subBatches,
    where: stageWhere(stage),
    total: totalText(stage),
    volume: stageVolume(stage),
    totalOfAll: totalOfAll(stage),
    items: stage.items.map((item) => ({
      what: item.name,
      lot: (item.source.kind === 'ingredient' ? item.source.entry.lot : undefined) ?? item.about.lot ?? '',
      amount: gramsText(item.portionGrams, item.divisionGrams),
      portions: item.portions,
      whole: item.portions === 1 ? '' : gramsText(item.weighGrams / stage.subBatches, item.divisionGrams),
      balance: `${trimmedNumber(item.divisionGrams, 4)} g`,
      notes: itemNotes(item),
    })),
    steps: card?.process.map(stepText) ?? [],
    notes: card?.note === undefined ? [] : card.note.split('\n'),
  };
}

function sheetFilling(report: BatchReport): SheetFilling | undefined {
  const { filling, bottles } = report;
  if (!filling) return undefined;
  return {
    heading: fillingHeading(report),
    parts: filling.parts.map((part) => ({
      what: partName(part, report),
      grams: `${part.grams.toFixed(2)} g`,
      millilitres: part.millilitres === undefined ? '-' : `${part.millilitres.toFixed(1)} mL`,
      inAll:
        bottles === undefined || part.millilitres === undefined ? '' : volumeText(part.millilitres * bottles),
    })),
    notes: gasNotes(filling),
  };
}
