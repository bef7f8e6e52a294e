/** Runs a calculator from the command line: typed inputs, or a trial, or both. */

import { loadArithmetic } from '../calc/arithmetic.ts';
import { type Calculator, optionName } from '../calc/calculator.ts';
import { emulsionStrength } from '../calc/calculators/dose.ts';
import type { Io } from '../io.ts';
import { findRoot } from '../ledger/find-root.ts';
import { answerJson } from '../output/answer-json.ts';
import { answerPage } from '../output/answer-page.ts';
import { fail, isProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { openBook } from './open-book.ts';
import { wordSources } from './worded-sources.ts';

export async function runCalculator(calculator: Calculator, call: Call, io: Io): Promise<Outcome> {
  const { book, sources } = await openBook(io);
  await calculator.loads?.();
  const trial = optionValue(call, 'trial');
  const isRecorded = call.flags.has('record');
  if (isRecorded && trial === undefined)
    fail('usage', '--record needs a trial to write into', 'add --trial N');
  const pictured = trial === undefined ? undefined : await picture(trial, io, wantsMeter(calculator, call));
  if (isRecorded && pictured?.picture.number === undefined)
    fail('usage', `--record writes into a trial, and "${trial}" is a formula`, 'leave --record out');
  const stock = calculator.name === 'drops' ? await stockOf(call, io) : undefined;
  const typed = { ...(await emulsionOf(call, io)), ...typedInputs(calculator, call), ...stock?.typed };
  const inputs = { typed, book, ...(pictured ? { picture: pictured.picture } : {}) };
  const filed = await withArithmetic(() => calculator.answer(inputs));
  const answer = wordSources(filed.answer, sources);
  return {
    exitCode: answer.attention ? 1 : 0,
    page: answerPage(answer, calculator.readings),
    json: answerJson(answer),
    explained: () => ({ ...filed.answer, restsOn: [calculator.name] }),
    problems: [...answer.problems, ...(pictured?.warnings ?? [])],
    notes: [
      ...(stock?.notes ?? []),
      ...(isRecorded && trial !== undefined
        ? await record({ calculator, filed, typed, call, trial, io })
        : []),
    ],
  };
}

function typedInputs(calculator: Calculator, call: Call): Readonly<Record<string, readonly string[]>> {
  const typed: Record<string, readonly string[]> = {};
  for (const [key, field] of Object.entries(calculator.fields)) {
    const flag = call.flags.has(optionName(key)) ? ['yes'] : undefined;
    const texts = field.positional ? call.words : (call.values[optionName(key)] ?? flag);
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

/** What is written into a trial rests on that trial alone. */
const wantsMeter = ({ name }: Calculator, call: Call): boolean =>
  name === 'clarity' && !call.flags.has('record') && !call.flags.has('mie');

async function picture(trial: string, io: Io, withMeter = false) {
  const { openPicture } = await import('./with-picture.ts');
  return openPicture(trial, io, withMeter);
}

/** A stock of the shelf, where no strength is typed and no trial says one. */
async function stockOf(call: Call, io: Io) {
  if (optionValue(call, 'trial') !== undefined && optionValue(call, 'stock') === undefined) return undefined;
  if ((await findRoot(io.workingFolder)) === undefined) return undefined;
  const { stockForDrops } = await import('./with-stocks.ts');
  return stockForDrops(call, io);
}

async function record(
  recording: Parameters<typeof import('./with-picture.ts')['recordAnswers']>[0],
): Promise<readonly string[]> {
  const { recordAnswers } = await import('./with-picture.ts');
  return recordAnswers(recording);
}

/** `--emulsion-of 14` as the typed strength of that trial's emulsion. */
async function emulsionOf(call: Call, io: Io): Promise<Readonly<Record<string, readonly string[]>>> {
  const trial = optionValue(call, 'emulsion-of');
  if (trial === undefined) return {};
  const strength = emulsionStrength((await picture(trial, io)).picture.mixture);
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
