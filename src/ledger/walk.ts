/** The YAML library's nodes as our tree; refuses on the way what nobody types in a notebook. */

import { isAlias, isMap, isScalar, isSeq, type Node as YamlNode } from 'yaml';
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
  if (isScalar(node)) {
    refuseProperties(walk, node);
    const [start, end] = spanOf(node, emptyAt);
    const text = typeof node.value === 'string' ? node.value : '';
    if (text === '' && start === end) return { kind: 'empty', start, end };
    if (text.includes(' - ') && start + text.length <= end) refuseSwallowedDash(walk, start, end, node.type);
    return textNode(walk.source.text, text, node.type, start, end);
  }
  if (isMap(node)) return mapNode(walk, node);
  if (isSeq(node)) {
    refuseProperties(walk, node);
    const items = node.items.map((item) => treeNode(walk, item, emptyAt));
    for (const slip of node.flow === true ? listCommas(walk.source.text, items) : [])
      refuse(walk, slip.finding, slip.span);
    const list: ListNode = {
      kind: 'list',
      items,
      flow: node.flow === true,
      ...collection(node, items.at(-1)),
    };
    return list;
  }
  if (isAlias(node)) {
    const [start, end] = spanOf(node, emptyAt);
    refuseSign(walk, '*', start);
    return { kind: 'text', text: walk.source.text.slice(start, end), start, end, style: 'plain' };
  }
  return { kind: 'empty', start: emptyAt, end: emptyAt };
}

const styles: Readonly<Record<string, TextStyle>> = {
  PLAIN: 'plain',
  QUOTE_SINGLE: 'single',
  QUOTE_DOUBLE: 'double',
  BLOCK_LITERAL: 'literal',
  BLOCK_FOLDED: 'folded',
};

function textNode(
  whole: string,
  text: string,
  type: string | undefined,
  start: number,
  end: number,
): TextNode {
  const style = styles[type ?? 'PLAIN'] ?? 'plain';
  if (style !== 'literal' && style !== 'folded') return { kind: 'text', text, start, end, style };
  let last = end;
  while (last > start && /[\r\n]/.test(whole.charAt(last - 1))) last -= 1;
  return { kind: 'text', text, start, end: last, style };
}

interface YamlMap extends Ranged {
  readonly items: readonly { readonly key: unknown; readonly value: unknown }[];
  readonly flow?: boolean;
}

function mapNode(walk: Walk, node: YamlMap): MapNode {
  refuseProperties(walk, node);
  const entries: MapEntry[] = [];
  for (const pair of node.items) {
    const key = treeNode(walk, pair.key, node.range?.[0] ?? 0);
    const value = treeNode(walk, pair.value, key.end);
    if (isGoodKey(walk, key)) entries.push({ key, value });
  }
  refuseDuplicates(walk, entries);
  for (const slip of node.flow === true ? mapCommas(entries) : []) refuse(walk, slip.finding, slip.span);
  const last = entries.at(-1);
  return { kind: 'map', entries, flow: node.flow === true, ...collection(node, last && lastOf(last)) };
}

const lastOf = ({ key, value }: MapEntry): TreeNode => (value.end > key.end ? value : key);

/** A block collection ends with its last item, whatever blank lines and comments follow. */
function collection(node: Ranged, last: TreeNode | undefined): Span {
  const [start, end] = spanOf(node, 0);
  return { start, end: node.flow === true || !last ? end : Math.max(start, last.end) };
}

interface Ranged {
  readonly range?: readonly number[] | null | undefined;
  readonly flow?: boolean | undefined;
  readonly tag?: string | undefined;
  readonly anchor?: string | undefined;
}

function spanOf(node: Ranged | YamlNode, fallback: number): readonly [number, number] {
  const start = node.range?.[0] ?? fallback;
  return [start, node.range?.[1] ?? start];
}

const refuse = (walk: Walk, finding: Finding, span: Span): void => {
  walk.problems.push(problemAt(walk.source, finding, span));
};

function isGoodKey(walk: Walk, key: TreeNode): key is TextNode {
  if (key.kind !== 'text' || key.text.trim() === '') {
    const finding = {
      code: 'bad-key',
      message:
        key.kind === 'empty' || key.kind === 'text'
          ? 'a colon with no word before it'
          : 'a key must be a word',
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
    const finding = { code: 'bad-key', message: 'a key after a question mark', hint: 'write "word: value"' };
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

function refuseDuplicates(walk: Walk, entries: readonly MapEntry[]): void {
  if (entries.length < 2) return;
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
  if (node.anchor === undefined && node.tag === undefined) return;
  const [start] = spanOf(node, 0);
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
function refuseSwallowedDash(walk: Walk, start: number, end: number, type: string | undefined): void {
  if (type !== 'PLAIN') return;
  const found = /\n[ \t]*(-) /u.exec(walk.source.text.slice(start, end));
  if (!found) return;
  const at = start + found.index + found[0].length - 2;
  const finding = {
    code: 'indent',
    message: 'this line reads on the text above it',
    hint: 'start the dash in the column of the dashes above, or put quotes around the whole text',
  };
  refuse(walk, finding, { start: at, end: at + 1 });
}
