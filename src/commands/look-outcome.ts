/** What was written of a round, as a page and as JSON. */

import { dayOf } from '../ledger/look-strip.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { lookQuestions } from './look-question.ts';
import type { WrittenLook } from './look-write.ts';

interface Shown {
  readonly call: Call;
  readonly written: readonly WrittenLook[];
  readonly warnings: readonly Problem[];
}

export function roundOutcome({ call, written, warnings }: Shown): Outcome {
  const isDry = call.flags.has('dry-run');
  const problems = [...warnings, ...lookQuestions(written, call.words, isDry)];
  const diff = isDry ? written.flatMap((one) => [one.file, ...one.diff.map((line) => `  ${line}`)]) : [];
  return {
    exitCode: 0,
    page: [...roundTable(written), ...(diff.length > 0 ? [{ kind: 'lines', lines: diff } as const] : [])],
    json: envelope({
      schema: `${call.command}@1`,
      given: { words: call.words },
      found: { looks: written.map(lookJson) },
      problems,
    }),
    problems,
    notes: written.map(({ file, line, state }) =>
      state === 'unchanged'
        ? `${file}:${line} says so already; nothing written`
        : `${isDry ? 'would write' : 'wrote'} ${file}:${line}`,
    ),
  };
}

export function roundTable(written: readonly WrittenLook[]): Page {
  if (written.length === 0) return [];
  return [
    {
      kind: 'table',
      columns: [
        { head: 'trial', align: 'right' },
        { head: 'sample', align: 'left' },
        { head: 'day', align: 'right' },
        { head: 'look', align: 'left' },
      ],
      rows: written.map((one) => [
        String(one.entry.trial.card.number),
        visible(one.entry.sample.name),
        dayIn(one)?.toString() ?? '',
        visible(one.entry.words),
      ]),
    },
  ];
}

function dayIn({ entry }: WrittenLook): number | undefined {
  const { trial, sample, atEpoch } = entry;
  return dayOf(trial.card, sample, atEpoch);
}

function lookJson(one: WrittenLook): object {
  const { trial, sample, facts } = one.entry;
  const text = (key: string): string => {
    const value = facts.find(([name]) => name === key)?.[1];
    return typeof value === 'string' ? value : '';
  };
  return {
    trial: trial.card.number,
    sample: sample.name,
    at: text('at'),
    day: { value: dayIn(one) ?? null, unit: 'd' },
    looks: text('look') === '' ? [] : text('look').split(', '),
    note: text('note'),
    ended: text('ended'),
    file: one.file,
    line: one.line,
    state: one.state,
  };
}
