import {
  type AcidName,
  acidSystems,
  type DissociationStep,
} from '../../reference/solution/acid-constants.ts';
import type { Working } from '../working.ts';

/** Notes the constants of every acid in a solution, step by step. */
export function citeAcids(acids: readonly { readonly acid: AcidName }[], working: Working): void {
  for (const { acid } of acids) {
    const steps: readonly DissociationStep[] = acidSystems[acid];
    for (const { source, fromMemory } of steps) working.cite(`constants of ${acid} acid`, source, fromMemory);
  }
}
