/** Every figure that the tool rests on, with its source. */

import { benchShelves } from './bench-uses.ts';
import { drinkShelves } from './drink-uses.ts';
import { emulsionShelves } from './emulsion-uses.ts';
import { ingredientUses } from './ingredient-uses.ts';
import { limitUses } from './limit-uses.ts';
import { methodShelves } from './method-uses.ts';
import { solutionShelves } from './solution-uses.ts';
import { type Use, usesOn } from './use.ts';

/** Of laws and constants: what `--explain` looks ranges up in. */
export const lawUses = (): readonly Use[] =>
  [solutionShelves, drinkShelves, emulsionShelves, methodShelves, benchShelves].flat().flatMap(usesOn);

export const allUses = (): readonly Use[] => [...lawUses(), ...ingredientUses(), ...limitUses()];
