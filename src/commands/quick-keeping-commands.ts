/** The quick calculators of what stays clear and what lasts. */

import { clarity } from '../calc/calculators/clarity.ts';
import { coat } from '../calc/calculators/coat.ts';
import { lasts } from '../calc/calculators/lasts.ts';
import { ring } from '../calc/calculators/ring.ts';
import { calculatorCommand } from './calculator-command.ts';

export const quickKeepingCommands = [clarity, ring, coat, lasts].map(calculatorCommand);
