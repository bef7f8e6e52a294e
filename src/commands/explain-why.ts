/** How `why` came to its droplets. Loaded only by `--explain`. */

import type { WorkingLine } from '../calc/answer.ts';
import { orLarge, spanWords } from '../calc/causes/facts.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { swollenMicelle } from '../reference/droplet.ts';
import { crowded, hazeBands, nephelometer, singleScattering, usualWavelength } from '../reference/light.ts';
import { hindered, usualHeight } from '../reference/settling.ts';
import type { Explanation } from './command.ts';
import { causeSources, type Explained } from './why-page.ts';

export function whyExplanation(explained: Explained): Explanation {
  const { known } = explained;
  const { implied, largestClear, micelle, emulsifierPerOil, leastRisen, ageDays } = known;
  const line = (equation: string, numbers: string): WorkingLine => ({ equation, numbers });
  return {
    working: [
      ...(emulsifierPerOil === undefined
        ? []
        : [line('emulsifier per oil = g of emulsifier / g of oil', numberText(emulsifierPerOil, 4))]),
      ...(micelle === undefined || emulsifierPerOil === undefined
        ? []
        : [
            line(
              'size that the ratio would make = 2 x (3 (v_tail + n v_oil)/a + shell)',
              `a ${swollenMicelle.area} nm2, shell ${swollenMicelle.shell} nm, ${numberText(emulsifierPerOil, 3)} of emulsifier per oil: ${numberText(micelle, 2)} nm`,
            ),
          ]),
      ...(implied === undefined
        ? []
        : [
            line(
              `sizes whose haze at ${usualWavelength.value} nm is what was ${implied.isReading ? 'read' : 'seen'}`,
              `${implied.from}: droplets ${spanWords(implied)}${orLarge(implied)}`,
            ),
          ]),
      ...(largestClear === undefined
        ? []
        : [
            line(
              'largest size whose haze is not seen at this dose',
              `under ${hazeBands.unseen} NTU on black: up to ${numberText(largestClear, 2)} nm`,
            ),
          ]),
      ...(leastRisen === undefined || ageDays === undefined
        ? []
        : [
            line(
              'least size that rose = root of 18 x viscosity x height / (difference x g x time)',
              `${usualHeight.millimetres} mm in ${trimmedNumber(ageDays, 3)} d: ${numberText(leastRisen, 3)} nm`,
            ),
          ]),
      line(
        'causes: weights of what is known multiplied, the likeliest first',
        `${explained.causes.length} of them; the weights are common practice, no measurement`,
      ),
    ],
    sources: [
      ...(implied || largestClear !== undefined
        ? [
            cited('scattering of spheres', singleScattering),
            cited('light to the side of 1 NTU, 1/(m sr)', nephelometer),
            cited('what is seen', hazeBands),
            cited('when droplets are crowded', crowded),
          ]
        : []),
      ...(micelle === undefined ? [] : [cited('size of a micelle with oil in it', swollenMicelle)]),
      ...(leastRisen === undefined ? [] : [cited('hindered rising', hindered)]),
      ...causeSources(explained.causes),
    ],
  };
}

const cited = (
  purpose: string,
  {
    source,
    locator,
    fromMemory = false,
  }: {
    readonly source: string;
    readonly locator?: string;
    readonly fromMemory?: boolean;
  },
) => ({ for: purpose, source: locator === undefined ? source : `${source}#${locator}`, fromMemory });
