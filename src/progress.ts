/** How far a long piece of work has come: one line on stderr, on a terminal only, gone before anything else is written. */

import type { Io } from './io.ts';

/** Nothing is said of what takes less. */
const quietMilliseconds = 1000;
const betweenMilliseconds = 100;

export function withProgress(port: Io): Io {
  if (!port.errIsTerminal || port.environment['TERM'] === 'dumb') return port;
  const begun = port.now();
  let last = begun;
  let shown = 0;
  const gone = (): void => {
    if (shown > 0) port.err(`\r${' '.repeat(shown)}\r`);
    shown = 0;
  };
  return {
    ...port,
    out: (text) => {
      gone();
      port.out(text);
    },
    err: (text) => {
      gone();
      port.err(text);
    },
    ask: (question) => {
      gone();
      return port.ask(question);
    },
    progress: (text) => {
      const now = port.now();
      if (now - begun < quietMilliseconds || now - last < betweenMilliseconds) return;
      last = now;
      const line = text.slice(0, port.columns - 1);
      port.err(`\r${line.padEnd(shown)}`);
      shown = Math.max(shown, line.length);
    },
  };
}
