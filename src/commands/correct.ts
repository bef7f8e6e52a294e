import { answered } from '../calc/answered.ts';
import {
  type Measured,
  type MeasuringInput,
  measuredTank,
  mostOf,
} from '../calc/correction/measured-tank.ts';
import { drift, fullMend, type Mend, shortMend } from '../calc/correction/mend.ts';
import {
  type TankItem,
  type TankReadings,
  tankItems,
  tankReadings,
  tankStage,
} from '../calc/correction/tank.ts';
import type { DrinkConditions } from '../calc/drink/stage-figures.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import type { Io } from '../io.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import { fail } from '../problem.ts';
import { measuredTolerances } from '../reference/aim-tolerances.ts';
import { lookUp } from '../reference/look-up.ts';
import { type AcidName, acidSystems } from '../reference/solution/acid-constants.ts';
import { acidSubstanceByName } from '../reference/solution/acid-systems.ts';
import { someOption } from './batch-options.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { acidOption, numberOption, readingsOf, typedReadings } from './correct-options.ts';
import { type Corrected, correctEnvelope, correctPage } from './correct-page.ts';
import { bookOf } from './ledger-book.ts';
import { madeWords, type OpenedMade, openMade } from './open-batch.ts';
import { type Here, openHere } from './open-ledger.ts';
import { comparedTank, mixtureOfMade, readingsOfStage, stageNamed } from './tank.ts';

/** A batch that would grow by more than this is better made anew. Common practice, no source. */
const mostGrowth = 2;

export async function runCorrect(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const made = await openMade(here, io, call.words[0] ?? '');
  const book = await bookOf(here);
  const { mixture, planned, warnings } = await mixtureOfMade(here, made, book);
  const corrected = await withArithmetic(() => correctedTank(call, { here, made, mixture, planned }));
  return {
    exitCode: corrected.refusal === undefined ? 0 : 1,
    page: correctPage(corrected),
    json: correctEnvelope(corrected, warnings),
    explained: async () => (await import('./explain-correct.ts')).correctExplanation(corrected),
    problems: warnings,
  };
}

interface Situation {
  readonly here: Here;
  readonly made: OpenedMade;
  /** As weighed where weighed. */
  readonly mixture: Mixture;
  readonly planned: Mixture;
}

function correctedTank(call: Call, { here, made, mixture, planned }: Situation): Corrected {
  const conditions = drinkConditions({ bench: here.bench, card: made.card });
  const typed = typedReadings(call);
  const stage = tankOf(call, { made, planned, typed, conditions });
  const read = Object.keys(typed).length > 0 ? typed : filedReadings(made, stage);
  const real = stageNamed(mixture, stage.name);
  const items = tankItems(stage, planned);
  const reckon = (tried: readonly TankItem[]): TankReadings =>
    tankReadings(tankStage(stage.name, tried, conditions.temperatureKelvin), conditions) ??
    fail('not-covered', `what ${stage.name} shows can't be reckoned`, 'no source covers what is in it');
  const filed = tankGrams(call, { made, stage });
  const massGrams = filed ?? real.massGrams;
  const size = sizeOf(massGrams, stage);
  const should = items.map((item) => ({ ...item, massGrams: item.massGrams * size }));
  const aimed = aimedItems(call, { should, stage, conditions });
  const aim = reckon(aimed);
  const weighed = tankItems(real, mixture);
  const written = should.map((item) => {
    const found = weighed.find(({ name }) => name === item.name);
    return found ? { ...found, massGrams: found.massGrams * size } : { ...item, massGrams: 0 };
  });
  const present = presentIn(read, { stage: stage.name, items: written, massGrams, conditions });
  const now = reckon(present);
  const isWithin = agrees({ ...read, ph: read.ph ?? now.ph }, aim);
  const nothing: Mend = { additions: [], items: present, growth: 1 };
  const full = isWithin ? nothing : fullMend(aimed, present);
  const short = isWithin ? nothing : shortMend(aimed, present);
  return {
    made: madeWords(made),
    stage: stage.name,
    read,
    aim,
    now,
    massGrams,
    isMassTold: filed !== undefined,
    density: stage.densityGramsPerMillilitre,
    isWithin,
    ...{ full, short, divisions: here.bench.balances.map(({ division }) => division.inner) },
    after: reckon(full.items),
    afterShort: reckon(short.items),
    thinned: drift(aimed, short.items),
    explained: comparedTank({ stage: real, mixture, readings: readingsOf(read), conditions }),
    refusal: refusalOf(call, here, { mend: full, stage }),
    acids: acidsIn(stage),
  };
}

/** The tank by its readings; a pH that the rest explains as near as a meter tells it moves no salt. */
function presentIn(read: Measured, tank: Omit<MeasuringInput, 'measured'>): readonly TankItem[] {
  const { ph, ...others } = read;
  const found = answered(measuredTank({ ...tank, measured: others }));
  const shown = tankReadings(
    tankStage(tank.stage, found, tank.conditions.temperatureKelvin),
    tank.conditions,
  );
  const isTold = ph === undefined || Math.abs((shown?.ph ?? ph) - ph) <= measuredTolerances.ph.value;
  return isTold || mostOf(tank.items, 'salt') < 0
    ? found
    : answered(measuredTank({ ...tank, measured: read }));
}

const acidsIn = ({ substances }: ResolvedStage): readonly AcidName[] => [
  ...new Set(
    substances.flatMap(({ name }) => {
      const acids = lookUp(acidSubstanceByName, name)?.acids ?? {};
      return Object.keys(acids).filter((acid): acid is AcidName => Object.hasOwn(acidSystems, acid));
    }),
  ),
];

