/** What to add to a tank so that it becomes what it should have been. */

import { mostOf } from './measured-tank.ts';
import type { TankItem } from './tank.ts';

export interface Addition {
  readonly name: string;
  readonly addGrams: number;
}

export interface Mend {
  /** In the order of the items; only what is really added. */
  readonly additions: readonly Addition[];
  readonly items: readonly TankItem[];
  /** How much of it there is afterwards over how much there is. */
  readonly growth: number;
}

/** Below this share of the tank an addition is rounding noise. */
const NOISE = 1e-9;

/**
 * The smallest tank that has every ratio of the plan and needs nothing taken out.
 *
 * Formula   k = largest of present_i / planned_i;  add_i = k planned_i - present_i
 * Input     items as planned and as present, in the same order, g
 * Output    what to add, g; the items afterwards
 * Source    conservation of mass
 * Example   planned 50 sugar, 50 water; present 50, 55 -> add 5 sugar
 */
export function fullMend(planned: readonly TankItem[], present: readonly TankItem[]): Mend {
  const factor = Math.max(
    ...planned.map((item, at) => (item.massGrams > 0 ? (present[at]?.massGrams ?? 0) / item.massGrams : 0)),
  );
  const wanted = planned.map(({ massGrams }) => massGrams * factor);
  return mendTo(present, wanted);
}

/**
 * The same with water, sugar and acid alone: the rest stays as it is and gets thinner.
 *
 * Formula   as `fullMend`, with all but sugar and acid as one item, which only water adds to
 */
export function shortMend(planned: readonly TankItem[], present: readonly TankItem[]): Mend {
  const waterAt = mostOf(planned, 'water');
  const moved = new Set([mostOf(planned, 'sugar'), mostOf(planned, 'acid')].filter((place) => place >= 0));
  const restOf = (items: readonly TankItem[]): number =>
    items.reduce((sum, item, place) => (moved.has(place) ? sum : sum + item.massGrams), 0);
  const ratios = [...moved].map(
    (place) => (present[place]?.massGrams ?? 0) / (planned[place]?.massGrams || 1),
  );
  const factor = Math.max(restOf(present) / restOf(planned), ...ratios);
  const wanted = present.map(({ massGrams }, place) => {
    if (moved.has(place)) return (planned[place]?.massGrams ?? 0) * factor;
    return place === waterAt ? massGrams + factor * restOf(planned) - restOf(present) : massGrams;
  });
  return mendTo(present, wanted);
}

function mendTo(present: readonly TankItem[], wanted: readonly number[]): Mend {
  const total = present.reduce((sum, { massGrams }) => sum + massGrams, 0);
  const items = present.map((item, at) => ({
    ...item,
    massGrams: Math.max(item.massGrams, wanted[at] ?? 0),
  }));
  const additions = items.flatMap(({ name, massGrams }, at) => {
    const addGrams = massGrams - (present[at]?.massGrams ?? 0);
    return addGrams > NOISE * total ? [{ name, addGrams }] : [];
  });
  const after = items.reduce((sum, { massGrams }) => sum + massGrams, 0);
  return { additions, items, growth: after / total };
}

/** The most that any other item is off its planned share afterwards, by name; below 0 where it is thinner. */
export function drift(
  planned: readonly TankItem[],
  after: readonly TankItem[],
): readonly { readonly name: string; readonly change: number }[] {
  const total = (items: readonly TankItem[]): number =>
    items.reduce((sum, { massGrams }) => sum + massGrams, 0);
  const [should, is] = [total(planned), total(after)];
  return planned.flatMap(({ name, massGrams }, at) =>
    massGrams > 0 ? [{ name, change: (after[at]?.massGrams ?? 0) / is / (massGrams / should) - 1 }] : [],
  );
}
