import type { Caution } from '../calc/answer.ts';
import { answered } from '../calc/answered.ts';
import { drinkCautions } from '../calc/drink/drink-cautions.ts';
import { type FinishedDrink, finishedDrink } from '../calc/drink/finished-drink.ts';
import { type LabelLine, labelLines } from '../calc/drink/label.ts';
import { drinkCitations } from '../calc/drink/working-lines.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { Io } from '../io.ts';
import { adviceCaution } from '../ledger/advice.ts';
import { type AimReport, aimReports } from '../ledger/check-aims.ts';
import { slipAdvice } from '../ledger/check-slips.ts';
import { drinkConditions, waterTraces } from '../ledger/drink-conditions.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import type { Source } from '../reference/sources.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { drinkJson } from './drink-json.ts';
import { type MeasuredDrink, measuredBlocks, measuredDrink, measuredJson } from './drink-measured.ts';
import { aimBlocks, explainBlocks, figureBlocks, labelBlocks, stagesBlock } from './drink-page.ts';
import { bookOf } from './ledger-book.ts';
import { designWords, type OpenedDesign, openDesign, resolveDesign } from './open-formula.ts';
import { openHere } from './open-ledger.ts';
import { drinkBlocks } from './show-stages.ts';
import { sourceWords } from './worded-sources.ts';

/** All that is said of one drink. */
interface DrinkReport {
  readonly design: OpenedDesign;
  readonly drink: FinishedDrink;
  readonly mixture: Mixture;
  readonly aims: readonly AimReport[];
  readonly label: readonly LabelLine[];
  readonly measured: MeasuredDrink | undefined;
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Problem[];
  readonly bibliography: Readonly<Record<string, Source>>;
}

export async function runDrink(call: Call, io: Io): Promise<Outcome> {
  const report = await drinkReport(call, io);
  const isMissed = report.aims.some(({ judged }) => judged.state === 'missed');
  return {
    exitCode: isMissed ? 1 : 0,
    page: drinkPage(report, call),
    json: drinkEnvelope(report),
    problems: report.warnings,
  };
}

async function drinkReport(call: Call, io: Io): Promise<DrinkReport> {
  const here = await openHere(io);
  const design = await openDesign(here, io, call.words[0] ?? '');
  const { mixture, sources, warnings } = await resolveDesign(here, design, await bookOf(here));
  const { sources: bibliography } = await import('../reference/library.ts');
  const { card } = design;
  const conditions = drinkConditions({
    bench: here.bench,
    card,
    temperatureKelvin: typedTemperature(optionValue(call, 'temperature')),
  });
  const drink = answeredFor(design, () => answered(finishedDrink(mixture, conditions)));
  const cautions = [
    ...drinkCautions(drink, waterTraces(here.bench)),
    ...slipAdvice(card, sources).map(adviceCaution),
  ];
  return {
    design,
    drink,
    mixture,
    aims: card.kind === 'formula' ? aimReports(card, drink, sources) : [],
    label: labelLines(mixture),
    measured: card.kind === 'trial' ? measuredDrink({ card, mixture, sources, conditions }) : undefined,
    cautions: cautions.map((one) => ({ ...one, source: sourceWords(one.source, bibliography) })),
    warnings,
    bibliography,
  };
}

/** A refusal says of which file it is. */
function answeredFor<T>(design: OpenedDesign, answer: () => T): T {
  try {
    return answer();
  } catch (thrown) {
    if (!(thrown instanceof ProblemError)) throw thrown;
    throw new ProblemError(
      thrown.problems.map((one) => ({ ...one, message: `${designWords(design)}: ${one.message}` })),
      thrown.exitCode,
    );
  }
}

function typedTemperature(typed: string | undefined): number | undefined {
  if (typed === undefined) return undefined;
  const read = parseQuantity(typed, ['temperature']);
  return read.ok
    ? read.value.inner
    : fail(read.fault.code, `--temperature: ${read.fault.message}`, read.fault.hint);
}

const titleOf = ({ card }: OpenedDesign): string =>
  visible(card.kind === 'trial' ? `Trial ${card.number}` : card.name);

function drinkPage(report: DrinkReport, call: Call): Page {
  const { design, drink, mixture, bibliography } = report;
  const title = titleOf(design);
  if (call.flags.has('label')) return labelBlocks(drink, report.label, title);
  return [
    ...figureBlocks(drink, title),
    ...aimBlocks(report.aims),
    ...measuredBlocks(report.measured),
    ...stagesBlock(drink),
    ...drinkBlocks(mixture),
    ...(call.flags.has('explain') ? explainBlocks(drink, bibliography) : []),
    ...cautionBlocks(report.cautions),
  ];
}

function drinkEnvelope({ design, drink, aims, label, measured, ...report }: DrinkReport): Envelope {
  const { card } = design;
  return envelope({
    schema: 'drink@1',
    given: {
      ...(card.kind === 'trial' ? { trial: card.number } : { formula: card.name }),
      temperature: { value: Number((drink.conditions.temperatureKelvin - 273.15).toFixed(9)), unit: 'C' },
    },
    found: { ...drinkJson({ drink, aims, label }), ...measuredJson(measured) },
    cautions: report.cautions,
    sources: drinkCitations(drink).map((one) => ({
      ...one,
      source: sourceWords(one.source, report.bibliography),
    })),
    problems: report.warnings,
  });
}
