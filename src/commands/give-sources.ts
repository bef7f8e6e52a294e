/** Where the densities come from by which volumes were turned into masses. */

import type { Gathered } from './give-gather.ts';
import { sourceWords } from './worded-sources.ts';

/** Those of the person's own figures are theirs to tell. */
export async function recipeSources({ mixture, along, nameOf }: Gathered): Promise<readonly string[]> {
  const { sources: bibliography } = await import('../reference/kept-sources.ts');
  const names = new Map<string, Set<string>>();
  const stages = [...along.flatMap((one) => one.mixture.stages), ...mixture.stages];
  for (const { entry } of stages.flatMap(({ substances }) => substances)) {
    const figure = entry.record.figures.density;
    const [key = ''] = figure?.source.split('#') ?? [];
    if (!figure || !Object.hasOwn(bibliography, key)) continue;
    const words = `${sourceWords(figure.source, bibliography)}${figure.fromMemory ? ' (from memory)' : ''}`;
    names.set(words, (names.get(words) ?? new Set()).add(nameOf(entry.name)));
  }
  return [...names].map(([source, some]) => `density of ${[...some].join(', ')}: ${source}`);
}
