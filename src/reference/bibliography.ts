/** The whole bibliography with what each work is used for; loaded only by `sources`. */

import { limitSources } from './limits/limit-sources.ts';
import { methodSources } from './method-sources.ts';
import { solutionSources } from './solution/solution-sources.ts';
import { type Source, sources } from './sources.ts';
import { stabilitySources } from './stability-sources.ts';
import { allUses } from './uses/index.ts';
import type { Use } from './uses/use.ts';

export interface Work {
  /** What figures name it by; of words that stand beside a figure the words. */
  readonly key: string;
  readonly text: string;
  readonly shelf: string;
  readonly uses: readonly Use[];
}

const shelves: readonly (readonly [string, Readonly<Record<string, Source>>])[] = [
  ['Ingredients: pharmacopoeias, handbooks, papers, sheets', sources],
  ['Acids, sugars, water activity, carbon dioxide', solutionSources],
  ['Droplets, light, rising, keeping', stabilitySources],
  ['Statistics and tastings', methodSources],
  ['Published figures for additives and daily intakes', limitSources],
];

const elsewhere = 'Named beside a caution, a rule or a usual figure';

/** Works in the order of their shelves; those that are named in words come last. */
export function bibliography(): readonly Work[] {
  const bySource = usesBySource();
  const listed = shelves.flatMap(([shelf, works]) =>
    Object.entries(works).map(
      ([key, { text }]): Work => ({ key, text, shelf, uses: bySource.get(key) ?? [] }),
    ),
  );
  const keys = new Set(listed.map(({ key }) => key));
  const named = [...bySource].flatMap(([source, uses]): readonly Work[] =>
    keys.has(source) ? [] : [{ key: source, text: source, shelf: elsewhere, uses }],
  );
  return [...listed, ...named];
}

function usesBySource(): ReadonlyMap<string, readonly Use[]> {
  const bySource = new Map<string, Use[]>();
  for (const use of allUses()) {
    const there = bySource.get(use.source);
    if (there) there.push(use);
    else bySource.set(use.source, [use]);
  }
  return bySource;
}
