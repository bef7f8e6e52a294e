/** The process: streams, clock and folder become the port, the exit code goes back. */

import { run } from './cli.ts';
import type { Io } from './io.ts';

export async function main(): Promise<void> {
  const { stdout, stderr, stdin } = process;
  for (const stream of [stdout, stderr]) stream.on('error', quietOnClosedPipe);
  const io: Io = {
    out: (text) => void (text !== '' && stdout.write(text)),
    err: (text) => void (text !== '' && stderr.write(text)),
    outIsTerminal: stdout.isTTY === true,
    errIsTerminal: stderr.isTTY === true,
    canAsk: stdin.isTTY === true && stdout.isTTY === true,
    ask,
    columns: stdout.columns && stdout.columns > 20 ? stdout.columns : 80,
    environment: process.env,
    workingFolder: process.cwd(),
    program: [process.execPath, process.argv[1] ?? ''],
    now: Date.now,
    random: Math.random,
  };
  process.exitCode = await run(process.argv.slice(2), io);
}

/** `neckring list | head` ends without a word. */
function quietOnClosedPipe(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
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
