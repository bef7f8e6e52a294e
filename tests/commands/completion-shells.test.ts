/** Completion in real shells. A shell that is not on this machine is not tried, and that is said. */

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chmod, cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const isThere = (shell: string): boolean => spawnSync(shell, ['-c', 'exit 0']).status === 0;

let ledger = '';
let home = '';

/** Names that would run something, or become something else, if a shell took them as they stand. */
const hostile = [
  'anise $(touch pwned) x',
  'basil `touch pwned` y',
  'cassis; touch pwned',
  `dill "double" 'single'`,
  'elder & % \\ * ? #',
  'fennel {a,b} [x] <in >out |',
  'ginger: to = 1 @ 2',
  'hyssop %F{red}%n ^ !',
];

const starter = '#!/bin/sh\nexec "$NECKRING_NODE" "$HOME/program/main.js" "$@"\n';

beforeAll(async () => {
  ledger = await mkdtemp(join(tmpdir(), 'neckring-shells-'));
  home = await mkdtemp(join(tmpdir(), 'neckring-home-'));
  await cp(new URL('../../examples/orange-cardamom', import.meta.url), ledger, { recursive: true });
  for (const [at, name] of hostile.entries())
    await writeFile(join(ledger, `series/hostile-${at}.yaml`), `series: '${name.replaceAll("'", "''")}'\n`);
  await writeFile(join(ledger, 'trials/0099-$(touch pwned)\u001b[2J\n`touch pwned`.yaml'), 'trial: 99\n');
  await writeFile(join(home, 'neckring'), starter);
  await chmod(join(home, 'neckring'), 0o755);
  await build({
    stdin: {
      contents: `import { main } from './src/main.ts'; main();`,
      resolveDir: join(import.meta.dirname, '../..'),
      sourcefile: 'main.ts',
    },
    entryNames: 'main',
    outdir: join(home, 'program'),
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    logLevel: 'silent',
  });
  await writeFile(join(home, 'program/package.json'), '{ "type": "module" }\n');
}, 60_000);
afterAll(async () => {
  for (const folder of [ledger, home]) await rm(folder, { recursive: true, force: true });
});

/** The lines that a shell writes, in the ledger; nothing in a name was run. */
function inShell(shell: string, words: readonly string[]): readonly string[] {
  const { stdout, status, stderr } = spawnSync(shell, words, {
    cwd: ledger,
    encoding: 'utf8',
    timeout: 100_000,
    env: {
      ...process.env,
      HOME: home,
      XDG_CONFIG_HOME: home,
      LC_ALL: 'C.UTF-8',
      TERM: 'xterm',
      PATH: `${home}${delimiter}${process.env['PATH']}`,
      NECKRING_NODE: process.execPath,
    },
  });
  expect([status, stderr]).toEqual([0, '']);
  expect(existsSync(join(ledger, 'pwned'))).toBe(false);
  return stdout.split('\n').slice(0, -1);
}

const untried = (shell: string): void => {
  it(`is not tried here: there is no ${shell} on this machine`, () => {
    expect(isThere(shell)).toBe(false);
  });
};

const bashScript = `
eval "$(neckring completion bash)"
ask() { COMP_LINE=$1 COMP_POINT=\${#1} COMP_TYPE=9; _neckring neckring '' ''; }
`;

describe.skipIf(!isThere('bash'))('bash', () => {
  const inBash = (script: string, ...words: string[]): readonly string[] =>
    inShell('bash', ['--norc', '-c', bashScript + script, 'bash', ...words]);

  it('commands, names in quotes, after an equals sign, trials, ranges', () => {
    const lines = ['ob', 'hlb --oil "2 g ora', 'hlb --oil 2\\ g\\ ora', 'series --against=or', 'same 14-1'];
    const script = `for line in "$@"; do ask "neckring $line"; echo "\${COMPREPLY[@]}"; done`;
    expect(inBash(script, ...lines)).toEqual([
      'observe',
      '2 g orange oil lot 2231',
      '2\\ g\\ orange\\ oil\\ lot\\ 2231',
      'orange\\ ladder',
      '14-15 14-16 14-17',
    ]);
  });

  it('the cursor inside a line, and words without a line', () => {
    const inside = `COMP_LINE='neckring obs 13' COMP_POINT=12; _neckring; echo "$COMPREPLY"; `;
    const words = `COMP_LINE= COMP_WORDS=(neckring obs) COMP_CWORD=1; _neckring; echo "$COMPREPLY"`;
    expect(inBash(inside + words)).toEqual(['observe', 'observe']);
  });

  it('hostile names run nothing and read back as they are, in each kind of quote', () => {
    const script = String.raw`for quote in '' "'" '"'; do
      ask "neckring series $quote"
      for reply in "${'$'}{COMPREPLY[@]}"; do eval "set -- $quote$reply$quote"; printf '%s\n' "$#$1"; done
    done`;
    const once = (names: readonly string[]): readonly string[] =>
      [...names, 'orange ladder'].map((name) => `1${name}`);
    // Inside double quotes nothing takes its meaning from an exclamation mark.
    const calm = hostile.filter((name) => !name.includes('!'));
    expect(inBash(script)).toEqual([...once(hostile), ...once(hostile), ...once(calm)]);
  });
});
describe.runIf(!isThere('bash'))('bash', () => untried('bash'));

