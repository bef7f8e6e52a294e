/** An item as typed on the command line: `2 g polysorbate 80 @ 15`. */

import { type Fault, type Parsed, parsed, refused } from '../problem.ts';
import { readAmountHead } from './amount-head.ts';
import { movedFault } from './moved-fault.ts';
import { parseNumber } from './number.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { Quantity } from './quantity.ts';
import { unitWordsAt } from './unit-words.ts';

export { isPossibleUnit, unitWordsAt } from './unit-words.ts';

export interface ItemText {
  readonly name: string;
  readonly quantity: Quantity | undefined;
  /** The number after ` @ `. */
  readonly value: number | undefined;
}

export interface ItemOptions {
  /** `optional`: a name alone will do. */
  readonly amount?: 'required' | 'optional';
}

interface NamedAmount {
  readonly name: string;
  readonly quantity: Quantity;
}

/**
 * An item: amount, name, and a value after `@` where one is given.
 *
 * Input     `2 g polysorbate 80`, `2 g blossom oil @ 15`; `polysorbate 80 2 g` where amount first does not do and the
 *           rest is a known name; whether a name is known
 * Output    the name as typed, the quantity, the value
 * Refuses   no amount (unless it is optional), no name, what `parseQuantity` refuses, `@` without spaces around it
 * Example   parseItemText('2 g polysorbate 80', () => true) -> 2 g, polysorbate 80
 */
export function parseItemText(
  text: string,
  isKnownName: (name: string) => boolean,
  options: ItemOptions = {},
): Parsed<ItemText> {
  const start = text.length - text.trimStart().length;
  const item = readItem(text.trim(), isKnownName, options.amount === 'optional');
  return item.ok ? item : { ok: false, fault: movedFault(item.fault, start) };
}

/** Text that begins as the name of a chemical does: `3-nonanone`, `2,3-butanedione`. */
const startsWithLocant = (text: string): boolean => /^\d+(?:,\d+)*'*-[a-z(]/iu.test(text);
const startsWithAmount = (text: string): boolean => /^[-+.\d]/u.test(text) && !startsWithLocant(text);

function readItem(text: string, isKnownName: (name: string) => boolean, optional: boolean): Parsed<ItemText> {
  const split = splitValue(text);
  if (!split.ok) return split;
  const { body, value } = split.value;
  const nameAlone: Parsed<ItemText> = parsed({ name: body, quantity: undefined, value });
  if (optional && isKnownName(body)) return nameAlone;
  const first = amountFirst(body, isKnownName);
  if (first.ok) return parsed({ ...first.value, value });
  if (first.fault.code === 'arithmetic-not-loaded') return first;
  const last = amountLast(body, isKnownName);
  if (last) return last.ok ? parsed({ ...last.value, value }) : last;
  if (optional && !startsWithAmount(body)) return nameAlone;
  return { ok: false, fault: itemFault(body, first.fault) };
}

function splitValue(text: string): Parsed<{ readonly body: string; readonly value: number | undefined }> {
  if (text === '')
    return refused('no-amount', 'there is no item', 'write an amount and a name, such as "2 g orange oil"');
  const at = text.lastIndexOf('@');
  if (at < 0) return parsed({ body: text, value: undefined });
  const span: readonly [number, number] = [at, text.length];
  const before = text.slice(0, at);
  const after = text.slice(at + 1);
  const mend = `write "${before.trim() || '2 g NAME'} @ ${after.trim() || '15'}"`;
  if (before.includes('@'))
    return refused('at-sign', `"${text}" has two @`, 'write one, last: "2 g NAME @ 15"', span);
  if (!/\s$/u.test(before) || !/^\s+\S/u.test(after)) {
    return refused(
      'at-sign',
      `"${text.slice(at)}" needs a space on each side of @ and a number after it`,
      mend,
      span,
    );
  }
  const value = parseNumber(after);
  if (value.ok) return parsed({ body: before.trim(), value: value.value });
  const wordsAfter = /^\s*([\d.]+)\s+(.+)$/u.exec(after);
  if (!wordsAfter) return { ok: false, fault: { ...value.fault, start: span[0], end: span[1] } };
  const hint = `write "${before.trim()} ${wordsAfter[2]} @ ${wordsAfter[1]}"`;
  return refused('at-sign', `"${wordsAfter[2]}" stands after the value`, hint, span);
}

function amountFirst(body: string, isKnownName: (name: string) => boolean): Parsed<NamedAmount> {
  const head = readAmountHead(body);
  if (!head.ok) return head;
  const { rest, restAt, typed } = head.value;
  if (isKnownName(rest))
    return refused('no-unit', `"${typed}" has no unit`, `write "${typed} g ${rest}"`, [0, restAt]);
  const words = rest.split(/\s+/u);
  const count = Math.max(1, unitWordsAt(words, 0));
  const unitEnd = new RegExp(`^(?:\\S+\\s*){0,${count}}`, 'u').exec(rest)?.[0].length ?? 0;
  const quantity = parseQuantity(body.slice(0, restAt + unitEnd));
  if (!quantity.ok) return quantity;
  const name = words.slice(count).join(' ');
  if (name === '')
    return refused('no-name', `"${body}" names nothing`, `write "${body} NAME"`, [0, body.length]);
  return parsed({ name, quantity: quantity.value });
}

/** The name first, where what stands before the amount is a known name: the longest such name. */
function amountLast(body: string, isKnownName: (name: string) => boolean): Parsed<NamedAmount> | undefined {
  const words = body.split(/\s+/u);
  for (let count = words.length - 1; count > 0; count -= 1) {
    const name = words.slice(0, count).join(' ');
    if (!isKnownName(name)) continue;
    const quantity = parseQuantity(words.slice(count).join(' '));
    if (quantity.ok) return parsed({ name, quantity: quantity.value });
    if (quantity.fault.code === 'arithmetic-not-loaded') return quantity;
  }
  return undefined;
}

/** The fault of amount first, or the order mended where the amount stands last after an unknown name. */
function itemFault(body: string, fault: Fault): Fault {
  if (startsWithAmount(body) || /^[(@%*]/u.test(body)) return fault;
  const any = amountLast(body, () => true);
  const hint = any?.ok
    ? `write the amount first: "${any.value.quantity.written} ${any.value.name}"`
    : `write the amount first: "2 g ${body}"`;
  return { code: 'no-amount', message: `"${body}" does not begin with an amount`, hint };
}
