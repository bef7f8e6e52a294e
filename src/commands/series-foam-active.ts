/** What the doses of a foam series put into the drink, beside published figures. */

import type { Caution } from '../calc/answer.ts';
import { type ActiveAntifoam, activeAntifoam } from '../calc/foam/active-antifoam.ts';
import type { HeadStep } from '../calc/foam/head-band.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { BenchCard } from '../ledger/cards.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { type AntifoamFigure, antifoamFigures } from '../reference/antifoam-figures.ts';
import { figureText, listed } from './series-words.ts';

export interface ActiveAtDose {
  readonly dose: number;
  /** Undefined where no trial of this dose has a stage named drink. */
  readonly inDrink: ActiveAntifoam | undefined;
}

/** One a step, in its order. */
export const activeAtDoses = (series: SeriesRungs, steps: readonly HeadStep[]): readonly ActiveAtDose[] =>
  steps.map(({ dose }) => {
    const rung = nearestRung(series, dose);
    const drink = dose === 0 ? undefined : rung?.mixture?.drink;
    return { dose, inDrink: drink && activeAntifoam(drink) };
  });

const nearestRung = ({ rungs }: SeriesRungs, dose: number) =>
  rungs.find(({ values }) => Math.abs((values[0] ?? 0) - dose) <= 1e-9 * Math.abs(dose));

interface Compared {
  readonly series: SeriesRungs;
  readonly active: readonly ActiveAtDose[];
  readonly bench: BenchCard;
}

/** What is above a figure, by body; where nothing is, the figures for the sake of the comparison. */
export function foamCautions({ series, active, bench }: Compared): readonly Caution[] {
  const known = active.filter(({ inDrink }) => inDrink !== undefined);
  if (known.length === 0) return [];
  return antifoamFigures
    .filter(({ key }) => bench.limits.includes(key))
    .map((figure) => {
      const over = known.filter(({ inDrink }) => inDrink && amountIn(inDrink, figure) > figure.value);
      const doses = listed(over.map(({ dose }) => figureText(series.scales[0], dose)));
      const figures = `${trimmedNumber(figure.value)} ${figure.unit} that ${figure.body} gives for ${figure.scope}`;
      return {
        code: over.length > 0 ? 'antifoam-above' : 'antifoam-figure',
        text: over.length > 0 ? `${doses}: above the ${figures}` : `no dose poured is above the ${figures}`,
        source: figure.source,
      };
    });
}

const amountIn = (active: ActiveAntifoam, { unit }: AntifoamFigure): number =>
  unit === 'mg/L' ? active.milligramsPerLitre : active.milligramsPerKilogram;
