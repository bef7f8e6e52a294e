/** What a stranger's file may not hold in any of its texts: signs that are not seen, and names without end. */

import type { Problem } from '../../problem.ts';
import { problemAt, type SourceText } from '../places.ts';
import type { TextNode, TreeNode } from '../tree.ts';

/** Controls but for line feed and tab, and marks that turn the direction of writing. */
const hidden = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/u;

const longestKey = 120;
const mostProblems = 20;

/** Every text with something hidden in it, and every key that is too long. */
export function hiddenProblems(source: SourceText, root: TreeNode): readonly Problem[] {
  const problems: Problem[] = [];
  const waiting: TreeNode[] = [root];
  for (let node = waiting.pop(); node && problems.length < mostProblems; node = waiting.pop()) {
    if (node.kind === 'text') problems.push(...textProblems(source, node));
    else if (node.kind === 'list') waiting.push(...node.items);
    else if (node.kind === 'map')
      for (const { key, value } of node.entries) {
        problems.push(...textProblems(source, key), ...keyProblems(source, key));
        waiting.push(value);
      }
  }
  return problems.sort((one, other) => (one.place?.line ?? 0) - (other.place?.line ?? 0));
}

function textProblems(source: SourceText, node: TextNode): readonly Problem[] {
  const sign = hidden.exec(node.text)?.[0];
  if (sign === undefined) return [];
  const code = sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
  const finding = {
    code: 'hidden-sign',
    message: `a sign that is not seen stands in this text (U+${code})`,
    hint: 'ask whoever gave the file; nobody types such a sign',
  };
  return [problemAt(source, finding, node)];
}

function keyProblems(source: SourceText, node: TextNode): readonly Problem[] {
  if (node.text.length <= longestKey && !/[\n\t]/u.test(node.text)) return [];
  const finding = {
    code: 'name-too-long',
    message: `this name has ${node.text.length} characters, or more than one line`,
    hint: `keep names to ${longestKey} characters on one line`,
  };
  return [problemAt(source, finding, node)];
}
