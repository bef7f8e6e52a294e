/** Three versions of a unit to one: what one side alone changed is taken, what both did is left to a person. */

import { type Manner, sightOf, type Triple, threefold, timeOfUnit, type Versions } from './identity.ts';
import { type Element, isClash, ordered } from './order.ts';
import { type Conflict, type ConflictReason, conflictPieces, type Piece } from './pieces.ts';
import { entryStep, isWhole, policyAt } from './policy.ts';
import { type Body, bodyAt, bodyText, isSameText, leadAt, normalLead, type Unit, unitAt } from './unit.ts';

/** Two things that were added in the same place; ours stands first. */
export interface Together {
  readonly path: readonly string[];
  readonly ours: Unit;
  readonly theirs: Unit;
}

export interface Merging {
  readonly manner: Versions<Manner>;
  /** Paths that are not to be merged although they could be, as `pathText` writes them. */
  readonly apart: ReadonlySet<string>;
  readonly together: Together[];
}

export const pathText = (path: readonly string[]): string => JSON.stringify(path);

/** Where a unit is to be written. */
interface Spot {
  readonly path: readonly string[];
  readonly column: number;
  readonly isInline: boolean;
  /** Of what stands in a list that is known by what it says. */
  readonly isEntry?: boolean;
}

/** The merged lines of a block; undefined where it has to be chosen as a whole. */
export function mergedBlock(
  units: Versions<readonly Unit[]>,
  form: Body['form'],
  spot: Spot,
  merging: Merging,
): readonly Piece[] | undefined {
  const { manner } = merging;
  const policy = policyAt(spot.path, form);
  const sights = {
    base: sightOf(policy, manner.base),
    ours: sightOf(policy, manner.ours),
    theirs: sightOf(policy, manner.theirs),
  };
  const layout = ordered({
    block: threefold(units, sights),
    policy,
    timeOf: (unit) => timeOfUnit(unit, manner.ours),
  });
  if (!layout) return undefined;
  for (const [ours, theirs] of layout.together)
    if (policy.kind === 'items') merging.together.push({ path: spot.path, ours, theirs });
  const column = columnOf(units.ours) ?? columnOf(units.theirs) ?? spot.column;
  const isEntry = policy.kind !== 'keys' && policy.kind !== 'items';
  const pieces: Piece[] = [];
  for (const [index, element] of layout.elements.entries()) {
    const isInline = spot.isInline && index === 0;
    const written = elementPieces(element, { path: spot.path, column, isInline, isEntry }, merging);
    if (isInline && !fitsBehindDash(element, written)) return undefined;
    pieces.push(...written);
  }
  return pieces.length === 0 ? undefined : pieces;
}

const columnOf = (units: readonly Unit[]): number | undefined =>
  (units.find(({ kind }) => kind === 'entry') ?? units[0])?.column;

/** Behind a dash there is no room for comments, blank lines or a conflict. */
function fitsBehindDash(element: Element, [first]: readonly Piece[]): boolean {
  if (isClash(element) || typeof first !== 'string') return false;
  const units = [element.ours, element.theirs].filter((unit) => unit !== undefined);
  return units.every(({ kind, space, lead }) => kind === 'entry' && space + lead === '');
}

function elementPieces(element: Element, spot: Spot, merging: Merging): readonly Piece[] {
  if (!isClash(element)) return thingPieces(element, spot, merging);
  const textOf = (side: 'ours' | 'theirs'): string =>
    element[side].map((thing) => (thing[side] ? unitAt(thing[side], spot.column) : '')).join('');
  const [first] = [...element.ours, ...element.theirs];
  const path = [...spot.path, stepOf(first ?? {}, !spot.isEntry)];
  const why = element.ours.length > 0 && element.theirs.length > 0 ? bothChanged : changedAndGone;
  return conflictPieces({ ours: textOf('ours'), theirs: textOf('theirs'), path, why });
}

const bothChanged: ConflictReason = 'changed on both sides';
const changedAndGone: ConflictReason = 'changed on one side, taken out on the other';

/** How a thing is called in a path: by its key, in a list of facts by what the first one says. */
function stepOf({ base, ours, theirs }: Triple, isItem: boolean): string {
  const unit = ours ?? theirs ?? base;
  if (!unit || unit.kind === 'comment') return '#';
  if (isItem) return unit.key;
  const { node } = unit;
  const first = node?.kind === 'map' ? node.entries[0]?.value : node;
  return first?.kind === 'text' ? first.text : unit.key || entryStep;
}

function thingPieces({ base, ours, theirs }: Triple, spot: Spot, merging: Merging): readonly Piece[] {
  if (!ours || !theirs) {
    const [unit] = [ours, theirs].filter((one) => one !== undefined);
    return unit ? [unitAt(unit, spot.column, spot.isInline)] : [];
  }
  const path = [...spot.path, stepOf({ ours }, !spot.isEntry)];
  const twin = !base && spot.isEntry ? sameFact({ ours, theirs }, merging) : undefined;
  if (twin)
    return [
      ours.space,
      ...leadPieces(base, { ours, theirs }, spot),
      bodyAt(twin, spot.column, spot.isInline),
    ];
  const spots = { ...spot, path };
  const space = chosen(base?.space ?? ours.space, ours.space, theirs.space) ?? ours.space;
  return [
    space,
    ...leadPieces(base, { ours, theirs }, spots),
    ...bodyPieces({ base, ours, theirs }, spots, merging),
  ].filter((piece) => piece !== '');
}

/**
 * The one to keep of two that say the same: the earlier, ours where they are of one time. Undefined where the other
 * holds a comment that would be lost.
 */
