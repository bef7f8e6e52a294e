/** A formula: a design with its stages, and the aims that it must meet. */

import type { Dimension } from '../calc/quantity.ts';
import { parseRange, type Range } from '../calc/range.ts';
import { lookUp } from '../reference/look-up.ts';
import type { AimCard, FormulaCard } from './cards.ts';
import type { LedgerDocument } from './parse.ts';
import { readFile } from './read-file.ts';
import { lookWords } from './read-looks.ts';
import { readStages } from './read-stage.ts';
import {
  countUnder,
  findFault,
  proseUnder,
  type Read,
  type Reading,
  type ReadSettings,
  textNodeUnder,
  wordsUnder,
} from './reading.ts';
import { type MapEntry, type TreeNode, valueUnder } from './tree.ts';

/** Reads `formulas/*.yaml`. */
export function readFormulaCard(document: LedgerDocument, settings: ReadSettings): Read<FormulaCard> {
  return readFile<FormulaCard>(document, settings, {
    kind: 'formula',
    read: (reading, root) => {
      const name = textNodeUnder(root, 'formula');
      const stages = readStages(reading, root);
      const aims = readAims(reading, valueUnder(root, 'aim'));
      if (!name) return undefined;
      return {
        kind: 'formula',
        name: name.text,
        nameSpan: name,
        title: proseUnder(reading, root, 'title'),
        why: proseUnder(reading, root, 'why'),
        note: proseUnder(reading, root, 'note'),
        from: countUnder(reading, root, 'from'),
        stages,
        aims,
      };
    },
  });
}

type AimKind = Dimension | 'number';

/** What may be aimed at by these names; any other name is a substance. */
const aimKinds: Readonly<Record<string, readonly AimKind[]>> = {
  ph: ['number'],
  acid: ['mass per volume'],
  brix: ['number'],
  'brix acid ratio': ['number'],
  co2: ['carbonation', 'mass per volume'],
  density: ['mass per volume'],
  serving: ['volume', 'mass'],
  temperature: ['temperature'],
  alcohol: ['share v/v'],
  turbidity: ['turbidity'],
  head: ['length'],
  'head life': ['time'],
  'water activity': ['number'],
};

/** The names of aims that are no substances, `look` included. */
export const aimNames: readonly string[] = [...Object.keys(aimKinds), 'look'];

const substanceKinds = [
  'share',
  'share w/v',
  'share v/v',
  'mass per volume',
  'volume per volume',
  'moles per volume',
  'moles per mass',
] as const satisfies readonly AimKind[];

function readAims(reading: Reading, node: TreeNode | undefined): readonly AimCard[] {
  if (node?.kind !== 'map') return [];
  return node.entries.flatMap((entry) => {
    const aim = readAim(reading, node, entry);
    return aim ? [aim] : [];
  });
}

function readAim(reading: Reading, aims: TreeNode, { key, value }: MapEntry): AimCard | undefined {
  const named = { name: key.text, nameSpan: key, span: value };
  if (key.text === 'look') {
    const looks = wordsUnder(reading, aims, 'look', lookWords);
    return { ...named, looks, written: looks.join(', ') };
  }
  if (value.kind !== 'text') return undefined;
  const range = parseRange(value.text, lookUp(aimKinds, key.text) ?? substanceKinds);
  if (range.ok && key.text === 'serving' && isNothing(range.value)) {
    const message = `a serving of "${value.text}" is nothing`;
    findFault(reading, { code: 'not-positive', message, hint: 'write such as 330 mL' }, value);
    return undefined;
  }
  if (range.ok) return { ...named, range: range.value, written: value.text };
  findFault(reading, range.fault, value);
  return undefined;
}

const isNothing = ({ exact, low, high }: Range): boolean =>
  [exact, low, high].some((one) => one !== undefined && one.inner <= 0);
