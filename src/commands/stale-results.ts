/** Results in trials that today's calculators, figures and amounts would not give any more. */

import type { Book } from '../calc/book.ts';
import type { TrialPicture } from '../calc/calculator.ts';
import { calculators } from '../calc/calculators/index.ts';
import { notLoaded } from '../calc/intake/loaded-intake.ts';
import type { ResultCard, TrialCard } from '../ledger/cards.ts';
import { type Check, type CheckContext, found } from '../ledger/check.ts';
import { pictureFacts } from '../ledger/picture-facts.ts';
import { textUnder } from '../ledger/reading.ts';
import { resolveTrial } from '../ledger/resolve.ts';
import { valueUnder } from '../ledger/tree.ts';
import { isProblemError, type Problem } from '../problem.ts';
import { markOf } from './reckoned.ts';

export const checkStaleResults: Check = (context) =>
  context.ledger.trials.flatMap((trial) => staleIn(trial, context));

function staleIn(trial: TrialCard, context: CheckContext): readonly Problem[] {
  return staleResults(trial, context).map((result) => {
    const finding = {
      code: 'stale-result',
      severity: 'warning',
      message: `this ${result.calculator} answer is no longer what the trial comes to`,
      hint: `neckring reckon ${trial.number} writes today's beside it`,
    } as const;
    return found(context, trial, finding, valueUnder(result.node, 'of') ?? result);
  });
}

/** The results of a trial that it would not give today. */
export function staleResults(
  trial: TrialCard,
  { sources, book }: Pick<CheckContext, 'sources' | 'book'>,
): readonly ResultCard[] {
  if (trial.results.length === 0 || !trial.isSound) return [];
  const { mixture } = resolveTrial(trial, sources);
  if (!mixture) return [];
  const picture: TrialPicture = { mixture, ...pictureFacts(trial, sources.bench) };
  return latest(trial.results).filter((result) => {
    const marks = marksToday(result, picture, book);
    return marks !== undefined && result.of !== undefined && !marks.includes(result.of);
  });
}

/** The newest result of each calculator, stage and subject; the older ones are history. */
function latest(results: readonly ResultCard[]): readonly ResultCard[] {
  const newest = new Map<string, ResultCard>();
  for (const result of results)
    newest.set(`${result.calculator} ${result.stage ?? ''} ${subjectOf(result)}`, result);
  return [...newest.values()];
}

const subjectOf = (result: ResultCard): string => JSON.stringify(Object.entries(typedOf(result)));

/** What was typed over the trial when it was recorded, by field. */
export function typedOf(result: ResultCard): Readonly<Record<string, readonly string[]>> {
  const typed = valueUnder(result.node, 'typed');
  if (typed?.kind !== 'map') return {};
  return Object.fromEntries(
    typed.entries.map(({ key, value }) => [
      key.text,
      value.kind === 'list'
        ? value.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))
        : [textUnder(typed, key.text) ?? ''],
    ]),
  );
}

/** The marks that the calculator gives today; undefined where the calculator is not known. */
function marksToday(result: ResultCard, picture: TrialPicture, book: Book): readonly string[] | undefined {
  const calculator = calculators.find((one) => one.name === result.calculator);
  if (!calculator) return undefined;
  const typed = typedOf(result);
  try {
    if (Object.keys(typed).length > 0) return [markOf(calculator.answer({ typed, book, picture }))];
    const answered = calculator.answerTrial(picture, book);
    return 'why' in answered ? [] : answered.answers.map(markOf);
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return thrown.problems.some(({ code }) => code === notLoaded) ? undefined : [];
  }
}

/** Loads what the calculators need whose answers stand in these trials, so that they can be told again. */
export async function loadForResults(trials: readonly TrialCard[]): Promise<void> {
  const named = new Set(trials.flatMap(({ results }) => results.map(({ calculator }) => calculator)));
  for (const { name, loads } of calculators) if (named.has(name)) await loads?.();
}
