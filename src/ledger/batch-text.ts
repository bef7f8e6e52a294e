/** The text of a new batch file. */

import { entryLines, type Fact, factLines } from './fact-text.ts';
import { keyText } from './yaml-text.ts';

export interface BatchItemText {
  readonly name: string;
  readonly amount: string;
}

export interface BatchStageText {
  readonly name: string;
  readonly items: readonly BatchItemText[];
}

export interface BatchSampleText {
  readonly name: string;
  readonly facts: readonly Fact[];
  /** When to look, where it is not the bench's own schedule. */
  readonly looks: readonly string[];
}

export interface BatchText {
  readonly name: string;
  /** formula, revision, scaled to, made … */
  readonly facts: readonly Fact[];
  readonly stages: readonly BatchStageText[];
  readonly samples: readonly BatchSampleText[];
  /** What was read of the first sample when it was made; empty where nothing was. */
  readonly observation: readonly Fact[];
}

/** Looks at bottles that are kept back. Common practice, no source. */
export const retainedLooks = ['30 d', '90 d', '180 d', '365 d'] as const;

export function batchText({ name, facts, stages, samples, observation }: BatchText): string {
  const lines = [
    ...factLines([['batch', name], ...facts], 0),
    'stages:',
    ...stages.flatMap((stage) => [
      `  ${keyText(stage.name)}:`,
      ...stage.items.flatMap((item) => entryLines([[item.name, item.amount]], 4)),
    ]),
    'samples:',
    ...samples.flatMap(sampleLines),
    ...(observation.length > 0 ? ['observations:', ...entryLines(observation, 2)] : []),
  ];
  return `${lines.join('\n')}\n`;
}

function sampleLines({ name, facts, looks }: BatchSampleText): readonly string[] {
  return [
    `  ${keyText(name)}:`,
    ...factLines(facts, 4),
    ...(looks.length > 0 ? ['    looks:', ...looks.map((look) => `      - ${look}`)] : []),
  ];
}
