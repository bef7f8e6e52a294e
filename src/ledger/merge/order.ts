/** In which order the things of three versions stand when they are merged. */

import { type Clash, clashesOf, fateOf } from './clashes.ts';
import type { Threefold, Triple } from './identity.ts';
import type { Policy } from './policy.ts';
import type { Unit } from './unit.ts';

/** A thing, or things of which one side has to be chosen. */
export type Element = Triple | Clash;

export const isClash = (element: Element): element is Clash => Array.isArray(element.ours);

export interface Ordered {
  readonly elements: readonly Element[];
  /** What both sides added in the very same place, ours before theirs. */
  readonly together: readonly (readonly [ours: Unit, theirs: Unit])[];
}

export interface Ordering {
  readonly block: Threefold;
  readonly policy: Policy;
  readonly timeOf: (unit: Unit) => number | undefined;
}

interface Sequences {
  readonly ours: readonly Element[];
  readonly theirs: readonly Element[];
}

/**
 * Lays out what is to stand in a block.
 * Output    its elements in order; undefined where both sides moved entries to different places, or one moved what
 *           the other put something between, and the order means something
 */
export function ordered({ block, policy, timeOf }: Ordering): Ordered | undefined {
  const clashes = clashesOf(block, policy);
  const elements = (order: readonly Triple[]): readonly Element[] => [
    ...new Set(
      order
        .filter((thing) => fateOf(thing) !== 'dropped')
        .map((thing): Element => clashes.get(thing) ?? thing),
    ),
  ];
  const all = { ours: elements(block.order.ours), theirs: elements(block.order.theirs) };
  const host = hostOf(block, all, policy);
  if (!host) return undefined;
  const guest = host === 'ours' ? 'theirs' : 'ours';
  if (host === 'theirs' && policy.order === 'kept' && !fitsBetween(all)) return undefined;
  return settled({ host: all[host], guest: all[guest], isGuestFirst: guest === 'ours', policy, timeOf });
}

const isCommon = (element: Element): boolean =>
  !isClash(element) &&
  element.base !== undefined &&
  element.ours !== undefined &&
  element.theirs !== undefined;

const isEntry = (element: Element): boolean => isClash(element) || unitOf(element)?.kind === 'entry';

const unitOf = (thing: Triple): Unit | undefined => thing.ours ?? thing.theirs ?? thing.base;

const isSameOrder = (one: readonly Element[], other: readonly Element[]): boolean =>
  one.every((element, index) => element === other[index]);

/** The side whose order is taken: the one that moved something, else ours. */
function hostOf(block: Threefold, all: Sequences, policy: Policy): keyof Sequences | undefined {
  const orders = (keep: (element: Element) => boolean) => ({
    base: block.order.base.filter(keep),
    ours: all.ours.filter(keep),
    theirs: all.theirs.filter(keep),
  });
  const host = ({ base, ours, theirs }: ReturnType<typeof orders>): keyof Sequences | 'neither' => {
    if (isSameOrder(base, theirs) || isSameOrder(ours, theirs)) return 'ours';
    return isSameOrder(base, ours) ? 'theirs' : 'neither';
  };
  const entries = host(orders((element) => isCommon(element) && isEntry(element)));
  if (entries === 'neither') return policy.order === 'kept' ? undefined : 'ours';
  const whole = host(orders(isCommon));
  return whole === 'neither' ? entries : whole;
}

/** Whether what ours put between two things can still stand between them in the order of theirs. */
function fitsBetween({ ours, theirs }: Sequences): boolean {
  const common = theirs.filter((element) => isCommon(element) && isEntry(element));
  return ours.every((element, index) => {
    if (isCommon(element) || !isEntry(element) || theirs.includes(element)) return true;
    const above = ours.slice(0, index).findLast((one) => common.includes(one));
    const below = ours.slice(index).find((one) => common.includes(one));
    return (
      common.indexOf(below ?? element) === (above ? common.indexOf(above) + 1 : 0) ||
      (!below && above === common.at(-1))
    );
  });
}

interface Guests {
  readonly host: readonly Element[];
  readonly guest: readonly Element[];
  readonly isGuestFirst: boolean;
  readonly policy: Policy;
  readonly timeOf: (unit: Unit) => number | undefined;
}

/** The host's order with what only the other side has put in. */
function settled({ host, guest, isGuestFirst, policy, timeOf }: Guests): Ordered {
  const result = [...host];
  const known = new Set(guest);
  const together: (readonly [Unit, Unit])[] = [];
  let held: Element[] = [];
  for (const [index, element] of guest.entries()) {
    if (host.includes(element)) {
      held = [];
      continue;
    }
    const time = policy.order === 'time' && !isClash(element) ? timeOf(unitOf(element) ?? noUnit) : undefined;
    if (time !== undefined) {
      // Comments that came along with it stay above it.
      for (const comment of held) result.splice(result.indexOf(comment), 1);
      result.splice(placeInTime(result, time, timeOf), 0, ...held, element);
      held = [];
      continue;
    }
    const above = guest.slice(0, index).findLast((one) => result.includes(one));
    const from = above ? result.indexOf(above) + 1 : 0;
    let place = from;
    while (place < result.length && !known.has(result[place] ?? element)) place += 1;
    const [beside] = result.slice(from, place).filter((one) => isEntry(one) && !isClash(one));
    const [mine, other] = [unitIn(element), beside && unitIn(beside)];
    if (mine && other) together.push(isGuestFirst ? [mine, other] : [other, mine]);
    result.splice(isGuestFirst ? from : place, 0, element);
    held = !isEntry(element) ? [...held, element] : [];
  }
  return { elements: policy.order === 'time' ? inTime(result, timeOf) : result, together };
}

/** An answer that both filed stands where the earlier of the two belongs. */
function inTime(
  elements: readonly Element[],
  timeOf: (unit: Unit) => number | undefined,
): readonly Element[] {
  let result = elements;
  for (const element of elements) {
    if (isClash(element) || element.base || !element.ours || !element.theirs) continue;
    const [ours, theirs] = [timeOf(element.ours), timeOf(element.theirs)];
    if (ours === undefined || theirs === undefined || theirs >= ours) continue;
    const others = result.filter((one) => one !== element);
    result = others.toSpliced(placeInTime(others, theirs, timeOf), 0, element);
  }
  return result;
}

const noUnit: Unit = {
  kind: 'comment',
  key: '',
  column: 0,
  space: '',
  lead: '',
  body: { form: 'block', text: '' },
  normal: '',
};

const unitIn = (element: Element): Unit | undefined =>
  isClash(element) || !isEntry(element) ? undefined : unitOf(element);

/** After all of the same time or earlier, else before the first that is later. */
function placeInTime(
  result: readonly Element[],
  time: number,
  timeOf: (unit: Unit) => number | undefined,
): number {
  const times = result.map((element) => {
    const unit = unitIn(element);
    return unit && timeOf(unit);
  });
  const earlier = times.findLastIndex((one) => one !== undefined && one <= time);
  if (earlier !== -1) return earlier + 1;
  const later = times.findIndex((one) => one !== undefined && one > time);
  return later === -1 ? result.length : later;
}
