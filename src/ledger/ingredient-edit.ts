/** Writing into the person's own book: a new ingredient, or a fact of one that is there. */

import { type Change, type Edited, editAll, type Proposal, plainPage, type Refusal, refuse } from './edit.ts';
import { changedAt, plainFact } from './edit-facts.ts';
import { setKey } from './edit-map.ts';
import { type Fact, factLines } from './fact-text.ts';
import { entryOf, nodeAt } from './tree.ts';

const ingredients = 'ingredients';

/**
 * Adds an ingredient at the end of `ingredients.yaml`.
 * Refuses   a name that is there already
 */
export const addIngredient =
  (name: string, facts: readonly Fact[]): Change =>
  (page): Proposal | Refusal => {
    const map = entryOf(page.root, ingredients);
    if (entryOf(map?.value, name))
      return refuse(
        'name-twice',
        `"${name}" is on the shelf already`,
        'give it another name, or change it in the file',
      );
    const value = map?.value;
    if (map && value?.kind === 'map' && value.flow && value.entries.length === 0) {
      // `ingredients: {}` of a new book becomes a block.
      const lines = factLines([[name, facts]], 2);
      const start = page.text.indexOf(':', map.key.end) + 1;
      return {
        ways: [{ start, end: value.end, text: `\n${lines.join('\n')}` }],
        expected: changedAt(plainPage(page), [ingredients], () => ({ map: [[name, plainFact(facts)]] })),
      };
    }
    return setKey([ingredients], name, facts)(page);
  };

/** A book that is not there yet. */
export const newBookText = (name: string, facts: readonly Fact[]): string =>
  `${factLines([[ingredients, [[name, facts]]]], 0).join('\n')}\n`;

/**
 * What is known of a drop, under `dropper` of a bench or an ingredient; a `drop` that stands there alone is kept in step.
 * Input     the file's name and text, the path of the map, the facts, `drop` among them
 */
export function setDropper(
  file: string,
  text: string,
  path: readonly string[],
  facts: readonly (readonly [string, string])[],
): Edited {
  const inStep: Change = (page) => {
    const drop = facts.find(([key]) => key === 'drop')?.[1] ?? '';
    const alone = entryOf(nodeAt(page.root, path), 'drop');
    return alone ? setKey(path, 'drop', drop)(page) : { ways: [nothingNew], expected: plainPage(page) };
  };
  return editAll(file, text, [
    inStep,
    ...facts.map(([key, value]) => setKey([...path, 'dropper'], key, value)),
  ]);
}

const nothingNew = { start: 0, end: 0, text: '' };
