/** How much of an item goes into a stage: a quantity, `to 50 g`, or `4.5 g/L in drink`. */

import { type Parsed, parsed, refused } from '../problem.ts';
import { movedFault } from './moved-fault.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { Amount, Dimension } from './quantity.ts';

type Span = readonly [number, number];

/** Shares and concentrations: what may be counted in the finished drink. */
export const concentrationKinds = [
  'share',
  'share w/v',
  'share v/v',
  'mass per volume',
  'volume per volume',
  'moles per volume',
  'moles per mass',
] as const satisfies readonly Dimension[];

export const amountKinds = [
  'mass',
  'volume',
  'drops',
  'parts',
  ...concentrationKinds,
] as const satisfies readonly Dimension[];

const makeUpKinds = ['mass', 'volume'] as const satisfies readonly Dimension[];

/**
 * The amount of an item.
 *
 * Input     `2 g`, `3 drops`, `4 %`, `4.5 g/L`, `2 parts`, `to 50 g`, `4.5 g/L in drink`
 * Output    the quantity, whether it makes the stage up, whether it is counted in the finished drink
 * Refuses   what `parseQuantity` refuses; kinds that are no amount; `to` with anything but a mass or volume;
 *           `in drink` after anything but a share or concentration
 * Example   parseAmount('to 50 g') -> 50 g, makeUp
 */
export function parseAmount(text: string): Parsed<Amount> {
  const written = text.trim();
  const start = text.length - text.trimStart().length;
  const span: Span = [start, start + written.length];
  const slip = markFault(written, span) ?? makeUpFault(written, span);
  if (slip) return slip;
  const head = /^to\s+/iu.exec(written)?.[0] ?? '';
  const tail = /\s+in\s+drink$/iu.exec(written)?.[0] ?? '';
  const makeUp = head !== '';
  const inDrink = tail !== '';
  if (makeUp && inDrink) {
    const hint = 'write "to 50 g" or "4.5 g/L in drink"';
    return refused('wrong-kind', `"${written}" both makes up and counts in the drink`, hint, span);
  }
  const core = written.slice(head.length, written.length - tail.length);
  const kinds = makeUp ? makeUpKinds : inDrink ? concentrationKinds : amountKinds;
  const quantity = parseQuantity(core, kinds);
  if (quantity.ok) return parsed({ quantity: quantity.value, makeUp, inDrink, written });
  const { fault } = quantity;
  const kind = makeUp ? 'makeUp' : inDrink ? 'inDrink' : 'plain';
  const inWords = fault.code === 'wrong-kind' ? { ...fault, hint: kindHints[kind] } : fault;
  return { ok: false, fault: movedFault(inWords, start + head.length) };
}

const kindHints = {
  makeUp: 'make up to a mass or a volume, such as to 50 g',
  inDrink: '"in drink" goes after a share or concentration, such as 4.5 g/L in drink',
  plain: 'give an amount, such as 2 g, 3 drops, 4 % or 4.5 g/L',
} as const;

/** Marks that a bullet, a value or a formula leaves before an amount. */
function markFault(written: string, span: Span): Parsed<never> | undefined {
  const [, mark = '', rest = ''] = /^([@*%=~–—−-])\s*(.*)$/u.exec(written) ?? [];
  if (mark === '') return undefined;
  if (mark === '-') {
    return refused('negative-amount', `"${written}" is negative`, `write ${rest || '2 g'}`, span);
  }
  const message = `"${written}" begins with ${mark}`;
  if (mark !== '%')
    return refused('amount-mark', message, `write the amount without it: ${rest || '2 g'}`, span);
  const hint = /^[\d.]+$/u.test(rest) ? `write ${rest} %` : 'write the number first, such as 4 %';
  return refused('amount-mark', message, hint, span);
}

/** Other words for making up: `q.s. 50 g`, `ad 50 g`, or `to` with nothing after it. */
function makeUpFault(written: string, span: Span): Parsed<never> | undefined {
  const [, words, amount = ''] =
    /^(q\.? ?s\.?|ad|up to|make up to|to|rest|balance)(?: (.+))?$/iu.exec(written) ?? [];
  if (words === undefined || (words.toLowerCase() === 'to' && amount !== '')) return undefined;
  const hint =
    amount === ''
      ? 'say how much to make up to, such as to 50 g'
      : `write to ${amount.replace(/^to /iu, '')}`;
  return refused('no-amount', `"${written}" does not begin with a number`, hint, span);
}
