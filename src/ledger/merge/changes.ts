/** What one side changed since the common version, thing by thing, for a person to read. */

import { type Manner, sightOf, threefold } from './identity.ts';
import { isWhole, policyAt } from './policy.ts';
import { type Body, bodyText, type Unit } from './unit.ts';

export interface SideChange {
  /** From the root of the file. */
  readonly path: readonly string[];
  readonly what: 'added' | 'changed' | 'removed' | 'moved';
  /** As typed, on one line; absent for what was added, and for what is no single line. */
  readonly before?: string;
  readonly after?: string;
}

interface Block {
  readonly units: readonly Unit[];
  readonly form: Body['form'];
  readonly manner: Manner;
}

/** Everything that differs between two versions of a block, comments as `#`. */
export function changesBetween(
  base: Block,
  side: Block,
  path: readonly string[] = [],
): readonly SideChange[] {
  const policy = policyAt(path, side.form);
  const sights = {
    base: sightOf(policy, base.manner),
    ours: sightOf(policy, side.manner),
    theirs: sightOf(policy, side.manner),
  };
  const { things, order } = threefold({ base: base.units, ours: side.units, theirs: [] }, sights);
  const isEntry = policy.kind !== 'keys' && policy.kind !== 'items';
  const found = things.flatMap(({ base: before, ours: after }): readonly SideChange[] => {
    const unit = after ?? before;
    if (!unit) return [];
    const at = [...path, nameOf(unit, isEntry)];
    if (!before) return [{ path: at, what: 'added', ...(after && { after: shortText(after) }) }];
    if (!after) return [{ path: at, what: 'removed', before: shortText(before) }];
    return changed(before, after, { base, side, path: at });
  });
  const kept = order.base.filter(({ ours }) => ours);
  const now = order.ours.filter(({ base: before }) => before);
  const isMoved = kept.some((thing, index) => thing !== now[index]);
  return isMoved ? [...found, { path, what: 'moved' }] : found;
}

function nameOf(unit: Unit, isEntry: boolean): string {
  if (unit.kind === 'comment') return '#';
  if (!isEntry) return unit.key;
  const first = unit.node?.kind === 'map' ? unit.node.entries[0]?.value : unit.node;
  return first?.kind === 'text' ? first.text : unit.key || '-';
}

function changed(
  before: Unit,
  after: Unit,
  { base, side, path }: { readonly base: Block; readonly side: Block; readonly path: readonly string[] },
): readonly SideChange[] {
  const lead: readonly SideChange[] =
    before.lead.trim() === after.lead.trim() ? [] : [{ path: [...path, '#'], what: 'changed' }];
  if (before.normal === after.normal) return lead;
  const [old, now] = [before.body, after.body];
  if ('units' in old && 'units' in now && old.form === now.form && !isWhole(path)) {
    const block = (whole: Block, body: typeof old): Block => ({
      ...whole,
      units: body.units,
      form: body.form,
    });
    const inner = changesBetween(block(base, old), block(side, now), path);
    return [...lead, ...(inner.length === 0 ? [{ path, what: 'changed' } as const] : inner)];
  }
  return [...lead, { path, what: 'changed', before: shortText(before), after: shortText(after) }];
}

const longest = 60;

/** What a unit says, without what names it; the first words of longer ones. */
function shortText(unit: Unit): string {
  const line = saidIn(unit).trim().replace(/\s+/gu, ' ');
  return line.length <= longest ? line : `${line.slice(0, longest - 1)}…`;
}

function saidIn({ body, node }: Unit): string {
  if (body.form === 'line') return body.value + body.tail;
  if (!('units' in body) || node?.kind !== 'map' || body.head.includes('\n')) return bodyText(body);
  const [first, ...more] = body.units;
  const facts = more.map((unit) => bodyText(unit.body).trim()).join(', ');
  // A fact with its time is named by that time; an item is named by its key.
  if (first?.key === 'at') return facts;
  const amount = first ? saidIn(first).trim() : '';
  return facts === '' ? amount : `${amount}, ${facts}`;
}
