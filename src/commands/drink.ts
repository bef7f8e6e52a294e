import { drinkWorking } from '../calc/drink/working-lines.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Call } from './command.ts';
import { additivesJson, allFiguresBlocks, aromaBlocks, besideBlocks } from './drink-additives.ts';
import { bottleJson } from './drink-bottle.ts';
import { drinkJson } from './drink-json.ts';
import { measuredBlocks, measuredJson } from './drink-measured.ts';
import { offsetBlocks, offsetJson } from './drink-offset.ts';
import {
  aimBlocks,
  allStagesBlocks,
  figureBlocks,
  labelBlocks,
  stagesBlock,
  substancesBlocks,
} from './drink-page.ts';
import { type DrinkReport, drinkReport } from './drink-report.ts';
import { sensitivityBlocks, sensitivityJson } from './drink-sensitivity.ts';
import { drinkSources } from './drink-sources.ts';
import { atRevision } from './open-at.ts';

export const runDrink = atRevision(async (call, io, here) => {
  const report = await drinkReport(call, io, here);
  const isMissed = report.aims.some(({ judged }) => judged.state === 'missed');
  return {
    exitCode: isMissed ? 1 : 0,
    page: drinkPage(report, call),
    json: drinkEnvelope(report),
    explained: () => ({
      working: drinkWorking(report.drink),
      sources: drinkSources(report),
      restsOn: ['drink'],
    }),
    problems: report.warnings,
  };
});

const titleOf = ({ card }: DrinkReport['design']): string =>
  visible(card.kind === 'trial' ? `Trial ${card.number}` : card.name);

function drinkPage(report: DrinkReport, call: Call): Page {
  const { design, drink, mixture, additives, offsets } = report;
  const title = titleOf(design);
  if (call.flags.has('label')) return labelBlocks(drink, report.label, title);
  const isAll = call.flags.has('all');
  return [
    ...figureBlocks(drink, title, report.bottle),
    ...offsetBlocks(offsets),
    ...aimBlocks(report.aims),
    ...measuredBlocks(report.measured),
    ...stagesBlock(drink),
    ...(isAll ? allStagesBlocks(mixture) : substancesBlocks(mixture)),
    ...besideBlocks(additives),
    ...aromaBlocks(additives, isAll),
    ...(isAll ? [...allFiguresBlocks(additives), ...sensitivityBlocks(report.sensitivity)] : []),
    ...cautionBlocks(report.cautions),
  ];
}

function drinkEnvelope(report: DrinkReport): Envelope {
  const { design, drink, aims, label, measured, additives, bottle, offsets, bibliography } = report;
  const { card } = design;
  const of =
    card.kind === 'trial'
      ? { trial: card.number }
      : card.kind === 'batch'
        ? { batch: card.name }
        : { formula: card.name };
  return envelope({
    schema: 'drink@1',
    given: {
      ...of,
      temperature: { value: Number((drink.conditions.temperatureKelvin - 273.15).toFixed(9)), unit: 'C' },
    },
    found: {
      ...drinkJson({ drink, aims, label }),
      ...measuredJson(measured),
      ...additivesJson(additives, bibliography),
      ...bottleJson(bottle),
      offset: offsetJson(offsets),
      sensitivity: sensitivityJson(report.sensitivity),
    },
    cautions: report.cautions,
    sources: drinkSources(report),
    problems: report.warnings,
  });
}
