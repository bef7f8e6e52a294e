/** stdout and stderr of the process. Node's own streams are made only for a terminal: they cost as much as a small command. */

import { fstatSync, statSync, writeSync } from 'node:fs';

export interface OutStream {
  readonly isTerminal: boolean;
  readonly write: (text: string) => void;
  /** Whether all that was written has left; what has not leaves before the process ends by itself. */
  readonly hasLeft: () => boolean;
}

export function openStream(name: 'stdout' | 'stderr'): OutStream {
  const number = name === 'stdout' ? 1 : 2;
  const own = (): NodeJS.WriteStream => process[name];
  let mustWait = mayBeTerminal(number);
  if (mustWait) own().on('error', quietOnClosedPipe);
  return {
    isTerminal: mustWait && own().isTTY === true,
    write: (text) => {
      if (text === '') return;
      const left = mustWait ? text : writeNow(number, Buffer.from(text));
      if (left.length === 0) return;
      // Another program has set the pipe so that it does not wait for its reader: Node's stream does.
      if (!mustWait) own().on('error', quietOnClosedPipe);
      mustWait = true;
      own().write(left);
    },
    hasLeft: () => !mustWait || own().writableLength === 0,
  };
}

/** A file, a pipe or the null device is surely no terminal. */
function mayBeTerminal(number: number): boolean {
  try {
    const told = fstatSync(number);
    if (told.isFile() || told.isFIFO() || told.isSocket()) return false;
    return told.rdev !== statSync('/dev/null', { throwIfNoEntry: false })?.rdev;
  } catch {
    return true;
  }
}

/** What could not be written without waiting. */
function writeNow(number: number, bytes: Buffer): Buffer {
  let left = bytes;
  while (left.length > 0) {
    try {
      left = left.subarray(writeSync(number, left));
    } catch (thrown) {
      if (thrown instanceof Error && 'code' in thrown && thrown.code === 'EAGAIN') return left;
      quietOnClosedPipe(thrown);
    }
  }
  return left;
}

/** `neckring list | head` ends without a word. */
function quietOnClosedPipe(error: unknown): void {
  if (!(error instanceof Error && 'code' in error && error.code === 'EPIPE')) throw error;
  process.exit(0);
}
