/** Everything that is known of a sample at one look, gathered for `why`. */

import type { Book } from '../calc/book.ts';
import type { Known, Neighbour } from '../calc/causes/facts.ts';
import { fallsOut } from '../calc/drink/falls-out.ts';
import { stageFigures } from '../calc/drink/stage-figures.ts';
import type { Calibration } from '../calc/light/calibration.ts';
import { impliedSizes } from '../calc/light/droplet-of-haze.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { diameterToRise } from '../calc/settling/rise.ts';
import { mediumDensity, mediumViscosity, oilDensityAt } from '../calc/settling/stage-liquid.ts';
import type { ObservationCard, SampleCard, TrialCard } from '../ledger/cards.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import { dayOf } from '../ledger/look-strip.ts';
import { ageSeconds } from '../ledger/outcome.ts';
import type { SeriesRungs, Standing } from '../ledger/rungs.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { usualHeight } from '../reference/settling.ts';
import type { Here } from './open-ledger.ts';
import {
  backgroundOf,
  largestUnseen,
  ntuOfLook,
  ratioOf,
  type StageModel,
  sizesBetween,
  stageModel,
} from './why-model.ts';

const secondsInDay = 86_400;
const ICE_POINT_KELVIN = 273.15;
/** ms: what is measured within a day after a look belongs to it. */
const SAME_LOOK = secondsInDay * 1000;

export interface Looked {
  readonly here: Here;
  readonly book: Book;
  readonly card: TrialCard;
  readonly sample: SampleCard;
  readonly observation: ObservationCard;
  readonly mixture: Mixture;
  readonly series: SeriesRungs | undefined;
  readonly meter: Calibration;
}

export function knownOf(looked: Looked): Known {
  const { here, card, sample, observation, mixture, series } = looked;
  const stage = mixture.stages.find(({ name }) => isSameName(name, sample.of));
  const model = stage && stageModel(stage);
  const viewed = observation.viewed?.text ?? sample.viewed ?? here.bench.viewed[0] ?? '';
  const age = ageSeconds(card, sample, observation);
  const kelvin = (sample.at ?? here.bench.temperature).inner;
  const ratio = ratioOf(mixture);
  const isThin = model !== undefined && !model.isConcentrate;
  return {
    looks: observation.looks,
    ageDays: age === undefined ? undefined : age / secondsInDay,
    settleDays: (series?.series.settle ?? here.bench.settle).inner / secondsInDay,
    ...earlier(looked),
    ...neighbours(series, card.number),
    celsius: kelvin - ICE_POINT_KELVIN,
    vessel: sample.in ?? '',
    cover: sample.cover ?? '',
    unusualView: viewed !== '' && !isUsual(viewed, here) ? viewed : undefined,
    stress: sample.stress,
    isDrink: stage?.name === 'drink',
    emulsifierPerOil: ratio?.emulsifierPerOil,
    micelle: ratio?.micelle,
    ...contents(stage, looked, kelvin),
    ...risen(model, kelvin, age),
    isConcentrate: model?.isConcentrate ?? false,
    implied: isThin ? impliedBy(observation, model, { viewed, meter: looked.meter }) : undefined,
    largestClear: isThin ? largestUnseen(model, backgroundOf(viewed)) : undefined,
  };
}

function earlier({ card, sample, observation }: Looked) {
  const seen = observationsOf(card, sample);
  const before = seen.filter((one) => one.at.epochMilliseconds < observation.at.epochMilliseconds);
  const last = before.findLast(({ looks }) => looks.length > 0);
  const newest = seen.findLast(({ looks }) => looks.length > 0);
  const isOther = newest && newest.looks.join() !== observation.looks.join();
  const onDay = ({ looks, at }: ObservationCard): string => {
    const day = dayOf(card, sample, at.epochMilliseconds);
    return `${looks.join(', ')}${day === undefined ? '' : ` on day ${day}`}`;
  };
  const measured = seen.findLast(
    ({ droplet, at }) =>
      droplet && droplet.inner > 0 && at.epochMilliseconds - observation.at.epochMilliseconds <= SAME_LOOK,
  );
  return {
    wasClear: before.some(({ looks }) => looks.includes('clear')),
    before: last && onDay(last),
    since:
      newest && isOther && newest.at.epochMilliseconds > observation.at.epochMilliseconds
        ? onDay(newest)
        : undefined,
    measuredDroplet: measured?.droplet && measured.droplet.inner * 1e9,
  };
}

