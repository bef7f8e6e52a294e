/** What of a record of the shelf is passed on. */

import { plainOf } from '../edit-facts.ts';
import { entryOf, type TreeNode } from '../tree.ts';
import { asIs, byRules, type Giving, type Rules } from './giving.ts';
import type { PlainFacts } from './plain-lines.ts';

const ingredientRules: Rules = {
  lot: ['lots', 'as is'],
  opened: ['lots', 'time'],
  made: ['lots', 'time'],
  price: ['prices', 'as is'],
  left: ['notes', 'as is'],
  source: ['sources', 'prose'],
  note: ['notes', 'prose'],
};

/** Facts of an ingredient that are about the bottle on this shelf. */
export const shelfKeys: readonly string[] = Object.keys(ingredientRules);

/** An ingredient of the person's own; the words it also goes by are left out, since items carry its name. */
export function givenIngredient(node: TreeNode, giving: Giving): PlainFacts {
  return byRules(node, ingredientRules, giving, (key, value) => {
    if (key === 'aliases' || value.kind === 'empty') return undefined;
    if (key === 'dropper') {
      const drop = entryOf(value, 'drop')?.value;
      return drop?.kind === 'text' && !entryOf(node, 'drop') ? ['drop', drop.text] : undefined;
    }
    if (key === 'like' && value.kind === 'text') return [key, giving.nameOf(value.text)];
    if (key !== 'contains' || value.kind !== 'map') return asIs(key, value);
    const parts = value.entries.map((part) => [giving.nameOf(part.key.text), plainOf(part.value)] as const);
    return [key, { map: parts }];
  });
}