function sameFact({ ours, theirs }: Sides, { manner }: Merging): Unit | undefined {
  const [mine, yours] = [timeOfUnit(ours, manner.ours), timeOfUnit(theirs, manner.theirs)];
  const isTheirs = mine !== undefined && yours !== undefined && yours < mine;
  const [kept, left] = isTheirs ? [theirs, ours] : [ours, theirs];
  const known = new Set(commentsIn(kept.body));
  return commentsIn(left.body).every((comment) => known.has(comment)) ? kept : undefined;
}

function commentsIn(body: Body): readonly string[] {
  if (body.form === 'line') return body.tail.trim() === '' ? [] : [body.tail.trim()];
  if (body.form === 'block') return body.text.includes('#') ? [body.text.trim()] : [];
  const inside = body.units.flatMap((unit) =>
    unit.kind === 'comment' ? [bodyText(unit.body).trim()] : [unit.lead.trim(), ...commentsIn(unit.body)],
  );
  return [body.head.replace(/^[^#]*/u, '').trim(), ...inside].filter((text) => text !== '');
}

/** What one side changed; undefined where both did, and differently. */
function chosen(base: string, ours: string, theirs: string): string | undefined {
  if (isSameText(ours, theirs) || isSameText(theirs, base)) return ours;
  return isSameText(ours, base) ? theirs : undefined;
}

interface Sides {
  readonly ours: Unit;
  readonly theirs: Unit;
}

/** Comments above an entry; where there were none, those of both sides. */
function leadPieces(base: Unit | undefined, { ours, theirs }: Sides, spot: Spot): readonly Piece[] {
  const [mine, yours] = [normalLead(ours), normalLead(theirs)];
  const before = base ? normalLead(base) : '';
  const [textOurs, textTheirs] = [leadAt(ours, spot.column), leadAt(theirs, spot.column)];
  if (mine === yours || yours === before) return [textOurs];
  if (mine === before) return [textTheirs];
  if (before === '') {
    const known = new Set(textOurs.split('\n'));
    const more = textTheirs.split(/(?<=\n)/u).filter((line) => !known.has(line.replace(/\n$/u, '')));
    return [textOurs + more.join('')];
  }
  return conflictPieces({ ours: textOurs, theirs: textTheirs, path: spot.path, why: bothChanged });
}

function bodyPieces({ base, ours, theirs }: Triple & Sides, spot: Spot, merging: Merging): readonly Piece[] {
  const { column, isInline, path } = spot;
  const text = (unit: Unit): string => bodyAt(unit, column, isInline);
  if (ours.normal === theirs.normal) return [text(ours)];
  const isApart = merging.apart.has(pathText(path));
  if (!isApart && base?.normal === theirs.normal) return [text(ours)];
  if (!isApart && base?.normal === ours.normal) return [text(theirs)];
  const merged = isApart ? undefined : within({ base, ours, theirs }, spot, merging);
  if (merged) return [(isInline ? '' : ' '.repeat(column)) + merged.head, ...merged.pieces];
  const conflict: Conflict = {
    ours: bodyAt(ours, column),
    theirs: bodyAt(theirs, column),
    path,
    why: isApart ? 'does not fit together' : base ? bothChanged : 'added on both sides',
  };
  // Behind a dash it can't be written; the block around it sees that and is chosen as a whole.
  return isInline ? [conflict] : conflictPieces(conflict);
}

interface Within {
  readonly head: string;
  readonly pieces: readonly Piece[];
}

/** The same line or block with what each side changed in it; undefined where that can't be told apart. */
function within({ base, ours, theirs }: Triple & Sides, spot: Spot, merging: Merging): Within | undefined {
  const [mine, yours] = [ours.body, theirs.body];
  if (mine.form === 'line' && yours.form === 'line') {
    const line = mergedLine(base?.body, mine, yours);
    return line === undefined ? undefined : { head: line, pieces: [] };
  }
  if (mine.form !== yours.form || !('units' in mine) || !('units' in yours) || isWhole(spot.path))
    return undefined;
  const before = base && unitsBefore(base.body, mine.form);
  if (base && !before) return undefined;
  const isInline = !mine.head.includes('\n');
  const baseHead = base?.body.form === mine.form && 'head' in base.body ? base.body.head : undefined;
  const head = isInline ? mine.head : chosen(baseHead ?? mine.head, mine.head, yours.head);
  if (head === undefined || isInline !== !yours.head.includes('\n')) return undefined;
  const units = { base: before ?? [], ours: mine.units, theirs: yours.units };
  const pieces = mergedBlock(
    units,
    mine.form,
    { path: spot.path, column: spot.column + 2, isInline },
    merging,
  );
  return pieces && { head, pieces };
}

/** What a block held before; nothing, where there was a key with nothing behind it. */
function unitsBefore(body: Body, form: 'map' | 'list'): readonly Unit[] | undefined {
  if (body.form === form && 'units' in body) return body.units;
  return body.form === 'line' && /^(?:|\[ *\]|\{ *\})$/u.test(body.value) ? [] : undefined;
}

type Line = Extract<Body, { form: 'line' }>;

/** Key, value and the comment behind them are facts of their own. */
function mergedLine(base: Body | undefined, ours: Line, theirs: Line): string | undefined {
  if (base?.form === 'line') {
    const head = chosen(base.head, ours.head, theirs.head);
    const value = chosen(base.value, ours.value, theirs.value);
    const tail = chosen(base.tail, ours.tail, theirs.tail);
    return head === undefined || value === undefined || tail === undefined ? undefined : head + value + tail;
  }
  if (base || ours.head !== theirs.head || ours.value !== theirs.value) return undefined;
  if (theirs.tail.trim() === '' || isSameText(ours.tail, theirs.tail))
    return ours.head + ours.value + ours.tail;
  return ours.tail.trim() === '' ? ours.head + ours.value + theirs.tail : undefined;
}
