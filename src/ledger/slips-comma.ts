/** A decimal comma inside `[ ]` or `{ }`, where a comma begins the next thing. */

import type { Slip } from './slips.ts';
import type { MapEntry, TextNode, TreeNode } from './tree.ts';

/** `[1,5 d, 2 d]` */
export function listCommas(text: string, items: readonly TreeNode[]): readonly Slip[] {
  return items.flatMap((item, index) => {
    const before = items[index - 1];
    if (item.kind !== 'text' || before?.kind !== 'text' || text.slice(before.end, item.start) !== ',')
      return [];
    const isSplit = /^[+-]?\d+$/u.test(before.text) && /^\d+\s*\D/u.test(item.text);
    return isSplit ? [slip(before, before.text, item)] : [];
  });
}

/** `{ water: 2,5 g }` */
export function mapCommas(entries: readonly MapEntry[]): readonly Slip[] {
  return entries.flatMap(({ key, value }, index) => {
    const before = entries[index - 1]?.value;
    if (before?.kind !== 'text' || value.kind !== 'empty' || key.start !== before.end + 1) return [];
    const isSplit = /\d$/u.test(before.text) && /^\d/u.test(key.text);
    return isSplit ? [slip(before, before.text, key)] : [];
  });
}

function slip(before: TextNode, head: string, after: TextNode): Slip {
  const finding = {
    code: 'decimal-comma',
    message: `the comma in "${head},${after.text}" begins a new item`,
    hint: `write ${head}.${after.text}`,
  };
  return { finding, span: { start: before.start, end: after.end } };
}
