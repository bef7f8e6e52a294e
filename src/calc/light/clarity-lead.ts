/** The sentence that must be read before the figures of `clarity`. */

import { crowded, hazeBands, sizesLookedFor, usualWavelength } from '../../reference/light.ts';
import type { ClarityGiven } from '../calculators/clarity.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import { type Haze, type Inverse, isWhite } from './clarity.ts';
import type { Background } from './look.ts';

interface LeadFrom {
  readonly haze: Haze | undefined;
  readonly inverse: Inverse;
  readonly given: ClarityGiven;
  readonly background: Background;
  readonly widthMetres: number;
  readonly isCrowded: boolean;
}

export function clarityLead({ haze, inverse, given, background, widthMetres, isCrowded }: LeadFrom): {
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
  const sentences = [
    ...(haze ? [`Look: ${haze.look.look}. Bands of the eye, good to a factor of ${hazeBands.factor}.`] : []),
    ...(given.turbidity && inverse.implied.length > 0 ? [meaningOf(given.turbidity.written, inverse)] : []),
    ...(!haze && !given.turbidity && inverse.largestClear
      ? [
          `At this dose it stays clear, seen against ${background}, with droplets up to about ${numberText(inverse.largestClear, 2)} nm.`,
        ]
      : []),
  ];
  return sentences.length > 0 ? { lead: sentences.join(' ') } : {};
}

/** `8 NTU means droplets of about 76 nm (59 to 98 nm), if nothing but the oil scatters.` */
function meaningOf(written: string, { implied }: Inverse): string {
  const sizes = implied.map(({ diameterNanometres, lowNanometres, highNanometres }) => {
    const low = numberText(lowNanometres, 2);
    const span =
      highNanometres >= sizesLookedFor.high
        ? `from ${low} nm up`
        : `${low} to ${numberText(highNanometres, 2)} nm`;
    return `about ${numberText(diameterNanometres, 2)} nm (${span})`;
  });
  return `${written} means droplets of ${sizes.join(', or large ones of ')}, if nothing but the oil scatters.`;
}
