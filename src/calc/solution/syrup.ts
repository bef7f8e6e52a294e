import { type Parsed, refused } from '../../problem.ts';
import { type Sugar, type SugarSolution, sugarSolution } from './sugar.ts';

/**
 * The syrup that makes a drink at a throw of one part and so many parts of water by volume.
 *
 * Formula   g/L(syrup) = g/L(drink) (1 + n), volumes taken as additive
 * Input     sugar, the drink's Brix, waterParts n, temperatureKelvin at which both are measured out
 * Output    the syrup as `sugarSolution` gives it
 * Refuses   a throw that no syrup can hold; a negative throw
 * Source    sucrose density (Bettin and others 1998)
 * Example   syrupForThrow({ sugar: 'sucrose', drinkBrix: 10.5, waterParts: 4, temperatureKelvin: 293.15 }) -> { brix: 45.340762, sugarGramsPerLitre: 546.097714, .. }
 */
export function syrupForThrow(given: {
  readonly sugar: Sugar;
  readonly drinkBrix: number;
  readonly waterParts: number;
  readonly temperatureKelvin: number;
}): Parsed<SugarSolution> {
  return scaled(given, given.drinkBrix, 1 + given.waterParts);
}

/**
 * The drink that a syrup makes at a throw.
 *
 * Formula   g/L(drink) = g/L(syrup) / (1 + n)
 * Input     sugar, the syrup's Brix, waterParts n, temperatureKelvin
 * Output    the drink as `sugarSolution` gives it
 * Refuses   as `syrupForThrow`
 * Source    as `syrupForThrow`
 * Example   drinkFromThrow({ sugar: 'sucrose', syrupBrix: 65, waterParts: 5, temperatureKelvin: 293.15 }) -> { brix: 13.545307, sugarGramsPerLitre: 142.626804, .. }
 */
export function drinkFromThrow(given: {
  readonly sugar: Sugar;
  readonly syrupBrix: number;
  readonly waterParts: number;
  readonly temperatureKelvin: number;
}): Parsed<SugarSolution> {
  return scaled(given, given.syrupBrix, 1 / (1 + given.waterParts));
}

function scaled(
  given: { readonly sugar: Sugar; readonly waterParts: number; readonly temperatureKelvin: number },
  brix: number,
  times: number,
): Parsed<SugarSolution> {
  if (!(given.waterParts >= 0)) {
    return refused(
      'not-a-throw',
      `1+${given.waterParts} is no throw`,
      'give the parts of water to one of syrup, such as 4 for 1+4',
    );
  }
  const { sugar, temperatureKelvin } = given;
  const known = sugarSolution({ sugar, measure: { kind: 'brix', value: brix }, temperatureKelvin });
  if (!known.ok) return known;
  const value = known.value.sugarGramsPerLitre * times;
  return sugarSolution({ sugar, measure: { kind: 'grams per litre', value }, temperatureKelvin });
}
