/** Options of the batch commands read as amounts, each fault with the name of its option. */

import type { BookEntry } from '../calc/book.ts';
import { refusedStock } from '../calc/known-name.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { Dimension, Quantity } from '../calc/quantity.ts';
import { fail } from '../problem.ts';
import { type Call, optionValue } from './command.ts';

export function quantityOption(
  call: Call,
  name: string,
  accepts: readonly Dimension[],
): Quantity | undefined {
  const typed = optionValue(call, name);
  return typed === undefined ? undefined : optionQuantity(name, typed, accepts);
}

export function optionQuantity(name: string, typed: string, accepts: readonly Dimension[]): Quantity {
  const read = parseQuantity(typed, accepts);
  if (read.ok) return read.value;
  return fail(read.fault.code, `--${name}: ${read.fault.message}`, read.fault.hint);
}

/** The same above zero. */
export function someOption(call: Call, name: string, accepts: readonly Dimension[]): Quantity | undefined {
  const quantity = quantityOption(call, name, accepts);
  if (quantity && quantity.inner <= 0)
    return fail('not-positive', `--${name}: "${quantity.written}" is nothing`, `give --${name} above zero`);
  return quantity;
}

/** What was withdrawn from food is named and never dosed, in a stock neither. */
export function refuseWithdrawn(name: string, entry: BookEntry | undefined): void {
  const refusal = entry && refusedStock(entry);
  if (refusal && !refusal.ok)
    fail(refusal.fault.code, `--${name}: ${refusal.fault.message}`, refusal.fault.hint);
}

export function neededOption<T>(value: T | undefined, name: string, example: string): T {
  return value ?? fail('missing', `--${name} is needed`, `give --${name} ${example}`);
}
