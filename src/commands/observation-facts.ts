/** What is observed, from the texts of its options to facts as they are written. */

import { parseNumber } from '../calc/number.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { Dimension } from '../calc/quantity.ts';
import { impossibleReading } from '../calc/reading-range.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Fault, Problem } from '../problem.ts';
import { readLooks } from './look-words.ts';
import type { ObservedFact } from './observation-options.ts';

/** The facts of one option; what is wrong with them goes to the problems. */
export function factOf(fact: ObservedFact, texts: readonly string[], problems: Problem[]): readonly Fact[] {
  const key = fact.name.replace(/-/g, ' ');
  if (fact.name === 'look') return lookFact(texts, problems);
  if (fact.name === 'taste') return tasteFact(texts, problems);
  const [text = '', second] = texts;
  if (second !== undefined) {
    problems.push(
      optionProblem(fact.name, {
        code: 'given-twice',
        message: `"${text}" and "${second}" are both given`,
        hint: 'give it once',
      }),
    );
    return [];
  }
  const fault = text.trim() === '' ? emptyFault : faultOf(text.trim(), fact);
  if (fault) problems.push(optionProblem(fact.name, fault));
  return [[key, text.trim()]];
}

const emptyFault: Fault = {
  code: 'empty',
  message: 'nothing stands there',
  hint: 'say something, or leave the option out',
};

function faultOf(text: string, { name, accepts, unit, words }: ObservedFact): Fault | undefined {
  if (words && !words.includes(text))
    return {
      code: 'unknown-word',
      message: `"${text}" is not understood`,
      hint: `say ${words.join(' or ')}`,
    };
  if (!accepts) return undefined;
  const kinds = accepts.flatMap((one): readonly Dimension[] => (one === 'number' ? [] : [one]));
  const read = kinds.length === 0 ? parseNumber(text) : parseQuantity(text, kinds);
  if (read.ok) return typeof read.value === 'number' ? impossibleReading(name, read.value) : undefined;
  return read.fault.code === 'no-unit' && unit
    ? { ...read.fault, hint: `write ${text} ${unit}` }
    : read.fault;
}

/** `--look clear --look ring` and `--look "clear, ring"` are one fact. */
function lookFact(texts: readonly string[], problems: Problem[]): readonly Fact[] {
  const { looks, faults } = readLooks(texts);
  for (const fault of faults)
    problems.push(optionProblem('look', fault.code === 'empty' ? emptyFault : fault));
  return [['look', looks.join(', ')]];
}

function tasteFact(texts: readonly string[], problems: Problem[]): readonly Fact[] {
  const scores = texts
    .flatMap((text) => text.split(','))
    .flatMap((text): readonly Fact[] => {
      const [, word = '', score = ''] = /^\s*(.+?)\s*[=:]\s*([0-5](?:\.\d+)?)\s*$/.exec(text) ?? [];
      if (word !== '' && Number(score) <= 5) return [[word, score]];
      problems.push(
        optionProblem('taste', {
          code: 'not-a-score',
          message: `"${text.trim()}" is not a word with a score`,
          hint: 'write soapy=2, from 0 to 5',
        }),
      );
      return [];
    });
  for (const [at, [word]] of scores.entries()) {
    if (scores.findIndex(([other]) => isSameName(other, word)) === at) continue;
    problems.push(
      optionProblem('taste', {
        code: 'given-twice',
        message: `"${word}" has more than one score`,
        hint: 'give it one; two tastings are two observations',
      }),
    );
  }
  return [['taste', scores]];
}

export const optionProblem = (option: string, { code, message, hint }: Fault): Problem => ({
  code,
  severity: 'error',
  message: `--${option}: ${message}`,
  hint,
});
