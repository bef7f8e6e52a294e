/** What a batch is to come to, as typed: `20 L syrup`, `500 x 330 mL`, `1.2 kg emulsion`. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { unitWordsAt } from '../item-text.ts';
import { movedFault } from '../moved-fault.ts';
import { parseQuantity } from '../parse-quantity.ts';
import type { Quantity } from '../quantity.ts';

export interface BatchTarget {
  /** How many bottles or kegs; absent where it is one amount. */
  readonly count?: number;
  /** A mass or a volume: of one bottle, or of all. */
  readonly each: Quantity;
  /** As typed; absent where none is named. */
  readonly stage?: string;
  readonly written: string;
}

const counted = /^(\d+(?:\.\d+)?)\s*(?:x|\u00d7|\*)\s*(?=\d|\.)/iu;

/** A number of vessels without a volume: `40 bottles`. */
const sizeless = /^(\d+)\s*(?:x\s*)?(?:bottles?|cans?|kegs?|glass(?:es)?)$/iu;

/**
 * The target of a batch.
 *
 * Input     an amount with the name of a stage, a count of bottles with their volume, or both
 * Output    count, the amount in g or mL, the name of the stage as typed
 * Refuses   what is no mass or volume, an amount of zero, a count that is no whole number above zero
 * Example   parseTarget('500 x 330 mL') -> count 500, 330 mL
 */
export function parseTarget(text: string): Parsed<BatchTarget> {
  const written = text.trim().replace(/\s+/gu, ' ');
  const [, bottles] = sizeless.exec(written) ?? [];
  if (bottles !== undefined)
    return refused('no-size', `"${written}" does not say of what size`, `write --to "${bottles} x 330 mL"`);
  const head = counted.exec(written);
  const rest = written.slice(head?.[0].length ?? 0);
  const { amount, name } = splitName(rest);
  const each = parseQuantity(amount, ['mass', 'volume']);
  if (!each.ok)
    return { ok: false, fault: targetFault(movedFault(each.fault, written.length - rest.length)) };
  if (!(each.value.inner > 0))
    return refused(
      'not-positive',
      `"${written}" is nothing to make`,
      'give an amount above zero, such as "20 L syrup"',
    );
  const count = head ? Number(head[1]) : undefined;
  if (count !== undefined && !(Number.isInteger(count) && count > 0 && count <= 1e7)) {
    return refused(
      'not-a-count',
      `${head?.[1]} is no number of bottles`,
      'give a whole number, such as "500 x 330 mL"',
    );
  }
  return parsed({
    each: each.value,
    written,
    ...(count === undefined ? {} : { count }),
    ...(name === '' ? {} : { stage: name }),
  });
}

/** The words after the amount and its unit. */
function splitName(text: string): { readonly amount: string; readonly name: string } {
  const [, number = '', rest = ''] = /^([-+.,\d]+(?:e[-+]?\d+)?)\s*(.*)$/iu.exec(text) ?? [];
  if (number === '') return { amount: text, name: '' };
  const words = rest.split(' ');
  const count = Math.max(1, unitWordsAt(words, 0));
  const name = words.slice(count).join(' ').replace(/^of /u, '');
  return { amount: `${number} ${words.slice(0, count).join(' ')}`.trim(), name };
}

const targetFault = <Fault extends { readonly code: string; readonly hint: string }>(fault: Fault): Fault =>
  ['no-number', 'no-amount', 'wrong-kind', 'no-unit'].includes(fault.code)
    ? { ...fault, hint: 'give an amount and a stage, such as "20 L syrup", or bottles: "500 x 330 mL"' }
    : fault;

/** mL or g of the whole. */
export const wholeOf = ({ count = 1, each }: BatchTarget): number => count * each.inner;
