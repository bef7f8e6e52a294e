/** Which units of two versions are the same thing. */

import { normaliseName } from '../../reference/name.ts';
import { plainOf } from '../edit-facts.ts';
import { answerContent, observationContent } from '../same-fact.ts';
import { valueUnder } from '../tree.ts';
import type { Policy } from './policy.ts';
import type { Unit } from './unit.ts';

/** What must be known of a version to tell its observations apart. */
export interface Manner {
  /** Milliseconds since 1970; undefined for what is no time. */
  readonly timeOf: (text: string) => number | undefined;
  /** The sample that an observation without one belongs to. */
  readonly firstSample: string;
}

/** Ways of knowing a unit again, the surest first. */
export interface Sight {
  readonly strict: (unit: Unit) => string;
  /** Taken only where as many on both sides look alike. */
  readonly loose: readonly ((unit: Unit) => string | undefined)[];
  /** By this two that were added on both sides are one. */
  readonly added: (unit: Unit) => string;
}

const textUnder = ({ node }: Unit, key: string): string | undefined => {
  const found = valueUnder(node, key);
  return found?.kind === 'text' ? found.text : undefined;
};

/** The time of an entry; undefined where it has none that can be read. */
export function timeOfUnit(unit: Unit, { timeOf }: Manner): number | undefined {
  const at = textUnder(unit, 'at');
  return at === undefined ? undefined : timeOf(at);
}

const said = ({ node }: Unit): string => JSON.stringify(node ? plainOf(node) : '');

function observationSight(manner: Manner): Sight {
  const time = (unit: Unit): string => `${timeOfUnit(unit, manner) ?? textUnder(unit, 'at') ?? ''}`;
  const whole = (unit: Unit): string =>
    `${time(unit)} ${unit.node ? observationContent(plainOf(unit.node), manner.firstSample) : unit.normal}`;
  const sample = (unit: Unit): string => textUnder(unit, 'sample') ?? manner.firstSample;
  return {
    strict: whole,
    loose: [(unit) => JSON.stringify([time(unit), sample(unit), textUnder(unit, 'by')])],
    added: whole,
  };
}

function resultSight(): Sight {
  const answer = (unit: Unit): string => (unit.node ? answerContent(plainOf(unit.node)) : '') || unit.normal;
  return { strict: said, loose: [answer], added: answer };
}

/** How the entries of a block are known again. */
export function sightOf({ kind }: Policy, manner: Manner): Sight {
  if (kind === 'observations') return observationSight(manner);
  if (kind === 'results') return resultSight();
  const name = (unit: Unit): string => normaliseName(unit.key);
  if (kind === 'keys') return { strict: name, loose: [], added: name };
  if (kind === 'items') return { strict: (unit) => unit.normal, loose: [name], added: name };
  return { strict: (unit) => unit.normal, loose: [(unit) => textUnder(unit, 'name')], added: said };
}

const mark = (unit: Unit, sight: (unit: Unit) => string | undefined): string | undefined => {
  if (unit.kind === 'comment') return `# ${unit.normal}`;
  const seen = sight(unit);
  return seen === undefined ? undefined : `- ${seen}`;
};

/**
 * Pairs units of two versions.
 * Output    for each unit of `others` that is one of `base`, which
 */
export function paired(
  base: readonly Unit[],
  others: readonly Unit[],
  sights: { readonly base: Sight; readonly other: Sight },
): ReadonlyMap<Unit, Unit> {
  const pairs = new Map<Unit, Unit>();
  const taken = new Set<Unit>();
  const pass = (
    ofBase: (unit: Unit) => string | undefined,
    ofOther: (unit: Unit) => string | undefined,
    isStrict: boolean,
  ): void => {
    const groups = grouped(
      base.filter((unit) => !taken.has(unit)),
      ofBase,
    );
    for (const [seen, same] of grouped(
      others.filter((unit) => !pairs.has(unit)),
      ofOther,
    )) {
      const there = groups.get(seen) ?? [];
      if (!isStrict && there.length !== same.length) continue;
      for (const [index, unit] of same.entries()) {
        const found = there[index];
        if (!found) continue;
        pairs.set(unit, found);
        taken.add(found);
      }
    }
  };
  pass(sights.base.strict, sights.other.strict, true);
  for (const [index, loose] of sights.base.loose.entries()) {
    const other = sights.other.loose[index];
    if (other) pass(loose, other, false);
  }
  return pairs;
}

function grouped(
  units: readonly Unit[],
  sight: (unit: Unit) => string | undefined,
): ReadonlyMap<string, readonly Unit[]> {
  const groups = new Map<string, Unit[]>();
  for (const unit of units) {
    const seen = mark(unit, sight);
    if (seen === undefined) continue;
    const same = groups.get(seen);
    if (same) same.push(unit);
    else groups.set(seen, [unit]);
  }
  return groups;
}

/** A thing with what each version holds of it. */
export interface Triple {
  readonly base?: Unit | undefined;
  readonly ours?: Unit | undefined;
  readonly theirs?: Unit | undefined;
}

export interface Versions<T> {
  readonly base: T;
  readonly ours: T;
  readonly theirs: T;
}

/** The units of three versions of a block as one list of things, and the order of each version. */
export interface Threefold {
  readonly things: readonly Triple[];
  readonly order: Versions<readonly Triple[]>;
}

export function threefold(units: Versions<readonly Unit[]>, sights: Versions<Sight>): Threefold {
  const ours = paired(units.base, units.ours, { base: sights.base, other: sights.ours });
  const theirs = paired(units.base, units.theirs, { base: sights.base, other: sights.theirs });
  const isNew =
    (pairs: ReadonlyMap<Unit, Unit>) =>
    (unit: Unit): boolean =>
      !pairs.has(unit);
  const added = paired(units.ours.filter(isNew(ours)), units.theirs.filter(isNew(theirs)), {
    base: { ...sights.ours, strict: sights.ours.added, loose: [] },
    other: { ...sights.theirs, strict: sights.theirs.added, loose: [] },
  });
  const byUnit = new Map<Unit, { base?: Unit; ours?: Unit; theirs?: Unit }>();
  const things: { base?: Unit; ours?: Unit; theirs?: Unit }[] = [];
  const thing = (unit: Unit, known: Unit | undefined, side: keyof Triple): Triple => {
    const found = (known && byUnit.get(known)) ?? {};
    if (!known || !byUnit.has(known)) things.push(found);
    found[side] = unit;
    byUnit.set(unit, found);
    return found;
  };
  const base = units.base.map((unit) => thing(unit, undefined, 'base'));
  const orderOurs = units.ours.map((unit) => thing(unit, ours.get(unit), 'ours'));
  const orderTheirs = units.theirs.map((unit) => thing(unit, theirs.get(unit) ?? added.get(unit), 'theirs'));
  return { things, order: { base, ours: orderOurs, theirs: orderTheirs } };
}
