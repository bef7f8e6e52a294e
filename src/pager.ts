/** A page through the person's own pager, where `--page` asks for it. */

import { spawn } from 'node:child_process';
import type { Problem } from './problem.ts';

/** Runs the pager and waits until it is left; a problem where it can't be started. */
export async function showPaged(
  text: string,
  environment: Readonly<Record<string, string | undefined>>,
): Promise<Problem | undefined> {
  const names = [environment['NECKRING_PAGER'], environment['PAGER']].map((name) => name?.trim());
  const [command = 'less', ...words] = (names.find(Boolean) ?? 'less').split(/\s+/u);
  return new Promise((resolve) => {
    // Without this less shows colours as signs; a way of the person's own is kept.
    const own = { ...environment, LESS: environment['LESS'] ?? 'FRX' };
    const pager = spawn(command, words, { stdio: ['pipe', 'inherit', 'inherit'], env: own });
    pager.on('error', () => resolve(noPager(command)));
    pager.on('close', () => resolve(undefined));
    // Who leaves the pager early has read enough.
    pager.stdin.on('error', () => undefined);
    pager.stdin.end(text);
  });
}

const noPager = (command: string): Problem => ({
  code: 'no-pager',
  severity: 'warning',
  message: `the pager ${command} can't be started`,
  hint: 'set NECKRING_PAGER or PAGER to one that is installed, or leave --page out',
});
