/** A drink beside the figures that bodies have published for such drinks. Both are shown; the reader judges. */

import { limits } from '../../reference/limits/index.ts';
import type { LimitBody, LimitFigure } from '../../reference/limits/published-figure.ts';
import type { ResolvedStage } from '../mixture/picture.ts';
import { alcoholByVolume } from './alcohol.ts';
import { type Counted, counted } from './counted-forms.ts';

export interface BesideFigure {
  readonly counted: Counted;
  readonly figure: LimitFigure;
  /** Of the drink, in the unit of the figure; absent where the figure has no number. */
  readonly here?: number;
  /** True where there is a number, and the drink has more. */
  readonly isAbove: boolean;
}

const milli = 1000;
const million = 1e6;

/**
 * Every published figure for something that the drink holds.
 *
 * Formula   mg/kg = mass fraction x 1e6; mg/L = g/L x 1000; % v/v = g/L / (density of ethanol x 10)
 * Input     the drink; the bodies asked for
 * Output    what is counted, the figure, the drink's own in its unit, whether it is above; figures for other foods too
 * Source    with each figure
 * Example   0.18 g/L of polysorbate 80 -> 174 mg/kg beside the 500 mg/kg of Codex
 */
export function besideFigures(drink: ResolvedStage, bodies: readonly LimitBody[]): readonly BesideFigure[] {
  const hasBenzoates = counted('benzoic', drink.substances) !== undefined;
  const met = limits.filter(
    ({ body, when }) =>
      bodies.includes(body) &&
      (when === undefined || when === (hasBenzoates ? 'with benzoates' : 'without benzoates')),
  );
  return met.flatMap((figure): readonly BesideFigure[] => {
    const own = counted(figure.form, drink.substances);
    if (!own) return [];
    const here = inUnit(own, figure, drink);
    if (here === undefined || figure.value === undefined) return [{ counted: own, figure, isAbove: false }];
    return [{ counted: own, figure, here, isAbove: figure.isDrink && here > figure.value * (1 + ROUNDING) }];
  });
}

/** Equal to the figure is not above it. */
const ROUNDING = 1e-9;

function inUnit(own: Counted, { unit }: LimitFigure, drink: ResolvedStage): number | undefined {
  if (unit === 'mg/kg') return own.massFraction * million;
  if (unit === 'mg/L') return own.gramsPerLitre * milli;
  return unit === '% v/v' ? alcoholByVolume(drink) * 100 : undefined;
}
