/** The answer of `ring`. */

import { fail } from '../../problem.ts';
import { slowToBurn } from '../../reference/cautions.ts';
import { hindered, matchAccuracy, ripeningStop, riseFactor, usualHeight } from '../../reference/settling.ts';
import { answered } from '../answered.ts';
import type { NothingAsked, PlainFound, Taken, TrialPicture, Worked } from '../calculator.ts';
import type { RingFields, RingGiven } from '../calculators/ring.ts';
import { citeMedium } from '../light/cite-medium.ts';
import { oilPhase } from '../light/medium-index.ts';
import { mediumItems, type StageMedium, stageMedium, stagesWithOil } from '../light/stage-medium.ts';
import { dropletFault } from '../light/turbidity.ts';
import { numberText } from '../number-text.ts';
import type { Working } from '../working.ts';
import { spun } from './centrifuge.ts';
import { densityMatch } from './density-match.ts';
import { sayRingCautions } from './ring-cautions.ts';
import { type Rise, riseOf } from './rise.ts';
import { mediumDensity, mediumViscosity, oilDensityAt } from './stage-liquid.ts';

const secondsInDay = 86_400;
const usualKelvin = 293.15;

const noSize = 'Without a droplet size no rise can be told: give --droplet "200 nm", or measure it.';

/** The drink of a trial, else its first stage with oil in water, where a droplet size was measured. */
export function ringOfTrial({
  mixture,
  droplet,
  temperature,
}: TrialPicture): readonly Taken<RingFields>[] | NothingAsked<RingFields> {
  const [stage] = stagesWithOil(mixture.stages);
  if (!stage) return { why: 'no stage holds oil in water' };
  if (mixture.drink && stage !== mixture.drink) return { why: 'there is no oil in the drink' };
  const given = { items: mediumItems(stage), temperature };
  if (!droplet)
    return {
      why: 'no droplet size was measured (neckring observe TRIAL --droplet "40 nm")',
      beside: { stage: stage.name, given },
    };
  return [{ stage: stage.name, given: { ...given, droplet } }];
}

/** The liquid and the oil as they stand to each other. */
export interface Setting {
  readonly medium: StageMedium;
  readonly temperatureKelvin: number;
  readonly heightMetres: number;
  /** g/mL. */
  readonly oilDensity: number;
  readonly mediumDensity: number;
  /** mPa s. */
  readonly viscosity: number;
  readonly volumeFraction: number;
}

export function workRing(given: RingGiven, working: Working): Worked {
  const spin = spinOf(given, working);
  if (given.items.length === 0 && spin) return { found: spin };
  const setting = settingOf(given, working);
  const rise = given.droplet && riseIn(given.droplet.inner, setting);
  const verdict = rise && verdictOf(rise, setting);
  sayWorking(working, setting, rise);
  sayRingCautions(working, { given, setting, rise });
  const isUnasked = !rise && !spin && given.weighWith.length === 0;
  return {
    ...(isUnasked ? { lead: noSize } : {}),
    found: {
      ...(rise && verdict ? { verdict: verdict.words, ...riseFigures(rise, setting) } : {}),
      oilDensity: setting.oilDensity,
      mediumDensity: setting.mediumDensity,
      viscosity: setting.viscosity,
      insolubleFraction: insolubleFraction(setting.medium),
      ripeningStopLow: ripeningStop.low,
      ripeningStopHigh: ripeningStop.high,
      ...(given.weighWith.length > 0 ? { weighting: weightings(given, setting, working) } : {}),
      ...(spin ?? {}),
    },
  };
}

function settingOf(given: RingGiven, working: Working): Setting {
  if (given.items.length === 0)
    return fail(
      'missing',
      'nothing is given',
      'give the oil with its dose, such as "60 mg/L sweet orange oil"',
    );
  const medium = stageMedium(given.items);
  const oil = answered(oilPhase(medium, { density: given.oilDensity?.inner, needsIndex: false }));
  if (!given.oilDensity) for (const { entry } of medium.oils) working.figure(entry, 'density');
  const temperatureKelvin = given.temperature?.inner ?? usualKelvin;
  const viscosity = given.viscosity ?? answered(mediumViscosity(medium, temperatureKelvin));
  if (given.viscosity === undefined)
    working.cite(
      'viscosity of the liquid',
      medium.sugarShare > 0 ? 'genotelle-1978' : 'kestin-1978',
      medium.sugarShare === 0,
    );
  if (!given.mediumDensity) citeMedium(medium, working, false);
  if (!given.oilDensity) working.cite('how citrus oils expand', 'melinder-2010#d-limonene');
  if (medium.sugarShare > 0) working.cite('density of sugar solutions', 'icumsa-sucrose-density');
  if (!(viscosity > 0))
    return fail('not-positive', '--viscosity 0 is no liquid', 'give it in mPa s, such as 1.3');
  const heightMetres = given.height?.inner ?? usualHeight.millimetres / 1000;
  if (!(heightMetres > 0))
    return fail('not-positive', 'there is no height to rise', 'give --height, such as 80 mm');
  return {
    medium,
    temperatureKelvin,
    heightMetres,
    oilDensity: given.oilDensity?.inner ?? oilDensityAt(medium, temperatureKelvin),
    mediumDensity: given.mediumDensity?.inner ?? answered(mediumDensity(medium, temperatureKelvin)),
    viscosity,
    volumeFraction: oil.volumeFraction,
  };
}

