/** The options of `scale` and `cost` as figures. */

import { parseNumber } from '../calc/number.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { Quantity } from '../calc/quantity.ts';
import { type BatchTarget, parseTarget } from '../calc/scaling/target.ts';
import { volumesOf } from '../ledger/drink-conditions.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail } from '../problem.ts';
import { optionQuantity, quantityOption, someOption } from './batch-options.ts';
import { type Call, optionValue } from './command.ts';

export interface ScaleRequest {
  /** Absent: the design as written. */
  readonly target: BatchTarget | undefined;
  readonly loss: number;
  /** Bottles or kegs get a dose and carbonated water. */
  readonly isFilled: boolean;
  readonly isKeg: boolean;
  /** mL; of a keg where it is one. */
  readonly bottle: Quantity | undefined;
  readonly carbonDioxideVolumes: number | undefined;
  readonly waterKelvin: number;
  readonly strength: number | undefined;
  /** mL each. */
  readonly vessels: readonly Quantity[];
}

/** Carbonated cold, since cold water takes more. */
const waterKelvin = 277.15;

export function scaleRequest(call: Call): ScaleRequest {
  const keg = someOption(call, 'keg', ['volume']);
  const bottle = someOption(call, 'bottle', ['volume']);
  if (keg && bottle)
    fail('given-twice', 'both --keg and --bottle are given', 'give the one that the drink goes into');
  const target = targetOf(call, keg);
  if (keg && target && target.count === undefined && !isOfDrink(target))
    fail(
      'given-twice',
      `a keg is filled with the drink, and --to asks for ${target.stage}`,
      'give --keg alone, or how much drink: --to "57 L drink"',
    );
  const loss = quantityOption(call, 'loss', ['share']);
  return {
    target,
    loss: loss?.inner ?? 0,
    isFilled: keg !== undefined || call.flags.has('fill'),
    isKeg: keg !== undefined,
    bottle: keg ?? bottle,
    carbonDioxideVolumes: carbonation(call),
    waterKelvin: quantityOption(call, 'temperature', ['temperature'])?.inner ?? waterKelvin,
    strength: strengthOf(call),
    vessels: (call.values['vessel'] ?? []).map((typed) => optionQuantity('vessel', typed, ['volume'])),
  };
}

const isOfDrink = ({ stage }: BatchTarget): boolean => stage === undefined || isSameName(stage, 'drink');

function targetOf(call: Call, keg: Quantity | undefined): BatchTarget | undefined {
  const typed = optionValue(call, 'to');
  if (typed === undefined)
    return keg && { count: 1, each: keg, stage: 'drink', written: `1 x ${keg.written}` };
  const target = parseTarget(typed);
  return target.ok
    ? target.value
    : fail(target.fault.code, `--to: ${target.fault.message}`, target.fault.hint);
}

function carbonation(call: Call): number | undefined {
  const typed = optionValue(call, 'co2');
  if (typed === undefined) return undefined;
  const bare = parseNumber(typed);
  const read = bare.ok
    ? parseQuantity(`${typed} vol`)
    : parseQuantity(typed, ['carbonation', 'mass per volume']);
  return read.ok
    ? volumesOf(read.value)
    : fail(read.fault.code, `--co2: ${read.fault.message}`, read.fault.hint);
}

function strengthOf(call: Call): number | undefined {
  const typed = optionValue(call, 'strength');
  if (typed === undefined) return undefined;
  const number = parseNumber(typed);
  if (!number.ok)
    return fail(number.fault.code, `--strength: ${number.fault.message}`, 'give a figure such as 1.2');
  return number.value > 0
    ? number.value
    : fail('not-positive', `--strength: ${typed} is none`, 'give a figure such as 1.2');
}
