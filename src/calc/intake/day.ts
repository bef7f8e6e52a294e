/** What so many servings a day carry of a substance, beside the published daily intakes. */

import {
  type DailyIntake,
  dailyIntakes,
  type NoIntakeNumber,
  noIntakeNumbers,
} from '../../reference/limits/daily-intakes.ts';
import { type Amount, type Counted, counted } from '../drink/counted-forms.ts';

export interface Drinking {
  readonly servingMillilitres: number;
  readonly servingsPerDay: number;
  readonly bodyKilograms: number;
}

export interface IntakeShare {
  readonly counted: Counted;
  readonly servingMilligrams: number;
  readonly dayMilligrams: number;
  readonly figure: DailyIntake;
  /** mg in a day, or at once, for this body. */
  readonly figureMilligrams: number;
  /** Of the figure; for a figure at once, of one serving. */
  readonly share: number;
}

export interface NoShare {
  readonly counted: Counted;
  readonly servingMilligrams: number;
  readonly dayMilligrams: number;
  readonly words: NoIntakeNumber;
}

/**
 * Formula   mg a serving = g/L x mL; mg a day = that x servings; figure in mg = mg/kg a day x kg of body
 * Input     amounts in g/L; serving in mL, servings a day, body mass in kg
 * Output    one row for each published figure of each thing that is counted; words where a body gave no number
 * Source    with each figure
 * Example   180 mg/L of polysorbate 80, 2 x 330 mL, 60 kg -> 118.8 mg a day, 7.9 % of 25 mg/kg
 */
export function intakeShares(
  amounts: readonly Amount[],
  drinking: Drinking,
): { readonly shares: readonly IntakeShare[]; readonly numberless: readonly NoShare[] } {
  const carried = (form: DailyIntake['form']) => {
    const own = counted(form, amounts);
    const servingMilligrams = (own?.gramsPerLitre ?? 0) * drinking.servingMillilitres;
    return (
      own && { counted: own, servingMilligrams, dayMilligrams: servingMilligrams * drinking.servingsPerDay }
    );
  };
  return {
    shares: dailyIntakes.flatMap((figure) => {
      const own = carried(figure.form);
      if (!own) return [];
      const figureMilligrams = figure.value * (figure.unit === 'mg/kg a day' ? drinking.bodyKilograms : 1);
      const taken = figure.unit === 'mg at once' ? own.servingMilligrams : own.dayMilligrams;
      return [{ ...own, figure, figureMilligrams, share: taken / figureMilligrams }];
    }),
    numberless: noIntakeNumbers.flatMap((words) => {
      const own = carried(words.form);
      return own ? [{ ...own, words }] : [];
    }),
  };
}
