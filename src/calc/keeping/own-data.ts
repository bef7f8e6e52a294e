/** The person's own measurements of a loss, carried to other temperatures. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { largestActivation } from '../../reference/kinetics.ts';
import { gasConstant } from '../../reference/settling.ts';
import { type Field, several } from '../fields.ts';
import { numberText } from '../number-text.ts';
import { parseQuantity } from '../parse-quantity.ts';
import { arrhenius, type Rate } from './rate.ts';

export interface OwnLoss {
  /** What was left of all, 0 to 1. */
  readonly left: number;
  readonly seconds: number;
  readonly temperatureKelvin: number;
  readonly written: string;
}

const pattern = /^(.+?)\s+(?:left\s+)?after\s+(.+?)\s+at\s+(.+)$/iu;
const example = '"82 % left after 30 d at 40 C"';

/**
 * Input     `82 % left after 30 d at 40 C`
 * Refuses   other words; nothing lost, or nothing left
 */
export function parseOwnLoss(text: string): Parsed<OwnLoss> {
  const [, share = '', time = '', warmth = ''] = pattern.exec(text.trim()) ?? [];
  if (warmth === '') return refused('not-a-loss', `"${text}" is not a measured loss`, `write ${example}`);
  const [left, seconds, temperature] = [
    parseQuantity(share, ['share']),
    parseQuantity(time, ['time']),
    parseQuantity(warmth, ['temperature']),
  ];
  if (!left.ok) return left;
  if (!seconds.ok) return seconds;
  if (!temperature.ok) return temperature;
  if (!(left.value.inner > 0 && left.value.inner < 1 && seconds.value.inner > 0))
    return refused(
      'not-a-loss',
      `"${text}" tells no rate`,
      `give what was left between 0 and 100 %, as ${example}`,
    );
  return parsed({
    left: left.value.inner,
    seconds: seconds.value.inner,
    temperatureKelvin: temperature.value.inner,
    written: text.trim(),
  });
}

export const ownLossesField = ({ help }: { readonly help: string }): Field<readonly OwnLoss[]> =>
  several<OwnLoss>(
    { help, placeholder: 'LOSS', isAmount: false },
    parseOwnLoss,
    (losses) => losses.map(({ written }) => written),
    ({ written }) => written,
  );

export interface OwnLaw {
  readonly rateAt: (temperatureKelvin: number) => Parsed<Rate>;
  /** kJ/mol; undefined where neither stated nor measured. */
  readonly activation: number | undefined;
  readonly isFitted: boolean;
}

/** Two points say nothing of their own error; common practice, no source. */
const FACTOR = 2;
const SAME_KELVIN = 0.5;

/**
 * A first-order law from a person's own data.
 *
 * Formula   k = -ln(left)/t; ln k straight in 1/T through the measurements at several temperatures, else scaled with the
 *           stated energy from the mean of ln k
 * Input     one measurement or more; kJ/mol, needed for other temperatures where all are of one
 * Refuses   an energy that is stated and measured; a temperature that nothing leads to
 * Example   two measurements at 25 and 40 C -> their own energy
 */
export function ownLaw(losses: readonly OwnLoss[], stated: number | undefined): Parsed<OwnLaw> {
  const points = losses.map(({ left, seconds, temperatureKelvin }) => ({
    inverse: 1 / temperatureKelvin,
    log: Math.log(-Math.log(left) / seconds),
  }));
  const mean = (of: (point: (typeof points)[number]) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const [inverse, log] = [mean((point) => point.inverse), mean((point) => point.log)];
  const apart = points.reduce((sum, point) => sum + (point.inverse - inverse) ** 2, 0);
  const kelvins = losses.map(({ temperatureKelvin }) => temperatureKelvin);
  const isFitted = Math.max(...kelvins) - Math.min(...kelvins) > SAME_KELVIN;
  if (isFitted && stated !== undefined)
    return refused(
      'given-twice',
      'the energy is stated and measured',
      'leave --activation out: your temperatures tell it',
    );
  const slope = isFitted
    ? points.reduce((sum, point) => sum + (point.inverse - inverse) * (point.log - log), 0) / apart
    : undefined;
  const activation = slope === undefined ? stated : (-slope * gasConstant) / 1000;
  if (activation !== undefined && activation < 0)
    return refused(
      'not-arrhenius',
      'by these figures it is lost more slowly when it is warmer',
      'look at the measurements again: something else rules it, such as air',
    );
  if (activation !== undefined && activation > largestActivation.value)
    return refused(
      'outside-range',
      `an energy of activation of ${numberText(activation, 4)} kJ/mol is more than any reaction has`,
      'give it in kJ/mol, such as 80',
    );
  const at = 1 / inverse;
  return parsed({
    activation,
    isFitted,
    rateAt: (temperatureKelvin) => {
      if (activation === undefined && Math.abs(temperatureKelvin - at) > SAME_KELVIN)
        return refused(
          'missing',
          'one temperature says nothing of another',
          'measure at a second one too, or state --activation in kJ/mol, such as 80',
        );
      const warmth = arrhenius({ activation: activation ?? 0, fromKelvin: at, toKelvin: temperatureKelvin });
      return parsed({ perSecond: Math.exp(log) * warmth, factor: FACTOR });
    },
  });
}
