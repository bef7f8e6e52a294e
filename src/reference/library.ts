/** The built-in ingredients as a list, with the bibliography; for a name alone there is `built-in.ts`. */

export { ingredients } from './ingredients/index.ts';
export { sources } from './kept-sources.ts';
