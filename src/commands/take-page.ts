/** What was taken in, as a page and as JSON. */

import type { TakePlan } from '../ledger/give/take-plan.ts';
import type { TakenRow } from '../ledger/give/take-words.ts';
import { envelope } from '../output/answer-json.ts';
import type { Problem } from '../problem.ts';
import type { Call, Outcome } from './command.ts';

export function takeOutcome(call: Call, { rows, changes }: TakePlan, warnings: readonly Problem[]): Outcome {
  const isDry = call.flags.has('dry-run');
  const [file = ''] = call.words;
  const isNothing = changes.length === 0;
  return {
    exitCode: 0,
    page: [
      {
        kind: 'table',
        columns: [
          { head: 'given', align: 'left' },
          { head: 'here', align: 'left' },
          { head: '', align: 'left' },
        ],
        rows: rows.map((row) => [wordsOf(row, row.given), row.here === '' ? '-' : row.here, row.how]),
      },
    ],
    json: envelope({
      schema: 'take@1',
      given: { file },
      found: {
        taken: rows.map(({ kind, given, here, how, file: written }) => ({
          kind,
          given,
          here,
          how,
          ...(written === undefined ? {} : { file: written }),
        })),
        files: changes.map(({ path }) => path),
        isWritten: !isDry && !isNothing,
      },
      problems: warnings,
    }),
    problems: warnings,
    notes: isNothing
      ? ['nothing to write']
      : changes.map(({ path }) => `${isDry ? 'would write' : 'wrote'} ${path}`),
  };
}

const wordsOf = ({ kind }: TakenRow, name: string): string =>
  kind === 'ingredient' ? name : `${kind} ${name}`;
