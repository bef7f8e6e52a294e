/** The quick calculators of emulsions, doses and drops. */

import { acid } from '../calc/calculators/acid.ts';
import { dose } from '../calc/calculators/dose.ts';
import { drops } from '../calc/calculators/drops.ts';
import { emulsifier } from '../calc/calculators/emulsifier.ts';
import { hlb } from '../calc/calculators/hlb.ts';
import { hlbOf } from '../calc/calculators/hlb-of.ts';
import { calculatorCommand } from './calculator-command.ts';

export const quickEmulsionCommands = [hlb, hlbOf, emulsifier, dose, acid, drops].map(calculatorCommand);
