// What `npm start` runs: the example ledger in a scratch folder, checked, reckoned, looked at, and what changed.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const bin = resolve(import.meta.dirname, '../bin/neckring.js');
const folder = mkdtempSync(join(tmpdir(), 'neckring-tour-'));
cpSync(resolve(import.meta.dirname, 'orange-cardamom'), folder, { recursive: true });

const quoted = (word) => (/^[\w./%:+@-]+$/.test(word) ? word : `"${word}"`);

function say(text) {
  process.stdout.write(`\n${text}\n\n`);
}

function run(program, words, shown) {
  process.stdout.write(`$ ${shown ?? ['neckring', ...words.map(quoted)].join(' ')}\n`);
  const { status, error } = spawnSync(program, program === process.execPath ? [bin, ...words] : words, { cwd: folder, stdio: 'inherit' });
  process.stdout.write('\n');
  if (error || status > 1) process.exit(status ?? 1);
}

const neckring = (...words) => run(process.execPath, words);
const git = (...words) => run('git', ['-c', 'user.name=bench', '-c', 'user.email=bench@example.org', '-c', 'core.pager=cat', ...words], `git ${words.join(' ')}`);

say(`A copy of the example ledger lies in ${folder}.`);
spawnSync('git', ['init', '-q'], { cwd: folder });
spawnSync('git', ['add', '.'], { cwd: folder });
spawnSync('git', ['-c', 'user.name=bench', '-c', 'user.email=bench@example.org', 'commit', '-qm', 'begin'], { cwd: folder });

say('1. Is anything wrong in it?');
neckring('check');
say('2. What has been made so far?');
neckring('list');
say('3. One beaker, as a page of the notebook.');
neckring('show', '13');
say('4. Every calculator that applies to the drink made from it; the answers go back into its file.');
neckring('reckon', '17');
say('5. A look at it.');
neckring('observe', '17', '--sample', 'cold glass', '--look', 'clear', '--note', 'no ring against the lamp');
say('6. What changed in the files.');
git('diff', '--stat');
git('diff', '--unified=0', '--no-color');
say(`Try your own: cd ${folder}, and neckring --help.`);
