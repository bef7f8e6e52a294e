import type { ComparedDocument, DocumentDifference } from './document.ts';
import { entryChanges, factChanges } from './facts.ts';
import { stageChanges } from './stages.ts';

/**
 * What is different between two records, by stage, line, step, sample, observation and result.
 *
 * Input     both, each line with what it is and what it comes to
 * Output    what was added, taken out, changed and moved; nothing where another name or unit says the same
 * Example   40 g of sucrose and 0.04 kg of sucrose -> no change
 */
export function documentDifference(before: ComparedDocument, after: ComparedDocument): DocumentDifference {
  return {
    facts: factChanges(before.facts, after.facts),
    aims: factChanges(before.aims, after.aims),
    stages: stageChanges(before.stages, after.stages),
    samples: entryChanges(before.samples, after.samples),
    observations: entryChanges(before.observations, after.observations),
    results: entryChanges(before.results, after.results),
  };
}

/** Whether the stages say the same, other names of one record apart. */
export const areStagesSame = ({ stages }: DocumentDifference): boolean =>
  stages.every(({ change }) => change === 'same');
