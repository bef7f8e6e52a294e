import { emulsifierPerOilBand, farOutside, type UsualBand, usualBands } from '../../reference/usual-bands.ts';
import type { Caution } from '../answer.ts';
import { trimmedNumber } from '../number-text.ts';
import { withMemory } from './placed-caution.ts';

export interface BandFigure {
  /** After `slip-`. */
  readonly name: string;
  readonly band: UsualBand;
  /** In the unit of the band. */
  readonly value: number;
  /** How often beyond the band it must lie; 3 where left out. */
  readonly beyond?: number;
}

/**
 * The question about a figure that lies far outside its usual band; none where it is nothing or near.
 *
 * Formula   value < low / beyond, or value > high x beyond
 * Input     the figure and its band, in the unit of the band
 * Output    a caution that asks; undefined where there is nothing to ask
 * Example   700 mg/L of flavour oil, band 10 to 200 mg/L -> slip-flavour-oil
 */
export function bandQuestion({
  name,
  band,
  value,
  beyond = farOutside.value,
}: BandFigure): Caution | undefined {
  const isLow = band.low !== undefined && value < band.low / beyond;
  if (value <= 0 || !(isLow || value > band.high * beyond)) return undefined;
  return {
    code: `slip-${name}`,
    text: `${figureText(value, band)}, where ${usualText(band)}: is this meant?`,
    source: withMemory(band.source, band.fromMemory),
  };
}

const figureText = (value: number, { unit, label }: UsualBand): string =>
  `${trimmedNumber(value, 3)} ${unit} of ${label}`;

const usualText = ({ low, high, unit }: UsualBand): string =>
  `${low === undefined ? 'under' : `${trimmedNumber(low)} to`} ${trimmedNumber(high)} ${unit} is usual`;

/** The question about emulsifier per oil, in g/g. */
export function emulsifierQuestion(emulsifierPerOil: number): Caution | undefined {
  const { low, high, source } = emulsifierPerOilBand;
  if (emulsifierPerOil >= low && emulsifierPerOil <= high) return undefined;
  const parts = trimmedNumber(emulsifierPerOil, 3);
  const text = `1 part oil to ${parts} parts emulsifier, where ${low} to ${high} is usual: is this meant?`;
  return { code: 'slip-emulsifier-per-oil', text, source };
}

/** The question about a carbonation, in volumes. */
export function carbonationSlip(volumes: number): Caution | undefined {
  return bandQuestion({ name: 'co2', band: usualBands.co2, value: volumes });
}

/** A trace by mass in the unit that keeps it readable. */
export function traceText(fraction: number): string {
  if (fraction >= 1e-6) return `${trimmedNumber(fraction * 1e6, 3)} ppm`;
  return fraction >= 1e-9
    ? `${trimmedNumber(fraction * 1e9, 3)} ppb`
    : `${trimmedNumber(fraction * 1e12, 3)} ppt`;
}
