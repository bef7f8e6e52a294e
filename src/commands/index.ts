/** Every command, in the order in which help lists them; `families.ts` finds one without loading the others. */

import { batchCommands } from './batch-commands.ts';
import type { CommandSpec } from './command.ts';
import { completionCommands } from './completion-commands.ts';
import { daysCommands } from './days-commands.ts';
import { drinkCommands } from './drink-commands.ts';
import { dueCommands } from './due-commands.ts';
import { gitCommands } from './git-commands.ts';
import { ingredientCommand } from './ingredient-command.ts';
import { labelCommands } from './labels-commands.ts';
import { ladderCommands } from './ladder-commands.ts';
import { ledgerCommands } from './ledger-commands.ts';
import { lookingCommands } from './looking-commands.ts';
import { mergeCommands } from './merge-commands.ts';
import { quickEmulsionCommands } from './quick-emulsion-commands.ts';
import { quickIntakeCommands } from './quick-intake-commands.ts';
import { quickKeepingCommands } from './quick-keeping-commands.ts';
import { quickSolutionCommands } from './quick-solution-commands.ts';
import { reportCommands } from './report-commands.ts';
import { scaleCommands } from './scale-commands.ts';
import { schemaCommand } from './schema-command.ts';
import { seriesCommands } from './series-commands.ts';
import { sharingCommands } from './sharing-commands.ts';
import { sourcesCommands } from './sources-commands.ts';
import { tastingCommands } from './tasting-commands.ts';
import { useCommands } from './use-commands.ts';
import { weighingCommands } from './weighing-commands.ts';
import { whyCommands } from './why-commands.ts';

export const commands: readonly CommandSpec[] = [
  ...quickEmulsionCommands,
  ...quickSolutionCommands,
  ...quickKeepingCommands,
  ...quickIntakeCommands,
  ...ledgerCommands,
  schemaCommand,
  ...drinkCommands,
  ...weighingCommands,
  ...lookingCommands,
  ...dueCommands,
  ...whyCommands,
  ...useCommands,
  ...ladderCommands,
  ...seriesCommands,
  ...batchCommands,
  ...scaleCommands,
  ...tastingCommands,
  ...gitCommands,
  ...mergeCommands,
  ...sharingCommands,
  ...reportCommands,
  ...labelCommands,
  ingredientCommand,
  ...daysCommands,
  ...completionCommands,
  ...sourcesCommands,
];
