/** The figures of a design that a swap may move. */

import { finishedDrink } from '../calc/drink/finished-drink.ts';
import type { DrinkConditions } from '../calc/drink/stage-figures.ts';
import { meetingStage } from '../calc/mixture/meeting-stage.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { numberText } from '../calc/number-text.ts';

export interface SwapFigure {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  /** As many digits as it is worth. */
  readonly text: string;
}

export function swapFigures(mixture: Mixture, conditions: DrinkConditions): readonly SwapFigure[] {
  const found = mixture.drink ? finishedDrink(mixture, conditions) : undefined;
  const drink = found?.ok ? found.value : undefined;
  const meeting = meetingStage(mixture);
  return [
    figure('ph', 'pH', '', drink?.acidity?.ph, (value) => value.toFixed(2)),
    figure('acid', 'acid, as citric', 'g/L', drink?.acidity?.titratableAsCitric, digits(3)),
    figure('brix', 'Brix', '', drink?.brix, (value) => value.toFixed(2)),
    figure('sweetness', 'as sweet as sucrose at', 'g/100 mL', drink?.sweetness.low, digits(3)),
    figure('sodium', 'sodium', 'mg/100 mL', drink?.nutrition.sodiumMilligrams, digits(3)),
    figure('energy', 'energy', 'kJ/100 mL', drink?.nutrition.kilojoules, digits(3)),
    figure('density', 'density', 'g/mL', drink?.densityGramsPerMillilitre, digits(5)),
    figure('oil', 'oil in the drink', 'mg/L', oilIn(mixture), digits(3)),
    figure(
      'emulsifierPerOil',
      'emulsifier to a part of oil',
      '',
      meeting && meeting.emulsifierGrams / meeting.oilGrams,
      digits(3),
    ),
    figure('hlb', 'HLB of the emulsifiers', '', meeting && blendedHlb(meeting.emulsifiers), (value) =>
      value.toFixed(1),
    ),
  ];
}

const digits =
  (count: number) =>
  (value: number): string =>
    numberText(value, count);

function figure(
  key: string,
  label: string,
  unit: string,
  value: number | undefined,
  words: (value: number) => string,
): SwapFigure {
  const text = value === undefined ? '-' : `${words(value)}${unit === '' ? '' : ` ${unit}`}`;
  return { key, label, unit, value, text };
}

function oilIn({ drink }: Mixture): number | undefined {
  const oils = drink?.substances.filter(({ role }) => role === 'oil') ?? [];
  return oils.length === 0
    ? undefined
    : oils.reduce((sum, { gramsPerLitre }) => sum + gramsPerLitre * 1000, 0);
}

/** By mass; undefined where one of them has no HLB. */
function blendedHlb(
  emulsifiers: NonNullable<ReturnType<typeof meetingStage>>['emulsifiers'],
): number | undefined {
  let [mass, sum] = [0, 0];
  for (const { entry, quantity } of emulsifiers) {
    const hlb = entry?.record.figures.hlb?.value;
    if (hlb === undefined || !quantity) return undefined;
    mass += quantity.inner;
    sum += quantity.inner * hlb;
  }
  return mass > 0 ? sum / mass : undefined;
}
