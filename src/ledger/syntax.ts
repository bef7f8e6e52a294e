/** What the YAML library found wrong, in our words: one problem a line, the usual slips recognised first. */

import type { CST } from 'yaml';
import type { Problem } from '../problem.ts';
import { type Finding, problemAt, type SourceText } from './places.ts';
import { slipOn } from './slips.ts';
import type { Span } from './tree.ts';

export interface YamlError {
  readonly code: string;
  readonly pos: readonly [number, number];
}

/** A slip that can be covered up: until it is, what else is wrong may only follow from it. */
export interface Mask {
  readonly problem: Problem;
  readonly at: number;
  readonly character: string;
}

interface Syntax {
  readonly problems: readonly Problem[];
  /** False where the tree can't be trusted. */
  readonly isReadable: boolean;
  /** Characters that, put in place of those that slipped in, let the rest of the file be read. */
  readonly masks: readonly Mask[];
}

/** A text with more errors than this is no notebook: its tree is not looked at. */
const mostErrors = 200;

/** Errors after which the tree still says what was meant, so that the rest of the file can be looked at. */
const harmless: ReadonlySet<string> = new Set(['BAD_SCALAR_START']);

export function syntaxProblems(
  source: SourceText,
  tokens: readonly CST.Token[],
  errors: readonly YamlError[],
): Syntax {
  const [extra] = extraDocuments(tokens);
  if (extra) {
    const problem = extra.type === 'directive' ? directive(source, extra) : secondDocument(source, extra);
    return { problems: [problem], isReadable: false, masks: [] };
  }
  const problems: Problem[] = [];
  const masks: Mask[] = [];
  let isReadable = errors.length <= mostErrors;
  const lines = new Set<number>();
  const inOrder = [...errors].sort((left, right) => left.pos[0] - right.pos[0]);
  for (const { code, pos } of inOrder.slice(0, mostErrors)) {
    const { line } = source.placeAt({ start: pos[0], end: pos[1] });
    const slip = slipOn(source, code, { start: pos[0], end: pos[1] });
    const problem = slip && problemAt(source, slip.finding, slip.span);
    if (slip?.mask !== undefined && problem)
      masks.push({ problem, at: slip.span.start, character: slip.mask });
    else isReadable &&= harmless.has(code);
    // After the first, what no slip explains mostly follows from it.
    if (lines.has(line) || (!slip && lines.size > 0)) continue;
    lines.add(line);
    problems.push(problem ?? worded(source, { code, pos }));
  }
  return { problems, isReadable, masks };
}

function extraDocuments(tokens: readonly CST.Token[]): readonly CST.Token[] {
  const documents = tokens.filter((token) => token.type === 'document');
  return [...tokens.filter((token) => token.type === 'directive'), ...documents.slice(1)];
}

function directive(source: SourceText, token: CST.Token): Problem {
  const message = 'a line that begins with % gives orders to the reader of the file';
  const finding = { code: 'directive', message, hint: 'delete the line' };
  return problemAt(source, finding, { start: token.offset, end: token.offset + 1 });
}

function secondDocument(source: SourceText, token: CST.Token): Problem {
  const finding = {
    code: 'second-document',
    message: 'a second document begins here',
    hint: 'keep one in a file: delete the "---", or move what follows into a file of its own',
  };
  return problemAt(source, finding, { start: token.offset, end: token.offset + 3 });
}

function worded(source: SourceText, { code, pos }: YamlError): Problem {
  const span = { start: pos[0], end: pos[1] };
  return problemAt(source, { code: 'not-yaml', ...(words[code] ?? unread) }, clipped(source, span));
}

const clipped = ({ text }: SourceText, { start, end }: Span): Span => ({
  start: Math.min(start, Math.max(0, text.trimEnd().length)),
  end,
});

type Words = Omit<Finding, 'code' | 'severity'>;

const unread: Words = {
  message: 'this does not read as "word: value" or as "- item"',
  hint: 'look for a missing colon, quote or bracket on this line or the one above',
};

const words: Readonly<Record<string, Words>> = {
  BAD_INDENT: {
    message: 'the line does not start in the column of the lines that it belongs with',
    hint: 'start it right below them',
  },
  BAD_DQ_ESCAPE: {
    message: 'a backslash inside double quotes begins a special character',
    hint: 'write it twice, or use single quotes',
  },
  BAD_SCALAR_START: {
    message: 'the text begins with a character that has a meaning of its own',
    hint: 'put quotes around it',
  },
  BLOCK_AS_IMPLICIT_KEY: {
    message: 'there is a second "word: value" on this line',
    hint: 'put quotes around the text, or start a new line',
  },
  BLOCK_IN_FLOW: {
    message: "lines of their own can't stand inside [ ] or { }",
    hint: 'write the list as one "- " a line',
  },
  KEY_OVER_1024_CHARS: { message: 'the word before the colon is too long', hint: 'keep it short' },
  MISSING_CHAR: {
    message: 'something is missing here',
    hint: 'close the quote or bracket, or add ": value"',
  },
  MULTILINE_IMPLICIT_KEY: {
    message: 'the text before this colon runs over several lines',
    hint: 'add the colon that is missing on the line above, or put quotes around the text',
  },
  TAB_AS_INDENT: { message: 'the line is indented with a tab', hint: 'use spaces' },
};
