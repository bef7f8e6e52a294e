/** Which items of a stage bring what a ladder varies, and which takes the rest. */

import type { BookEntry } from '../calc/book.ts';
import type { ResolvedStage } from '../calc/mixture/picture.ts';
import type { BlendItem } from '../calc/rungs/blend-masses.ts';
import type { LadderItem } from '../calc/rungs/ratio-masses.ts';
import { type Role, roles } from '../reference/ingredient.ts';
import { normaliseName } from '../reference/name.ts';
import type { StageCard } from './cards.ts';
import { isSameName } from './stage-name.ts';

/** A stage as it is typed and as it comes out, the stages before it by name. */
export interface StageSeen {
  readonly card: StageCard;
  readonly stage: ResolvedStage;
  readonly earlier: readonly ResolvedStage[];
}

const roleWord = (text: string): Role | undefined => roles.find((role) => role === normaliseName(text));

const isCalled = ({ name, like }: BookEntry, wanted: string): boolean =>
  [name, ...(like ?? [])].some((one) => isSameName(one, wanted));

interface Part {
  readonly entry: BookEntry;
  readonly role: Role;
  readonly massFraction: number;
}

/** The pure substances in an item; a role typed at the item stands over those that come with it. */
function partsOf({ card, stage, earlier }: StageSeen, at: number): readonly Part[] {
  const source = stage.items[at]?.source;
  const own = card.items[at]?.role;
  if (!source) return [];
  if (source.kind === 'ingredient') {
    return source.entry.composition.map(({ substance, massFraction }) => ({
      entry: substance,
      role: own ?? substance.record.role,
      massFraction,
    }));
  }
  const used =
    source.kind === 'other trial' ? source.stage : earlier.find(({ name }) => name === source.stage);
  return (used?.substances ?? []).map(({ entry, role, massFraction }) => ({
    entry,
    role: own ?? role,
    massFraction,
  }));
}

/** Whether the item itself is called so. */
export function isItemCalled({ stage }: StageSeen, at: number, what: string): boolean {
  const item = stage.items[at];
  if (!item) return false;
  const role = roleWord(what);
  if (role) return item.role === role;
  return (
    isSameName(item.name, what) || (item.source.kind === 'ingredient' && isCalled(item.source.entry, what))
  );
}

/** The shares of every item's mass that count as this: by role, by name, or by the name of a substance in it. */
export function sharesOf(seen: StageSeen, what: string): readonly number[] {
  const role = roleWord(what);
  const places = seen.stage.items.map((_, at) => at);
  const named = role ? [] : places.filter((at) => isItemCalled(seen, at, what));
  if (named.length > 0) return places.map((at) => (named.includes(at) ? 1 : 0));
  const counts = (part: Part): boolean => (role ? part.role === role : isCalled(part.entry, what));
  return places.map((at) =>
    partsOf(seen, at)
      .filter(counts)
      .reduce((sum, part) => sum + part.massFraction, 0),
  );
}

export function ladderItems(seen: StageSeen, over: string, under: string): readonly LadderItem[] {
  const [overs, unders] = [sharesOf(seen, over), sharesOf(seen, under)];
  return seen.stage.items.map(({ name, massGrams }, at) => ({
    name,
    massGrams,
    over: overs[at] ?? 0,
    under: unders[at] ?? 0,
    makesUp: seen.card.items[at]?.amount.makeUp ?? false,
  }));
}

/** An emulsifier of the stage with its place. */
export interface PlacedBlendItem extends BlendItem {
  readonly at: number;
}

/** The items that bring emulsifier; the HLB of each is that of the emulsifier in it. */
export function blendItems(seen: StageSeen): readonly PlacedBlendItem[] {
  return seen.stage.items.flatMap(({ name, massGrams }, at) => {
    const parts = partsOf(seen, at).filter(({ role }) => role === 'emulsifier');
    const share = parts.reduce((sum, part) => sum + part.massFraction, 0);
    if (share <= 0 || seen.card.items[at]?.amount.makeUp) return [];
    const hlb = parts.reduce(
      (sum, part) => sum + part.massFraction * (part.entry.record.figures.hlb?.value ?? Number.NaN),
      0,
    );
    return [{ at, name, massGrams, share, hlb: hlb / share }];
  });
}

/** What gives way so that the stage keeps its size: the line that makes it up, else the most water. */
export function restPlace(seen: StageSeen, taken: readonly number[]): number | undefined {
  const makeUp = seen.card.items.findIndex(({ amount }) => amount.makeUp);
  if (makeUp !== -1) return makeUp;
  const water = seen.stage.items
    .map((item, at) => ({ ...item, at }))
    .filter(({ role, at }) => role === 'water' && !taken.includes(at))
    .sort((one, other) => other.massGrams - one.massGrams);
  return water[0]?.at;
}
