/** The built-in ingredients with the bibliography; loaded only when a name or a source is looked up. */

import { methodSources } from './method-sources.ts';
import { solutionSources } from './solution/solution-sources.ts';
import { sources as ingredientSources, type Source } from './sources.ts';
import { stabilitySources } from './stability-sources.ts';

export { ingredients } from './ingredients/index.ts';

export const sources: Readonly<Record<string, Source>> = {
  ...solutionSources,
  ...stabilitySources,
  ...methodSources,
  ...ingredientSources,
};
