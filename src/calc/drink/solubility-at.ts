import type { SolubilityTable } from '../../reference/solubility.ts';

/** What dissolves, where it is known: at the temperature, or only that it is less or more than a figure. */
export interface Holds {
  readonly gramsPerLitre: number;
  /** `at` the temperature; `at most` where the temperature lies under the published ones, `at least` where over. */
  readonly known: 'at' | 'at most' | 'at least';
  /** Of the figure. */
  readonly celsius: number;
  readonly fromMemory: boolean;
}

/** One degree around a row counts as the row. */
const NEAR_CELSIUS = 1;

/**
 * Solubility at a temperature.
 *
 * Formula   ln s between the published rows, by temperature
 * Input     rows in the order of temperature; temperatureCelsius
 * Output    g/L; beyond the rows the nearest, said to be the most or the least that dissolves
 * Source    as the table says
 * Example   solubilityAt(acidSolubility.benzoic, 35) -> { gramsPerLitre: 5.248809, known: 'at', .. }
 */
export function solubilityAt({ points }: SolubilityTable, temperatureCelsius: number): Holds {
  const above = points.findIndex(({ celsius }) => celsius >= temperatureCelsius);
  const high = points[above] ?? points.at(-1);
  const low = above > 0 ? points[above - 1] : undefined;
  if (!high) throw new Error('a table of solubility without rows');
  const fromMemory = high.fromMemory === true || low?.fromMemory === true;
  const row = { gramsPerLitre: high.gramsPerLitre, celsius: high.celsius, fromMemory };
  if (Math.abs(high.celsius - temperatureCelsius) <= NEAR_CELSIUS) return { ...row, known: 'at' };
  if (above === -1) return { ...row, known: 'at least' };
  if (!low) return { ...row, known: 'at most' };
  const share = (temperatureCelsius - low.celsius) / (high.celsius - low.celsius);
  const between = Math.log(low.gramsPerLitre) * (1 - share) + Math.log(high.gramsPerLitre) * share;
  return { gramsPerLitre: Math.exp(between), known: 'at', celsius: temperatureCelsius, fromMemory };
}
