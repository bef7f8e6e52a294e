/** Everything that the examples in the comments may call. */
import * as activity from '../../../src/calc/solution/activity.ts';
import * as adjust from '../../../src/calc/solution/adjust.ts';
import * as adjustPair from '../../../src/calc/solution/adjust-pair.ts';
import * as alkalinity from '../../../src/calc/solution/alkalinity.ts';
import * as apparentVolume from '../../../src/calc/solution/apparent-volume.ts';
import * as bottle from '../../../src/calc/solution/bottle.ts';
import * as carbonDioxide from '../../../src/calc/solution/carbon-dioxide.ts';
import * as carbonation from '../../../src/calc/solution/carbonation.ts';
import * as dissociation from '../../../src/calc/solution/dissociation.ts';
import * as dissolve from '../../../src/calc/solution/dissolve.ts';
import * as drink from '../../../src/calc/solution/drink.ts';
import * as equilibrium from '../../../src/calc/solution/equilibrium.ts';
import * as molarMass from '../../../src/calc/solution/molar-mass.ts';
import * as refractometer from '../../../src/calc/solution/refractometer.ts';
import * as root from '../../../src/calc/solution/root.ts';
import * as substance from '../../../src/calc/solution/substance.ts';
import * as sugar from '../../../src/calc/solution/sugar.ts';
import * as sugarIndex from '../../../src/calc/solution/sugar-index.ts';
import * as sugarLimits from '../../../src/calc/solution/sugar-limits.ts';
import * as swapAcid from '../../../src/calc/solution/swap-acid.ts';
import * as sweetness from '../../../src/calc/solution/sweetness.ts';
import * as syrup from '../../../src/calc/solution/syrup.ts';
import * as titration from '../../../src/calc/solution/titration.ts';
import * as vapourPressure from '../../../src/calc/solution/vapour-pressure.ts';
import * as waterActivity from '../../../src/calc/solution/water-activity.ts';
import * as waterConstants from '../../../src/calc/solution/water-constants.ts';

export const scope: Readonly<Record<string, unknown>> = {
  ...activity,
  ...adjust,
  ...adjustPair,
  ...alkalinity,
  ...apparentVolume,
  ...bottle,
  ...carbonDioxide,
  ...carbonation,
  ...dissociation,
  ...dissolve,
  ...drink,
  ...equilibrium,
  ...molarMass,
  ...refractometer,
  ...root,
  ...substance,
  ...sugar,
  ...sugarIndex,
  ...sugarLimits,
  ...swapAcid,
  ...sweetness,
  ...syrup,
  ...titration,
  ...vapourPressure,
  ...waterActivity,
  ...waterConstants,
};

export function isRecord(thing: unknown): thing is Record<string, unknown> {
  return typeof thing === 'object' && thing !== null;
}
