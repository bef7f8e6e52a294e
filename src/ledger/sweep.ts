/** Clearing away what killed processes left behind. */

import { join } from 'node:path';
import type { LockPort } from './lock.ts';

const temporaryName = /^\.neckring-(.+)\.tmp$/;
const oldMilliseconds = 3_600_000;
const ownFolders = ['.', 'trials', 'series', 'formulas', 'batches', 'photos', 'schema'];

export interface Sweeping {
  readonly root: string;
  /** The `.neckring` folder. */
  readonly own: string;
  /** Tokens of holders that died. */
  readonly dead: readonly string[];
}

async function isOld(port: LockPort, path: string): Promise<boolean> {
  const standing = await port.disk.standing(path);
  return standing !== undefined && port.now() - standing.modifiedMilliseconds > oldMilliseconds;
}

async function sweepWaiters(port: LockPort, own: string): Promise<void> {
  for (const name of await port.disk.list(own)) {
    const path = join(own, name);
    if (!name.startsWith('.lock-') || !(await isOld(port, path))) continue;
    for (const inner of await port.disk.list(path)) await port.disk.remove(join(path, inner));
    await port.disk.removeEmptyFolder(path);
  }
}

/**
 * Clears away what killed processes left: only called under the lock. The ledger's folders are looked
 * through only after a holder was found dead, since only then is there anything new. Failing is no matter.
 */
export async function sweep(port: LockPort, { root, own, dead }: Sweeping): Promise<void> {
  await sweepWaiters(port, own).catch(() => undefined);
  if (dead.length === 0) return;
  for (const folder of ownFolders) {
    const names = await port.disk.list(join(root, folder)).catch(() => []);
    for (const name of names) {
      const token = temporaryName.exec(name)?.[1];
      if (token === undefined) continue;
      const path = join(root, folder, name);
      const isDead = dead.some((gone) => token.startsWith(`${gone}-`));
      if (isDead || (await isOld(port, path).catch(() => false)))
        await port.disk.remove(path).catch(() => undefined);
    }
  }
}
