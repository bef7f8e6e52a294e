/** All that is said of one drink, gathered before any of it is shown. */

import type { Caution } from '../calc/answer.ts';
import { answered } from '../calc/answered.ts';
import { additiveCautions } from '../calc/drink/additive-cautions.ts';
import { drinkCautions } from '../calc/drink/drink-cautions.ts';
import { figureCautions } from '../calc/drink/figure-cautions.ts';
import { type FinishedDrink, finishedDrink } from '../calc/drink/finished-drink.ts';
import { type LabelLine, labelLines } from '../calc/drink/label.ts';
import { type Offset, withOffsets } from '../calc/drink/offset.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import { caffeineGate } from '../calc/slip-guard/caffeine.ts';
import type { Io } from '../io.ts';
import { adviceCaution } from '../ledger/advice.ts';
import { type AimReport, aimReportsOf } from '../ledger/check-aims.ts';
import { keptAdvice } from '../ledger/check-kept.ts';
import { servingOf, slipAdvice } from '../ledger/check-slips.ts';
import { drinkConditions, waterTraces } from '../ledger/drink-conditions.ts';
import type { Sources } from '../ledger/resolve.ts';
import { type ItemSensitivity, sensitivities } from '../ledger/sensitivity.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import type { Source } from '../reference/sources.ts';
import { askAboutCaffeine } from './caffeine-gate.ts';
import { type Call, optionValue } from './command.ts';
import { type Additives, additivesOf } from './drink-additives.ts';
import { type WarmedBottle, warmedBottle } from './drink-bottle.ts';
import { type DrinkDesign, openDrinkDesign } from './drink-design.ts';
import { type MeasuredDrink, measuredDrink } from './drink-measured.ts';
import { benchOffsets } from './drink-offset.ts';
import { bookOf } from './ledger-book.ts';
import { designWords, resolveDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { usedCautions } from './used-cautions.ts';
import { sourceWords } from './worded-sources.ts';

export interface DrinkReport {
  readonly design: DrinkDesign['design'];
  readonly drink: FinishedDrink;
  readonly mixture: Mixture;
  readonly aims: readonly AimReport[];
  readonly label: readonly LabelLine[];
  readonly measured: MeasuredDrink | undefined;
  readonly additives: Additives;
  readonly bottle: WarmedBottle | undefined;
  readonly offsets: readonly Offset[];
  /** Worked out for `--all` and JSON only. */
  readonly sensitivity: readonly ItemSensitivity[];
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Problem[];
  readonly bibliography: Readonly<Record<string, Source>>;
}

export async function drinkReport(call: Call, io: Io, here: Here): Promise<DrinkReport> {
  const { design, formula } = await openDrinkDesign(here, io, call.words[0] ?? '');
  const { mixture, sources, warnings } = await resolveDesign(here, design, await bookOf(here));
  const { sources: bibliography } = await import('../reference/kept-sources.ts');
  const { card } = design;
  const conditions = drinkConditions({
    bench: here.bench,
    card,
    formula,
    temperatureKelvin: typedTemperature(optionValue(call, 'temperature')),
  });
  const reckoned = answeredFor(design, () => answered(finishedDrink(mixture, conditions)));
  await askAboutCaffeine(call, io, caffeineGate(mixture, servingOf(formula ?? card, mixture)));
  const offsets = call.flags.has('with-offset') ? await benchOffsets(here) : [];
  const moved = (drink: FinishedDrink): FinishedDrink => withOffsets(drink, offsets);
  const additives = additivesOf(reckoned.stage, here.bench.limits);
  const used = await usedCautions(here, card, sources);
  const cautions = [
    ...used.map(({ caution }) => caution),
    ...figureCautions(additives.beside),
    ...additiveCautions(mixture),
    ...drinkCautions(reckoned, waterTraces(here.bench)),
    ...ledgerCautions(card, sources),
  ];
  return {
    design,
    drink: moved(reckoned),
    mixture,
    aims: formula ? aimReportsOf({ card, aims: formula.aims, drink: reckoned, sources, moved }) : [],
    label: labelLines(mixture),
    measured: card.kind === 'formula' ? undefined : measuredDrink({ card, mixture, sources, conditions }),
    additives,
    bottle: warmedBottle(call, reckoned),
    offsets,
    sensitivity:
      call.flags.has('all') || call.flags.has('json') ? sensitivities(card, sources, reckoned) : [],
    cautions: cautions.map((one) => ({ ...one, source: sourceWords(one.source, bibliography) })),
    warnings,
    bibliography,
  };
}

const ledgerCautions = (card: DrinkDesign['design']['card'], sources: Sources): readonly Caution[] =>
  [...slipAdvice(card, sources), ...(card.kind === 'formula' ? [] : keptAdvice(card, sources))].map(
    adviceCaution,
  );

/** A refusal says of which file it is. */
function answeredFor<T>(design: DrinkDesign['design'], answer: () => T): T {
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
