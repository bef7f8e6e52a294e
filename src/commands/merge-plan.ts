/** What a merge would do with a file, and what is left to settle, in words. */

import type { SideChange } from '../ledger/merge/changes.ts';
import type { MergedText, NotMerged } from '../ledger/merge/merge-texts.ts';
import type { Conflict } from '../ledger/merge/pieces.ts';
import { envelope } from '../output/answer-json.ts';
import type { Block } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Outcome } from './command.ts';

/** `emulsion, polysorbate 80`: without the keys that only hold the others. */
function pathWords(path: readonly string[]): string {
  const named = path.filter(
    (step, at) => !(path[0] === 'stages' && path.length > 1 && (at === 0 || (at === 2 && step === 'items'))),
  );
  const words = named
    .filter((step, at) => step !== named[at - 1])
    .map((step) => (step === '#' ? 'a comment' : step));
  return words.length === 0 ? 'the whole file' : words.join(', ');
}

const conflictWords = ({ path, why }: Conflict): string => `${pathWords(path)}: ${why}`;

function changeWords({ path, what, before, after }: SideChange): string {
  const name = pathWords(path);
  if (what === 'added') return `+ ${name}${after ? `: ${after}` : ''}`;
  if (what === 'removed') return `- ${name}${before ? `: ${before}` : ''}`;
  if (what === 'moved') return `~ ${name}: another order`;
  return before !== undefined && after !== undefined ? `~ ${name}: ${before} -> ${after}` : `~ ${name}`;
}

const togetherWords = (merged: MergedText): readonly string[] =>
  merged.together.map(
    ({ path, ours, theirs }) =>
      `${pathWords(path)}: both added in one place; "${ours.key}" (ours) stands before "${theirs.key}" (theirs)`,
  );

/** For stderr, beside what git says. */
export function settleNotes(path: string, merged: MergedText): readonly string[] {
  const { conflicts, broken } = merged;
  const count = conflicts.length === 1 ? 'one place' : `${conflicts.length} places`;
  return [
    ...togetherWords(merged).map((words) => `${path}: ${words}; look at the order of addition`),
    ...(conflicts.length > 0 ? [`${path}: ${count} to settle by hand`] : []),
    ...conflicts.map((conflict) => `  ${conflictWords(conflict)}`),
    ...(conflicts.length > 0 ? broken.map(({ message }) => `  both together: ${message}`) : []),
  ];
}

const stateWords = {
  clean: 'It merges without anything to settle.',
  conflict: 'It stops for a person to settle what is below.',
} as const;

/** The plan of a merge; 1 where something is left to settle. */
export function mergePlan(path: string, merged: MergedText | NotMerged): Outcome {
  if (merged.state === 'not merged') return linePlan(path, merged);
  const side = (heading: string, changes: readonly SideChange[]): readonly Block[] => [
    { kind: 'text', text: heading, tone: 'strong' },
    {
      kind: 'lines',
      lines: changes.length === 0 ? ['  nothing'] : changes.map((one) => `  ${visible(changeWords(one))}`),
    },
  ];
  const told = togetherWords(merged);
  return {
    exitCode: merged.state === 'clean' ? 0 : 1,
    page: [
      { kind: 'heading', text: visible(path) },
      { kind: 'text', text: stateWords[merged.state], tone: merged.state === 'clean' ? 'good' : 'warn' },
      ...side('From ours', merged.changes.ours),
      ...side('From theirs', merged.changes.theirs),
      ...(told.length > 0
        ? [{ kind: 'notes', mark: '!', notes: told.map(visible), tone: 'warn' } as const]
        : []),
      ...(merged.conflicts.length > 0
        ? ([
            { kind: 'text', text: 'To settle', tone: 'strong' },
            { kind: 'lines', lines: merged.conflicts.map((one) => `  ${visible(conflictWords(one))}`) },
          ] as const)
        : []),
      ...(merged.broken.length > 0
        ? [
            {
              kind: 'notes',
              mark: '!',
              notes: merged.broken.map(({ message }) => visible(message)),
              tone: 'warn',
            } as const,
          ]
        : []),
    ],
    json: planJson(path, merged),
  };
}

function planJson(path: string, merged: MergedText): Outcome['json'] {
  const changes = (side: 'ours' | 'theirs') => merged.changes[side].map((change) => ({ side, ...change }));
  return envelope({
    schema: 'merge-driver@1',
    given: { path },
    found: {
      isClean: merged.state === 'clean',
      changes: [...changes('ours'), ...changes('theirs')],
      together: merged.together.map(({ path: at, ours, theirs }) => ({
        path: at,
        ours: ours.key,
        theirs: theirs.key,
      })),
      conflicts: merged.conflicts.map(({ path: at, why, ours, theirs }) => ({ path: at, why, ours, theirs })),
      broken: merged.broken.map(({ code, message, path: at }) => ({ code, message, path: at })),
    },
  });
}

export const versionWords = {
  base: 'the common version',
  ours: 'our version',
  theirs: 'their version',
} as const;

function linePlan(path: string, { version }: NotMerged): Outcome {
  const text = `${versionWords[version]} can't be read as a file of the ledger, so git would merge it line by line`;
  return {
    exitCode: 1,
    page: [
      { kind: 'heading', text: visible(path) },
      { kind: 'text', text: `${text}.`, tone: 'warn' },
    ],
    json: envelope({
      schema: 'merge-driver@1',
      given: { path },
      found: { isClean: false, unreadable: version },
    }),
  };
}
