import { type Parsed, parsed, refused } from '../../problem.ts';
import { type AcidName, acidSystems } from '../../reference/solution/acid-constants.ts';
import { type IonName, ionCharges } from '../../reference/solution/ions.ts';
import { carbonDioxideMolality } from './carbon-dioxide.ts';
import { pkAt } from './dissociation.ts';
import { acidSubstance } from './substance.ts';
import { waterVapourPascal } from './vapour-pressure.ts';
import { waterConstants } from './water-constants.ts';

export interface Component {
  /** An acid, a salt or a base by its trade name. */
  readonly substance: string;
  readonly molesPerKilogramWater: number;
}

export interface SolutionGiven {
  readonly components: readonly Component[];
  readonly temperatureKelvin: number;
  /** Of the CO2 over the solution; it then fixes the dissolved CO2, whatever carbonates were put in. */
  readonly partialPressureCarbonDioxidePascal?: number;
}

/** One acid with all its molecules and its pK at the temperature. */
export interface PreparedAcid {
  readonly acid: AcidName;
  readonly total: number;
  readonly pks: readonly number[];
}

/** What the charge balance needs; nothing in it depends on the pH. */
export interface PreparedSolution {
  readonly acids: readonly PreparedAcid[];
  readonly ions: ReadonlyMap<IonName, number>;
  readonly strongCharge: number;
  /** Sum of z^2 m over the ions. */
  readonly strongSquares: number;
  /** Activity of CO2(aq) where the gas over the solution fixes it. */
  readonly carbonDioxideActivity: number;
  readonly carbonicPks: readonly number[];
  readonly pkw: number;
  readonly debyeHueckelA: number;
}

/** Adds up the acids and ions of all components. Refuses a substance without acid data and a negative amount. */
export function prepareSolution(given: SolutionGiven): Parsed<PreparedSolution> {
  const { temperatureKelvin } = given;
  const water = waterConstants({ temperatureKelvin });
  if (!water.ok) return water;
  const gas = dissolvedGas(given);
  if (!gas.ok) return gas;
  const sums = sumComponents(given.components);
  if (!sums.ok) return sums;
  const { acids, ions } = sums.value;
  let strongCharge = 0;
  let strongSquares = 0;
  for (const [ion, molality] of ions) {
    strongCharge += ionCharges[ion] * molality;
    strongSquares += ionCharges[ion] ** 2 * molality;
  }
  if (gas.value > 0) acids.delete('carbonic');
  const pksOf = (acid: AcidName): number[] =>
    acidSystems[acid].map((step) => pkAt({ step, temperatureKelvin }));
  return parsed({
    acids: [...acids].map(([acid, total]) => ({ acid, total, pks: pksOf(acid) })),
    ions,
    strongCharge,
    strongSquares,
    carbonDioxideActivity: gas.value,
    carbonicPks: pksOf('carbonic'),
    pkw: water.value.pkw,
    debyeHueckelA: water.value.debyeHueckelA,
  });
}

function dissolvedGas(given: SolutionGiven): Parsed<number> {
  const partialPressurePascal = given.partialPressureCarbonDioxidePascal ?? 0;
  if (partialPressurePascal === 0) return parsed(0);
  const { temperatureKelvin } = given;
  const totalPressurePascal = partialPressurePascal + waterVapourPascal(temperatureKelvin);
  return carbonDioxideMolality({ temperatureKelvin, partialPressurePascal, totalPressurePascal });
}

interface Sums {
  readonly acids: Map<AcidName, number>;
  readonly ions: Map<IonName, number>;
}

function sumComponents(components: readonly Component[]): Parsed<Sums> {
  const acids = new Map<AcidName, number>();
  const ions = new Map<IonName, number>();
  for (const { substance, molesPerKilogramWater } of components) {
    const found = acidSubstance(substance);
    if (!found.ok) return found;
    if (!(molesPerKilogramWater >= 0 && Number.isFinite(molesPerKilogramWater))) {
      return refused(
        'not-an-amount',
        `${molesPerKilogramWater} mol/kg of ${substance} is not an amount`,
        'give an amount from 0 upwards',
      );
    }
    addEach(acids, found.value.acids, molesPerKilogramWater);
    addEach(ions, found.value.ions, molesPerKilogramWater);
  }
  return parsed({ acids, ions });
}

function addEach<Name extends string>(
  sums: Map<Name, number>,
  counts: Readonly<Partial<Record<Name, number>>>,
  moles: number,
): void {
  for (const name in counts) sums.set(name, (sums.get(name) ?? 0) + (counts[name] ?? 0) * moles);
}
