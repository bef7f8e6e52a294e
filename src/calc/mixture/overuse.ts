import { trimmedNumber } from '../number-text.ts';
import type { MixtureFault, ResolvedStage } from './picture.ts';

/** Beyond this, relative to what was made, a use is more than rounding. */
const ROUNDING = 1e-9;

/** Warnings where later stages take more of a stage than was made, at the item that goes beyond it. */
export function overuseWarnings(stages: readonly ResolvedStage[]): readonly MixtureFault[] {
  const made = new Map(stages.map((stage) => [stage.name, stage.massGrams]));
  const used = new Map<string, number>();
  const warnings: MixtureFault[] = [];
  for (const stage of stages) {
    for (const [index, { source, massGrams }] of stage.items.entries()) {
      if (source.kind !== 'stage') continue;
      const before = used.get(source.stage) ?? 0;
      const whole = made.get(source.stage) ?? 0;
      used.set(source.stage, before + massGrams);
      const limit = whole * (1 + ROUNDING);
      if (before > limit || before + massGrams <= limit) continue;
      warnings.push({
        code: 'more-than-made',
        severity: 'warning',
        message: `${stage.name} takes ${trimmedNumber(before + massGrams, 6)} g of ${source.stage}, and ${trimmedNumber(whole, 6)} g of it was made`,
        hint: `make more ${source.stage}, or use less`,
        stage: stage.name,
        item: index,
      });
    }
  }
  return warnings;
}
