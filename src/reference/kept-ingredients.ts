/** The built-in ingredients as two texts. The build puts the texts themselves in the place of this module. */

import { ingredients } from './ingredients/index.ts';
import { placesByName } from './places-by-name.ts';

export interface KeptIngredients {
  /** `\nname\tplace\n` for each name and alias as they are compared: the line of its record. */
  readonly names: string;
  /** A record as JSON in each line. */
  readonly records: string;
}

export const kept: KeptIngredients = {
  names: [...placesByName(ingredients)].map(([name, place]) => `\n${name}\t${place}\n`).join(''),
  records: ingredients.map((one) => JSON.stringify(one)).join('\n'),
};
