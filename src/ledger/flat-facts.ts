/** What stands under a node as a flat list of facts, each in a form in which other spellings are the same. */

import type { ComparedFact } from '../calc/compare/document.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import { readTime, type TimeZone } from './times.ts';
import type { TreeNode } from './tree.ts';

const times: ReadonlySet<string> = new Set(['at', 'made', 'opened', 'date']);
const digits = 12;

/** A number without the noise of its last digits. */
export const rounded = (value: number): string => String(Number(value.toPrecision(digits)));

/** `40 g` and `0.04 kg` are the same, `2.0` and `2`, a time and the same time at another offset. */
export function sameText(key: string, text: string, zone: TimeZone | undefined): string {
  const plain = text.normalize('NFC').replace(/\s+/gu, ' ').trim();
  if (times.has(key)) {
    const time = readTime(plain, zone);
    if (time.ok) return `${time.value.isDay ? 'day' : 'time'} ${time.value.epochMilliseconds}`;
  }
  if (/^-?\d+(?:\.\d+)?$/u.test(plain) && !/^-?0\d/u.test(plain)) return `number ${rounded(Number(plain))}`;
  if (!/^[\d.(+-]/u.test(plain)) return plain;
  const quantity = parseQuantity(plain);
  return quantity.ok ? `${quantity.value.dimension} ${rounded(quantity.value.inner)}` : plain;
}

export interface FlatRequest {
  readonly node: TreeNode | undefined;
  readonly zone: TimeZone | undefined;
  /** Keys that are told elsewhere. */
  readonly without?: ReadonlySet<string>;
  readonly under?: string;
}

/** Facts below a node; a list of texts is one fact, what is nested has the keys above it in its own. */
export function flatFacts({ node, zone, without, under = '' }: FlatRequest): readonly ComparedFact[] {
  if (!node || node.kind === 'empty') return [];
  if (node.kind === 'text') return [factOf(under, node.text, zone)];
  if (node.kind === 'list') {
    const texts = node.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
    if (texts.length === node.items.length) return [factOf(under, texts.join(', '), zone)];
    return node.items.flatMap((item, at) => flatFacts({ node: item, zone, under: `${under} ${at + 1}` }));
  }
  return node.entries
    .filter(({ key }) => !without?.has(key.text))
    .flatMap(({ key, value }) =>
      flatFacts({ node: value, zone, under: under === '' ? key.text : `${under}, ${key.text}` }),
    );
}

function factOf(key: string, written: string, zone: TimeZone | undefined): ComparedFact {
  const last = key.slice(key.lastIndexOf(', ') + 1).trim();
  const text =
    last === 'look'
      ? written
          .split(',')
          .map((word) => word.trim())
          .join(', ')
      : written;
  return { key, written, same: sameText(last, text, zone) };
}
