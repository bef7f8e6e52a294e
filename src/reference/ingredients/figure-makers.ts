/** Short ways to write the figures that come in numbers from one source. */

import type { Figure } from '../ingredient.ts';

type Rest = Omit<Figure, 'value' | 'source'>;

/** Density of water, g/mL, by which a relative density is turned into a density. Kell 1975. */
const waterDensity = { 20: 0.99821, 25: 0.99705 } as const;

interface RelativeDensity extends Omit<Figure, 'value' | 'low' | 'high' | 'temperatureCelsius'> {
  readonly low: number;
  readonly high: number;
  readonly celsius: 20 | 25;
}

/**
 * A density from the relative density that a specification prints, the middle of its range.
 *
 * Formula   rho = d * rho_water, both at the same temperature
 * Output    g/mL to four decimals, which is finer than any of the ranges
 */
export function fromRelativeDensity({ low, high, celsius, note, ...rest }: RelativeDensity): Figure {
  const density = (relative: number) => Math.round(relative * waterDensity[celsius] * 1e4) / 1e4;
  const printed = `printed as relative density ${low} to ${high} (${celsius}/${celsius}), here times ${waterDensity[celsius]} g/mL`;
  return {
    value: density((low + high) / 2),
    low: density(low),
    high: density(high),
    temperatureCelsius: celsius,
    note: note === undefined ? printed : `${printed}; ${note}`,
    ...rest,
  };
}

/** The middle of a printed range. */
export function between(low: number, high: number, rest: Rest & { readonly source: string }): Figure {
  return { value: Math.round(((low + high) / 2) * 1e5) / 1e5, low, high, ...rest };
}

/** A figure for which no copy of a source could be read. */
export const recalled = (value: number, rest: Rest & { readonly source?: string } = {}): Figure => ({
  value,
  source: 'general-knowledge',
  ...rest,
  fromMemory: true,
});

export const molarMass = (value: number): Figure => ({ value, source: 'iupac-atomic-weights' });

/** A density, g/mL, or a refractive index from the table of organic compounds. */
export const handbook = (value: number, temperatureCelsius: number, rest: Rest = {}): Figure => ({
  value,
  temperatureCelsius,
  source: 'crc-95',
  ...rest,
});

export const logP = (value: number, rest: Rest = {}): Figure => ({ value, source: 'kowwin-2006', ...rest });

/** Solubility in water, mg/L at 25 C. */
export const solubility = (value: number, rest: Rest = {}): Figure => ({
  value,
  temperatureCelsius: 25,
  source: 'aqsoldb-2019',
  ...rest,
});
