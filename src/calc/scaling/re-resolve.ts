/** Stages of masses as a mixture again, after a change to them. */

import type { Mixture } from '../mixture/picture.ts';
import { resolveMixture } from '../mixture/resolve-mixture.ts';
import type { BatchStage } from './batch-stages.ts';

/** Every amount is a mass above or at zero, so there is nothing that could be refused. */
export function mixtureOfStages(stages: readonly BatchStage[], temperatureKelvin: number): Mixture {
  const { mixture, faults } = resolveMixture({ stages, temperatureKelvin });
  if (!mixture) throw new Error(`stages of masses did not resolve: ${faults[0]?.message}`);
  return mixture;
}
