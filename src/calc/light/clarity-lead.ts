/** The sentence that must be read before the figures of `clarity`. */

import { crowded, hazeBands, usualWavelength } from '../../reference/light.ts';
import type { ClarityGiven } from '../calculators/clarity.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import { type Haze, type Inverse, isWhite } from './clarity.ts';

interface LeadFrom {
  readonly haze: Haze | undefined;
  readonly inverse: Inverse;
  readonly given: ClarityGiven;
  readonly widthMetres: number;
  readonly isCrowded: boolean;
}

export function clarityLead({ haze, inverse, given, widthMetres, isCrowded }: LeadFrom): {
  readonly lead?: string;
  readonly attention?: boolean;
} {
  if (haze && !haze.ntu && isWhite((given.wavelength?.inner ?? usualWavelength.value * 1e-9) * 1e9)) {
    const most = `${numberText(Math.exp(-haze.opticalPath) * 100, 2)} %`;
    const why = haze.isCrowded
      ? `above ${crowded.value * 100} % of oil droplets no longer scatter each for itself`
      : 'light is scattered more than once';
    const lead = `No NTU can be told: ${why} (turbidity x width ${trimmedNumber(haze.opticalPath, 3)}). What is known: it looks ${haze.look.look}; at least ${most} of the light goes straight through ${trimmedNumber(widthMetres * 1000, 3)} mm. Dilute it as it is drunk and ask again.`;
    return { lead, attention: true };
  }
  if (!haze && isCrowded)
    return {
      lead: `This is a concentrate: above ${crowded.value * 100} % of oil no droplet size can be told from its haze, nor what stays clear. Dilute it as it is drunk and ask again.`,
      attention: true,
    };
  if (given.turbidity && inverse.implied.length === 0)
    return {
      lead: `No droplet size makes ${given.turbidity.written} of this dose: something else scatters, or the dose is not what it is thought to be.`,
      attention: true,
    };
  if (!haze && !given.turbidity && inverse.largestClear === 0)
    return {
      lead: 'At this dose even the smallest droplets would be seen: judge it at drinking strength.',
      attention: true,
    };
  return haze
    ? { lead: `Look: ${haze.look.look}. Bands of the eye, good to a factor of ${hazeBands.factor}.` }
    : {};
}
