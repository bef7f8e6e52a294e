/** What a trial and a batch have in common. */

import type { FileCard, MadeCard } from './cards.ts';
import { readObservations, readResults, readSamples } from './read-looks.ts';
import { readStages } from './read-stage.ts';
import { momentOf, proseUnder, type Reading, textUnder } from './reading.ts';
import { type TreeNode, valueUnder } from './tree.ts';

export function readMade(reading: Reading, root: TreeNode): Omit<MadeCard, keyof FileCard> {
  const stages = readStages(reading, root);
  return {
    title: proseUnder(reading, root, 'title'),
    made: momentOf(reading, valueUnder(root, 'made'), 'time or day'),
    by: textUnder(root, 'by'),
    why: proseUnder(reading, root, 'why'),
    concluded: proseUnder(reading, root, 'concluded'),
    note: proseUnder(reading, root, 'note'),
    stages,
    samples: readSamples(reading, root, stages),
    observations: readObservations(reading, root),
    results: readResults(reading, root),
  };
}
