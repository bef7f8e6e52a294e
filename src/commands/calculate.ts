/** Runs a calculator from the command line: typed inputs, or a trial, or both. */

import { loadArithmetic } from '../calc/arithmetic.ts';
import type { Calculator, FiledAnswer, TrialPicture } from '../calc/calculator.ts';
import { optionName } from '../calc/calculator.ts';
import type { Io } from '../io.ts';
import { answerJson } from '../output/answer-json.ts';
import { answerPage } from '../output/answer-page.ts';
import { fail, isProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { openBook } from './open-book.ts';
import { wordSources } from './worded-sources.ts';

export async function runCalculator(calculator: Calculator, call: Call, io: Io): Promise<Outcome> {
  const { book, sources } = await openBook(io);
  const trial = optionValue(call, 'trial');
  const record = call.flags.has('record');
  if (record && trial === undefined) fail('usage', '--record needs a trial to write into', 'add --trial N');
  const opened = trial === undefined ? undefined : await openTrialPicture(trial, io);
  const typed = { ...(await emulsionOf(call, io)), ...typedInputs(calculator, call) };
  const filed = await withArithmetic(() =>
    calculator.answer({ typed, book, ...(opened ? { picture: opened.picture } : {}) }),
  );
  const answer = wordSources(filed.answer, sources);
  const notes = record && trial !== undefined ? await recordAnswer(filed, trial, io) : [];
  return {
    exitCode: answer.attention ? 1 : 0,
    page: answerPage(answer, calculator.readings, call.flags.has('explain')),
    json: answerJson(answer),
    notes,
  };
}

function typedInputs(calculator: Calculator, call: Call): Readonly<Record<string, readonly string[]>> {
  const typed: Record<string, readonly string[]> = {};
  for (const [key, field] of Object.entries(calculator.fields)) {
    const texts = field.positional ? call.words : call.values[optionName(key)];
    if (texts && texts.length > 0) typed[key] = texts;
  }
  return typed;
}

/** The calculation again with arithmetic at hand, where an amount turns out to be a sum or a product. */
export async function withArithmetic<T>(calculate: () => T): Promise<T> {
  try {
    return calculate();
  } catch (thrown) {
    if (!isProblemError(thrown) || !thrown.problems.some((one) => one.code === 'arithmetic-not-loaded'))
      throw thrown;
    await loadArithmetic();
    return calculate();
  }
}

interface OpenedTrial {
  readonly picture: TrialPicture;
}

async function openTrialPicture(trial: string, io: Io): Promise<OpenedTrial> {
  const { openTrial } = await import('./with-ledger.ts');
  return openTrial(trial, io);
}

async function recordAnswer(filed: FiledAnswer, trial: string, io: Io): Promise<readonly string[]> {
  const { recordAnswers } = await import('./with-ledger.ts');
  return recordAnswers([filed], trial, io);
}

/** `--emulsion-of 14` as the typed strength of that trial's emulsion. */
async function emulsionOf(call: Call, io: Io): Promise<Readonly<Record<string, readonly string[]>>> {
  const trial = optionValue(call, 'emulsion-of');
  if (trial === undefined) return {};
  const { emulsionStrength } = await import('../calc/calculators/dose.ts');
  const { picture } = await openTrialPicture(trial, io);
  const strength = emulsionStrength(picture.mixture);
  if ('why' in strength)
    return fail(
      'not-in-trial',
      `trial ${trial} has no emulsion to take: ${strength.why}`,
      'give --emulsion and --ratio',
    );
  const { emulsion, ratio, carrier } = strength.given;
  return {
    emulsion: [emulsion.written],
    ratio: [`${ratio.left}:${ratio.right}`],
    carrier: [carrier.written],
  };
}
