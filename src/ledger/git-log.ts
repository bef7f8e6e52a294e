/** The commits that changed a file, under whatever name it had. */

import { fail } from '../problem.ts';
import { type GitPort, gitRefused, hasCommits, nodeGit } from './git.ts';

export interface FileCommit {
  readonly id: string;
  readonly short: string;
  /** ISO 8601 with the offset of who wrote it. */
  readonly at: string;
  readonly author: string;
  readonly message: string;
  /** From the top of the repository. */
  readonly path: string;
  /** Its path in the commit before; absent where the file begins here. */
  readonly pathBefore: string | undefined;
}

/** Copies of another file begin anew: a trial that was written from another has its own history. */
const format = '%x00%H%x00%h%x00%aI%x00%an%x00%s%x00';

/**
 * Input     the root of the ledger, a file of it, where to begin looking back
 * Output    commits from the oldest to the newest; none where the file is not in git
 * Refuses   no git, no repository, nothing committed
 */
export async function fileCommits(
  root: string,
  file: string,
  { from = 'HEAD', git = nodeGit }: { readonly from?: string; readonly git?: GitPort } = {},
): Promise<readonly FileCommit[]> {
  const top = await git(root, ['rev-parse', '--show-prefix']);
  if (!top) return gitRefused(root, '', { code: 'ENOENT' });
  if (top.code !== 0) return gitRefused(root, 'not a git repository');
  if (!(await hasCommits(root, git)))
    return fail(
      'no-commits',
      'nothing is committed in this repository yet',
      'git add and git commit the ledger first',
    );
  const words = [
    '-c',
    'i18n.logOutputEncoding=UTF-8',
    'log',
    '--follow',
    '--no-show-signature',
    '--no-color',
    '-z',
    '--name-status',
    `--format=${format}`,
    from,
    '--',
    file,
  ];
  const log = await git(root, words);
  if (log?.code !== 0) return gitRefused(root, '');
  const prefix = top.out.replace(/\r?\n$/u, '');
  return untilCopied(readLog(log.out), `${prefix}${file}`);
}

interface LogEntry extends Omit<FileCommit, 'path' | 'pathBefore'> {
  /** `M`, `A`, `R100`; absent for a merge. */
  readonly status: string | undefined;
  readonly paths: readonly string[];
}

/** Newest first, as git prints them. */
export function readLog(out: string): readonly LogEntry[] {
  const tokens = out.split('\0');
  const entries: LogEntry[] = [];
  let at = 0;
  while (at < tokens.length) {
    const [id = '', short = '', time = '', author = '', message = ''] = tokens.slice(at, at + 5);
    if (!/^[0-9a-f]{40,64}$/u.test(id) || !id.startsWith(short) || short === '') {
      at += 1;
      continue;
    }
    at += 5;
    while (at < tokens.length && (tokens[at] ?? '').trim() === '') at += 1;
    const status = /^([ACDMRTUX])\d*$/u.exec((tokens[at] ?? '').trim())?.[0];
    const count = status === undefined ? 0 : /^[RC]/u.test(status) ? 2 : 1;
    const paths = status === undefined ? [] : tokens.slice(at + 1, at + 1 + count);
    if (status !== undefined) at += 1 + count;
    entries.push({ id, short, at: time, author, message, status, paths });
  }
  return entries;
}

function untilCopied(entries: readonly LogEntry[], path: string): readonly FileCommit[] {
  const commits: FileCommit[] = [];
  let now = path;
  for (const { status, paths, ...commit } of entries) {
    const [first = now, second] = paths;
    const isCopy = status?.startsWith('C') ?? false;
    const isNew = status === 'A' || isCopy;
    now = second ?? first;
    const before = second === undefined ? now : first;
    commits.unshift({ ...commit, path: now, pathBefore: isNew ? undefined : before });
    if (isCopy) break;
    now = before;
  }
  return commits;
}
