/** An item as typed on the command line: `2 g polysorbate 80 @ 15`. */

import { type Fault, type Parsed, parsed, refused } from '../problem.ts';
import { parseNumber } from './number.ts';
import { parseQuantity, readAmountHead } from './parse-quantity.ts';
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
  const split = splitValue(text.trim());
  if (!split.ok) return split;
  const { body, value } = split.value;
  if (options.amount === 'optional' && isKnownName(body))
    return parsed({ name: body, quantity: undefined, value });
  const first = amountFirst(body);
  if (first.ok) return parsed({ ...first.value, value });
  if (first.fault.code === 'arithmetic-not-loaded') return first;
  const last = amountLast(body, isKnownName);
  if (last) return last.ok ? parsed({ ...last.value, value }) : last;
  if (options.amount === 'optional' && !/^[-+.\d]/u.test(body))
    return parsed({ name: body, quantity: undefined, value });
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

function amountFirst(body: string): Parsed<NamedAmount> {
  const head = readAmountHead(body);
  if (!head.ok) return head;
  const { rest, restAt, typed } = head.value;
  const words = rest.split(/\s+/u).filter((word) => word !== '');
  const count = Math.max(1, unitWordsAt(words, 0));
  const unit = words.slice(0, count).join(' ');
  const quantity = parseQuantity(`${typed} ${unit}`.trim());
  if (!quantity.ok) return { ok: false, fault: unspaced(quantity.fault) };
  const name = words.slice(count).join(' ');
  if (name === '')
    return refused('no-name', `"${body}" names nothing`, `write "${body} NAME"`, [restAt, body.length]);
  return parsed({
    name,
    quantity: { ...quantity.value, written: body.slice(0, body.length - name.length).trim() },
  });
}

/** The fault without its offsets, which belong to another text. */
const unspaced = ({ code, message, hint }: Fault): Fault => ({ code, message, hint });

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
  if (/^[-+.\d]/u.test(body) || !['no-amount', 'unit-first'].includes(fault.code)) return fault;
  const any = amountLast(body, () => true);
  const hint = any?.ok
    ? `write the amount first: "${any.value.quantity.written} ${any.value.name}"`
    : `write the amount first: "2 g ${body}"`;
  return { code: 'no-amount', message: `"${body}" does not begin with an amount`, hint };
}
