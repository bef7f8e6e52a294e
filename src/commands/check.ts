import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { Io } from '../io.ts';
import { checkSchemas } from '../ledger/check-schemas.ts';
import { checkUsedStages } from '../ledger/check-used-stages.ts';
import { checkLedger, limitPerFile } from '../ledger/checks.ts';
import { readLedger } from '../ledger/folder.ts';
import { envelope, problemJson } from '../output/answer-json.ts';
import type { Block } from '../output/view.ts';
import { fail, type Problem } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { readPort, requireRoot } from './open-ledger.ts';
import { checkStaleResults, loadForResults, staleResults } from './stale-results.ts';

export async function runCheck(call: Call, io: Io): Promise<Outcome> {
  const root = await requireRoot(io);
  const { builtIn } = await import('../reference/built-in.ts');
  const ledger = await readLedger(root, readPort(io));
  await loadForResults(ledger.trials);
  const all = checkLedger(ledger, builtIn, [
    checkStaleResults,
    checkUsedStages((trial, sources) => staleResults(trial, { sources, book: sources.book })),
    checkSchemas(readPort(io)),
  ]);
  const asked = call.words.map((word) => insideLedger(word, root, io, [...ledger.documents.keys()]));
  const problems =
    asked.length === 0
      ? all
      : all.filter((one) => asked.some((path) => isUnder(one.place?.file ?? '', path)));
  const files = [...ledger.documents.keys()].filter(
    (file) => asked.length === 0 || asked.some((path) => isUnder(file, path)),
  );
  const errors = problems.filter((one) => one.severity === 'error').length;
  return {
    exitCode: errors > 0 ? 1 : 0,
    page: [
      ...problemBlocks(problems),
      { kind: 'text', text: countText(files.length, errors, problems.length - errors) },
    ],
    json: {
      ...envelope({
        schema: 'check@1',
        given: { paths: call.words },
        found: {
          files: { value: files.length, unit: '' },
          errors: { value: errors, unit: '' },
          warnings: { value: problems.length - errors, unit: '' },
        },
      }),
      problems: problems.map(problemJson),
    },
  };
}

const isUnder = (file: string, path: string): boolean =>
  path === '' || file === path || file.startsWith(`${path}/`);

/** A path as the ledger names its files; refused where nothing of the ledger is there. */
function insideLedger(typed: string, root: string, io: Io, files: readonly string[]): string {
  const path = relative(root, resolve(io.workingFolder, typed)).split(sep).join('/');
  if (path.startsWith('..') || isAbsolute(path))
    return fail(
      'outside',
      `${typed} is outside the ledger in ${root}`,
      'name files or folders of this ledger',
    );
  if (files.some((file) => isUnder(file, path))) return path;
  return fail(
    'no-file',
    `${typed} is no file of the ledger`,
    'only *.yaml in trials, series, formulas and batches count, with bench.yaml and ingredients.yaml',
  );
}

function problemBlocks(problems: readonly Problem[]): readonly Block[] {
  const { shown, hidden } = limitPerFile(problems);
  return [
    ...(shown.length > 0 ? [{ kind: 'problems', problems: shown } as const] : []),
    ...(hidden.length > 0
      ? [{ kind: 'lines', lines: hidden.map(({ file, count }) => `${file}: and ${count} more`) } as const]
      : []),
  ];
}

function countText(files: number, errors: number, warnings: number): string {
  const count = (number: number, word: string): string =>
    `${number === 0 ? 'no' : number} ${word}${number === 1 ? '' : 's'}`;
  return `${count(files, 'file')}: ${count(errors, 'error')}, ${count(warnings, 'warning')}`;
}
