/** One text to its tree: guard, the library's parser and composer, our own walk. The only path into YAML. */

import { Composer, type CST, Parser } from 'yaml';
import type { Problem } from '../problem.ts';
import { guardText } from './guard.ts';
import { type SourceText, sourceText } from './places.ts';
import { syntaxProblems, type YamlError } from './syntax.ts';
import type { TreeNode } from './tree.ts';
import { walkTree } from './walk.ts';

export interface LedgerDocument {
  readonly source: SourceText;
  readonly root: TreeNode;
  readonly problems: readonly Problem[];
  /** False where the text is no YAML, so that its tree means nothing. */
  readonly isReadable: boolean;
}

const mostErrorTokens = 20;

const composerOptions = {
  schema: 'failsafe',
  version: '1.2',
  prettyErrors: false,
  uniqueKeys: false,
  logLevel: 'silent',
} as const;

const nothing: TreeNode = { kind: 'empty', start: 0, end: 0 };

/**
 * Reads a text as YAML 1.2 in the failsafe schema.
 * Input     the path as the person knows it, and the text with its byte order mark and line ends
 * Output    the tree, and what is wrong with it as YAML
 */
export function parseDocument(file: string, text: string): LedgerDocument {
  const source = sourceText(file, text);
  const refusal = guardText(file, text);
  if (refusal) return { source, root: nothing, problems: [refusal], isReadable: false };
  const tokens = tokensOf(text);
  const composed = compose(tokens, text.length);
  const { problems, isReadable } = syntaxProblems(source, tokens, composed.errors);
  if (!isReadable) return { source, root: nothing, problems, isReadable };
  const found = [...problems];
  const root = walkTree(source, composed.contents, found);
  return { source, root, problems: found, isReadable };
}

function tokensOf(text: string): readonly CST.Token[] {
  const tokens: CST.Token[] = [];
  let errors = 0;
  for (const token of new Parser().parse(text)) {
    tokens.push(token);
    if (token.type === 'error') errors += 1;
    if (errors >= mostErrorTokens) break;
  }
  return tokens;
}

interface Composed {
  readonly contents: unknown;
  readonly errors: readonly YamlError[];
}

function compose(tokens: readonly CST.Token[], length: number): Composed {
  const composer = new Composer(composerOptions);
  const errors: YamlError[] = [];
  let contents: unknown;
  let count = 0;
  for (const document of composer.compose(tokens, true, length)) {
    if (count === 0) contents = document.contents;
    count += 1;
    errors.push(...document.errors);
  }
  return { contents, errors };
}
