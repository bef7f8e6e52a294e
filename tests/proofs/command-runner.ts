/**
 * A process of its own for the proofs: `node runner.mjs FOLDER NAME COUNT KIND` runs COUNT commands on the ledger in
 * FOLDER, one after the other, and prints the number of each when it is done; what goes wrong goes to stderr.
 */

import { run } from '../../src/cli.ts';
import type { Io } from '../../src/io.ts';

const [folder = '', name = '', count = '0', kind = 'observe'] = process.argv.slice(2);

const linesOf: Readonly<Record<string, (at: number) => readonly string[]>> = {
  observe: (at) => ['observe', '14', '--look', 'clear', '--note', `${name} ${at}`],
  new: (at) => [
    'new',
    '--title',
    `${name} ${at}`,
    '--item',
    '2 g sweet orange oil',
    '--item',
    'to 50 g water',
  ],
  look: (at) => ['look', '14-15', 'clear', '--note', `${name} ${at}`],
  reckon: () => ['reckon', '14'],
};

const io: Io = {
  out: () => {},
  err: (text) => void process.stderr.write(text),
  outIsTerminal: false,
  errIsTerminal: false,
  canAsk: false,
  ask: async () => undefined,
  columns: 80,
  environment: {},
  workingFolder: folder,
  now: Date.now,
  random: Math.random,
};

for (let at = 1; at <= Number(count); at += 1) {
  const code = await run(linesOf[kind]?.(at) ?? [], io);
  if (code !== 0) process.stderr.write(`exit ${code}\n`);
  process.stdout.write(`${at}\n`);
}
