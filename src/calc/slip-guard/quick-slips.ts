/** The same questions for figures that were typed on the command line. */

import { droppedTargets, usualBands } from '../../reference/usual-bands.ts';
import type { Caution } from '../answer.ts';
import { bandQuestion, emulsifierQuestion, traceText } from './band-question.ts';

export interface DosedFigures {
  readonly oilMilligramsPerLitre: number;
  /** g/g. */
  readonly emulsifierPerOil: number | undefined;
  /** Taken as propylene glycol. */
  readonly carrierGramsPerLitre: number | undefined;
}

/**
 * Questions about a dose.
 *
 * Input     oil in the drink (mg/L), emulsifier per oil (g/g), carrier in the drink (g/L)
 * Output    cautions whose codes begin with `slip-`
 * Example   60000 mg/L of oil, as where g was typed for mg -> slip-flavour-oil
 */
export function slipsOfDose(dosed: DosedFigures): readonly Caution[] {
  const { oilMilligramsPerLitre, emulsifierPerOil, carrierGramsPerLitre } = dosed;
  const questions = [
    bandQuestion({ name: 'flavour-oil', band: usualBands['flavour-oil'], value: oilMilligramsPerLitre }),
    emulsifierPerOil === undefined ? undefined : emulsifierQuestion(emulsifierPerOil),
    bandQuestion({
      name: 'propylene-glycol',
      band: { ...usualBands['propylene-glycol'], label: 'carrier, taken as propylene glycol' },
      value: carrierGramsPerLitre ?? 0,
    }),
  ];
  return questions.flatMap((question) => (question ? [question] : []));
}

/**
 * The question about a target that is counted in drops, of a compound whose use level is not known.
 *
 * Input     mass fraction in the drink
 * Output    one caution with the code `slip-target`, or none
 * Example   5e-6, as where ppm was typed for ppb -> slip-target
 */
export function slipsOfDrops(targetFraction: number): readonly Caution[] {
  const { low, high, source } = droppedTargets;
  if (!(targetFraction > 0) || (targetFraction >= low && targetFraction <= high)) return [];
  const text = `${traceText(targetFraction)} in the drink, where 1 ppt to 1 ppm is usual for what is counted in drops: is this meant?`;
  return [{ code: 'slip-target', text, source }];
}