/** The bench's ways of viewing; a sample has no say in what is usual. */
const isUsual = (viewed: string, { bench }: Here): boolean =>
  bench.viewed.length === 0 || bench.viewed.some((usual) => isSameName(usual, viewed));

function neighbours(series: SeriesRungs | undefined, number: number) {
  const fateOf = (standing: Standing | undefined): Neighbour | undefined => {
    const outcome = standing?.trial.number === number ? undefined : standing?.judged?.outcome.outcome;
    return outcome === 'ended' ? undefined : outcome;
  };
  const differences = (series?.differences ?? []).filter(({ trial }) => trial === number);
  return {
    control: fateOf(series?.control),
    blank: fateOf(series?.blank),
    differences: differences.map(({ what, text, others }) => `${what}: ${text}, the others ${others}`),
  };
}

const citrusNames = /orange|lemon|lime|mandarin|tangerine|bergamot|grapefruit|yuzu|citrus/iu;
/** Distilled, terpeneless and folded oils have left their wax behind. */
const waxFree = /distilled|terpeneless|fold/iu;

function contents(stage: ResolvedStage | undefined, { here, card }: Looked, kelvin: number) {
  const substances = stage?.substances ?? [];
  const has = (role: string): boolean => substances.some((one) => one.role === role && one.massGrams > 0);
  const namesOf = (role: string): readonly string[] =>
    substances.filter((one) => one.role === role).flatMap(({ name, entry }) => [name, ...(entry.like ?? [])]);
  const conditions = drinkConditions({ bench: here.bench, card, temperatureKelvin: kelvin });
  const crystals = stage ? fallsOut([stageFigures(stage, conditions)], conditions) : [];
  return {
    hasOil: has('oil'),
    isCitrus: namesOf('oil').some((name) => citrusNames.test(name) && !waxFree.test(name)),
    hasAntifoam: has('antifoam'),
    hasPreservative: has('preservative'),
    emulsifierShare: substances
      .filter(({ role }) => role === 'emulsifier')
      .reduce((sum, { massFraction }) => sum + massFraction, 0),
    crystals: crystals.filter(({ code }) => code === 'falls-out').map(({ text }) => text),
    bindsCalcium:
      substances.some(({ name }) => /citr|phosph/iu.test(name)) &&
      substances.some(({ name }) => isSameName(name, 'water')),
    hardness: here.bench.water.hardness?.inner,
  };
}

/** How the oil stands to what it floats in, and the least size that rose in the time. */
function risen(model: StageModel | undefined, temperatureKelvin: number, seconds: number | undefined) {
  if (!model) return { densityDifference: undefined, leastRisen: undefined };
  const [density, viscosity] = [
    mediumDensity(model.medium, temperatureKelvin),
    mediumViscosity(model.medium, temperatureKelvin),
  ];
  if (!density.ok || !viscosity.ok) return { densityDifference: undefined, leastRisen: undefined };
  const densityDifference = (density.value - oilDensityAt(model.medium, temperatureKelvin)) * 1000;
  const least =
    seconds === undefined || seconds <= 0
      ? undefined
      : diameterToRise({
          heightMetres: usualHeight.millimetres / 1000,
          seconds,
          densityDifference,
          viscosityPascalSeconds: viscosity.value / 1000,
        });
  return { densityDifference, leastRisen: least === undefined ? undefined : least * 1e9 };
}

/** Sizes that the haze could mean: by the meter where it was read, else by the look. */
function impliedBy(
  observation: ObservationCard,
  model: StageModel,
  { viewed, meter }: { readonly viewed: string; readonly meter: Calibration },
): Known['implied'] {
  const { turbidity, looks } = observation;
  if (turbidity && turbidity.inner > 0) {
    const modelled = turbidity.inner / meter.factor;
    const sizes = sizesBetween(model.curve, { low: modelled / meter.high, high: modelled / meter.low });
    const band = { low: 1 / meter.high, high: 1 / meter.low };
    const large = impliedSizes(model.curve, modelled, band).find(({ branch }) => branch === 'large');
    const largeFrom = large ? { largeFrom: large.lowNanometres } : {};
    return sizes && { ...sizes, from: turbidity.written, isReading: true, ...largeFrom };
  }
  const band = ntuOfLook(looks, backgroundOf(viewed));
  if (!band) return undefined;
  const high = Number.isFinite(band.high) ? band.high : undefined;
  const sizes = sizesBetween(model.curve, { low: band.low > 0 ? band.low : undefined, high });
  return sizes && { ...sizes, from: `"${looks.join(', ')}"`, isReading: false };
}
