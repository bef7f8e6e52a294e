/** `neckring ingredient`: finds records and shows each figure with its source. */

import { type CommandSpec, jsonOption } from './command.ts';

export const ingredientCommand: CommandSpec = {
  name: 'ingredient',
  summary: 'find an ingredient and see its figures with their sources',
  about:
    'One match is shown whole; several are listed. Without words, every name by its role. Inside a ledger your own ingredients are among them.',
  group: 'Look up',
  words: [
    {
      name: 'WORDS',
      help: 'part of a name, another name for it, a CAS or an E number',
      many: true,
      takes: ['ingredient'],
    },
  ],
  options: [jsonOption],
  examples: [
    { line: 'ingredient polysorbate 80', says: 'one record with its sources' },
    { line: 'ingredient orange', says: 'all that have orange in the name' },
  ],
  load: async () => (await import('./ingredient.ts')).runIngredient,
};
