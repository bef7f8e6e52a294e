import { type Parsed, parsed, refused } from '../../problem.ts';
import { acidSubstanceByName } from '../../reference/solution/acid-systems.ts';
import { norrishConstants, osmoticCoefficients } from '../../reference/solution/water-activity.ts';
import { acidSubstanceName, gramsPerMole, neutralName } from './substance.ts';

/** What a substance does to the water. */
export interface Solute {
  readonly name: string;
  /** Moles of whole molecules. */
  readonly particles: number;
  /** Moles of ions times their osmotic coefficient. */
  readonly osmotic: number;
  /** Name of its constant, or nothing. */
  readonly constant: string | undefined;
  readonly ions: number;
}

/**
 * The particles that substances give to water. Acids count whole: in drinks and syrups less than a tenth of one has
 * split. A salt with two ions behaves as sodium chloride does, with more ions as trisodium citrate.
 *
 * Input     grams of each substance, grams of water
 * Output    solutes with moles of molecules and of ions
 * Refuses   an unknown substance, a negative amount
 * Source    osmotic coefficients of Robinson and Stokes 1959 and from freezing points (CRC Handbook)
 */
export function solutesOf(
  substances: readonly { readonly substance: string; readonly grams: number }[],
  waterGrams: number,
): Parsed<readonly Solute[]> {
  const solutes: Solute[] = [];
  for (const { substance, grams } of substances) {
    const molar = gramsPerMole(substance);
    if (molar === undefined) {
      return refused(
        'no-water-data',
        `nothing is known of what "${substance}" does to the water`,
        'leave it out where it is little, or name a sugar, polyol, acid or salt that is known',
      );
    }
    if (!(grams >= 0)) {
      return refused(
        'not-an-amount',
        `${grams} g of ${substance} is not an amount`,
        'give an amount from 0 upwards',
      );
    }
    if (neutralName(substance) !== 'water' && grams > 0) {
      solutes.push(soluteOf(substance, grams / molar, waterGrams));
    }
  }
  return parsed(solutes);
}

function soluteOf(substance: string, moles: number, waterGrams: number): Solute {
  const neutral = neutralName(substance);
  if (neutral !== undefined) {
    const name = neutral === 'glucose monohydrate' ? 'glucose' : neutral;
    const constant = Object.hasOwn(norrishConstants, name) ? name : undefined;
    return { name: substance, particles: moles, osmotic: 0, constant, ions: 1 };
  }
  const found = acidSubstanceByName[acidSubstanceName(substance) ?? ''];
  const metals = Object.values(found?.ions ?? {}).reduce((sum, count) => sum + count, 0);
  const [acid] = Object.keys(found?.acids ?? {});
  if (metals === 0) {
    const constant = acid !== undefined && Object.hasOwn(norrishConstants, acid) ? acid : undefined;
    return { name: substance, particles: moles, osmotic: 0, constant, ions: 1 };
  }
  const anions = Object.values(found?.acids ?? {}).reduce((sum, count) => sum + count, 0);
  const ions = metals + anions;
  const molality = (moles * 1000) / waterGrams;
  const { twoIons, fourIons } = osmoticCoefficients;
  const coefficient = interpolate(ions > 2 ? fourIons.points : twoIons.points, molality);
  return { name: substance, particles: 0, osmotic: moles * ions * coefficient, constant: undefined, ions };
}

/** Between the points by the root of the molality, past the last one as there. */
function interpolate(points: readonly (readonly [number, number])[], molality: number): number {
  let [before, value] = [0, 1];
  for (const [at, coefficient] of points) {
    if (molality <= at) {
      const span = Math.sqrt(at) - Math.sqrt(before);
      const share = span === 0 ? 1 : (Math.sqrt(molality) - Math.sqrt(before)) / span;
      return value + share * (coefficient - value);
    }
    [before, value] = [at, coefficient];
  }
  return value;
}
