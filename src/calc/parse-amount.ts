/** How much of an item goes into a stage: a quantity, `to 50 g`, or `4.5 g/L in drink`. */

import { type Fault, type Parsed, parsed, refused } from '../problem.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { Amount, Dimension } from './quantity.ts';

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
  const slip = markFault(written, [start, start + written.length]);
  if (slip) return slip;
  const makeUp = /^to\s+/iu.exec(written)?.[0];
  const inDrink = /\s+in\s+drink$/iu.exec(written)?.[0];
  if (makeUp !== undefined && inDrink !== undefined) {
    const hint = 'write "to 50 g", or "4.5 g/L in drink"';
    return refused('wrong-kind', `"${written}" both makes up and counts in the drink`, hint, [
      start,
      start + written.length,
    ]);
  }
  const from = start + (makeUp?.length ?? 0);
  const core = written.slice(makeUp?.length ?? 0, written.length - (inDrink?.length ?? 0));
  const kinds = makeUp ? makeUpKinds : inDrink ? concentrationKinds : amountKinds;
  const quantity = parseQuantity(core, kinds);
  if (!quantity.ok)
    return { ok: false, fault: moved(inWords(quantity.fault, core, makeUp !== undefined), from) };
  return parsed({
    quantity: quantity.value,
    makeUp: makeUp !== undefined,
    inDrink: inDrink !== undefined,
    written,
  });
}

function markFault(written: string, span: readonly [number, number]): Parsed<never> | undefined {
  const [, mark = '', rest = ''] = /^([@*%–—-])\s*(.*)$/u.exec(written) ?? [];
  if (mark === '') return undefined;
  const amount = rest === '' ? '2 g' : rest;
  const message = `"${written}" begins with ${mark}`;
  const number = /^[\d.]+$/u.test(rest);
  if (mark === '%') {
    return refused(
      'amount-mark',
      message,
      number ? `write ${rest} %` : 'write the number first, such as 4 %',
      span,
    );
  }
  if (mark === '-') return refused('negative-amount', `"${written}" is negative`, `write ${amount}`, span);
  return refused('amount-mark', message, `write the amount without it: ${amount}`, span);
}

/** A wrong kind in the words of items. */
function inWords(fault: Fault, core: string, makeUp: boolean): Fault {
  if (fault.code !== 'wrong-kind') return fault;
  if (makeUp) return { ...fault, hint: 'make up to a mass or a volume, such as to 50 g' };
  const isInDrink = !amountAlone(core);
  if (isInDrink) return { ...fault, hint: 'give an amount, such as 2 g, 3 drops, 4 % or 4.5 g/L' };
  return { ...fault, hint: '"in drink" goes after a share or concentration, such as 4.5 g/L in drink' };
}

const amountAlone = (core: string): boolean => parseQuantity(core, amountKinds).ok;

function moved(fault: Fault, by: number): Fault {
  return {
    ...fault,
    ...(fault.start === undefined ? {} : { start: fault.start + by }),
    ...(fault.end === undefined ? {} : { end: fault.end + by }),
  };
}
