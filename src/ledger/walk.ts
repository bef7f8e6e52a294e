/** The YAML library's nodes as our tree; refuses on the way what nobody types in a notebook. */

import { Alias, Scalar, YAMLMap, YAMLSeq } from 'yaml';
import type { Problem } from '../problem.ts';
import { type Finding, problemAt, type SourceText } from './places.ts';
import { markFinding } from './slips.ts';
import { listCommas, mapCommas } from './slips-comma.ts';
import type { ListNode, MapEntry, MapNode, Span, TextNode, TextStyle, TreeNode } from './tree.ts';

interface Walk {
  readonly source: SourceText;
  readonly problems: Problem[];
  /** Whether `? ` stands anywhere in the text. */
  readonly hasExplicitKeys: boolean;
}

/** The tree of a document's contents; what is refused is added to `problems`. */
export function walkTree(source: SourceText, contents: unknown, problems: Problem[]): TreeNode {
  const walk = { source, problems, hasExplicitKeys: source.text.includes('? ') };
  return treeNode(walk, contents, source.text.length === 0 ? 0 : firstContent(source.text));
}

const firstContent = (text: string): number => (text.startsWith('\ufeff') ? 1 : 0);

function treeNode(walk: Walk, node: unknown, emptyAt: number): TreeNode {
  if (node instanceof Scalar) return scalarNode(walk, node, emptyAt);
  if (node instanceof YAMLMap) return mapNode(walk, node);
  if (node instanceof YAMLSeq) return listNode(walk, node);
  if (node instanceof Alias) return aliasNode(walk, node, emptyAt);
  return { kind: 'empty', start: emptyAt, end: emptyAt };
}

interface YamlScalar extends Ranged {
  readonly value: unknown;
  readonly type?: string | undefined;
}

function scalarNode(walk: Walk, node: YamlScalar, emptyAt: number): TreeNode {
  if (node.anchor !== undefined || node.tag !== undefined) refuseProperties(walk, node);
  const start = node.range?.[0] ?? emptyAt;
  const end = node.range?.[1] ?? start;
  const text = typeof node.value === 'string' ? node.value : '';
  if (node.type === 'PLAIN') {
    if (start === end) return { kind: 'empty', start, end };
    if (end - start > text.length) refuseSwallowedDash(walk, start, end);
    return { kind: 'text', text, start, end, style: 'plain' };
  }
  const style = styles[node.type ?? ''] ?? 'plain';
  return { kind: 'text', text, start, end: lastLine(walk.source.text, start, end, style), style };
}

const styles: Readonly<Record<string, TextStyle>> = {
  QUOTE_SINGLE: 'single',
  QUOTE_DOUBLE: 'double',
  BLOCK_LITERAL: 'literal',
  BLOCK_FOLDED: 'folded',
};

/** The end of a block without its last line ends. */
function lastLine(whole: string, start: number, end: number, style: TextStyle): number {
  if (style !== 'literal' && style !== 'folded') return end;
  let last = end;
  while (last > start && /[\r\n]/u.test(whole.charAt(last - 1))) last -= 1;
  return last;
}

function aliasNode(walk: Walk, node: Ranged, emptyAt: number): TextNode {
  const start = node.range?.[0] ?? emptyAt;
  const end = node.range?.[1] ?? start;
  refuseSign(walk, '*', start);
  return { kind: 'text', text: walk.source.text.slice(start, end), start, end, style: 'plain' };
}

interface YamlList extends Ranged {
  readonly items: readonly unknown[];
}

function listNode(walk: Walk, node: YamlList): ListNode {
  if (node.anchor !== undefined || node.tag !== undefined) refuseProperties(walk, node);
  const items: TreeNode[] = [];
  const start = node.range?.[0] ?? 0;
  for (const item of node.items) items.push(treeNode(walk, item, items.at(-1)?.end ?? start + 1));
  const flow = node.flow === true;
  for (const slip of flow ? listCommas(walk.source.text, items) : []) refuse(walk, slip.finding, slip.span);
  return { kind: 'list', items, flow, start, end: endOf(node, flow, items.at(-1)) };
}

interface YamlPairs extends Ranged {
  readonly items: readonly { readonly key: unknown; readonly value: unknown }[];
}

function mapNode(walk: Walk, node: YamlPairs): MapNode {
  if (node.anchor !== undefined || node.tag !== undefined) refuseProperties(walk, node);
  const entries: MapEntry[] = [];
  const start = node.range?.[0] ?? 0;
  for (const pair of node.items) {
    const key = treeNode(walk, pair.key, start);
    const value = treeNode(walk, pair.value, key.end);
    const isSurelyGood = key.kind === 'text' && !walk.hasExplicitKeys && isPlainWord(key.text);
    if (isSurelyGood || isGoodKey(walk, key)) entries.push({ key, value });
  }
  refuseDuplicates(walk, entries);
  const flow = node.flow === true;
  for (const slip of flow ? mapCommas(entries) : []) refuse(walk, slip.finding, slip.span);
  const last = entries.at(-1);
  return { kind: 'map', entries, flow, start, end: endOf(node, flow, last && lastOf(last)) };
}

