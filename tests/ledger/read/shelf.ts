/** A short shelf for tests of the reader: names, roles, and densities that are round on purpose. */

import type { Ingredient, Role } from '../../../src/reference/ingredient.ts';

const plain = (name: string, role: Role, density?: number, aliases: readonly string[] = []): Ingredient => ({
  name,
  role,
  aliases,
  figures: density === undefined ? {} : { density: { value: density, source: 'test' } },
});

export const shelf: readonly Ingredient[] = [
  plain('water', 'water', 0.998),
  plain('sweet orange oil', 'oil', 0.845, ['orange oil']),
  plain('cardamom oil', 'oil', 0.925),
  plain('polysorbate 80', 'emulsifier', 1.07),
  plain('sorbitan oleate', 'emulsifier', 0.99),
  plain('propylene glycol', 'carrier', 1.036),
  plain('citric acid', 'acid', 1.665),
  plain('trisodium citrate dihydrate', 'salt', 1.7),
  plain('sucrose', 'sugar', 1.587),
  plain('cassis thiol', 'aroma', undefined, ['4-methoxy-2-methyl-2-butanethiol']),
];