function riseIn(diameterMetres: number, setting: Setting): Rise {
  const fault = dropletFault(diameterMetres * 1e9);
  if (fault) answered(fault);
  return answered(
    riseOf({
      diameterMetres,
      densityDifference: (setting.mediumDensity - setting.oilDensity) * 1000,
      viscosityPascalSeconds: setting.viscosity / 1000,
      temperatureKelvin: setting.temperatureKelvin,
      volumeFraction: setting.volumeFraction,
    }),
  );
}

function daysOf({ velocity }: Rise, { heightMetres }: Setting): number | null {
  return velocity === 0 ? null : heightMetres / Math.abs(velocity) / secondsInDay;
}

function riseFigures(rise: Rise, setting: Setting): PlainFound {
  const days = daysOf(rise, setting);
  return {
    riseMillimetresPerDay: rise.velocity * 1000 * secondsInDay,
    days,
    daysLow: days === null ? null : days / riseFactor.value,
    daysHigh: days === null ? null : days * riseFactor.value,
    scaleHeight: rise.scaleHeight === undefined ? null : rise.scaleHeight * 1000,
    peclet: rise.peclet,
    filmThickness: setting.volumeFraction * setting.heightMetres * 1e6,
  };
}

/** What the scale height says of a height of liquid: mixed by its own motion, a gradient, or a layer in the end. */
function verdictOf(rise: Rise, setting: Setting): { readonly words: string } {
  const { heightMetres } = setting;
  const height = rise.scaleHeight ?? Number.POSITIVE_INFINITY;
  const place = rise.velocity < 0 ? 'sediment' : 'ring';
  if (height >= heightMetres)
    return { words: `no ${place} from single droplets: their own motion keeps them mixed` };
  if (height >= heightMetres / 20)
    return { words: `a little more ${place === 'ring' ? 'at the top' : 'at the bottom'}, no sharp ${place}` };
  const days = daysOf(rise, setting) ?? Number.POSITIVE_INFINITY;
  const when = days < 1 ? 'within a day' : `not before about ${numberText(days / riseFactor.value, 2)} d`;
  return { words: `${place === 'ring' ? 'a ring' : 'a sediment, the oil is denser'}, ${when}` };
}

/** Of the oil phase by mass: fats, waxes and gums that water does not dissolve. */
export function insolubleFraction({ oils }: StageMedium): number {
  const all = oils.reduce((sum, { massFraction }) => sum + massFraction, 0);
  const insoluble = oils.filter(({ name, entry }) =>
    [name, ...(entry.like ?? [])].some((one) => slowToBurn.includes(one)),
  );
  return insoluble.reduce((sum, { massFraction }) => sum + massFraction, 0) / all;
}

function weightings(given: RingGiven, setting: Setting, working: Working) {
  return given.weighWith.map((agent) => {
    const density = working.figure(agent, 'density');
    if (density === undefined)
      return fail(
        'no-figure',
        `no density is known of ${agent.name}`,
        'add "density: 1.08 g/mL" under it in ingredients.yaml',
      );
    const fraction = answered(
      densityMatch({ oil: setting.oilDensity, target: setting.mediumDensity, agent: density }),
    );
    working.cite('volumes of oils added', matchAccuracy.source);
    return {
      agent: agent.name,
      fraction,
      low: Math.max(0, fraction - matchAccuracy.value),
      high: Math.min(1, fraction + matchAccuracy.value),
    };
  });
}

function spinOf({ centrifuge, radius, spun: time }: RingGiven, working: Working): PlainFound | undefined {
  const given = [centrifuge, radius, time].filter((one) => one !== undefined);
  if (given.length === 0) return undefined;
  if (!centrifuge || !radius || !time)
    return fail(
      'missing',
      'a spin has a speed, a radius and a time',
      'give --centrifuge "3750 rpm" --radius 10 cm --spun 5 h',
    );
  const { relativeForce, gravitySeconds } = spun({
    rpm: centrifuge.inner,
    radiusMetres: radius.inner,
    seconds: time.inner,
  });
  working.line(
    'times gravity = 1.118e-5 x radius in cm x rpm^2; time in gravity = that x time spun',
    `${numberText(relativeForce, 4)}; ${numberText(gravitySeconds / secondsInDay, 4)} d`,
  );
  working.caution(
    'centrifuge',
    "Creaming of today's droplets only: nothing grows, clumps or changes in a spin as it does on the shelf. A beaker that passes proves that its droplets are small today.",
    'arithmetic; meaning: common practice, no source',
  );
  return { relativeForce, gravityDays: gravitySeconds / secondsInDay };
}

function sayWorking(working: Working, setting: Setting, rise: Rise | undefined): void {
  const { oilDensity, mediumDensity: density, viscosity, volumeFraction } = setting;
  working.line(
    'density of the liquid less that of the oil',
    `${numberText(density, 5)} - ${numberText(oilDensity, 5)} = ${numberText(density - oilDensity, 4)} g/mL`,
  );
  if (!rise) return;
  working.cite('hindered rising', hindered.source, true);
  working.line(
    'v = 2 g r^2 x difference / (9 x viscosity) x (1 - oil by volume)^4.65',
    `${numberText(rise.velocity * 1000 * secondsInDay, 4)} mm/day at ${numberText(viscosity, 4)} mPa s, oil ${numberText(volumeFraction * 100, 3)} %`,
  );
  if (rise.scaleHeight !== undefined)
    working.line(
      'scale height = k T / (4/3 pi r^3 x difference x g)',
      `${numberText(rise.scaleHeight * 1000, 4)} mm`,
    );
}
