/** A series: trials that ask one question, and in the end the decision. */

import type { Decision, SeriesCard } from './cards.ts';
import type { LedgerDocument } from './parse.ts';
import { readFile } from './read-file.ts';
import { lookWords } from './read-looks.ts';
import {
  countUnder,
  momentOf,
  namedUnder,
  proseUnder,
  quantityUnder,
  type Read,
  type Reading,
  type ReadSettings,
  textNodeUnder,
  textsUnder,
  textUnder,
  wordsUnder,
  wordUnder,
} from './reading.ts';
import { type TreeNode, valueUnder } from './tree.ts';

/** Reads `series/*.yaml`. */
export function readSeriesCard(document: LedgerDocument, settings: ReadSettings): Read<SeriesCard> {
  return readFile<SeriesCard>(document, settings, {
    kind: 'series',
    read: (reading, root) => {
      const name = textNodeUnder(root, 'series');
      const passes = wordsUnder(reading, root, 'passes', lookWords);
      if (!name) return undefined;
      return {
        kind: 'series',
        name: name.text,
        nameSpan: name,
        question: proseUnder(reading, root, 'question'),
        varies: textUnder(root, 'varies'),
        same: textsUnder(root, 'same'),
        judge: namedUnder(root, 'judge'),
        passes: passes.length > 0 ? passes : ['clear'],
        watch: quantityUnder(reading, root, 'watch', ['time']),
        settle: quantityUnder(reading, root, 'settle', ['time']),
        control: countUnder(reading, root, 'control'),
        blank: countUnder(reading, root, 'blank'),
        shape: wordUnder(root, 'shape', ['edge', 'window']) ?? 'edge',
        formula: namedUnder(root, 'formula'),
        note: proseUnder(reading, root, 'note'),
        decided: readDecision(reading, valueUnder(root, 'decided')),
      };
    },
  });
}

function readDecision(reading: Reading, node: TreeNode | undefined): Decision | undefined {
  if (node?.kind !== 'map') return undefined;
  return {
    text: proseUnder(reading, node, 'text'),
    date: momentOf(reading, valueUnder(node, 'date'), 'time or day'),
    ratio: textUnder(node, 'ratio'),
    why: proseUnder(reading, node, 'why'),
  };
}
