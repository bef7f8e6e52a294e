import type { Figure } from './ingredient.ts';

/** What a source says of where a figure holds: its temperature, and the range that it is taken from. */
export function figureRange({ low, high, temperatureCelsius }: Figure): string | undefined {
  const at = temperatureCelsius === undefined ? [] : [`at ${temperatureCelsius} C`];
  const span = low === undefined || low === high ? [] : [`given as ${low} to ${high}`];
  const words = [...at, ...span];
  return words.length > 0 ? words.join(', ') : undefined;
}
