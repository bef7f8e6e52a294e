import { parseQuantity } from '../calc/parse-quantity.ts';
import { fail, ProblemError } from '../problem.ts';
import { type Call, optionValue } from './command.ts';

const usual = { beakers: 4, within: 0.1 } as const;
const mostBeakers = 12;

export function countTyped(call: Call): number {
  const typed = optionValue(call, 'beakers')?.trim();
  if (typed === undefined) return usual.beakers;
  const count = Number(typed);
  if (!/^\d+$/u.test(typed) || count < 1 || count > mostBeakers)
    fail('usage', `--beakers ${typed} is no number of beakers`, `write 1 to ${mostBeakers}`);
  return count;
}

/** As a fraction; `10 %` stands for 0.1. */
export function withinTyped(call: Call): number {
  const typed = optionValue(call, 'within');
  if (typed === undefined) return usual.within;
  const read = parseQuantity(typed, ['share']);
  if (!read.ok) {
    const { code, message } = read.fault;
    throw new ProblemError([
      {
        code,
        severity: 'error',
        message: `--within: ${message}`,
        hint: 'write it in per cent, such as 10 %',
      },
    ]);
  }
  const { inner } = read.value;
  if (!(inner >= 0.005 && inner <= 1))
    fail('usage', `--within ${typed.trim()} can't be aimed at`, 'write 0.5 % to 100 %');
  return inner;
}
