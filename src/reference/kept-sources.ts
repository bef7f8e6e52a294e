/** The bibliography of what calculators and ingredients cite. The build puts the list itself in the place of this module. */

import { methodSources } from './method-sources.ts';
import { solutionSources } from './solution/solution-sources.ts';
import { sources as ingredientSources, type Source } from './sources.ts';
import { stabilitySources } from './stability-sources.ts';

export const sources: Readonly<Record<string, Source>> = {
  ...solutionSources,
  ...stabilitySources,
  ...methodSources,
  ...ingredientSources,
};
