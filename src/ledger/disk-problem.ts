/** The disk's refusals in words that name the file and the cause. */

import { isProblemError, ProblemError } from '../problem.ts';
import { errorCode } from './disk.ts';

interface Wording {
  readonly code: string;
  readonly says: (file: string) => string;
  readonly hint: string;
}

const full: Wording = {
  code: 'disk-full',
  says: (file) => `no room left on the disk to write ${file}`,
  hint: 'free some space, then type it again',
};
const denied: Wording = {
  code: 'disk-denied',
  says: (file) => `permission denied: ${file}`,
  hint: 'allow yourself to write this file and its folder, then type it again',
};

const wordings: ReadonlyMap<string, Wording> = new Map([
  ['ENOSPC', full],
  ['EDQUOT', full],
  ['EACCES', denied],
  ['EPERM', denied],
  [
    'EROFS',
    {
      code: 'disk-read-only',
      says: (file) => `${file} lies on a disk that can only be read`,
      hint: 'copy the ledger to a disk that can be written',
    },
  ],
  [
    'ENOENT',
    {
      code: 'disk-missing',
      says: (file) => `${file} is gone, or its folder is`,
      hint: 'see whether it was moved or renamed meanwhile',
    },
  ],
  [
    'ENAMETOOLONG',
    {
      code: 'disk-name-too-long',
      says: (file) => `the name is too long for this disk: ${file}`,
      hint: 'choose a shorter title or folder name',
    },
  ],
  [
    'EEXIST',
    {
      code: 'disk-exists',
      says: (file) => `${file} is there already`,
      hint: 'choose another name, or move that file away',
    },
  ],
  [
    'EISDIR',
    {
      code: 'disk-is-folder',
      says: (file) => `${file} is a folder, not a file`,
      hint: 'move the folder away',
    },
  ],
  [
    'ENOTDIR',
    {
      code: 'disk-not-folder',
      says: (file) => `a part of the path ${file} is a file, not a folder`,
      hint: 'move that file away',
    },
  ],
]);

/**
 * Turns a refusal of the operating system into a problem that names the file.
 * Input     what was thrown, and the file as the person knows it
 * Output    a ProblemError with exit code 2; anything that is not the disk's doing comes back as it was
 */
export function diskProblem(thrown: unknown, file: string): unknown {
  const cause = errorCode(thrown);
  if (isProblemError(thrown) || cause === undefined || !/^E[A-Z0-9]+$/.test(cause)) return thrown;
  const wording = wordings.get(cause) ?? {
    code: 'disk-failed',
    says: (name: string) => `the disk refused ${name} (${cause})`,
    hint: 'see whether the disk is in order, then type it again',
  };
  const hint = `${wording.hint}; what was there before is untouched`;
  return new ProblemError([{ code: wording.code, severity: 'error', message: wording.says(file), hint }]);
}

/** Does it, and names the file in whatever the disk refuses. */
export async function naming<T>(file: string, action: () => Promise<T>): Promise<T> {
  try {
    return await action();
  } catch (thrown) {
    throw diskProblem(thrown, file);
  }
}
