/** A defect of ours: one line that says what to report. The stack only when it is asked for. */

import { visible } from './visible.ts';

export function defectText(thrown: unknown, withStack: boolean): string {
  const words = thrown instanceof Error ? `${thrown.name}: ${thrown.message}` : String(thrown);
  const head = `neckring: a defect of ours (${visible(words)}); please report this line with what you typed; nothing more was written\n`;
  return withStack && thrown instanceof Error ? `${head}${thrown.stack ?? ''}\n` : head;
}
