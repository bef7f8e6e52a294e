/** Cautions with the stretch of the file that they are about, and as warnings of `check`. */

import type { Caution } from '../calc/answer.ts';
import { type PlacedCaution, plainCaution } from '../calc/slip-guard/placed-caution.ts';
import type { Problem } from '../problem.ts';
import { sources } from '../reference/sources.ts';
import type { FileCard, StageCard } from './cards.ts';
import { type CheckContext, found } from './check.ts';
import type { Span } from './tree.ts';

export interface Advice {
  readonly caution: PlacedCaution;
  readonly span: Span;
}

/** A caution at its step, at the amount of its item, or at the name of its stage. */
export function adviceAt(stages: readonly StageCard[], caution: PlacedCaution): Advice {
  const { at } = caution;
  const stage = stages.find(({ name }) => name === at?.stage) ?? stages[0];
  const step = at?.step === undefined ? undefined : stage?.process[at.step]?.node;
  const item = at?.item === undefined ? undefined : stage?.items[at.item]?.amountSpan;
  return { caution, span: step ?? item ?? stage?.nameSpan ?? { start: 0, end: 0 } };
}

/** The source in words: a key of the bibliography, or words already. */
function sourceText(source: string): string {
  const [key = '', ...place] = source.split('#');
  return [sources[key]?.text ?? key, ...place].join(', ');
}

/** As a warning: what is seen; what to do or why, with the source. */
export function adviceProblem(context: CheckContext, card: FileCard, { caution, span }: Advice): Problem {
  const { code, text, short, hint, source } = caution;
  const finding = {
    code,
    severity: 'warning',
    message: short ?? text,
    hint: `${hint} [${sourceText(source)}]`,
  } as const;
  return found(context, card, finding, span);
}

/** For an answer. */
export const adviceCaution = ({ caution }: Advice): Caution => plainCaution(caution);