/** What was filed with the batch. */
function filedReadings({ card }: OpenedMade, stage: ResolvedStage): Measured {
  const { brix, acid, ph } = readingsOfStage(card, stage.name);
  if (brix === undefined && acid === undefined && ph === undefined)
    fail(
      'missing',
      `nothing was read of ${stage.name}`,
      'give --brix 56.2, --acid 24.1, --ph 2.6, or several',
    );
  return readingsOf({ brix, acid, ph });
}

interface Choosing {
  readonly made: OpenedMade;
  readonly planned: Mixture;
  readonly typed: Measured;
  readonly conditions: DrinkConditions;
}

/** `--stage`; else of the stages with sugar or acid the one that should show most nearly what was read. */
function tankOf(call: Call, { made, planned, typed, conditions }: Choosing): ResolvedStage {
  const named = optionValue(call, 'stage');
  if (named !== undefined) return stageNamed(planned, named);
  const [first] = made.card.samples;
  const sampled = planned.stages.find(({ name }) => name === first?.of) ?? planned.stages.at(-1);
  const far = (stage: ResolvedStage): number => {
    const shown = tankReadings(
      tankStage(stage.name, tankItems(stage, planned), conditions.temperatureKelvin),
      conditions,
    );
    const misses = [
      [typed.brix, shown?.brix],
      [typed.acid, shown?.acid],
      [typed.ph, shown?.ph],
    ].flatMap(([read, should]) =>
      read === undefined ? [] : [Math.abs(Math.log((read + 0.1) / ((should ?? 0) + 0.1)))],
    );
    return misses.reduce((sum, miss) => sum + miss, 0);
  };
  const nearest = planned.stages.toSorted((one, other) => far(one) - far(other))[0];
  const isKnown = Object.keys(typed).length > 0;
  return (
    (isKnown ? nearest : sampled) ??
    fail('no-stage', `${madeWords(made)} has no stage`, 'add stages to its file')
  );
}

function tankGrams(
  call: Call,
  { made, stage }: { readonly made: OpenedMade; readonly stage: ResolvedStage },
): number | undefined {
  const typed = someOption(call, 'tank', ['mass', 'volume']);
  const [first] = made.card.samples;
  const filed = made.card.kind === 'batch' && first?.of === stage.name ? made.card.yield : undefined;
  const amount = typed ?? filed;
  if (!amount) return undefined;
  return amount.dimension === 'mass' ? amount.inner : amount.inner * stage.densityGramsPerMillilitre;
}

/** Within this of the plan the whole batch is taken to stand in the tank; else a part or a multiple of it. */
const sameSize = 0.15;

const sizeOf = (massGrams: number, { massGrams: planned }: ResolvedStage): number =>
  Math.abs(massGrams / planned - 1) <= sameSize ? 1 : massGrams / planned;

interface Aiming {
  readonly should: readonly TankItem[];
  readonly stage: ResolvedStage;
  readonly conditions: DrinkConditions;
}

/** The plan, or the plan moved to another aim. */
function aimedItems(call: Call, { should, stage, conditions }: Aiming): readonly TankItem[] {
  const brix = numberOption(call, 'aim-brix');
  const acid = acidOption(call, 'aim-acid');
  const ph = numberOption(call, 'aim-ph');
  if (brix === undefined && acid === undefined && ph === undefined) return should;
  const massGrams = should.reduce((sum, item) => sum + item.massGrams, 0);
  return answered(
    measuredTank({ stage: stage.name, items: should, massGrams, measured: { brix, acid, ph }, conditions }),
  );
}

/** Nearer to the aim than the meter and the titration can tell. */
function agrees({ brix, acid, ph }: Measured, aim: TankReadings): boolean {
  const isBrix = brix === undefined || Math.abs(brix - aim.brix) <= measuredTolerances.brix.value;
  const isPh = Math.abs((ph ?? aim.ph ?? 0) - (aim.ph ?? ph ?? 0)) <= measuredTolerances.ph.value;
  return (
    isBrix &&
    isPh &&
    (acid === undefined || Math.abs(acid - aim.acid) <= measuredTolerances.acid.value * aim.acid)
  );
}

/** Why it can't be mended by adding. */
function refusalOf(
  call: Call,
  here: Here,
  { mend, stage }: { readonly mend: Mend; readonly stage: ResolvedStage },
): string | undefined {
  const after = mend.items.reduce((sum, { massGrams }) => sum + massGrams, 0);
  const litres = after / stage.densityGramsPerMillilitre / 1000;
  const typed = someOption(call, 'vessel', ['volume'])?.inner;
  const largest = Math.max(...here.bench.vessels.map(({ volume }) => volume?.inner ?? 0));
  const room = typed ?? (largest > 0 ? largest : undefined);
  if (mend.additions.length === 0) return undefined;
  if (room !== undefined && litres * 1000 > room * (1 + 1e-9))
    return `It can't be mended by adding: it would come to ${short(litres)} L, and ${typed === undefined ? 'the largest vessel of the bench' : 'the vessel'} holds ${short(room / 1000)} L. Take some out first and give what is left: --tank.`;
  if (mend.growth > mostGrowth)
    return `It can't sensibly be mended by adding: it would come to ${short(mend.growth)} times as much. Check the readings, or use it as an ingredient of a new batch.`;
  return undefined;
}

const short = (value: number): string => String(Number(value.toPrecision(3)));
