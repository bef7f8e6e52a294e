/** The work of `intake` with its published figures, loaded only where somebody asks for it. */

import { fail } from '../../problem.ts';
import type { Worked } from '../calculator.ts';
import type { NamedItem } from '../item-fields.ts';
import type { Quantity } from '../quantity.ts';
import type { Working } from '../working.ts';

export interface IntakeGiven {
  readonly items: readonly NamedItem[];
  readonly serving: Quantity | undefined;
  readonly servings: number | undefined;
  readonly body: Quantity;
}

export type IntakeWork = (given: IntakeGiven, working: Working) => Worked;

let loaded: IntakeWork | undefined;

export async function loadIntake(): Promise<void> {
  loaded ??= (await import('./work-intake.ts')).workIntake;
}

export const notLoaded = 'intakes-not-loaded';

export const loadedIntake = (): IntakeWork =>
  loaded ?? fail(notLoaded, 'the published intakes are not loaded', 'run the command again');
