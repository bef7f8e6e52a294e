/** Where the words of each command stand, so that a command loads the words of few others. */

import type { Calculator } from '../calc/calculator.ts';
import { calculatorCommand } from './calculator-command.ts';
import type { CommandSpec } from './command.ts';
import type { ListedCommand } from './kept-list.ts';

interface Family {
  readonly names: readonly string[];
  readonly load: () => Promise<readonly CommandSpec[]>;
}

const quick = (name: string, load: () => Promise<Calculator>): Family => ({
  names: [name],
  load: async () => [calculatorCommand(await load())],
});

const families: readonly Family[] = [
  quick('hlb', async () => (await import('../calc/calculators/hlb.ts')).hlb),
  quick('hlb-of', async () => (await import('../calc/calculators/hlb-of.ts')).hlbOf),
  quick('emulsifier', async () => (await import('../calc/calculators/emulsifier.ts')).emulsifier),
  quick('dose', async () => (await import('../calc/calculators/dose.ts')).dose),
  quick('acid', async () => (await import('../calc/calculators/acid.ts')).acid),
  quick('drops', async () => (await import('../calc/calculators/drops.ts')).drops),
  quick('ph', async () => (await import('../calc/calculators/ph.ts')).ph),
  quick('adjust', async () => (await import('../calc/calculators/adjust.ts')).adjust),
  quick('titrate', async () => (await import('../calc/calculators/titrate.ts')).titrate),
  quick('brix', async () => (await import('../calc/calculators/brix.ts')).brix),
  quick('water-activity', async () => (await import('../calc/calculators/water-activity.ts')).waterActivity),
  quick('carbonation', async () => (await import('../calc/calculators/carbonation.ts')).carbonation),
  quick('clarity', async () => (await import('../calc/calculators/clarity.ts')).clarity),
  quick('ring', async () => (await import('../calc/calculators/ring.ts')).ring),
  quick('coat', async () => (await import('../calc/calculators/coat.ts')).coat),
  quick('lasts', async () => (await import('../calc/calculators/lasts.ts')).lasts),
  quick('intake', async () => (await import('../calc/calculators/intake.ts')).intake),
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
  { names: ['days'], load: async () => (await import('./days-commands.ts')).daysCommands },
  { names: ['sources'], load: async () => (await import('./sources-commands.ts')).sourcesCommands },
];

/** A command by its name. Those that are not found in a family are looked for among all. */
export async function commandNamed(name: string): Promise<CommandSpec | undefined> {
  const family = families.find(({ names }) => names.includes(name));
  if (!family && !(await listedCommands()).some((one) => one.name === name)) return undefined;
  const specs = family ? await family.load() : await allCommands();
  return specs.find((one) => one.name === name);
}

export const allCommands = async (): Promise<readonly CommandSpec[]> => (await import('./index.ts')).commands;

/** Every command in a line; loads the words of none. */
export const listedCommands = async (): Promise<readonly ListedCommand[]> =>
  (await import('./kept-list.ts')).listed;
