// Everything that is wanted of speed, in one run: start and help, small ledgers, 1,000 to 10,000 trials cold and warm, memory,
// hostile texts. Takes some minutes; wants a quiet machine.
// Usage: npm run bench
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { printTable } from './paired.mjs';
import { sizeHead, sizeRows } from './size.mjs';
import { startHead, startRows } from './start.mjs';

const print = (title, head, rows) => {
  console.log(`\n${title}`);
  printTable(head, rows);
};

console.log(`node ${process.version}, ${process.platform} ${process.arch}`);
print('Start, outside a ledger and in one of ten trials', startHead, startRows());
print('Ledgers as they grow', sizeHead, await sizeRows());
console.log('\nHostile texts');
const hostile = spawnSync(process.execPath, [resolve(import.meta.dirname, 'hostile.mjs')], {
  stdio: 'inherit',
});
process.exitCode = hostile.status ?? 1;
