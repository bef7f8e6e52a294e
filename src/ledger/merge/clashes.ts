/** Where both sides touched the same thing of a block: one changed or replaced what the other took out. */

import type { Threefold, Triple } from './identity.ts';
import type { Policy } from './policy.ts';
import { isSameUnit } from './unit.ts';

/** What each side holds in one place; a person has to choose. */
export interface Clash {
  readonly ours: readonly Triple[];
  readonly theirs: readonly Triple[];
}

type Side = 'ours' | 'theirs';

/** What became of a thing. `dropped`: one side took out what the other left alone. */
export function fateOf({ base, ours, theirs }: Triple): 'both' | 'new' | 'gone' | 'dropped' | 'clash' {
  if (ours && theirs) return 'both';
  if (!base) return 'new';
  const left = ours ?? theirs;
  if (!left) return 'gone';
  return isSameUnit(base, left) ? 'dropped' : 'clash';
}

/** What a side put where a thing was: what is new there right behind the nearest thing above that it still has. */
function putInPlaceOf(thing: Triple, { order }: Threefold, side: Side): readonly Triple[] {
  const above = order.base.slice(0, order.base.indexOf(thing)).findLast((one) => one[side]);
  const from = above ? order[side].indexOf(above) + 1 : 0;
  const rest = order[side].slice(from);
  const end = rest.findIndex((one) => one.base);
  const run = end === -1 ? rest : rest.slice(0, end);
  const other = side === 'ours' ? 'theirs' : 'ours';
  return run.filter((one) => !one[other] && one[side]?.kind === thing.base?.kind);
}

/** The clashes of a block, by every thing that is part of one. */
export function clashesOf(block: Threefold, policy: Policy): ReadonlyMap<Triple, Clash> {
  const found = new Map<Triple, { ours: Triple[]; theirs: Triple[] }>();
  const add = (ours: readonly Triple[], theirs: readonly Triple[]): void => {
    const all = [...ours, ...theirs];
    const clash = all.map((one) => found.get(one)).find((one) => one !== undefined) ?? {
      ours: [],
      theirs: [],
    };
    for (const one of ours) if (!clash.ours.includes(one)) clash.ours.push(one);
    for (const one of theirs) if (!clash.theirs.includes(one)) clash.theirs.push(one);
    for (const one of all) found.set(one, clash);
  };
  for (const thing of block.things) {
    const fate = fateOf(thing);
    if (fate === 'clash') {
      const isOurs = thing.ours !== undefined;
      const instead = policy.order === 'time' ? [] : putInPlaceOf(thing, block, isOurs ? 'theirs' : 'ours');
      if (isOurs) add([thing], instead);
      else add(instead, [thing]);
    }
    if (fate === 'gone') {
      const [ours, theirs] = [putInPlaceOf(thing, block, 'ours'), putInPlaceOf(thing, block, 'theirs')];
      const isReplaced =
        policy.order === 'time' ? ours.length > 0 && theirs.length > 0 : ours.length + theirs.length > 0;
      if (isReplaced) add(ours, theirs);
    }
  }
  return found;
}
