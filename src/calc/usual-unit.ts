/** A number typed without its unit, mended with the unit that the help of its field shows. */

import type { Fault } from '../problem.ts';
import { readAmountHead } from './amount-head.ts';
import type { Dimension } from './quantity.ts';
import { unitTyped } from './unit.ts';
import { kindWords } from './unit-faults.ts';
import { unitWordsAt } from './unit-words.ts';

interface Example {
  readonly unit: string;
  /** What stands after the amount: the name of an item. */
  readonly name: string;
}

/** The amounts after `such as` in a help that are of a kind that is taken. */
function examplesIn(help: string, accepts: readonly Dimension[]): readonly Example[] {
  const at = help.indexOf('such as ');
  if (at < 0) return [];
  const [tail = ''] = help
    .slice(at + 'such as '.length)
    .replaceAll('"', '')
    .split(/[;,]/u);
  return tail.split(' or ').flatMap((text) => {
    const head = readAmountHead(text);
    if (!head.ok) return [];
    const words = head.value.rest.split(/\s+/u);
    const count = unitWordsAt(words, 0);
    const unit = unitTyped(words.slice(0, count).join(' '));
    return unit && accepts.includes(unit.dimension)
      ? [{ unit: unit.symbol, name: words.slice(count).join(' ') }]
      : [];
  });
}

/**
 * The fault of an amount without a unit, with the units of the field's own examples in its hint.
 *
 * Example   45, of a field whose help says `such as "60 mg/L"` -> write 45 mg/L
 */
export function amountMended(fault: Fault, text: string, help: string, accepts: readonly Dimension[]): Fault {
  if (fault.code !== 'no-unit') return fault;
  const units = new Set(examplesIn(help, accepts).map(({ unit }) => unit));
  if (units.size === 0) return fault;
  return { ...fault, hint: `write ${[...units].map((unit) => `${text.trim()} ${unit}`).join(' or ')}` };
}

/**
 * The same of an item: its name is kept, or is that of the example where only a number is typed.
 *
 * Example   4.5 citric acid, of a field that takes a mass per volume -> write "4.5 g/L citric acid"
 */
export function itemMended(fault: Fault, text: string, help: string, accepts: readonly Dimension[]): Fault {
  if (fault.code !== 'no-unit') return fault;
  const head = readAmountHead(text.trim());
  const [example] = examplesIn(help, accepts);
  const [kind] = accepts;
  if (!head.ok || !kind) return fault;
  const { example: ofKind } = kindWords[kind];
  const unit = example?.unit ?? ofKind.slice(ofKind.indexOf(' ') + 1);
  const name = head.value.rest || example?.name || 'NAME';
  return { ...fault, hint: `write "${head.value.typed} ${unit} ${name}"` };
}
