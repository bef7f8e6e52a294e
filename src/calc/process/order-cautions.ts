/** Cautions about the order in which a stage is made. Each says why. */

import { type ProcessCode, processReasons } from '../../reference/cautions.ts';
import { waterDensity } from '../density/water-density.ts';
import { trimmedNumber } from '../number-text.ts';
import type { PlacedCaution, Spot } from '../slip-guard/placed-caution.ts';
import {
  isShear,
  makeUpStepOf,
  type ProcessItem,
  type ProcessStage,
  stepOf,
  type Warmth,
  warmths,
} from './steps.ts';

/**
 * What is worth a word in the order of a stage: preservative salts after acid, potent aroma that is heated, antifoam
 * before high shear, an emulsion into something hot, and a stage that is made up to a volume while it is warm.
 *
 * Input     the items of a stage in the order of addition with what they bring, and its steps; the temperature in K
 *           at which volumes are read
 * Output    cautions, each at its step or its item
 * Example   warm to 60 C, then add the emulsion -> emulsion-into-hot
 */
export function orderCautions(stage: ProcessStage, coldKelvin: number): readonly PlacedCaution[] {
  const warm = warmths(stage.steps);
  return [
    ...preservativeCautions(stage),
    ...heatedAroma(stage, warm),
    ...shearedAntifoam(stage),
    ...hotEmulsion(stage, warm),
    ...madeUpWarm(stage, warm, coldKelvin),
  ];
}

export function processCaution(code: ProcessCode, text: string, at: Spot): PlacedCaution {
  const { reason, source } = processReasons[code];
  return { code, text: `${text}: ${reason}`, short: text, hint: reason, source, at };
}

const placed = (stage: ProcessStage, has: (item: ProcessItem) => boolean) =>
  stage.items.flatMap((item, place) => (has(item) ? [{ item, place, step: stepOf(stage, item) }] : []));

/** Inside a stage that is used it is dissolved already. */
const isPreservative = ({ traits, isStage }: ProcessItem): boolean =>
  !isStage && traits.has('preservative salt');

/** The steps decide where they name both; else the order of the items does. */
function preservativeCautions(stage: ProcessStage): readonly PlacedCaution[] {
  const acids = placed(stage, ({ traits }) => traits.has('acid'));
  return placed(stage, isPreservative).flatMap(({ item, place, step }) => {
    const acid = acids.find((other) => {
      if (other.place === place) return false;
      return step !== undefined && other.step !== undefined && step !== other.step
        ? other.step < step
        : other.place < place;
    });
    if (!acid) return [];
    const isByStep = step !== undefined && acid.step !== undefined && step !== acid.step;
    const at = { stage: stage.name, item: place, ...(isByStep ? { step } : {}) };
    return [processCaution('preservative-after-acid', `${item.name} goes in after ${acid.item.name}`, at)];
  });
}

function heatedAroma(stage: ProcessStage, warm: readonly Warmth[]): readonly PlacedCaution[] {
  return placed(stage, ({ traits }) => traits.has('potent')).flatMap(({ item, place, step }) => {
    const from = step ?? 0;
    const heated = stage.steps.findIndex((_, index) => index >= from && isHeating(stage, warm, index, step));
    if (heated < 0) return [];
    const text =
      step === undefined
        ? `no step says that ${item.name} goes in after the stage is warmed`
        : `${item.name} goes in before the stage is warmed, or while it is`;
    return [processCaution('aroma-heated', text, { stage: stage.name, item: place, step: heated })];
  });
}

/** Whether what is in at this step is warm in it: the step leaves it warm, or it goes into what is warm already. */
function isHeating(
  { steps }: ProcessStage,
  warm: readonly Warmth[],
  index: number,
  addedAt: number | undefined,
): boolean {
  const isAfter = warm[index + 1]?.isWarm === true;
  const intoWarm = index === addedAt && warm[index]?.isWarm === true && steps[index]?.does !== 'cool';
  return isAfter || intoWarm;
}

function shearedAntifoam(stage: ProcessStage): readonly PlacedCaution[] {
  return placed(stage, ({ traits }) => traits.has('antifoam')).flatMap(({ item, place, step }) => {
    const shear = stage.steps.findIndex((one, index) => index >= (step ?? 0) && isShear(one));
    if (shear < 0) return [];
    const text =
      step === undefined
        ? `no step says that ${item.name} goes in after high shear`
        : `${item.name} goes in before high shear`;
    return [processCaution('antifoam-before-shear', text, { stage: stage.name, item: place, step: shear })];
  });
}

const isEmulsion = ({ isStage, traits }: ProcessItem): boolean =>
  isStage && traits.has('oil') && traits.has('emulsifier');

function hotEmulsion(stage: ProcessStage, warm: readonly Warmth[]): readonly PlacedCaution[] {
  return placed(stage, isEmulsion).flatMap(({ item, place, step }) => {
    if (step === undefined || stage.steps[step]?.does === 'cool') return [];
    if (!warm[step]?.isWarm && !warm[step + 1]?.isWarm) return [];
    const at = { stage: stage.name, item: place, step };
    return [processCaution('emulsion-into-hot', `${item.name} goes in while ${stage.name} is warm`, at)];
  });
}

function madeUpWarm(
  stage: ProcessStage,
  warm: readonly Warmth[],
  coldKelvin: number,
): readonly PlacedCaution[] {
  return stage.items.flatMap((item, place) => {
    if (item.makesUpTo === undefined || stage.steps.length === 0) return [];
    const step = makeUpStepOf(stage, item);
    const warmth = warm[step === undefined ? stage.steps.length : step + 1];
    if (!warmth?.isWarm) return [];
    const text = `${stage.name} is made up ${item.makesUpTo} while it is warm, and is ${shortText(warmth.kelvin, coldKelvin)} short when cold`;
    const at = { stage: stage.name, item: place, ...(step === undefined ? {} : { step }) };
    return [processCaution('made-up-warm', text, at)];
  });
}

const usualWarmKelvin = 333.15;

/** By how much water shrinks on cooling; for 60 C where the temperature is not said. */
function shortText(kelvin: number | undefined, coldKelvin: number): string {
  const warm = waterDensity({ temperatureKelvin: kelvin ?? usualWarmKelvin });
  const cold = waterDensity({ temperatureKelvin: coldKelvin });
  if (!warm.ok || !cold.ok) return 'a few per cent';
  const percent = trimmedNumber((1 - warm.value / cold.value) * 100, 2);
  return kelvin === undefined ? `about ${percent} % (if at 60 C)` : `about ${percent} %`;
}
