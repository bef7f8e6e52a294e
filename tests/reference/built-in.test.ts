import { describe, expect, it } from 'vitest';
import { builtIn } from '../../src/reference/built-in.ts';
import { ingredients } from '../../src/reference/ingredients/index.ts';
import { normaliseName } from '../../src/reference/name.ts';
import { placesByName } from '../../src/reference/places-by-name.ts';

describe('built-in ingredients by name', () => {
  it('law: reading them all gives the list', () => {
    expect(builtIn.all()).toEqual(ingredients);
  });

  it('law: every name and alias leads to the record that the list gives, each read once', () => {
    const places = placesByName(ingredients);
    expect(
      [...places.keys()].filter((key) => builtIn.find(key) !== builtIn.all()[places.get(key) ?? -1]),
    ).toEqual([]);
    const first = ingredients.filter(({ name }) => builtIn.find(normaliseName(name))?.name !== name);
    expect(first).toEqual([]);
  });

  it('part of a name, two names or a line of the list are no name', () => {
    for (const typed of ['polysorbate', '', 'water\t0', '\nwater', 'water\n', '0', 'polysorbate 8'])
      expect(builtIn.find(typed)).toBe(undefined);
  });
});
