/** The quick calculators of servings. */

import { intake } from '../calc/calculators/intake.ts';
import { calculatorCommand } from './calculator-command.ts';

export const quickIntakeCommands = [intake].map(calculatorCommand);
