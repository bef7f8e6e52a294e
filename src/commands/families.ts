/** Where the words of each command stand, so that a command loads the words of few others. */

import type { CommandSpec } from './command.ts';

interface Family {
  readonly names: readonly string[];
  readonly load: () => Promise<readonly CommandSpec[]>;
}

const families: readonly Family[] = [
  {
    names: ['hlb', 'hlb-of', 'emulsifier', 'dose', 'acid', 'drops'],
    load: async () => (await import('./quick-emulsion-commands.ts')).quickEmulsionCommands,
  },
  {
    names: ['ph', 'adjust', 'titrate', 'brix', 'water-activity', 'carbonation'],
    load: async () => (await import('./quick-solution-commands.ts')).quickSolutionCommands,
  },
  {
    names: ['clarity', 'ring', 'coat', 'lasts'],
    load: async () => (await import('./quick-keeping-commands.ts')).quickKeepingCommands,
  },
  {
    names: ['init', 'new', 'observe', 'list', 'show', 'check', 'reckon'],
    load: async () => (await import('./ledger-commands.ts')).ledgerCommands,
  },
  { names: ['drink'], load: async () => (await import('./drink-commands.ts')).drinkCommands },
  {
    names: ['weigh', 'overpoured'],
    load: async () => (await import('./weighing-commands.ts')).weighingCommands,
  },
  {
    names: ['look', 'same', 'end'],
    load: async () => (await import('./looking-commands.ts')).lookingCommands,
  },
  { names: ['due'], load: async () => (await import('./due-commands.ts')).dueCommands },
  {
    names: ['ladder', 'next', 'decide'],
    load: async () => (await import('./ladder-commands.ts')).ladderCommands,
  },
  {
    names: ['git', 'renumber', 'merge-driver', 'diff-driver'],
    load: async () => (await import('./merge-commands.ts')).mergeCommands,
  },
  { names: ['series'], load: async () => (await import('./series-commands.ts')).seriesCommands },
  {
    names: ['completion'],
    load: async () => (await import('./completion-commands.ts')).completionCommands,
  },
  { names: ['sources'], load: async () => (await import('./sources-commands.ts')).sourcesCommands },
];

/** A command by its name. Those that are not found in a family are looked for among all. */
export async function commandNamed(name: string): Promise<CommandSpec | undefined> {
  const family = families.find(({ names }) => names.includes(name));
  const specs = family ? await family.load() : await allCommands();
  return specs.find((one) => one.name === name);
}

export const allCommands = async (): Promise<readonly CommandSpec[]> => (await import('./index.ts')).commands;
