/** A stage of a trial as droplets in light: what its haze says of them, and what its ratio would make. */

import { micelleDiameter } from '../calc/coating/swollen-micelle.ts';
import { largestBelow, type SizeCurve, sizeCurve, sizesOf } from '../calc/light/droplet-of-haze.ts';
import { type Background, hazeOf, seenFrom } from '../calc/light/look.ts';
import { mediumIndex, oilPhase } from '../calc/light/medium-index.ts';
import { mediumItems, type StageMedium, stageMedium } from '../calc/light/stage-medium.ts';
import type { Dispersion } from '../calc/light/turbidity.ts';
import { type Meeting, meetingStage } from '../calc/mixture/meeting-stage.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { polysorbateTails } from '../reference/droplet.ts';
import { crowded, sizesLookedFor, usualWavelength } from '../reference/light.ts';

export interface StageModel {
  readonly medium: StageMedium;
  readonly dispersion: Dispersion;
  readonly curve: SizeCurve;
  /** g/mL. */
  readonly oilDensity: number;
  /** Above 1 % of oil by volume, where no size can be told from a haze. */
  readonly isConcentrate: boolean;
}

/** Undefined where there is no oil in it, or a figure is lacking. */
export function stageModel(stage: ResolvedStage): StageModel | undefined {
  const medium = stageMedium(mediumItems(stage));
  const oil = oilPhase(medium, { needsIndex: true });
  const index = mediumIndex(medium);
  if (!oil.ok || !index.ok) return undefined;
  const dispersion: Dispersion = {
    volumeFraction: oil.value.volumeFraction,
    oilIndex: oil.value.index,
    mediumIndex: index.value,
    wavelengthNanometres: usualWavelength.value,
  };
  return {
    medium,
    dispersion,
    curve: sizeCurve(dispersion, 0),
    oilDensity: oil.value.density,
    isConcentrate: dispersion.volumeFraction > crowded.value,
  };
}

export interface SizeSpan {
  readonly low: number;
  readonly high: number;
}

/** nm, the small branch: sizes whose NTU lies between two readings; undefined where none does. */
export function sizesBetween(
  curve: SizeCurve,
  ntu: { readonly low?: number | undefined; readonly high?: number | undefined },
): SizeSpan | undefined {
  const at = (reading: number | undefined, otherwise: number): number =>
    (reading === undefined
      ? undefined
      : sizesOf(curve, reading).find(({ isRising }) => isRising)?.diameterNanometres) ?? otherwise;
  const first = curve.points[0]?.ntu ?? 0;
  const most = Math.max(...curve.points.map((point) => point.ntu));
  if ((ntu.high !== undefined && ntu.high < first) || (ntu.low !== undefined && ntu.low > most))
    return undefined;
  const { low, high } = sizesLookedFor;
  return { low: at(ntu.low, low), high: at(ntu.high, ntu.high === undefined ? high : peak(curve)) };
}

const peak = ({ points }: SizeCurve): number =>
  points.reduce((best, point) => (point.ntu > best.ntu ? point : best), { diameterNanometres: 0, ntu: 0 })
    .diameterNanometres;

/** NTU that a look stands for, with the band of the eye. */
export function ntuOfLook(looks: readonly string[], background: Background): SizeSpan | undefined {
  const word = (['cloudy', 'hazy', 'bluish', 'clear'] as const).find((one) => looks.includes(one));
  if (!word) return undefined;
  const { low, high } = hazeOf(word, background);
  return { low: (low ?? 0) / 2, high: (high ?? Number.POSITIVE_INFINITY) * 2 };
}

export const backgroundOf = (viewed: string): Background =>
  /\bwhite\b/iu.test(viewed) && !/\bblack\b/iu.test(viewed) ? 'white' : 'black';

/** nm; undefined where every size is seen or none is. */
export const largestUnseen = ({ curve }: StageModel, background: Background): number | undefined =>
  largestBelow(curve, seenFrom(background)) || undefined;

export interface Ratio {
  readonly meeting: Meeting;
  readonly emulsifierPerOil: number;
  /** nm, where all of the oil can go into micelles of a known polysorbate. */
  readonly micelle: number | undefined;
}

export function ratioOf(mixture: Mixture): Ratio | undefined {
  const meeting = meetingStage(mixture);
  if (!meeting || meeting.oilGrams <= 0) return undefined;
  const emulsifierPerOil = meeting.emulsifierGrams / meeting.oilGrams;
  const names = meeting.emulsifiers.flatMap(({ name, entry }) => [name, ...(entry?.like ?? [])]);
  const tail = names.map((name) => polysorbateTails[name]).find((one) => one !== undefined);
  return {
    meeting,
    emulsifierPerOil,
    micelle: tail && emulsifierPerOil >= 1 ? micelleDiameter({ emulsifierPerOil, ...tail }) : undefined,
  };
}