describe.skipIf(!isThere('fish'))('fish', () => {
  const inFish = (...lines: string[]): readonly string[] =>
    inShell('fish', [
      '-c',
      'neckring completion fish | source; for line in $argv; complete -C $line; end',
      ...lines,
    ]);

  it('commands, names in quotes, after an equals sign, trials with what they are, files', () => {
    const lines = [
      'ob',
      'hlb --oil "2 g ora',
      'hlb --oil 2\\ g\\ ora',
      'series --against=or',
      'show 17',
      'give --to=tri',
    ];
    expect(inFish(...lines.map((line) => `neckring ${line}`))).toEqual([
      'observe\twrite down what is seen, measured or tasted',
      '2 g orange oil lot 2231\tyour own',
      '2 g orange oil lot 2231\tyour own',
      '--against=orange ladder\tseries',
      '17\torange cardamom drink',
      '--to=trials/',
    ]);
  });

  it('hostile names run nothing', () => {
    expect(inFish('neckring series ').map((one) => one.split('\t')[0])).toEqual([
      ...hostile,
      'orange ladder',
    ]);
    expect(inFish('neckring show 99')).toEqual(['99\t$(touch pwned)␛[2J␊`touch pwned`']);
  });
});
describe.runIf(!isThere('fish'))('fish', () => untried('fish'));

/** Types each line and Tab at a terminal of zsh's own; tells the line then, and its last word as zsh reads it. */
const zshScript = String.raw`
zmodload zsh/zpty
zpty inner zsh -f -i
zpty -w inner 'autoload -Uz compinit; compinit -u -D; eval "$(neckring completion zsh)"; setopt no_beep
  told() { print -r -- "$BUFFER" >> $HOME/told; print -r -- "${'$'}{(Q)${'$'}{(z)BUFFER}[-1]}" >> $HOME/told; BUFFER= }
  zle -N told; bindkey "^T" told; over() { exit }; zle -N over; bindkey "^G" over'
for line in "$@"; do zpty -w -n inner "$line"$'\t\x14'; done
zpty -w -n inner $'\x07'
while zpty -r inner line; do :; done
cat $HOME/told
rm $HOME/told`;

describe.skipIf(!isThere('zsh'))('zsh', () => {
  it('commands, names in quotes, after an equals sign, trials; hostile names run nothing and read back', () => {
    const lines = ['ob', 'hlb --oil "2 g ora', 'series --against=or', 'show 99', 'observe 13 --taste so'];
    const starts = hostile.map((name) => `series ${name.slice(0, 3)}`);
    const typed = [...lines, ...starts].map((line) => `neckring ${line}`);
    const told = inShell('zsh', ['-f', '-c', zshScript, 'zsh', ...typed]);
    const whole = told.filter((_, at) => at % 2 === 0);
    const lastWords = told.filter((_, at) => at % 2 === 1);
    expect(whole.slice(0, lines.length)).toEqual([
      'neckring observe ',
      'neckring hlb --oil "2 g orange oil lot 2231" ',
      'neckring series --against=orange\\ ladder ',
      'neckring show 99 ',
      'neckring observe 13 --taste soapy=',
    ]);
    expect(lastWords.slice(lines.length)).toEqual(hostile);
  }, 120_000);
});
describe.runIf(!isThere('zsh'))('zsh', () => untried('zsh'));
