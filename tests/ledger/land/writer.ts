/**
 * A process of its own for the tests: `node writer.mjs ROOT NAME COUNT` adds COUNT lines `- NAME N` to
 * `trials/0014.yaml` and to `trials/0015.yaml`, one landing each, and says so.
 */

import { join } from 'node:path';
import { nodeDisk } from '../../../src/ledger/disk.ts';
import { landWithRetry } from '../../../src/ledger/land.ts';
import { nodePort } from '../../../src/ledger/node-port.ts';

const [root = '', name = '', count = '0'] = process.argv.slice(2);
const port = await nodePort(`writer ${name}`);

async function appended(path: string, line: string) {
  const before = new TextDecoder().decode(await nodeDisk.read(join(root, path)));
  return { path, before, after: `${before}${line}\n` };
}

for (let number = 1; number <= Number(count); number += 1) {
  const line = `  - ${name} ${number}`;
  await landWithRetry(port, root, async () => [
    await appended('trials/0014.yaml', line),
    await appended('trials/0015.yaml', line),
  ]);
  process.stdout.write(`${number}\n`);
}
