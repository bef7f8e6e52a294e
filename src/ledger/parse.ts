/** One text to its tree: our own lines where it is plain, else the YAML library. The only path into YAML. */

import type { Problem } from '../problem.ts';
import { libraryDocument } from './library-document.ts';
import { type SourceText, sourceText } from './places.ts';
import { plainDocument } from './plain-document.ts';
import type { TreeNode } from './tree.ts';

export interface LedgerDocument {
  readonly source: SourceText;
  readonly root: TreeNode;
  readonly problems: readonly Problem[];
  /** False where the text is no YAML, so that its tree means nothing. */
  readonly isReadable: boolean;
  /** Lines whose syntax is wrong: what else looks wrong on them only follows from that. */
  readonly muted: ReadonlySet<number>;
}

/**
 * Reads a text as YAML 1.2 in the failsafe schema.
 * Input     the path as the person knows it, and the text with its byte order mark and line ends
 * Output    the tree, and what is wrong with it as YAML
 */
export function parseDocument(file: string, text: string): LedgerDocument {
  const root = plainDocument(text);
  if (!root) return libraryDocument(file, text);
  return { source: sourceText(file, text), root, problems: [], isReadable: true, muted: none };
}

const none: ReadonlySet<number> = new Set();

/** The same document, its tree read again when it is asked for. */
export function withoutTree({ source, problems, isReadable, muted }: LedgerDocument): LedgerDocument {
  let root: TreeNode | undefined;
  return {
    source,
    problems,
    isReadable,
    muted,
    get root() {
      root ??= parseDocument(source.file, source.text).root;
      return root;
    },
  };
}
