/** Which git revision of a file this is. Git is only read, and started without a shell. */

import { type GitPort, nodeGit } from './git.ts';

export { type GitPort, nodeGit } from './git.ts';

export interface FileRevision {
  /** The short name of the last commit that changed the file; absent where it is not in git. */
  readonly short: string | undefined;
  /** Whether the file differs from that commit. */
  readonly isChanged: boolean;
}

const notInGit: FileRevision = { short: undefined, isChanged: false };

/**
 * The revision of a file.
 * Input     the root of the ledger, the path of the file from there
 * Output    the last commit that changed it, and whether it differs from that now
 */
export async function fileRevision(
  root: string,
  file: string,
  git: GitPort = nodeGit,
): Promise<FileRevision> {
  const log = await git(root, ['log', '-1', '--no-show-signature', '--format=%h', '--', file]);
  const short = log?.code === 0 ? /^[0-9a-f]{4,64}$/u.exec(log.out.trim())?.[0] : undefined;
  if (short === undefined) return notInGit;
  const status = await git(root, ['status', '--porcelain', '--untracked-files=all', '--', file]);
  return { short, isChanged: status?.code !== 0 || status.out.trim() !== '' };
}

/** `3f2a1bc`, `3f2a1bc, changed since`, `not in git` */
export const revisionWords = ({ short, isChanged }: FileRevision): string =>
  short === undefined ? 'not in git' : `${short}${isChanged ? ', changed since' : ''}`;
