/** A batch: a formula or a trial made at size, with what it came to and the bottles kept back. */

import type { BatchCard } from './cards.ts';
import type { LedgerDocument } from './parse.ts';
import { readFile } from './read-file.ts';
import { readMade } from './read-made.ts';
import {
  countUnder,
  namedUnder,
  quantityUnder,
  type Read,
  type ReadSettings,
  textNodeUnder,
  textUnder,
} from './reading.ts';

/** Reads `batches/*.yaml`. */
export function readBatchCard(document: LedgerDocument, settings: ReadSettings): Read<BatchCard> {
  return readFile<BatchCard>(document, settings, {
    kind: 'batch',
    read: (reading, root) => {
      const name = textNodeUnder(root, 'batch');
      const made = readMade(reading, root);
      if (!name) return undefined;
      return {
        kind: 'batch',
        name: name.text,
        nameSpan: name,
        ...made,
        formula: namedUnder(root, 'formula'),
        revision: textUnder(root, 'revision'),
        trial: countUnder(reading, root, 'trial'),
        scaledTo: textUnder(root, 'scaled to'),
        loss: quantityUnder(reading, root, 'loss', ['share']),
        yield: quantityUnder(reading, root, 'yield', ['mass', 'volume']),
        bottles: countUnder(reading, root, 'bottles'),
        bottle: quantityUnder(reading, root, 'bottle', ['volume']),
      };
    },
  });
}
