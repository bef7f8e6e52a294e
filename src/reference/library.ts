/** The built-in ingredients with the bibliography; loaded only when a name or a source is looked up. */

export { ingredients } from './ingredients/index.ts';
export { sources } from './sources.ts';
