/** The answers of every calculator for one trial, with the marks that file them. */

import type { Book } from '../calc/book.ts';
import type { Calculator, FiledAnswer, TrialPicture } from '../calc/calculator.ts';
import { calculators } from '../calc/calculators/index.ts';
import { answerMark } from '../ledger/answer-mark.ts';
import { otherStageOf } from '../ledger/stage-name.ts';
import { isProblemError } from '../problem.ts';

export interface Reckoned {
  readonly calculator: Calculator;
  readonly filed: FiledAnswer;
}

export interface NotApplied {
  readonly calculator: Calculator;
  readonly why: string;
}

export interface Reckoning {
  readonly answers: readonly Reckoned[];
  readonly notApplied: readonly NotApplied[];
}

export async function reckonTrial(picture: TrialPicture, book: Book): Promise<Reckoning> {
  const answers: Reckoned[] = [];
  const notApplied: NotApplied[] = [];
  for (const calculator of calculators) {
    await calculator.loads?.();
    const result = answersOf(calculator, picture, book);
    if ('why' in result) notApplied.push({ calculator, why: result.why });
    else answers.push(...result.answers.map((filed) => ({ calculator, filed })));
  }
  return { answers, notApplied };
}

/** What a calculator refuses is a reason why it does not apply; a defect goes on. */
function answersOf(
  calculator: Calculator,
  picture: TrialPicture,
  book: Book,
): ReturnType<Calculator['answerTrial']> {
  try {
    return calculator.answerTrial(picture, book);
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return { why: thrown.problems.map((one) => one.message).join('; ') };
  }
}

/** The number of another trial is no part of it: the same stage under a new number gives the same answer. */
export const markOf = ({ basis, stage = '' }: FiledAnswer): string =>
  answerMark([...basis, `stage: ${otherStageOf(stage)?.stage ?? stage}`]);
