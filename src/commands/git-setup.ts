/** `git setup` and `git remove`: the ledger's drivers in the settings of this clone, said key by key. */

import { join } from 'node:path';
import type { Io } from '../io.ts';
import { gitRefused } from '../ledger/git.ts';
import { driverSettings, type Program, withAttributes, withoutAttributes } from '../ledger/git-drivers.ts';
import { runGit } from '../ledger/git-write.ts';
import type { Change } from '../ledger/land.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import type { Call, Outcome } from './command.ts';
import { landHere, textNow } from './land-text.ts';
import { readPort, requireRoot } from './open-ledger.ts';

const attributesFile = '.gitattributes';

interface Touch {
  /** A file, or a key of git's settings. */
  readonly what: string;
  readonly state:
    | 'set'
    | 'changed'
    | 'added to'
    | 'made'
    | 'taken out'
    | 'taken out of'
    | 'deleted'
    | 'as it was';
}

interface Clone {
  readonly root: string;
  readonly call: Call;
  readonly io: Io;
  readonly isDry: boolean;
}

export async function runGitSetup(call: Call, io: Io): Promise<Outcome> {
  const [action] = call.words;
  const [near] = nearestNames(action ?? '', ['setup', 'remove'], 1);
  if (action !== 'setup' && action !== 'remove')
    return fail(
      'unknown-word',
      `"${action ?? ''}" is nothing that neckring does with git`,
      near === undefined ? 'type git setup or git remove' : `did you mean git ${near}?`,
    );
  const root = await requireRoot(io);
  const settingsFile = await settingsFileOf(root);
  const clone: Clone = { root, call, io, isDry: call.flags.has('dry-run') };
  const isSetup = action === 'setup';
  const touched = isSetup
    ? [...(await setSettings(clone, programOf(io))), await addLines(clone)]
    : [...(await unsetSettings(clone)), await takeLinesOut(clone)];
  return {
    exitCode: 0,
    page: touchedPage({ touched, settingsFile, root, isSetup }),
    json: envelope({
      schema: 'git@1',
      given: { action },
      found: { settings: settingsFile, attributes: join(root, attributesFile), touched },
    }),
    notes: clone.isDry ? ['nothing written (--dry-run)'] : [],
  };
}

function programOf({ program }: Io): Program {
  const [node = '', script = ''] = program ?? [];
  if (node === '' || script === '')
    return fail(
      'no-program',
      "it can't be told where neckring is, so git could not call it",
      'start it from its own file',
    );
  return { node, script };
}

/** The settings of the clone, which its work trees share. */
async function settingsFileOf(root: string): Promise<string> {
  const { code, out, said } = await runGit(root, ['rev-parse', '--show-toplevel', '--git-path', 'config']);
  if (code !== 0) gitRefused(root, said, code === undefined ? { code: 'ENOENT' } : undefined);
  const [, path = ''] = new TextDecoder().decode(out).trimEnd().split('\n');
  return path;
}

async function valuesOf(root: string, key: string): Promise<readonly string[]> {
  const { code, out } = await runGit(root, ['config', '--local', '--null', '--get-all', key]);
  return code === 0 ? new TextDecoder().decode(out).split('\0').slice(0, -1) : [];
}

async function configure(root: string, words: readonly string[]): Promise<void> {
  const { code, said } = await runGit(root, ['config', '--local', ...words]);
  if (code !== 0) gitRefused(root, said);
}

async function setSettings({ root, isDry }: Clone, program: Program): Promise<readonly Touch[]> {
  const touched: Touch[] = [];
  for (const [what, value] of driverSettings(program)) {
    const before = await valuesOf(root, what);
    const isSame = before.length === 1 && before[0] === value;
    if (!isSame && !isDry) await configure(root, ['--replace-all', what, value]);
    touched.push({ what, state: isSame ? 'as it was' : before.length > 0 ? 'changed' : 'set' });
  }
  return touched;
}

async function unsetSettings({ root, isDry }: Clone): Promise<readonly Touch[]> {
  const touched: Touch[] = [];
  for (const [what] of driverSettings({ node: '', script: '' })) {
    const isThere = (await valuesOf(root, what)).length > 0;
    if (isThere && !isDry) await configure(root, ['--unset-all', what]);
    touched.push({ what, state: isThere ? 'taken out' : 'as it was' });
  }
  return touched;
}

async function addLines(clone: Clone): Promise<Touch> {
  const before = attributesNow(clone);
  const after = withAttributes(before ?? '');
  if (after === before) return { what: attributesFile, state: 'as it was' };
  await write(clone, () => {
    const now = attributesNow(clone);
    return { path: attributesFile, before: now, after: withAttributes(now ?? '') };
  });
  return { what: attributesFile, state: before === undefined ? 'made' : 'added to' };
}

async function takeLinesOut(clone: Clone): Promise<Touch> {
  const before = attributesNow(clone);
  const after = withoutAttributes(before ?? '');
  if (before === undefined || after === before) return { what: attributesFile, state: 'as it was' };
  await write(clone, () => {
    const now = attributesNow(clone) ?? '';
    const left = withoutAttributes(now);
    return { path: attributesFile, before: now, after: left === '' ? undefined : left };
  });
  return { what: attributesFile, state: after === '' ? 'deleted' : 'taken out of' };
}

function attributesNow({ root, io }: Clone): string | undefined {
  const isThere = readPort(io).sizeOf(join(root, attributesFile)) !== undefined;
  return isThere ? textNow(root, attributesFile, io) : undefined;
}

async function write({ root, call, io, isDry }: Clone, make: () => Change): Promise<void> {
  if (!isDry) await landHere(root, call, io, async () => [make()]);
}

interface Told {
  readonly touched: readonly Touch[];
  readonly settingsFile: string;
  readonly root: string;
  readonly isSetup: boolean;
}

const afterSetup = [
  'git diff shows what compare says, git log -p a page of the notebook line by line.',
  'git merge, rebase and cherry-pick merge ledger files by what they say; then look with neckring check.',
  'Commit .gitattributes. Whoever clones the ledger types git setup once; without it git works as before.',
  'The plain lines: git diff --no-ext-diff --no-textconv. A patch to pass on: git format-patch.',
] as const;

function touchedPage({ touched, settingsFile, root, isSetup }: Told): Page {
  const rows = touched.map(({ what, state }) => [visible(what), state]);
  return [
    { kind: 'heading', text: isSetup ? 'Git for this clone' : 'Git as before' },
    {
      kind: 'table',
      columns: [
        { head: 'file or key', align: 'left' },
        { head: '', align: 'left' },
      ],
      rows,
    },
    {
      kind: 'lines',
      lines: [`keys in ${visible(settingsFile)}`, `lines in ${visible(join(root, attributesFile))}`],
      tone: 'faint',
    },
    ...(isSetup ? [{ kind: 'notes', mark: '-', notes: afterSetup } as const] : []),
  ];
}
