/** The answer of `clarity`: figures, the words around them, and what is not shown. */

import { fail } from '../../problem.ts';
import { crowded, hazeBands, nephelometer, usualWavelength, usualWidth } from '../../reference/light.ts';
import { answered } from '../answered.ts';
import type { NothingAsked, PlainFound, Taken, TrialPicture, Worked } from '../calculator.ts';
import type { ClarityFields, ClarityGiven } from '../calculators/clarity.ts';
import { sugarFraction } from '../drink/stage-figures.ts';
import type { ResolvedStage } from '../mixture/picture.ts';
import { numberText } from '../number-text.ts';
import type { Working } from '../working.ts';
import { type Calibration, fewestReadings } from './calibration.ts';
import { citeMedium } from './cite-medium.ts';
import { dropletsFrom, type Haze, hazeIn, type Inverse } from './clarity.ts';
import { sayClarityCautions } from './clarity-cautions.ts';
import { clarityLead } from './clarity-lead.ts';
import { mediumIndex, type OilPhase, oilPhase } from './medium-index.ts';
import { meterOf } from './own-meter.ts';
import { mediumItems, type StageMedium, stageMedium, stagesWithOil } from './stage-medium.ts';
import { type Dispersion, dropletFault } from './turbidity.ts';
import { workMie } from './work-mie.ts';

/** Above 1 % of oil no droplet size can be told from a haze, nor a haze from a size. */
const nothingTold: Inverse = { largestClear: undefined, implied: [], isOpen: false };

/** From this mass fraction of sugar up a stage counts as a syrup. */
const syrupFrom = 0.2;

interface Asked {
  readonly wavelengthNanometres: number;
  readonly widthMetres: number;
}

/** What is dispersed in what. */
export interface Emulsion {
  readonly medium: StageMedium;
  readonly oil: OilPhase;
  readonly dispersion: Dispersion;
}

/** By volume, as `crowded` counts it. */
function isConcentrate(stage: ResolvedStage): boolean {
  const oil = oilPhase(stageMedium(mediumItems(stage)), { needsIndex: false });
  return oil.ok && oil.value.volumeFraction > crowded.value;
}

/** What a trial asks: its drink, else the first stage with oil in water, and the syrup of the drink. */
export function clarityOfTrial({
  mixture,
  droplet,
  meter,
}: TrialPicture): readonly Taken<ClarityFields>[] | NothingAsked<ClarityFields> {
  const [first, ...others] = stagesWithOil(mixture.stages);
  if (!first) return { why: 'no stage holds oil in water' };
  if (mixture.drink && first !== mixture.drink) return { why: 'there is no oil in the drink' };
  const takenOf = (stage: ResolvedStage): Taken<ClarityFields> => ({
    stage: stage.name,
    given: {
      items: mediumItems(stage),
      ...(droplet ? { droplet } : {}),
      ...(meter && meter.length >= fewestReadings ? { reading: meter } : {}),
    },
  });
  if (!mixture.drink && isConcentrate(first))
    return {
      why: 'a concentrate says nothing of its droplets: it is judged at drinking strength',
      beside: takenOf(first),
    };
  // A syrup of the drink is answered too: it may look clear and its drink hazy.
  const syrups = mixture.drink ? others.filter((stage) => sugarFraction(stage) >= syrupFrom) : [];
  return [first, ...syrups].map(takenOf);
}

export function workClarity(given: ClarityGiven, working: Working): Worked {
  if (given.mie) return workMie(given, working);
  if (given.sizeParameter !== undefined || given.index !== undefined)
    return fail('missing', '--size-parameter and --index are of one sphere', 'add --mie');
  working.cite('scattering of spheres', 'bohren-huffman-1983', true);
  working.constant('light to the side of 1 NTU, 1/(m sr)', nephelometer);
  working.cite('what is seen', hazeBands.source);
  return workHaze(given, working, {
    wavelengthNanometres: given.wavelength ? given.wavelength.inner * 1e9 : usualWavelength.value,
    widthMetres: given.glass?.inner ?? usualWidth.value,
  });
}

