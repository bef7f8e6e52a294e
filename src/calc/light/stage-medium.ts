/** A drink, syrup or emulsion as droplets of oil in a medium: what each is made of. */

import { fail } from '../../problem.ts';
import type { Role } from '../../reference/ingredient.ts';
import type { BookEntry } from '../book.ts';
import { type Blend, blendOf } from '../density/blend.ts';
import { densityModel, specificVolume } from '../density/estimate.ts';
import type { ResolvedStage } from '../mixture/picture.ts';
import type { PortionItem } from '../portions-field.ts';
import { share } from '../typed-quantity.ts';

export interface MediumPart {
  readonly name: string;
  readonly entry: BookEntry;
  readonly role: Role;
  /** Of the whole, oil included. */
  readonly massFraction: number;
}

export interface StageMedium {
  readonly oils: readonly MediumPart[];
  /** What is dissolved; the water is what is left of the mass. */
  readonly dissolved: readonly MediumPart[];
  readonly waterFraction: number;
  /** g/mL of the whole at 20 C, estimated. */
  readonly density: number;
  /** Sugar in sugar and water, by mass. */
  readonly sugarShare: number;
}

const ROUNDS = 30;
const tableKelvin = 293.15;

/**
 * Formula   g/L over the density of the whole, which follows from the shares: taken in turns until it stands
 * Input     items by g/L or by share of the mass; what is left is water
 * Output    mass fractions; g/mL; sugar in sugar and water
 * Refuses   shares above the whole
 */
export function stageMedium(items: readonly PortionItem[]): StageMedium {
  let density = 1;
  let parts = partsAt(items, density);
  for (let round = 0; round < ROUNDS; round++) {
    const next = 1 / specificVolume(blend(parts), densityModel(tableKelvin));
    const isSteady = Math.abs(next / density - 1) < 1e-12;
    density = next;
    parts = partsAt(items, density);
    if (isSteady) break;
  }
  const dissolved = parts.filter(({ role }) => role !== 'oil');
  const waterFraction = 1 - total(parts);
  const percent = total(parts) * 100;
  if (waterFraction < -1e-9)
    return fail(
      'shares-over',
      `the items come to more than the whole${Number.isFinite(percent) ? `: ${Number(percent.toPrecision(5))} %` : ''}`,
      'give less of them; together with water they make 100 %',
    );
  const sugar = total(dissolved.filter(({ role }) => role === 'sugar'));
  const water = Math.max(0, waterFraction);
  return {
    oils: parts.filter(({ role }) => role === 'oil'),
    dissolved,
    waterFraction: water,
    density,
    sugarShare: sugar > 0 ? sugar / (sugar + water) : 0,
  };
}

function partsAt(items: readonly PortionItem[], density: number): readonly MediumPart[] {
  return items.flatMap(({ name, entry, quantity }) => {
    if (!entry || !quantity || entry.record.role === 'water') return [];
    const massFraction = quantity.dimension === 'share' ? quantity.inner : quantity.inner / density;
    return [{ name, entry, role: entry.record.role, massFraction }];
  });
}

function blend(parts: readonly MediumPart[]): Blend {
  const known = blendOf(parts.map(({ entry, massFraction }) => ({ substance: entry, massFraction })));
  return { ...known, waterShare: Math.max(0, 1 - total(parts)) };
}

const total = (parts: readonly MediumPart[]): number =>
  parts.reduce((sum, { massFraction }) => sum + massFraction, 0);

/** A stage of a trial as such items, each in the role that it plays there. */
export const mediumItems = (stage: ResolvedStage): readonly PortionItem[] =>
  stage.substances
    .filter(({ role, massFraction }) => role !== 'water' && massFraction > 0)
    .map(({ name, entry, role, massFraction }) => ({
      name,
      entry: entry.record.role === role ? entry : { ...entry, record: { ...entry.record, role } },
      quantity: share(massFraction),
    }));

/** The stages of a trial that hold an oil in water, the one that is judged first: the drink, else the first of them. */
export function stagesWithOil(stages: readonly ResolvedStage[]): readonly ResolvedStage[] {
  const holding = stages.filter(
    ({ substances }) =>
      substances.some(({ role, massFraction }) => role === 'oil' && massFraction > 0) &&
      substances.some(({ role, massFraction }) => role === 'water' && massFraction > 0.05),
  );
  const drink = holding.find(({ name }) => name === 'drink');
  return drink ? [drink, ...holding.filter((stage) => stage !== drink)] : holding;
}
