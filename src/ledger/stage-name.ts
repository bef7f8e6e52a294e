/** What the name of an item points at. */

import { normaliseName } from '../reference/name.ts';

export interface OtherStage {
  readonly stage: string;
  readonly trial: number;
}

/** `emulsion of 14`: a stage of another trial; undefined for any other name. */
export function otherStageOf(name: string): OtherStage | undefined {
  const [, stage, trial] = /^(.*\S)\s+of\s+(?:trial\s+)?(\d{1,9})$/iu.exec(name) ?? [];
  return stage === undefined || trial === undefined ? undefined : { stage, trial: Number(trial) };
}

/** Whether two names are the same, as names are compared. */
export const isSameName = (one: string, other: string): boolean =>
  one === other || normaliseName(one) === normaliseName(other);
