/** The disk as it would be with some texts written. */

import { join } from 'node:path';
import type { FileChange } from '../land.ts';
import type { ReadPort } from '../port.ts';

export function overlayPort(port: ReadPort, root: string, changes: readonly FileChange[]): ReadPort {
  const texts = new Map(
    changes.map(({ path, after }): [string, Uint8Array] => [
      join(root, path),
      new TextEncoder().encode(after),
    ]),
  );
  const paths = [...texts.keys()];
  const namesIn = (folder: string): readonly string[] => {
    const head = join(folder, '/');
    const below = paths.filter((path) => path.startsWith(head)).map((path) => path.slice(head.length));
    return below.filter((name) => !name.includes('/'));
  };
  return {
    ...port,
    sizeOf: (path) => texts.get(path)?.length ?? port.sizeOf(path),
    isFolder: (path) => port.isFolder(path) || paths.some((one) => one.startsWith(join(path, '/'))),
    read: (path) => texts.get(path) ?? port.read(path),
    list: (path) => [...new Set([...port.list(path), ...namesIn(path)])],
  };
}
