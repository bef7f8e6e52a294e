/** Every command in a line, as help lists them. The build puts the list itself in the place of this module. */

import type { CommandSpec } from './command.ts';
import { commands } from './index.ts';

export type ListedCommand = Pick<CommandSpec, 'name' | 'group' | 'summary'>;

export const listed: readonly ListedCommand[] = commands.map(({ name, group, summary }) => ({
  name,
  group,
  summary,
}));
