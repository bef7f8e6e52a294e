/** A trial: one numbered make, its samples, what was seen, what was reckoned. */

import type { TrialCard } from './cards.ts';
import type { LedgerDocument } from './parse.ts';
import { readFile } from './read-file.ts';
import { readMade } from './read-made.ts';
import { countUnder, namedUnder, type Read, type ReadSettings, textNodeUnder } from './reading.ts';

/** Reads `trials/*.yaml`. */
export function readTrialCard(document: LedgerDocument, settings: ReadSettings): Read<TrialCard> {
  return readFile<TrialCard>(document, settings, {
    kind: 'trial',
    read: (reading, root) => {
      const number = countUnder(reading, root, 'trial');
      const numberNode = textNodeUnder(root, 'trial');
      const made = readMade(reading, root);
      const from = countUnder(reading, root, 'from');
      if (number === undefined || !numberNode) return undefined;
      return Object.assign(made, {
        kind: 'trial' as const,
        number,
        numberSpan: numberNode,
        from,
        series: namedUnder(root, 'series'),
        batch: namedUnder(root, 'batch'),
      });
    },
  });
}