const lastOf = ({ key, value }: MapEntry): TreeNode => (value.end > key.end ? value : key);

/** A block collection ends with its last item, whatever blank lines and comments follow. */
function endOf(node: Ranged, flow: boolean, last: TreeNode | undefined): number {
  const start = node.range?.[0] ?? 0;
  return flow || !last ? (node.range?.[1] ?? start) : Math.max(start, last.end);
}

interface Ranged {
  readonly range?: readonly number[] | null | undefined;
  readonly flow?: boolean | undefined;
  readonly tag?: string | undefined;
  readonly anchor?: string | undefined;
}

const refuse = (walk: Walk, finding: Finding, span: Span): void => {
  walk.problems.push(problemAt(walk.source, finding, span));
};

/** Whether it begins with a letter that has no meaning of its own: most keys do. */
function isPlainWord(text: string): boolean {
  const first = text.charCodeAt(0);
  return first >= 97 && first <= 122;
}

function isGoodKey(walk: Walk, key: TreeNode): key is TextNode {
  if (key.kind !== 'text' || !/\S/u.test(key.text)) {
    const finding = {
      code: 'bad-key',
      message:
        key.kind === 'empty' || key.kind === 'text'
          ? 'a colon with no word before it'
          : 'what stands before a colon must be a word',
      hint: 'write "word: value"',
    };
    refuse(walk, finding, key);
    return false;
  }
  if (key.text === '<<' && key.style === 'plain') {
    const hint = 'write out what it should hold';
    refuse(walk, { code: 'merge-key', message: '"<<" takes over another part of the file', hint }, key);
    return false;
  }
  if (walk.hasExplicitKeys && isAfterQuestionMark(walk.source.text, key.start)) {
    const finding = {
      code: 'bad-key',
      message: 'a question mark and a blank begin this line',
      hint: 'write "word: value"',
    };
    refuse(walk, finding, key);
  }
  return true;
}

function isAfterQuestionMark(text: string, start: number): boolean {
  let at = start - 1;
  while (at >= 0 && /\s/.test(text.charAt(at))) at -= 1;
  return at < start - 1 && text.charAt(at) === '?' && /^\s*(?:- +)*$/u.test(lineBefore(text, at));
}

const lineBefore = (text: string, at: number): string => text.slice(text.lastIndexOf('\n', at) + 1, at);

/** Up to here comparing each with each is quicker than a map. */
const fewKeys = 12;

function hasDuplicate(entries: readonly MapEntry[]): boolean {
  for (let index = 1; index < entries.length; index += 1) {
    const text = entries[index]?.key.text;
    for (let before = 0; before < index; before += 1) if (entries[before]?.key.text === text) return true;
  }
  return false;
}

function refuseDuplicates(walk: Walk, entries: readonly MapEntry[]): void {
  if (entries.length <= fewKeys && !hasDuplicate(entries)) return;
  const seen = new Map<string, TextNode>();
  for (const { key } of entries) {
    const first = seen.get(key.text);
    if (!first) {
      seen.set(key.text, key);
      continue;
    }
    const { line } = walk.source.placeAt(first);
    const message = `"${key.text}" stands here a second time, first on line ${line}`;
    refuse(walk, { code: 'duplicate-key', message, hint: 'keep one of them' }, key);
  }
}

/** An anchor or a tag before a value. */
function refuseProperties(walk: Walk, node: Ranged): void {
  const start = node.range?.[0] ?? 0;
  const sign = node.anchor === undefined ? '!' : '&';
  refuseSign(walk, sign, Math.max(0, walk.source.text.lastIndexOf(sign, start)));
}

const signCodes = { '*': 'alias', '&': 'anchor', '!': 'tag' } as const;

function refuseSign(walk: Walk, sign: '*' | '&' | '!', at: number): void {
  const rest =
    /^.[^\r\n#]*/u
      .exec(walk.source.text.slice(at, at + 200))?.[0]
      .slice(1)
      .trim() ?? '';
  const finding = markFinding(sign, rest);
  const code = /^[\d.]/u.test(rest) ? finding.code : signCodes[sign];
  refuse(walk, { ...finding, code }, { start: at, end: at + 1 });
}

/** A dash a little too far to the right goes on the text above it. */
function refuseSwallowedDash(walk: Walk, start: number, end: number): void {
  const found = /\n[ \t]*(-) /u.exec(walk.source.text.slice(start, end));
  if (!found) return;
  const at = start + found.index + found[0].length - 2;
  const finding = {
    code: 'indent',
    message: 'this line is read as part of the text above it',
    hint: 'start the dash in the column of the dashes above, or put quotes around the whole text',
  };
  refuse(walk, finding, { start: at, end: at + 1 });
}
