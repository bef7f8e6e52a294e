/** The figure of a drink that an aim is about, in the inner unit of the aim. */

import { normaliseName } from '../../reference/name.ts';
import type { ResolvedSubstance } from '../mixture/picture.ts';
import type { Bound } from '../range.ts';
import { GRAMS_PER_LITRE_OF_A_VOLUME } from '../solution/carbonation.ts';
import type { FinishedDrink } from './finished-drink.ts';

export interface AimValue {
  readonly inner: number;
}

export type AimFound = AimValue | { readonly why: string };

const none = (value: number | undefined, why: string): AimFound =>
  value === undefined ? { why } : { inner: value };

/** What the drink comes to for a named aim, or why it is for measuring. */
export function aimValue(name: string, bound: Bound, drink: FinishedDrink): AimFound {
  const { acidity } = drink;
  switch (name) {
    case 'ph':
      return none(acidity?.ph, 'nothing in the drink moves its pH');
    case 'acid':
      return { inner: (acidity?.titratableAsCitric ?? 0) / 1000 };
    case 'brix':
      return { inner: drink.brix };
    case 'brix acid ratio':
      return none(drink.brixAcidRatio, 'there is no acid or no sugar in the drink');
    case 'density':
      return { inner: drink.densityGramsPerMillilitre };
    case 'water activity':
      return none(drink.waterActivity, 'the model does not cover this drink');
    case 'co2':
      return carbonation(bound, drink);
    case 'alcohol':
      return { inner: inKind(substancesNamed('ethanol', drink), 'share v/v') ?? 0 };
    case 'turbidity':
    case 'head':
    case 'head life':
      return { why: 'it is for measuring' };
    default: {
      const inner = inKind(substancesNamed(name, drink), bound.dimension);
      return none(inner, `its density or molar mass is not known, and the aim is in ${bound.unit}`);
    }
  }
}

/** Measured volumes where they are known: no recipe says how much gas went in. */
function carbonation(bound: Bound, { conditions, measuredCarbonation }: FinishedDrink): AimFound {
  const volumes = measuredCarbonation ? conditions.carbonDioxideVolumes : undefined;
  if (volumes === undefined) return { why: 'it is for measuring: see carbonation for the pressure' };
  return {
    inner: bound.dimension === 'carbonation' ? volumes : (volumes * GRAMS_PER_LITRE_OF_A_VOLUME) / 1000,
  };
}

/** A substance by any of its names; that which was made like it counts too. */
export function substancesNamed(name: string, { stage }: FinishedDrink): readonly ResolvedSubstance[] {
  const wanted = normaliseName(name);
  return stage.substances.filter(({ entry }) =>
    [entry.name, ...(entry.record.aliases ?? []), ...(entry.like ?? [])].some(
      (one) => normaliseName(one) === wanted,
    ),
  );
}

function inKind(substances: readonly ResolvedSubstance[], kind: Bound['dimension']): number | undefined {
  let total = 0;
  for (const substance of substances) {
    const value = oneInKind(substance, kind);
    if (value === undefined) return undefined;
    total += value;
  }
  return total;
}

function oneInKind(
  { entry, massFraction, gramsPerLitre }: ResolvedSubstance,
  kind: Bound['dimension'],
): number | undefined {
  const { density, 'molar mass': molar } = entry.record.figures;
  switch (kind) {
    case 'share':
      return massFraction;
    case 'share w/v':
    case 'mass per volume':
      return gramsPerLitre / 1000;
    case 'share v/v':
    case 'volume per volume':
      return density && gramsPerLitre / 1000 / density.value;
    case 'moles per volume':
      return molar && gramsPerLitre / 1000 / molar.value;
    case 'moles per mass':
      return molar && massFraction / molar.value;
    default:
      return undefined;
  }
}
