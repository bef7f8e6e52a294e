/** A text by way of the YAML library: guard, parser and composer, our own walk. Loaded only where a text needs it. */

import { Composer, type CST, Parser } from 'yaml';
import type { Problem } from '../problem.ts';
import { guardText } from './guard.ts';
import type { LedgerDocument } from './parse.ts';
import { type SourceText, sourceText } from './places.ts';
import { syntaxProblems, type YamlError } from './syntax.ts';
import type { TreeNode } from './tree.ts';
import { walkTree } from './walk.ts';

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
 * Reads a text as YAML 1.2 in the failsafe schema, by the library alone.
 * Output    the tree, and what is wrong with it as YAML
 */
export function libraryDocument(file: string, text: string): LedgerDocument {
  const source = sourceText(file, text);
  const refusal = guardText(file, text);
  if (refusal) return { source, root: nothing, problems: [refusal], isReadable: false, muted: none };
  const tokens = tokensOf(text);
  const composed = compose(tokens, text.length);
  const isClean = composed.errors.length === 0 && composed.count === 1 && !tokens.some(isDirective);
  return isClean
    ? walked(source, composed.contents, { problems: [], muted: none })
    : withErrors(source, tokens, composed);
}

const isDirective = ({ type }: CST.Token): boolean => type === 'directive';

const none: ReadonlySet<number> = new Set();

/** The problems of a text that is not quite YAML, and its tree where that can still be trusted. */
function withErrors(source: SourceText, tokens: readonly CST.Token[], first: Composed): LedgerDocument {
  const problems: Problem[] = [];
  let { tokens: read, composed } = { tokens, composed: first };
  let { text } = source;
  for (let round = 0; ; round += 1) {
    const found = syntaxProblems({ ...source, text }, read, composed.errors);
    const isLast = found.masks.length === 0 || round === mostRounds || text.length > largestReread;
    const sure = isLast ? found.problems : found.masks.map(({ problem }) => problem);
    for (const problem of sure) if (isNewLine(problems, problem)) problems.push(problem);
    const muted = new Set(problems.flatMap(({ place }) => (place ? [place.line] : [])));
    if (isLast && !found.isReadable) return { source, root: nothing, problems, isReadable: false, muted };
    if (isLast) return walked(source, composed.contents, { problems, muted });
    for (const { at, character } of found.masks) text = text.slice(0, at) + character + text.slice(at + 1);
    read = tokensOf(text);
    composed = compose(read, text.length);
  }
}

interface Before {
  readonly problems: readonly Problem[];
  readonly muted: ReadonlySet<number>;
}

/** A document whose tree can be trusted, with what the walk through it found. */
function walked(source: SourceText, contents: unknown, before: Before): LedgerDocument {
  const problems = [...before.problems];
  const root = walkTree(source, contents, problems);
  const split = problems.filter(({ code }) => code === 'decimal-comma').map(({ place }) => place?.line ?? 0);
  const muted = split.length === 0 ? before.muted : new Set([...before.muted, ...split]);
  return { source, root, problems, isReadable: true, muted };
}

const isNewLine = (problems: readonly Problem[], { place }: Problem): boolean =>
  problems.every((problem) => problem.place?.line !== place?.line);

/** How often a text is read again without the characters that slipped in, and up to which length. */
const mostRounds = 12;
const largestReread = 32 * 1024;

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
  /** How many documents there were. */
  readonly count: number;
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
  return { contents, errors, count };
}
