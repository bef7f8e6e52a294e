/** The process: streams, clock and folder become the port, the exit code goes back. */

import { run } from './cli.ts';
import type { Io } from './io.ts';
import { openStream } from './streams.ts';

/** Runs what is typed; whether all that was written has left, so that the process may be ended at once. */
export async function main(): Promise<boolean> {
  const [out, err] = [openStream('stdout'), openStream('stderr')];
  const { columns } = out.isTerminal ? process.stdout : {};
  const io: Io = {
    out: out.write,
    err: err.write,
    outIsTerminal: out.isTerminal,
    errIsTerminal: err.isTerminal,
    canAsk: out.isTerminal && process.stdin.isTTY === true,
    ask,
    page: async (text) => (await import('./pager.ts')).showPaged(text, process.env),
    columns: widthOf(columns),
    environment: process.env,
    workingFolder: process.cwd(),
    program: [process.execPath, process.argv[1] ?? ''],
    now: Date.now,
    random: Math.random,
  };
  process.exitCode = await run(process.argv.slice(2), io);
  return out.hasLeft() && err.hasLeft();
}

/** Of the terminal, else as COLUMNS says. */
function widthOf(columns: number | undefined): number {
  const width = columns || Number(process.env['COLUMNS']);
  return Number.isInteger(width) && width > 20 ? width : 80;
}

async function ask(question: string): Promise<string | undefined> {
  // Loaded only where something is asked: it takes as long as a small command.
  const { createInterface } = await import('node:readline');
  return new Promise((resolve) => {
    const reader = createInterface({ input: process.stdin, output: process.stdout });
    let answer: string | undefined;
    reader.on('SIGINT', () => reader.close());
    reader.on('close', () => resolve(answer));
    reader.question(question, (text) => {
      answer = text;
      reader.close();
    });
  });
}
