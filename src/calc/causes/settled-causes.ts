/** What rings, sediments, specks, gels and breaks can mean. */

import { numberText, trimmedNumber } from '../number-text.ts';
import { type Cause, cause, type Known } from './facts.ts';
import { besideCauses, ratioCause } from './haze-causes.ts';
import { plasticCause } from './shared-causes.ts';

export function ringCauses(known: Known): readonly Cause[] {
  const { leastRisen, densityDifference, emulsifierPerOil: ratio } = known;
  const risen =
    leastRisen === undefined
      ? 'no time of making is known to reckon from'
      : `to rise 50 mm in its age droplets are at least ${numberText(leastRisen, 2)} nm, or clumps of smaller ones${densityDifference === undefined ? '' : `; the oil is ${numberText(densityDifference, 3)} kg/m3 lighter`}`;
  return [
    cause('rising-droplets', 80, risen),
    cause(
      'free-oil',
      ratio === undefined || ratio < 2 ? 72 : 50,
      ratio === undefined
        ? 'no emulsifier meets the oil'
        : `${trimmedNumber(ratio, 3)} parts of emulsifier to one of oil`,
    ),
    ...ratioCause(known),
    ...plasticCause(known, 15),
    cause('dried-foam', 20, 'emulsifiers foam'),
  ];
}

export function sedimentCauses(known: Known): readonly Cause[] {
  const { isCitrus, celsius, crystals, densityDifference } = known;
  return [
    ...(densityDifference !== undefined && densityDifference < 0
      ? [cause('oil-sinks', 86, `the oil is ${numberText(-densityDifference, 3)} kg/m3 denser`)]
      : []),
    ...(crystals.length > 0 ? [cause('crystals', 82, crystals.join(' '))] : []),
    ...(isCitrus
      ? [cause('wax', celsius <= 10 ? 79 : 71, `a citrus oil${celsius <= 10 ? ', in the cold' : ''}`)]
      : []),
    ...besideCauses({ ...known, crystals: [], hasAntifoam: false }),
    cause('dust', 25, 'what else sinks'),
  ];
}

export function speckCauses(known: Known): readonly Cause[] {
  return [
    ...(known.crystals.length > 0 ? [cause('crystals', 74, known.crystals.join(' '))] : []),
    cause('dust', 60, 'specks are seldom the emulsion'),
    ...(known.isCitrus ? [cause('wax', known.celsius <= 10 ? 58 : 42, 'a citrus oil')] : []),
    ...besideCauses({ ...known, crystals: [], hasAntifoam: false }),
  ];
}

/** A gel stage wants much emulsifier. */
const fewestForGel = 0.05;

export function gelCauses({ emulsifierShare }: Known): readonly Cause[] {
  const has = `${numberText(emulsifierShare * 100, 2)} % of emulsifier in it`;
  if (emulsifierShare >= fewestForGel) return [cause('gel-stage', 80, has)];
  return [
    cause('spoiled', 60, `${has}, too little to gel: slime, or a gum or pectin that was put in`),
    cause('gel-stage', 25, has),
  ];
}

export function brokenCauses(known: Known): readonly Cause[] {
  const ratio = known.emulsifierPerOil;
  return [
    ...ratioCause(known).map((one) => ({ ...one, weight: Math.min(90, one.weight + 6) })),
    cause(
      'free-oil',
      ratio === undefined || ratio < 2 ? 70 : 52,
      known.wasClear
        ? 'it was whole before'
        : known.before === undefined
          ? 'nobody saw it whole'
          : 'it never was clear',
    ),
    ...(known.wasClear ? [cause('droplets-grew', 60, 'it was clear before')] : []),
    ...(known.celsius <= 0
      ? [
          cause(
            'cold-haze',
            72,
            `it stood at ${trimmedNumber(known.celsius, 3)} C: ice crushes droplets together`,
          ),
        ]
      : []),
  ];
}
