/** Every command, in the order in which help lists them. */

import { calculators } from '../calc/calculators/index.ts';
import { batchCommands } from './batch-commands.ts';
import { calculatorCommand } from './calculator-command.ts';
import type { CommandSpec } from './command.ts';
import { drinkCommands } from './drink-commands.ts';
import { dueCommands } from './due-commands.ts';
import { gitCommands } from './git-commands.ts';
import { ingredientCommand } from './ingredient-command.ts';
import { ladderCommands } from './ladder-commands.ts';
import { ledgerCommands } from './ledger-commands.ts';
import { lookingCommands } from './looking-commands.ts';
import { scaleCommands } from './scale-commands.ts';
import { seriesCommands } from './series-commands.ts';
import { tastingCommands } from './tasting-commands.ts';
import { useCommands } from './use-commands.ts';
import { weighingCommands } from './weighing-commands.ts';

export const commands: readonly CommandSpec[] = [
  ...calculators.map(calculatorCommand),
  ...ledgerCommands,
  ...drinkCommands,
  ...weighingCommands,
  ...lookingCommands,
  ...dueCommands,
  ...useCommands,
  ...ladderCommands,
  ...seriesCommands,
  ...batchCommands,
  ...scaleCommands,
  ...tastingCommands,
  ...gitCommands,
  ingredientCommand,
];
