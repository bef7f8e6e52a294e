/** The law by which a substance is lost, with what is known of it. */

import { fail, type Parsed } from '../../problem.ts';
import {
  type EsterConstants,
  esterActivation,
  esterConstants,
  notTold,
  polysorbateHydrolysis,
  sucroseInversion,
} from '../../reference/kinetics.ts';
import { lookUp } from '../../reference/look-up.ts';
import { answered } from '../answered.ts';
import type { LastsGiven } from '../calculators/lasts.ts';
import type { Working } from '../working.ts';
import { withLocator } from '../working.ts';
import { ownLaw } from './own-data.ts';
import { arrhenius, type Conditions, esterRate, inversionRate, polysorbateRate, type Rate } from './rate.ts';
import type { LostSubstance } from './substance-field.ts';

export interface Law {
  readonly kind: 'ester' | 'sucrose' | 'polysorbate' | 'own';
  readonly rateAt: (conditions: Conditions) => Parsed<Rate>;
  /** How far the ratio of two rates may be off, as factors, for two temperatures. */
  readonly ratioBand: (fromKelvin: number, toKelvin: number) => readonly [number, number];
  /** kJ/mol, as shown. */
  readonly activation?: number | undefined;
  /** False for a person's own figures, which hold at the pH of their measuring. */
  readonly knowsPh: boolean;
}

export function lawOf(substance: LostSubstance, given: LastsGiven, working: Working): Law {
  if (given.measured.length > 0) return ownLawOf(given);
  if (given.activation !== undefined)
    return fail(
      'missing',
      '--activation goes with a figure of your own',
      'add --measured "82 % left after 30 d at 40 C"',
    );
  const { names } = substance;
  const found = names.map((name) => lookUp(esterConstants, name)).find((one) => one !== undefined);
  if (found) return esterLaw(found, substance, working);
  if (names.includes('sucrose')) return sucroseLaw(working);
  if (names.some((name) => /^polysorbate \d+$/.test(name))) {
    working.cite('hydrolysis of polysorbate', polysorbateHydrolysis.source, true);
    return { kind: 'polysorbate', rateAt: polysorbateRate, ratioBand: () => [1, 1], knowsPh: true };
  }
  return refuseByName(substance);
}

function ownLawOf(given: LastsGiven): Law {
  const law = answered(ownLaw(given.measured, given.activation));
  return {
    kind: 'own',
    rateAt: ({ temperatureKelvin }) => law.rateAt(temperatureKelvin),
    ratioBand: () => [1 / 1.5, 1.5],
    activation: law.activation,
    knowsPh: false,
  };
}

function esterLaw(constants: EsterConstants, { name }: LostSubstance, working: Working): Law {
  working.cite(
    `hydrolysis of ${name}, 25 C`,
    withLocator(constants.source, constants.locator),
    constants.fromMemory,
  );
  if (constants.activation === undefined)
    working.constant('energy of activation of aliphatic esters, kJ/mol', esterActivation);
  const activation = constants.activation ?? esterActivation.value;
  const { low, high } =
    constants.activation === undefined ? esterActivation : { low: activation, high: activation };
  return {
    kind: 'ester',
    rateAt: (conditions) => esterRate(constants, conditions),
    ratioBand: (fromKelvin, toKelvin) => activationBand({ activation, low, high, fromKelvin, toKelvin }),
    activation,
    knowsPh: true,
  };
}

function sucroseLaw(working: Working): Law {
  working.cite('inversion of sucrose', sucroseInversion.source, true);
  const { low, high } = sucroseInversion.activation;
  const activation = (sucroseInversion.perKelvin * Math.LN10 * 8.314462618) / 1000;
  return {
    kind: 'sucrose',
    rateAt: inversionRate,
    ratioBand: (fromKelvin, toKelvin) => activationBand({ activation, low, high, fromKelvin, toKelvin }),
    activation,
    knowsPh: true,
  };
}

/** The ends of a ratio of rates that the span of the energy leaves, and 0.05 of pH, 12 %. */
function activationBand(of: {
  readonly activation: number;
  readonly low: number;
  readonly high: number;
  readonly fromKelvin: number;
  readonly toKelvin: number;
}): readonly [number, number] {
  const { fromKelvin, toKelvin } = of;
  const at = (activation: number): number => arrhenius({ activation, fromKelvin, toKelvin });
  const ends = [at(of.low) / at(of.activation), at(of.high) / at(of.activation), 1];
  return [Math.min(...ends) / 1.12, Math.max(...ends) * 1.12];
}

function refuseByName({ name, names }: LostSubstance): never {
  const known = names.map((one) => lookUp(notTold, one)).find((one) => one !== undefined);
  return fail(
    'no-constants',
    `no constant that could be trusted is known for ${name}${known ? `: ${known}` : ''}`,
    `give your own figure: --measured "82 % left after 30 d at 40 C" with --activation, or two at different temperatures`,
  );
}