function workHaze(given: ClarityGiven, working: Working, asked: Asked): Worked {
  const emulsion = emulsionOf(given, working, asked.wavelengthNanometres);
  const { dispersion, oil } = emulsion;
  const spread = spreadOf(given.spread);
  const calibration = meterOf(given, emulsion, spread);
  const glass = { widthMetres: widthOf(asked.widthMetres), calibration };
  const background = given.background ?? 'black';
  const size = given.droplet && sizeOf(given.droplet.inner * 1e9);
  const haze =
    size === undefined
      ? undefined
      : answered(hazeIn(dispersion, { diameterNanometres: size, spread }, glass));
  const isCrowded = dispersion.volumeFraction > crowded.value;
  const inverse: Inverse = isCrowded
    ? nothingTold
    : dropletsFrom(dispersion, { spread, background, measuredNtu: measuredOf(given) }, glass);
  sayWorking(working, { emulsion, haze, calibration });
  sayClarityCautions(working, { given, emulsion, haze, calibration, inverse, background });
  const clear = inverse.largestClear;
  const figures: PlainFound = {
    ...(haze ? hazeFigures(haze) : {}),
    largestClearDiameter: clear || null,
    largestClearLow: clear ? clear * 0.8 : null,
    largestClearHigh: clear ? clear * 1.2 : null,
    mediumIndex: dispersion.mediumIndex,
    oilIndex: oil.index,
    ...(calibration.readings > 0 ? { meterFactor: calibration.factor } : {}),
    ...(given.turbidity
      ? {
          impliedDroplets: inverse.implied.map((one) => ({
            branch: one.branch,
            diameter: one.diameterNanometres,
            low: one.lowNanometres,
            high: one.highNanometres,
            transmission: one.transmission,
          })),
        }
      : {}),
  };
  return {
    found: figures,
    ...clarityLead({ haze, inverse, given, background, widthMetres: glass.widthMetres, isCrowded }),
  };
}

const hazeFigures = (haze: Haze): PlainFound => ({
  turbidityPerMetre: haze.turbidity,
  transmission: haze.transmission ?? null,
  ntu: haze.ntu?.value ?? null,
  ntuLow: haze.ntu?.low ?? null,
  ntuHigh: haze.ntu?.high ?? null,
  look: haze.look.look,
  lookOnBlack: haze.look.onBlack,
  lookOnWhite: haze.look.onWhite,
});

function emulsionOf(given: ClarityGiven, working: Working, wavelengthNanometres: number): Emulsion {
  if (given.items.length === 0)
    return fail(
      'missing',
      'nothing is given',
      'give the oil with its dose, such as "60 mg/L sweet orange oil"',
    );
  const medium = stageMedium(given.items);
  const oil = answered(
    oilPhase(medium, { index: given.oilIndex, density: given.oilDensity?.inner, needsIndex: true }),
  );
  for (const { entry } of medium.oils) {
    if (given.oilIndex === undefined) working.figure(entry, 'refractive index');
    if (given.oilDensity === undefined) working.figure(entry, 'density');
  }
  const index = given.mediumIndex ?? answered(mediumIndex(medium));
  if (given.mediumIndex === undefined) working.cite('index of sugar solutions', 'icumsa-1974');
  citeMedium(medium, working, given.mediumIndex === undefined);
  for (const [name, value] of [
    ['--oil-index', oil.index],
    ['--medium-index', index],
  ] as const)
    if (!(value >= 1.2 && value <= 2))
      return fail('outside-range', `${name} ${value} is no index of a liquid`, 'give one such as 1.473');
  return {
    medium,
    oil,
    dispersion: {
      volumeFraction: oil.volumeFraction,
      oilIndex: oil.index,
      mediumIndex: index,
      wavelengthNanometres,
    },
  };
}

function spreadOf(spread: number | undefined): number {
  if (spread === undefined || spread <= 0.7) return spread ?? 0;
  return fail(
    'outside-range',
    `a polydispersity index of ${spread} says that no one size can be given`,
    'give one up to 0.7, as a sizer prints it',
  );
}

function sizeOf(nanometres: number): number {
  const fault = dropletFault(nanometres);
  if (fault) answered(fault);
  return nanometres;
}

function widthOf(metres: number): number {
  if (metres > 0 && metres <= 10) return metres;
  return fail('outside-range', 'no glass is that wide', 'give --glass from 1 mm to 10 m, such as 65 mm');
}

function measuredOf({ turbidity: measured }: ClarityGiven): number | undefined {
  if (!measured || measured.inner > 0) return measured?.inner;
  return fail(
    'not-positive',
    'a reading of 0 NTU means no droplet',
    'give what the meter showed, above 0 NTU',
  );
}

function sayWorking(
  working: Working,
  {
    emulsion,
    haze,
    calibration,
  }: {
    readonly emulsion: Emulsion;
    readonly haze: Haze | undefined;
    readonly calibration: Calibration;
  },
): void {
  const { oil, dispersion } = emulsion;
  working.line(
    'volume share of oil = dose / density of the oil',
    `${numberText(oil.volumeFraction, 4)} at ${numberText(oil.density, 4)} g/mL`,
  );
  working.line(
    'relative index = index of the oil / index of the medium',
    `${numberText(dispersion.oilIndex, 5)} / ${numberText(dispersion.mediumIndex, 5)} = ${numberText(dispersion.oilIndex / dispersion.mediumIndex, 5)}`,
  );
  if (haze)
    working.line(
      'turbidity = 3/2 x volume share x Q_ext / diameter, over the sizes',
      `${numberText(haze.turbidity, 4)} 1/m`,
    );
  if (haze?.ntu)
    working.line(
      `NTU = light to 90 degrees / ${nephelometer.value}${calibration.readings > 0 ? ' x factor of your meter' : ''}`,
      `${numberText(haze.ntu.value, 3)}, from ${numberText(haze.ntu.low, 2)} to ${numberText(haze.ntu.high, 2)}`,
    );
}
