/** What a new trial takes over from another: the plan as it is typed there, without what happened at the bench. */

import type { FileCard } from './cards.ts';
import { entryOf, type MapEntry, type MapNode, type TreeNode } from './tree.ts';

/** What belongs to one make of a stage, and of an item, and is not copied. */
const ofThatMake = {
  stage: ['made', 'by', 'density', 'weighs', 'note'],
  item: ['weighed', 'lot', 'note'],
} as const;

/** The `stages` and `samples` of a trial or formula, byte for byte but for weighed amounts, lots and notes. */
export function copiedPlan(card: Pick<FileCard, 'root'>, text: string): string {
  const gone = stagesOf(card.root).flatMap((stage) =>
    goneFrom(stage, ofThatMake.stage).concat(goneFromItems(stage)),
  );
  const parts = ['stages', 'samples'].flatMap((key) => {
    const entry = entryOf(card.root, key);
    return entry ? [wholeLines(text, entry, gone)] : [];
  });
  return parts.join('').replace(/\r\n/g, '\n');
}

const stagesOf = (root: MapNode): readonly TreeNode[] => {
  const stages = entryOf(root, 'stages')?.value;
  return stages?.kind === 'map' ? stages.entries.map((entry) => entry.value) : [];
};

function goneFromItems(stage: TreeNode): readonly MapEntry[] {
  const items = stage.kind === 'map' ? entryOf(stage, 'items')?.value : stage;
  return items?.kind === 'list' ? items.items.flatMap((item) => goneFrom(item, ofThatMake.item)) : [];
}

function goneFrom(node: TreeNode, keys: readonly string[]): MapEntry[] {
  return node.kind === 'map' ? node.entries.filter((entry) => keys.includes(entry.key.text)) : [];
}

/** The lines of an entry without those facts; a fact inside braces takes the comma before it along. */
function wholeLines(text: string, entry: MapEntry, gone: readonly MapEntry[]): string {
  const start = lineStart(text, entry.key.start);
  const end = lineEnd(text, entry.value.end);
  let copied = '';
  let at = start;
  for (const { key, value } of gone.filter((one) => one.key.start >= start && one.value.end <= end)) {
    const isAlone = /^[ \t]*$/.test(text.slice(lineStart(text, key.start), key.start));
    const from = isAlone ? lineStart(text, key.start) : text.lastIndexOf(',', key.start);
    if (from < at) continue;
    copied += text.slice(at, from);
    at = isAlone ? lineEnd(text, value.end) : value.end;
  }
  const rest = copied + text.slice(at, end);
  return rest.endsWith('\n') ? rest : `${rest}\n`;
}

const lineStart = (text: string, offset: number): number => text.lastIndexOf('\n', offset - 1) + 1;

function lineEnd(text: string, offset: number): number {
  if (offset > 0 && text[offset - 1] === '\n') return offset;
  const end = text.indexOf('\n', offset);
  return end === -1 ? text.length : end + 1;
}
