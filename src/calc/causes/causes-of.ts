/** Every cause that a look can have, the likeliest first. */

import type { Cause, Known } from './facts.ts';
import { hazeCauses } from './haze-causes.ts';
import { brokenCauses, gelCauses, ringCauses, sedimentCauses, speckCauses } from './settled-causes.ts';
import { isHaze, sharedCauses } from './shared-causes.ts';

const byLook: Readonly<Record<string, (known: Known) => readonly Cause[]>> = {
  ring: ringCauses,
  sediment: sedimentCauses,
  specks: speckCauses,
  gel: gelCauses,
  broken: brokenCauses,
};

/**
 * What a look can mean, ordered by likelihood.
 *
 * Formula   each rule weighs a cause by what is known of the sample; of a cause named twice the heavier stands
 * Input     what is known
 * Output    causes, heaviest first; none for a look that is clear
 * Source    weights: common practice, no source; each cause names its own
 */
export function causesOf(known: Known): readonly Cause[] {
  const kinds = known.looks.flatMap((look) => byLook[look] ?? []);
  const found = [...(isHaze(known) ? hazeCauses(known) : []), ...kinds.flatMap((rule) => rule(known))];
  if (found.length === 0) return [];
  const heaviest = new Map<string, Cause>();
  for (const one of [...sharedCauses(known), ...found]) {
    const before = heaviest.get(one.code);
    if (!before || before.weight < one.weight) heaviest.set(one.code, one);
  }
  return [...heaviest.values()].sort((left, right) => right.weight - left.weight);
}
