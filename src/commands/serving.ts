/** `triangle --plan 12`: the sheet on the screen or in a file, the key in a file of its own. */

import { resolve } from 'node:path';
import { parseNumber } from '../calc/number.ts';
import { wholeNumber } from '../calc/tasting/choice-inputs.ts';
import { mostServings, orders, type ServingKind, servingPlan } from '../calc/tasting/serving-plan.ts';
import type { Io } from '../io.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { envelope } from '../output/answer-json.ts';
import { fail } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { quoted } from './due-words.ts';
import { keyText, type Plan, sheetLines } from './serving-words.ts';
import { writeAllOut } from './write-out.ts';

export async function runServing(kind: ServingKind, call: Call, io: Io): Promise<Outcome> {
  const servings = servingsOf(kind, call);
  refuseFigures(call);
  const time = writtenTime(io.now(), undefined, true).slice(0, 19);
  const at = time.slice(0, 16).replace('T', ' ');
  const key = optionValue(call, 'key') ?? `${kind}-key-${time.replace(/[-:]/g, '').replace('T', '-')}.txt`;
  const sheet = optionValue(call, 'sheet');
  if (sheet !== undefined && resolve(io.workingFolder, sheet) === resolve(io.workingFolder, key))
    fail('same-file', '--sheet and --key are the same file', 'the key must stand apart from the sheet');
  // A key that is there may belong to glasses that stand on the table: it is never written over unasked.
  const manner = { io, keepsOurs: true, replace: call.flags.has('replace') };
  const plan: Plan = {
    kind,
    at,
    drinks: drinksOf(call),
    ...questionOf(kind, call),
    key,
    rows: servingPlan({ kind, servings, random: io.random }),
  };
  const lines = sheetLines(plan);
  const sheetFile = sheet === undefined ? [] : [{ typed: sheet, text: `${lines.join('\n')}\n` }];
  const [wroteKey = '', ...wroteSheet] = await writeAllOut(
    [{ typed: key, text: keyText(plan) }, ...sheetFile].map((file) => ({ ...file, ...manner })),
  );
  return {
    exitCode: 0,
    page: sheet === undefined ? [{ kind: 'lines', lines }] : [],
    json: envelope({
      schema: `${kind}@1`,
      given: { plan: { value: servings, unit: '' } },
      found: {
        servings: plan.rows.map((row, index) => ({ serving: index + 1, codes: row.map(({ code }) => code) })),
        key,
        sheet: sheet ?? '',
      },
    }),
    notes: [wroteKey, ...evenNote(kind, servings), ...wroteSheet],
  };
}

function servingsOf(kind: ServingKind, call: Call): number {
  const [typed = '', second] = call.values['plan'] ?? [];
  if (second !== undefined)
    return fail('given-twice', `--plan ${typed} and --plan ${second} are both given`, 'give it once');
  const read = parseNumber(typed);
  if (!read.ok) return fail(read.fault.code, `--plan: ${read.fault.message}`, read.fault.hint);
  const servings = wholeNumber('--plan', read.value, 1);
  const most = mostServings(kind);
  if (servings > most)
    return fail(
      'too-many',
      `there are three-digit codes for ${most} tastings, not for ${servings}`,
      `plan ${most} at most, and another sheet for the rest`,
    );
  return servings;
}

/** A plan comes before the tasting: what was found is no part of it. */
function refuseFigures(call: Call): void {
  for (const option of ['right', 'of', 'risk', 'find', 'power'])
    if (optionValue(call, option) !== undefined)
      fail(
        'usage',
        `--${option} does not go with --plan`,
        'plan first; count afterwards with --right and --of',
      );
  if (call.flags.has('record'))
    fail('usage', '--record does not go with --plan', 'record the answer when it is there');
}

const named = (typed: string): string => (/^\d{1,9}$/.test(typed) ? `trial ${typed}` : typed);

function drinksOf(call: Call): Plan['drinks'] {
  const [trial, against] = [optionValue(call, 'trial')?.trim(), optionValue(call, 'against')?.trim()];
  if (trial !== undefined && trial === against)
    return fail(
      'same-drink',
      `${named(trial)} is to be tasted against itself`,
      'name another with --against',
    );
  return { A: named(trial || 'the one'), B: named(against || 'the other') };
}

function questionOf(kind: ServingKind, call: Call): Pick<Plan, 'question' | 'asked'> {
  if (kind === 'triangle')
    return { question: 'Two glasses hold the same, one is the odd one. Which?', asked: '' };
  const more = optionValue(call, 'more')?.trim();
  if (more !== undefined && call.flags.has('prefer'))
    return fail('given-twice', 'both --more and --prefer are given', 'a tasting asks one question');
  const sides = call.flags.has('two-sided') ? ' --two-sided' : '';
  if (more) return { question: `Which of the two is more ${more}?`, asked: `--more ${quoted(more)}${sides}` };
  if (call.flags.has('prefer')) return { question: 'Which of the two do you prefer?', asked: '--prefer' };
  return fail('missing', 'what is to be asked is not given', 'add --more soapy, or --prefer');
}

/** Every order equally often takes a whole number of rounds. */
function evenNote(kind: ServingKind, servings: number): readonly string[] {
  const round = orders[kind].length;
  if (servings % round === 0) return [];
  const even = Math.ceil(servings / round) * round;
  return [`${servings} is no whole round of the ${round} orders: with ${even} each would come equally often`];
}
