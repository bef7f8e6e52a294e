import { type Parsed, parsed, refused } from '../../problem.ts';
import { acidOnBrix } from '../../reference/solution/sugars.ts';
import { sugarSolution } from './sugar.ts';

const SCALE_KELVIN = 293.15;

/**
 * What a refractometer without correction, read at another temperature than 20 C, should have shown.
 *
 * Formula   the sucrose solution whose index at the temperature is that of the reading at 20 C
 * Input     reading in Brix, temperatureKelvin of the sample 278.15 to 313.15
 * Output    Brix
 * Refuses   what the index does
 * Source    ICUMSA 1974; compared with OIV-MA-AS2-02, Table I
 * Accuracy  0.04 Brix of that table to 30 Brix, 0.09 at 50 Brix
 * Example   refractometerBrix({ reading: 10, temperatureKelvin: 288.15 }) -> 9.678975
 */
export function refractometerBrix(given: {
  readonly reading: number;
  readonly temperatureKelvin: number;
}): Parsed<number> {
  const shown = sugarSolution({
    sugar: 'sucrose',
    measure: { kind: 'brix', value: given.reading },
    temperatureKelvin: SCALE_KELVIN,
  });
  if (!shown.ok) return shown;
  const meant = sugarSolution({
    sugar: 'sucrose',
    measure: { kind: 'refractive index', value: shown.value.refractiveIndex ?? Number.NaN },
    temperatureKelvin: given.temperatureKelvin,
  });
  return meant.ok ? parsed(meant.value.brix) : meant;
}

/**
 * Brix corrected for the citric acid that the refractometer takes for less than it is.
 *
 * Formula   Brix + 0.2 percent of citric acid (from memory)
 * Input     brix, citricPercent by mass 0 to 5
 * Output    Brix
 * Refuses   more acid
 * Source    Stevens and Baier 1939, Ind. Eng. Chem. Anal. Ed. 11:447, from memory
 * Example   acidCorrectedBrix({ brix: 11, citricPercent: 0.5 }) -> 11.1
 */
export function acidCorrectedBrix(given: {
  readonly brix: number;
  readonly citricPercent: number;
}): Parsed<number> {
  if (given.citricPercent >= 0 && given.citricPercent <= acidOnBrix.highPercent) {
    return parsed(given.brix + acidOnBrix.value * given.citricPercent);
  }
  return refused(
    'outside-range',
    `the correction for acid is given up to ${acidOnBrix.highPercent} %, not at ${given.citricPercent} %`,
    'measure the density instead',
  );
}

/**
 * Brix over acid, the sugar to acid ratio of the juice trade.
 *
 * Formula   Brix / % citric acid by mass
 * Input     brix (corrected for acid and temperature), citricPercent by mass above 0
 * Output    a ratio
 * Refuses   no acid
 * Source    Kimball 1991, Citrus Processing, chapter 4
 * Example   brixAcidRatio({ brix: 10, citricPercent: 0.8 }) -> 12.5
 */
export function brixAcidRatio(given: {
  readonly brix: number;
  readonly citricPercent: number;
}): Parsed<number> {
  if (given.citricPercent > 0) return parsed(given.brix / given.citricPercent);
  return refused('no-acid', 'without acid there is no ratio of sugar to acid', 'give the acid of the drink');
}
