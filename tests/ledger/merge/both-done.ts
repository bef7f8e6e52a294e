/** What a page must become when both of two people's edits are done to it, said without any merging of texts. */

import type { Entry, Item, Notebook } from './notebook.ts';

/** `undefined`: nobody can say, a person has to. */
export type Both = Notebook | undefined;

class Disputed extends Error {}

/** A fact that one changed, or both alike. */
function settled<T>(base: T, ours: T, theirs: T): T {
  const [before, mine, yours] = [base, ours, theirs].map((one) => JSON.stringify(one));
  if (mine === yours || yours === before) return ours;
  if (mine === before) return theirs;
  throw new Disputed();
}

type Facts = readonly (readonly [string, string])[];
const of = (facts: Facts, key: string): string | undefined => facts.find(([known]) => known === key)?.[1];

/** Facts in their order; what both added in the same place, ours first. */
function facts(base: Facts, ours: Facts, theirs: Facts): Facts {
  const keysIn = (some: Facts): readonly string[] => some.map(([key]) => key);
  const isOurs = (key: string | undefined): boolean => key !== undefined && !keysIn(theirs).includes(key);
  let keys = keysIn(ours);
  for (const [index, key] of keysIn(theirs).entries()) {
    if (keys.includes(key)) continue;
    const above = keysIn(theirs)
      .slice(0, index)
      .findLast((one) => keys.includes(one));
    let place = above === undefined ? 0 : keys.indexOf(above) + 1;
    while (place < keys.length && isOurs(keys[place])) place += 1;
    keys = keys.toSpliced(place, 0, key);
  }
  return keys.flatMap((key) => {
    const text = settled(of(base, key), of(ours, key), of(theirs, key));
    return text === undefined ? [] : [[key, text] as const];
  });
}

function lead(
  base: readonly string[],
  ours: readonly string[],
  theirs: readonly string[],
): readonly string[] {
  if (base.length > 0) return settled(base, ours, theirs);
  return [...ours, ...theirs.filter((line) => !ours.includes(line))];
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

function item(base: Item, ours: Item | undefined, theirs: Item | undefined): readonly Item[] {
  if (ours && theirs)
    return [
      {
        name: base.name,
        lead: lead(base.lead, ours.lead, theirs.lead),
        amount: settled(base.amount, ours.amount, theirs.amount),
        comment: settled(base.comment, ours.comment, theirs.comment),
        facts: facts(base.facts, ours.facts, theirs.facts),
      },
    ];
  const left = ours ?? theirs;
  if (left && !isSame(left, base)) throw new Disputed();
  return [];
}

function items(
  base: readonly Item[],
  ours: readonly Item[],
  theirs: readonly Item[],
  places: readonly string[],
): readonly Item[] {
  const find = (list: readonly Item[], name: string): Item | undefined =>
    list.find((one) => one.name === name);
  const addedBehind = (list: readonly Item[], name: string): readonly Item[] =>
    list.filter((one) => one.behind !== undefined && places[one.behind] === name);
  return base.flatMap((one, index) => {
    const [mine, yours] = [find(ours, one.name), find(theirs, one.name)];
    const above = base[index - 1]?.name ?? '';
    // Taken out by both, and something else put there: for all one knows, under another name.
    const isReplaced = addedBehind(ours, above).length + addedBehind(theirs, above).length > 0;
    if (!mine && !yours && isReplaced) throw new Disputed();
    return [...item(one, mine, yours), ...addedBehind(ours, one.name), ...addedBehind(theirs, one.name)];
  });
}

/** Taken out by both, and each put something else there: for all one knows, the same at another time. */
function isReplaced(
  one: Entry,
  base: readonly Entry[],
  ours: readonly Entry[],
  theirs: readonly Entry[],
): boolean {
  const instead = (side: readonly Entry[], other: readonly Entry[]): readonly Entry[] => {
    const isOld = (entry: Entry): boolean => base.some(({ time }) => time === entry.time);
    const above = base
      .filter(({ time }) => time < one.time && side.some((entry) => entry.time === time))
      .at(-1);
    const below = side.find((entry) => isOld(entry) && entry.time > (above?.time ?? -1));
    const isThere = (entry: Entry): boolean =>
      other.some((twin) => isSame({ ...twin, lead: [] }, { ...entry, lead: [] }));
    return side.filter(
      (entry) =>
        !isOld(entry) &&
        entry.time > (above?.time ?? -1) &&
        entry.time < (below?.time ?? 1e9) &&
        !isThere(entry),
    );
  };
  return instead(ours, theirs).length > 0 && instead(theirs, ours).length > 0;
}

function entries(base: readonly Entry[], ours: readonly Entry[], theirs: readonly Entry[]): readonly Entry[] {
  const find = (list: readonly Entry[], time: number): Entry | undefined =>
    list.find((one) => one.time === time);
  const kept = base.flatMap((one): readonly Entry[] => {
    const [mine, yours] = [find(ours, one.time), find(theirs, one.time)];
    if (mine && yours)
      return [
        {
          time: one.time,
          lead: lead(one.lead, mine.lead, yours.lead),
          facts: facts(one.facts, mine.facts, yours.facts),
        },
      ];
    const left = mine ?? yours;
    if (left && !isSame(left, one)) throw new Disputed();
    return [];
  });
  const added = (list: readonly Entry[]): readonly Entry[] => list.filter((one) => !find(base, one.time));
  for (const one of base)
    if (!find(ours, one.time) && !find(theirs, one.time) && isReplaced(one, base, ours, theirs))
      throw new Disputed();
  return [...kept, ...added(ours), ...added(theirs)].sort((left, right) => left.time - right.time);
}

/** The same of one time and content once; ours, with the comments of both. */
function observations(all: readonly Entry[]): readonly Entry[] {
  const done: Entry[] = [];
  for (const one of all) {
    const same = done.findIndex((other) => other.time === one.time && isSame(other.facts, one.facts));
    const known = done[same];
    if (known) done[same] = { ...known, lead: lead([], known.lead, one.lead) };
    else done.push(one);
  }
  return done;
}

/** Equal answers once: the earlier. */
const results = (all: readonly Entry[]): readonly Entry[] =>
  all.filter((one, index) => all.findIndex((other) => isSame(other.facts, one.facts)) === index);

export function bothDone(base: Notebook, ours: Notebook, theirs: Notebook, places: readonly string[]): Both {
  try {
    return {
      heads: facts(base.heads, ours.heads, theirs.heads),
      stages: base.stages.map((stage, at) =>
        items(stage, ours.stages[at] ?? [], theirs.stages[at] ?? [], places),
      ),
      cover: settled(base.cover, ours.cover, theirs.cover),
      observations: observations(entries(base.observations, ours.observations, theirs.observations)),
      results: results(entries(base.results, ours.results, theirs.results)),
    };
  } catch (thrown) {
    if (thrown instanceof Disputed) return undefined;
    throw thrown;
  }
}
