/** The real disk, clock and process, joined for `land`. */

import { nodeDisk } from './disk.ts';
import type { LockPort } from './lock.ts';
import { startOfProcess, thisProcess } from './lock-holder.ts';

/**
 * Input     what the person typed after the program's name, shown to others who wait
 * Output    the port that `land` and `takeLock` work through
 */
export async function nodePort(command: string, say?: (text: string) => void): Promise<LockPort> {
  return {
    disk: nodeDisk,
    self: await thisProcess(command),
    startOf: startOfProcess,
    now: Date.now,
    wait: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
    chance: Math.random,
    ...(say ? { say } : {}),
  };
}
