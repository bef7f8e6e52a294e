/** What else two records say on the screen: facts, samples, what was seen, results. */

import type { EntryChange, FactChange } from '../calc/compare/document.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Comparison } from './compare-sides.ts';

/** A formula has no samples and was not made. */
export const isSameKind = ({ before, after }: Comparison): boolean => before.card?.kind === after.card?.kind;

export function factBlocks(heading: string, facts: readonly FactChange[]): Page {
  return facts.length === 0
    ? []
    : [
        { kind: 'heading', text: heading },
        { kind: 'notes', mark: '-', notes: facts.map(factWords) },
      ];
}

/** `ph: 2.8 to 3.2 -> 2.9 to 3.2`, `note: less sugar (new)` */
function factWords({ key, before, after }: FactChange): string {
  if (before === undefined) return visible(`${key}: ${after ?? ''} (new)`);
  return visible(after === undefined ? `${key}: ${before} (gone)` : `${key}: ${before} -> ${after}`);
}

export function seenBlocks(comparison: Comparison): Page {
  const { difference, outcomes, isSameRecord } = comparison;
  return [
    ...(isSameKind(comparison) ? entryBlocks('Samples', difference.samples) : []),
    ...(outcomes.length === 0
      ? []
      : ([
          { kind: 'heading', text: 'What became of them' },
          {
            kind: 'notes',
            mark: '-',
            notes: outcomes.map(({ sample, before, after }) =>
              visible(`${sample}: ${before || 'not looked at'} -> ${after || 'not looked at'}`),
            ),
          },
        ] as const)),
    ...(isSameRecord
      ? entryBlocks('Observations', difference.observations)
      : countBlock('observations', difference.observations)),
  ];
}

export function resultsBlocks({ difference, isSameRecord }: Comparison): Page {
  return isSameRecord
    ? entryBlocks('Results', difference.results)
    : countBlock('results', difference.results);
}

/** Of two records what each was seen to do is its own: only how much there is. */
function countBlock(what: string, entries: readonly EntryChange[]): Page {
  const count = (change: EntryChange['change']): number =>
    entries.filter((one) => one.change === change).length;
  const [gone, added] = [count('removed'), count('added')];
  return gone + added === 0
    ? []
    : [{ kind: 'text', text: `Its own ${what}: ${added}; of the other: ${gone}.`, tone: 'faint' }];
}

const entryMarks = { added: 'new', removed: 'gone', changed: 'changed' } as const;

function entryBlocks(heading: string, entries: readonly EntryChange[]): Page {
  if (entries.length === 0) return [];
  return [
    { kind: 'heading', text: heading },
    { kind: 'notes', mark: '-', notes: entries.map(entryWords) },
  ];
}

function entryWords({ change, heading, facts }: EntryChange): string {
  const all = facts.map((fact) =>
    change === 'changed' ? factWords(fact) : visible(`${fact.key} ${fact.after ?? fact.before ?? ''}`),
  );
  return `${entryMarks[change]}: ${visible(heading)}${all.length > 0 ? `: ${all.join(', ')}` : ''}`;
}
