/** Three versions of a file: as git hands them over, as they lie in an unfinished merge, or as they would be merged. */

import { dirname, relative, resolve, sep } from 'node:path';
import type { Io } from '../io.ts';
import { gitRefused, mostBytes } from '../ledger/git.ts';
import { runGit } from '../ledger/git-write.ts';
import { tooLarge } from '../ledger/guard.ts';
import { checkedRevision } from '../ledger/revision-name.ts';
import { fail, ProblemError } from '../problem.ts';
import { type Call, optionValue } from './command.ts';
import { readPort } from './open-ledger.ts';

export interface MergeSides {
  /** As the person knows it, from the working folder. */
  readonly path: string;
  readonly bytes: { readonly base: Uint8Array; readonly ours: Uint8Array; readonly theirs: Uint8Array };
  /** Where they lie, if git handed them over as files; absolute. */
  readonly files?: { readonly base: string; readonly ours: string; readonly theirs: string };
}

export async function sidesOf(call: Call, io: Io): Promise<MergeSides> {
  const [first = '', ours, theirs] = call.words;
  if (ours !== undefined && theirs !== undefined) return handedOver(call, io, [first, ours, theirs]);
  if (ours !== undefined || first === '')
    return fail(
      'three-files',
      'name three files, BASE OURS THEIRS, or one of the ledger',
      'such as --plan trials/0014-orange.yaml --with cassis',
    );
  const other = optionValue(call, 'with');
  return other === undefined ? unfinished(io, first) : beforehand(io, first, checkedRevision(other));
}

function handedOver(call: Call, io: Io, words: readonly [string, string, string]): MergeSides {
  const port = readPort(io);
  const [base, ours, theirs] = words;
  const at = (word: string): string => resolve(io.workingFolder, word);
  const read = (word: string): Uint8Array => {
    const size = port.sizeOf(at(word));
    if (size === undefined)
      return fail('no-file', `there is no file ${word}`, 'git names three files: BASE OURS THEIRS');
    if (size > mostBytes) throw new ProblemError([tooLarge(word, size)]);
    return port.read(at(word));
  };
  return {
    path: optionValue(call, 'path') ?? ours,
    bytes: { base: read(base), ours: read(ours), theirs: read(theirs) },
    files: { base: at(base), ours: at(ours), theirs: at(theirs) },
  };
}

/** The three versions that git keeps while a merge is not settled. */
async function unfinished(io: Io, path: string): Promise<MergeSides> {
  const [base, ours, theirs] = await Promise.all([1, 2, 3].map((stage) => shown(io, path, `:${stage}`)));
  if (!ours || !theirs)
    return fail(
      'no-merge',
      `${path} is not in the middle of a merge`,
      'add --with BRANCH to see what merging that branch would do',
    );
  return { path, bytes: { base: base ?? new Uint8Array(), ours, theirs } };
}

/** What merging a branch into this one would have to deal with. */
async function beforehand(io: Io, path: string, other: string): Promise<MergeSides> {
  const folder = io.workingFolder;
  const common = await runGit(folder, ['merge-base', 'HEAD', other]);
  if (common.code === 128) gitRefused(folder, common.said);
  const base = new TextDecoder().decode(common.out).trim();
  if (base === '')
    return fail(
      'no-such-revision',
      `nothing is common to this branch and "${other}"`,
      'git branch -a shows what there is',
    );
  const [before, ours, theirs] = await Promise.all(
    [base, 'HEAD', other].map((revision) => shown(io, path, revision)),
  );
  if (!ours || !theirs)
    return fail(
      'no-file',
      `${path} is not committed on ${ours ? `"${other}"` : 'this branch'}`,
      'commit it there first, or name another file',
    );
  return { path, bytes: { base: before ?? new Uint8Array(), ours, theirs } };
}

async function shown(io: Io, path: string, revision: string): Promise<Uint8Array | undefined> {
  const absolute = resolve(io.workingFolder, path);
  const folder = readPort(io).isFolder(dirname(absolute)) ? dirname(absolute) : io.workingFolder;
  const name = relative(folder, absolute).split(sep).join('/');
  const { code, out, said } = await runGit(folder, ['show', `${revision}:./${name}`]);
  if (code === 0) return out;
  if (code === undefined || /not a git repository/iu.test(said))
    gitRefused(folder, said, code === undefined ? { code: 'ENOENT' } : undefined);
  return undefined;
}
