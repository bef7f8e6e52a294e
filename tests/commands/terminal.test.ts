import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli.ts';
import { commands } from '../../src/commands/index.ts';
import type { Io } from '../../src/io.ts';
import { exampleFor } from './example-files.ts';
import { exampleLedger, neckring, scratchFolder } from './neckring.ts';
import { ledgerOf, plainTrial } from './small-ledger.ts';

const escapeSign = '\u001b[';
const bright = { terminal: true, environment: { TERM: 'xterm-256color' } } as const;
const wrong = plainTrial.replace('2 g', '2');

/** The words of a line as a shell splits them; only double quotes are used. */
const wordsOf = (line: string): readonly string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');

describe('help', () => {
  it('neckring alone says what to type first and lists every command', async () => {
    const alone = await neckring([]);
    expect([alone.code, alone.err]).toEqual([0, '']);
    expect(alone.out.indexOf('neckring init')).toBeLessThan(alone.out.indexOf('Calculate'));
    for (const { name, summary } of commands)
      expect(alone.out).toMatch(new RegExp(`^ {2}${name} +${summary.slice(0, 20)}`, 'm'));
    for (const words of [['--help'], ['-h'], ['help']]) expect(await neckring(words)).toEqual(alone);
  });

  it.each(commands.map((spec) => [spec.name, spec] as const))(
    '%s --help: the words, the options, two examples',
    async (name, spec) => {
      const { code, out, err } = await neckring([name, '--help']);
      expect([code, err]).toEqual([0, '']);
      expect(out.split('\n')[0]).toMatch(new RegExp(`^neckring ${name}\\b`));
      for (const option of spec.options) expect(out).toContain(`--${option.name}`);
      for (const word of spec.words) expect(out).toContain(word.name);
      expect(spec.examples.length).toBeGreaterThanOrEqual(2);
      for (const { line } of spec.examples) {
        expect(line.split(' ')[0]).toBe(name);
        // A long example goes on in the next line, as a shell takes it.
        expect(out.replace(/ \\\n +/g, ' ')).toContain(`  neckring ${line}\n`);
      }
      expect(await neckring(['help', name])).toEqual({ code, out, err });
    },
  );

  it.each(['--help', ...commands.map((spec) => spec.name)])('keeps to 80 columns: %s', async (name) => {
    const { out } = await neckring(name === '--help' ? [name] : [name, '--help']);
    expect(out.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
  });

  it.each(commands.flatMap((spec) => spec.examples.map(({ line }) => [line])))(
    'runs on the example ledger: %s',
    async (line) => {
      const [name = ''] = wordsOf(line);
      const folder = name === 'init' ? await scratchFolder() : await exampleFor(name);
      const ran = await neckring(wordsOf(line), { folder, answers: [] });
      expect([ran.code <= 1 ? 'ran' : ran.err, ran.err.includes('defect')]).toEqual(['ran', false]);
      // What only writes a file says so on stderr.
      expect(ran.out + ran.err).not.toBe('');
      if (line === 'look') return; // It asks, and there is no JSON to a question.
      const json = await neckring([...wordsOf(line), '--json'], {
        folder: name === 'init' ? await scratchFolder() : await exampleFor(name),
        answers: [],
      });
      expect([json.code, json.err]).toEqual([ran.code, '']);
      expect(JSON.parse(json.out)).toMatchObject({
        schema: expect.stringMatching(/^[a-z-]+@\d+$/),
        problems: [],
      });
    },
  );

  it('prints the version', async () => {
    expect((await neckring(['--version'])).out).toMatch(/^neckring \d+\.\d+\.\d+\n$/);
  });
});

describe('a line that is typed wrong', () => {
  it.each([
    [['chek'], '"chek" is not a command; did you mean check?'],
    [['lits'], '"lits" is not a command; did you mean list'],
    [['help', 'obsreve'], '"obsreve" is not a command; did you mean observe?'],
    [['zzzzzz'], '"zzzzzz" is not a command; neckring --help lists them'],
    [['--jsno'], '"--jsno" is not a command'],
    [['-help'], '"-help" is not a command; did you mean --help?'],
    [['git', 'setpu'], 'did you mean git setup?'],
    [['stocks', 'nwe'], 'did you mean new?'],
    [['batch', 'recrod', 'x'], 'did you mean record?'],
    [['completion', 'bsh'], '"bsh" is no shell that is known here; did you mean bash?'],
    [['hlb', '2 g sweet orange oil'], '"2 g sweet orange oil" stands alone; say what it is: --oil'],
    [['list', '--al'], '--al is not an option of list; did you mean --all?'],
    [['observe', '1', '--lok', 'clear'], '--lok is not an option of observe; did you mean --look?'],
    [['new', '--title'], '--title needs a value; give --title TEXT: what it is'],
    [['show'], 'show needs TRIAL; its number or its file'],
    [['show', '13', '14'], 'show takes'],
    [
      ['new', '--title', 'two', 'words'],
      '"words" is left over; put quotes around the whole: --title "two words"',
    ],
  ])('%j', async (words, message) => {
    const ran = await neckring(words, { folder: await exampleLedger() });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
    expect(ran.err.trimEnd().split('\n').length).toBe(1);
  });

  it('is one JSON object with --json', async () => {
    const ran = await neckring(['chek', '--json']);
    expect([ran.code, ran.err]).toEqual([2, '']);
    expect(JSON.parse(ran.out)).toMatchObject({
      schema: 'neckring@1',
      found: {},
      problems: [{ code: 'usage', severity: 'error', hint: 'did you mean check?' }],
    });
  });

  it.each([
    ['list'],
    ['show', '1'],
    ['check'],
    ['reckon', '1'],
    ['observe', '1', '--look', 'clear'],
    ['new'],
  ])('outside a ledger: %j', async (...words) => {
    const ran = await neckring(words, { folder: await scratchFolder() });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toMatch(/^there is no ledger in .* or above it; neckring init begins one here\n$/);
  });
});

describe('an ingredient that is typed wrong', () => {
  it('gets names that hold a word like it', async () => {
    const { code, out } = await neckring(['ingredient', 'ornge'], { folder: await exampleLedger() });
    expect(code).toBe(1);
    expect(out).toMatch(/^Nothing is known by "ornge"\. Did you mean .*orange/);
  });
});

describe('colour', () => {
  it.each([
    ['a terminal', bright, [], true],
    ['a pipe', { ...bright, terminal: false }, [], false],
    ['NO_COLOR', { terminal: true, environment: { TERM: 'xterm', NO_COLOR: '1' } }, [], false],
    ['an empty NO_COLOR', { terminal: true, environment: { TERM: 'xterm', NO_COLOR: '' } }, [], true],
    ['--no-color', bright, ['--no-color'], false],
    ['TERM=dumb', { terminal: true, environment: { TERM: 'dumb' } }, [], false],
    ['FORCE_COLOR into a pipe', { terminal: false, environment: { FORCE_COLOR: '1' } }, [], true],
    [
      'FORCE_COLOR=0 on a terminal',
      { terminal: true, environment: { TERM: 'xterm', FORCE_COLOR: '0' } },
      [],
      false,
    ],
    [
      'NO_COLOR over FORCE_COLOR',
      { terminal: true, environment: { NO_COLOR: '1', FORCE_COLOR: '1' } },
      [],
      false,
    ],
    [
      '--no-color over FORCE_COLOR',
      { terminal: false, environment: { FORCE_COLOR: '1' } },
      ['--no-color'],
      false,
    ],
  ] as const)('%s', async (_, setting, more, isColoured) => {
    const folder = await ledgerOf({ 'trials/1.yaml': wrong });
    const onOut = await neckring(['check', ...more], { ...setting, folder });
    expect(onOut.out.includes(escapeSign)).toBe(isColoured);
    const onErr = await neckring(['show', '2', ...more], { ...setting, folder });
    expect(onErr.err.includes(escapeSign)).toBe(isColoured);
  });

  it.each([['check'], ['show', '17'], ['list'], ['--help'], ['ingredient', 'polysorbate', '80']])(
    'says the same without it: %j',
    async (...words) => {
      const folder = await exampleLedger();
      const coloured = await neckring(words, { ...bright, folder });
      const plain = await neckring([...words, '--no-color'], { ...bright, folder });
      expect(coloured.out.replace(/\u001b\[\d+m/g, '')).toBe(plain.out);
    },
  );

  it('is never in JSON', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': wrong });
    const ran = await neckring(['check', '--json'], {
      folder,
      terminal: true,
      environment: { FORCE_COLOR: '1' },
    });
    expect(ran.out).not.toContain(escapeSign);
  });
});

describe('the width of a terminal', () => {
  const text = plainTrial.replace(
    'sweet orange oil',
    'sweet ornge oil of the second box from the left on the shelf',
  );

  it('a problem is broken between words on a terminal, and stands on one line in a pipe', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': text });
    const setting = { folder, environment: { NO_COLOR: '1' } };
    const piped = await neckring(['check'], setting);
    const wide = await neckring(['check'], { ...setting, terminal: true });
    const head = /^trials\/1\.yaml:5:7: .*$/m.exec(piped.out)?.[0] ?? '';
    expect(head.length).toBeGreaterThan(80);
    expect(Math.max(...wide.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(wide.out.replace(/\n {2}(?![ \d|])/g, ' ')).toBe(piped.out);
    const shown = await neckring(['show', '77', '--json'], setting);
    expect(JSON.parse(shown.out).problems.length).toBe(1);
  });

  it('also in colour, and on stderr', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': text });
    const coloured = await neckring(['reckon', '1'], { ...bright, folder });
    const lines = coloured.err.replace(/\u001b\[\d+m/g, '').split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    for (const line of coloured.err.split('\n'))
      expect((line.match(/\u001b\[[1-9]\d?m/g)?.length ?? 0) % 2).toBe(0);
  });
});

describe('a defect of ours', () => {
  const broken: Io = {
    out: () => {
      throw new TypeError('the screen\nis gone');
    },
    err: () => undefined,
    outIsTerminal: false,
    errIsTerminal: false,
    canAsk: false,
    ask: async () => undefined,
    columns: 80,
    environment: {},
    workingFolder: '/',
    now: () => 0,
    random: () => 0,
  };

  it('prints one line and exits 70', async () => {
    let err = '';
    const io = {
      ...broken,
      err: (text: string) => {
        err += text;
      },
    };
    expect(await run(['--help'], io)).toBe(70);
    expect(err).toMatch(
      /^neckring: a defect of ours \(TypeError: the screen␊is gone\); please report this line .*\n$/,
    );
  });

  it('shows the stack only when it is asked for', async () => {
    let err = '';
    const io = {
      ...broken,
      environment: { NECKRING_DEBUG: '1' },
      err: (text: string) => {
        err += text;
      },
    };
    expect(await run(['--help'], io)).toBe(70);
    expect(err).toMatch(/\n {4}at /);
  });
});

describe('the built program', () => {
  const root = resolve(import.meta.dirname, '../..');
  let bin = '';

  beforeAll(() => {
    // Built apart from the working copy, so that a build that is there is left alone.
    const place = mkdtempSync(join(tmpdir(), 'neckring-built-'));
    for (const part of ['src', 'bin', 'examples', 'build.mjs', 'package.json'])
      cpSync(join(root, part), join(place, part), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(place, 'node_modules'));
    const built = spawnSync(process.execPath, ['build.mjs'], { cwd: place, encoding: 'utf8' });
    if (built.status !== 0) throw new Error(built.stderr);
    bin = join(place, 'bin', 'neckring.js');
    return () => rmSync(place, { recursive: true, force: true });
  }, 60_000);

  it('ends quietly when the pipe is closed', async () => {
    const trials = Object.fromEntries(
      Array.from({ length: 400 }, (_, at) => [
        `trials/${at + 1}.yaml`,
        `trial: ${at + 1}\ntitle: ${'a long title '.repeat(60)}\nstages: {}\n`,
      ]),
    );
    const folder = await ledgerOf(trials);
    const piped = spawnSync(
      'sh',
      ['-c', `"$0" "$1" list --json 2>err.txt | head -n 1; cat err.txt`, process.execPath, bin],
      {
        cwd: folder,
        encoding: 'utf8',
      },
    );
    expect(piped.stdout).toBe('{\n');
  });

  it('lists its commands as the source does, and the ingredients that were meant', async () => {
    const folder = await scratchFolder();
    const misspelt = ['ph', '4.5 g/L citric acdi'];
    for (const words of [['--help'], ['lsit'], misspelt, ['ph', '4.5 g/L citric acid', '--explain']]) {
      const { status, stdout, stderr } = spawnSync(process.execPath, [bin, ...words], {
        cwd: folder,
        encoding: 'utf8',
      });
      expect({ code: status, out: stdout, err: stderr }).toEqual(await neckring(words, { folder }));
    }
  });

  /** Through a terminal of its own; `script` gives one, where it is installed. */
  const hasTerminal = spawnSync('script', ['-qec', 'true', '/dev/null'], { input: '' }).status === 0;
  const onTerminal = (line: string, folder: string, environment: Readonly<Record<string, string>> = {}) => {
    const { PATH = '' } = process.env;
    const ran = spawnSync('script', ['-qec', `"${process.execPath}" "${bin}" ${line}`, '/dev/null'], {
      cwd: folder,
      encoding: 'utf8',
      input: '',
      env: { PATH, TERM: 'xterm-256color', ...environment },
    });
    return { code: ran.status, text: ran.stdout.replaceAll('\r\n', '\n') };
  };

  it.runIf(hasTerminal)('is coloured on a terminal, unless it is asked not to be', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': wrong });
    expect(onTerminal('check', folder)).toMatchObject({ code: 1, text: expect.stringContaining(escapeSign) });
    for (const plain of [{ NO_COLOR: '1' }, { TERM: 'dumb' }])
      expect(onTerminal('check', folder, plain).text).not.toContain(escapeSign);
    expect(onTerminal('check --no-color', folder).text).not.toContain(escapeSign);
  });

  it.runIf(hasTerminal)('runs a pager only where --page asks for one', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': wrong });
    const names = { PAGER: 'sed s/^/paged:/', NO_COLOR: '1' };
    expect(onTerminal('check', folder, names).text).not.toContain('paged:');
    expect(onTerminal('check --page', folder, names)).toMatchObject({
      code: 1,
      text: expect.stringMatching(/^paged:trials/m),
    });
    expect(onTerminal('check --page', folder, { ...names, NECKRING_PAGER: 'cat' }).text).not.toContain(
      'paged:',
    );
    const none = onTerminal('check --page', folder, { PAGER: 'no-such-pager', NO_COLOR: '1' });
    expect(none.code).toBe(1);
    expect(none.text).toMatch(/^trials\/1\.yaml:/m);
    expect(none.text).toContain("the pager no-such-pager can't be started; set NECKRING_PAGER or PAGER");
    // Who leaves it early has read enough.
    expect(onTerminal('--help --page', folder, { PAGER: 'true' })).toEqual({ code: 0, text: '' });
    const piped = spawnSync(process.execPath, [bin, 'check', '--page'], { cwd: folder, encoding: 'utf8' });
    expect([piped.stdout.includes('paged:'), piped.stderr]).toEqual([false, '']);
  });

  it('runs from any folder and hands its exit code back', async () => {
    const folder = await ledgerOf({ 'trials/1.yaml': wrong });
    const checked = spawnSync(process.execPath, [bin, 'check'], {
      cwd: join(folder, 'trials'),
      encoding: 'utf8',
    });
    expect([checked.status, checked.stderr]).toEqual([1, '']);
    expect(checked.stdout).toBe((await neckring(['check'], { folder })).out);
  });
});
