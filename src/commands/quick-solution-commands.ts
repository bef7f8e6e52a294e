/** The quick calculators of acid, sugar, water and gas. */

import { adjust } from '../calc/calculators/adjust.ts';
import { brix } from '../calc/calculators/brix.ts';
import { carbonation } from '../calc/calculators/carbonation.ts';
import { ph } from '../calc/calculators/ph.ts';
import { titrate } from '../calc/calculators/titrate.ts';
import { waterActivity } from '../calc/calculators/water-activity.ts';
import { calculatorCommand } from './calculator-command.ts';

export const quickSolutionCommands = [ph, adjust, titrate, brix, waterActivity, carbonation].map(
  calculatorCommand,
);
