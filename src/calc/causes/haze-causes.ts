/** What a haze can mean. */

import { numberText, trimmedNumber } from '../number-text.ts';
import { type Cause, cause, type Known, orLarge, spanWords } from './facts.ts';
import { plasticCause } from './shared-causes.ts';

export function hazeCauses(known: Known): readonly Cause[] {
  return [
    ...(known.hasOil
      ? [...ratioCause(known), ...sizeCauses(known), ...doseCause(known), ...coldCause(known)]
      : []),
    ...besideCauses(known),
    ...plasticCause(known, 20),
  ];
}

/** Weighs by where the ratio lies on the published map. */
export function ratioCause({ emulsifierPerOil: ratio, micelle, hasOil }: Known): readonly Cause[] {
  if (ratio === undefined)
    return hasOil
      ? [cause('too-little-emulsifier', 84, 'no stage holds the oil and an emulsifier together')]
      : [];
  const parts = `${trimmedNumber(ratio, 3)} parts of emulsifier to one of oil`;
  if (ratio < 1) return [cause('too-little-emulsifier', 82, `${parts}: below 1 a cloudy emulsion is usual`)];
  if (ratio < 2)
    return [cause('too-little-emulsifier', 66, `${parts}: from 1 to 2 it can be fine, and does not stay so`)];
  const expected =
    micelle === undefined ? '' : `, where about ${numberText(micelle, 2)} nm would be expected`;
  return [
    cause('too-little-emulsifier', ratio < 2.6 ? 45 : 25, `${parts}: above 2 it is usually clear${expected}`),
  ];
}

function sizeCauses(known: Known): readonly Cause[] {
  const { implied, wasClear, micelle, isConcentrate, measuredDroplet } = known;
  const sizes = implied
    ? `${implied.from} means droplets ${spanWords(implied)}${orLarge(implied)} at this dose`
    : isConcentrate
      ? 'a concentrate: no droplet size can be told from its haze before it is diluted'
      : 'no droplet size can be told from the haze at this dose';
  const expected = micelle === undefined ? '' : `; the ratio would make about ${numberText(micelle, 2)} nm`;
  const measured =
    measuredDroplet === undefined ? '' : `; ${numberText(measuredDroplet, 3)} nm were measured`;
  const because = `${sizes}${expected}${measured}`;
  if (!wasClear) return [cause('droplets-large', 62, because)];
  const next =
    measuredDroplet === undefined
      ? undefined
      : 'measure the size again after as many days: growth goes on; then try 10 % of an insoluble oil (MCT, ester gum) in the oil, or a folded oil';
  return [cause('droplets-grew', 70, because, next)];
}

function doseCause({ largestClear, micelle, isDrink }: Known): readonly Cause[] {
  if (largestClear === undefined || micelle === undefined || largestClear >= micelle) return [];
  return [
    cause(
      'dose-shows',
      isDrink ? 58 : 64,
      `droplets of ${numberText(micelle, 2)} nm would be seen at this dose: they stay unseen up to ${numberText(largestClear, 2)} nm${isDrink ? '' : '; judge it at drinking strength'}`,
    ),
  ];
}

const coldCause = ({ celsius, isCitrus }: Known): readonly Cause[] =>
  celsius <= 10
    ? [cause('cold-haze', isCitrus ? 68 : 50, `it stands at ${trimmedNumber(celsius, 3)} C`)]
    : [];

/** What is not oil. */
export function besideCauses(known: Known): readonly Cause[] {
  const { hasAntifoam, crystals, bindsCalcium, hardness, ageDays, hasPreservative, isDrink } = known;
  const isHard = hardness !== undefined && hardness >= 100;
  return [
    ...(hasAntifoam ? [cause('antifoam', 44, 'there is antifoam in it')] : []),
    ...(crystals.length > 0 ? [cause('crystals', 46, crystals[0] ?? '')] : []),
    ...(bindsCalcium
      ? [
          cause(
            'calcium',
            isHard ? 48 : 22,
            hardness === undefined
              ? 'the hardness of the water is not written in bench.yaml'
              : `the water has ${trimmedNumber(hardness, 3)} mg/L of hardness as CaCO3`,
          ),
        ]
      : []),
    ...(isDrink && !hasPreservative && (ageDays ?? 0) >= 3
      ? [cause('spoiled', 30, `${trimmedNumber(ageDays ?? 0, 2)} d old and without preservative`)]
      : []),
  ];
}
