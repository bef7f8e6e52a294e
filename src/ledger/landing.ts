/** The steps of a landing: one file written beside its old self, then all of them put in their places. */

import { basename, dirname, join } from 'node:path';
import { fail } from '../problem.ts';
import type { Disk, Standing } from './disk.ts';
import { naming } from './disk-problem.ts';
import { landingPlace } from './landing-place.ts';

export interface Staged {
  /** As the person knows it. */
  readonly path: string;
  readonly target: string;
  readonly temporary: string;
  /** It is taken away; nothing is written beside it. */
  readonly isRemoval: boolean;
  /** What stands there now, to be put back when a later file fails. */
  readonly old: { readonly bytes: Uint8Array; readonly standing: Standing } | undefined;
  readonly write: () => Promise<void>;
}

interface Staging {
  readonly root: string;
  readonly change: {
    readonly path: string;
    readonly before: string | undefined;
    readonly after: string | Uint8Array | undefined;
  };
  readonly token: string;
  /** Tells the temporary files of one landing apart. */
  readonly number: number;
}

const encode = (text: string | Uint8Array): Uint8Array =>
  typeof text === 'string' ? new TextEncoder().encode(text) : text;
const same = (left: Uint8Array, right: Uint8Array): boolean => Buffer.compare(left, right) === 0;

async function refuseClash(disk: Disk, target: string, path: string): Promise<void> {
  const wanted = basename(target);
  const clash = (await disk.list(dirname(target))).find(
    (name) => name !== wanted && name.toLowerCase() === wanted.toLowerCase(),
  );
  if (clash === undefined) return;
  fail(
    'name-clash',
    `${path} differs only in capital letters from ${clash}, which is there already`,
    'choose another name: many disks take the two for one',
  );
}

/**
 * Compares a change with the disk and makes ready to write it. Nothing is written yet.
 * Output    `changed` when the disk no longer has the text it was made from, `same` when there is nothing to do
 */
export async function stage(
  disk: Disk,
  { root, change, token, number }: Staging,
): Promise<Staged | 'changed' | 'same'> {
  const { path, before, after } = change;
  const target = await landingPlace(disk, { root, path });
  const standing = await disk.standing(target);
  if (standing && standing.kind !== 'file') fail('not-a-file', `${path} is not a file`, 'move it away');
  if (!standing) await refuseClash(disk, target, path);
  if ((standing === undefined) !== (before === undefined)) return 'changed';
  const bytes = standing && (await disk.read(target));
  if (bytes && before !== undefined && !same(bytes, encode(before))) return 'changed';
  if (before === after) return 'same';
  if (standing) await disk.checkWritable(target);
  const temporary = join(dirname(target), `.neckring-${token}-${number}.tmp`);
  const write = (): Promise<void> =>
    naming(path, async () => {
      if (after === undefined) return;
      if (!standing) await disk.makeFolder(dirname(target));
      await disk.writeNew(temporary, encode(after), standing);
    });
  return {
    path,
    target,
    temporary,
    isRemoval: after === undefined,
    old: bytes && standing && { bytes, standing },
    write,
  };
}

export async function unstage(disk: Disk, staged: readonly Staged[]): Promise<void> {
  for (const file of staged) await disk.remove(file.temporary).catch(() => undefined);
}

async function putBack(disk: Disk, done: readonly Staged[]): Promise<void> {
  for (const file of done) {
    if (!file.old) {
      await disk.remove(file.target);
      continue;
    }
    const temporary = `${file.temporary.slice(0, -'.tmp'.length)}-back.tmp`;
    await disk.writeNew(temporary, file.old.bytes, file.old.standing);
    await disk.rename(temporary, file.target);
  }
}

/** Renames each over its old self, then takes away what is to go. Where one is refused, those before it are put back as they were. */
export async function putInPlace(disk: Disk, staged: readonly Staged[]): Promise<void> {
  const done: Staged[] = [];
  try {
    for (const file of [...staged].sort((left, right) => Number(left.isRemoval) - Number(right.isRemoval))) {
      await naming(file.path, () =>
        file.isRemoval ? disk.remove(file.target) : disk.rename(file.temporary, file.target),
      );
      done.push(file);
    }
  } catch (thrown) {
    await putBack(disk, done).catch(() => undefined);
    await unstage(disk, staged);
    throw thrown;
  }
  for (const folder of new Set(staged.map((file) => dirname(file.target)))) {
    // The new texts are in place for everybody; a refusal here must not read as if they were not.
    await disk.flushFolder(folder).catch(() => undefined);
  }
}
