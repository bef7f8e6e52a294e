import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  cpSync,
  lchownSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli.ts';
import { exampleLedger, neckring, readIn, writeIn } from '../commands/neckring.ts';
import { programRunner } from './processes.ts';
import { ledgerWriters, outWriters, textsIn } from './writers.ts';

const example = new URL('../../examples/orange-cardamom', import.meta.url);

const isThorough = Number(process.env['NECKRING_ROUNDS'] ?? 0) >= 50;
/** Each is a process of its own. */
const someOf = <One>(all: readonly One[]): readonly One[] =>
  isThorough ? all : all.filter((_, at) => at % 3 === 0);

const picture = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0);
/** Those that change files which are there. */
const changing: ReadonlySet<string> = new Set(
  'observe look same end reckon weigh overpoured decide stocks dropper'.split(' '),
);
const writers = [...ledgerWriters, ...outWriters];

describe.runIf(process.platform === 'linux')('a disk that refuses, told through the commands', () => {
  const program = programRunner();
  const isRoot = process.getuid?.() === 0;
  const nobody = 65_534;
  let scratch = '';

  beforeAll(() => {
    scratch = mkdtempSync(join(tmpdir(), 'neckring-refuses-'));
    chmodSync(scratch, 0o755);
    writeFileSync(join(scratch, 'seen.jpg'), picture);
  });
  afterAll(() => {
    spawnSync('chmod', ['-R', 'u+w', scratch]);
    rmSync(scratch, { recursive: true, force: true });
  });

  const ledger = (name: string): string => {
    const folder = join(scratch, name);
    cpSync(example, folder, { recursive: true });
    return folder;
  };
  /** As somebody who is not root: for root nothing is forbidden. */
  const asNobody = (folder: string, words: readonly string[]) =>
    program.run(folder, words, isRoot ? { uid: nobody, gid: nobody } : {});

  it('folders that may not be written: exit 2, the file and the cause, nothing changed, nothing left', () => {
    const folder = ledger('folders');
    spawnSync('chmod', ['-R', 'a-w', folder]);
    const before = textsIn(folder);
    for (const [, ...words] of someOf(writers)) {
      const ran = asNobody(folder, words);
      expect([words, ran.status, ran.stdout]).toEqual([words, 2, '']);
      expect([words, ran.stderr]).toEqual([
        words,
        expect.stringMatching(/^permission denied: \S+; allow yourself/),
      ]);
    }
    expect(textsIn(folder)).toEqual(before);
    const empty = join(scratch, 'empty');
    mkdirSync(empty, { mode: 0o555 });
    const begun = asNobody(empty, ['init', 'drinks']);
    expect([begun.status, begun.stderr]).toEqual([
      2,
      expect.stringMatching(/^permission denied: .*drinks; /),
    ]);
  });

  it('files that may not be written, in folders that may: each is named', () => {
    const folder = ledger('files');
    chownAll(folder, isRoot ? nobody : undefined);
    for (const place of ['trials', 'series', '.'])
      for (const name of readdirSync(join(folder, place)).filter((one) => one.endsWith('.yaml')))
        chmodSync(join(folder, place, name), 0o444);
    const before = textsIn(folder);
    const rewriting = ledgerWriters.filter(
      ([, name = '', ...more]) => changing.has(name) && !more.includes('--photo'),
    );
    for (const [file, ...words] of someOf(rewriting)) {
      const ran = asNobody(folder, words);
      expect([words, ran.status, ran.stdout]).toEqual([words, 2, '']);
      expect([words, ran.stderr]).toEqual([words, expect.stringMatching(/^permission denied: /)]);
      expect(ran.stderr).toMatch(file);
    }
    expect(textsIn(folder)).toEqual(before);
  });

  it('files that may not be read are named too', () => {
    const folder = ledger('unread');
    chownAll(folder, isRoot ? nobody : undefined);
    chmodSync(join(folder, 'trials/0014-orange-1-to-2.5.yaml'), 0);
    for (const words of [
      ['show', '14'],
      ['observe', '14', '--look', 'clear'],
      ['list'],
      ['check'],
      ['series', 'orange ladder'],
    ]) {
      const ran = asNobody(folder, words);
      expect([words, ran.status === 1 || ran.status === 2]).toEqual([words, true]);
      expect([words, `${ran.stdout}${ran.stderr}`]).toEqual([
        words,
        expect.stringMatching(/permission denied: .*0014-orange/),
      ]);
    }
  });

  const bound = mkdtempSync(join(tmpdir(), 'neckring-bound-'));
  const canMount = spawnSync('mount', ['-t', 'tmpfs', 'tmpfs', bound]).status === 0;
  afterAll(() => {
    if (canMount) spawnSync('umount', [bound]);
    rmSync(bound, { recursive: true, force: true });
  });

  it.runIf(canMount)(
    'a disk that can only be read: exit 2, the file and the cause, also for root',
    async () => {
      const folder = join(bound, 'ledger');
      cpSync(example, folder, { recursive: true });
      writeFileSync(join(bound, 'seen.jpg'), picture);
      spawnSync('mount', ['-o', 'remount,ro', bound]);
      const before = textsIn(folder);
      for (const [, ...words] of writers) {
        const ran = await neckring(words, { folder });
        expect([words, ran.code, ran.out]).toEqual([words, 2, '']);
        expect([words, ran.err]).toEqual([
          words,
          expect.stringMatching(/\S+ lies on a disk that can only be read; copy/),
        ]);
      }
      expect(textsIn(folder)).toEqual(before);
    },
  );
});

describe('names and files that a disk will not have, told through the commands', () => {
  it('a name that is too long', async () => {
    const folder = await exampleLedger();
    const long = 'o'.repeat(300);
    for (const words of [
      ['export', 'compositions', '17', '--to', `${long}.csv`],
      ['give', 'orange cardamom', '--to', `${long}.md`],
      ['scale', 'orange cardamom', '--to', '20 L syrup', '--sheet', `${long}.html`],
      ['init', `../${long}`],
    ]) {
      const ran = await neckring(words, { folder });
      expect([words, ran.code, ran.out, ran.err.includes(`the name is too long for this disk: `)]).toEqual([
        words,
        2,
        '',
        true,
      ]);
      expect(ran.err).toContain(long);
    }
  });

  it('a name that differs only in capitals from one that is there', async () => {
    const folder = await exampleLedger();
    await neckring(['batch', 'record', '17', 'citric', '4.48', '--name', 'first'], { folder });
    const filed = await readIn(folder, 'batches/first.yaml');
    await writeIn(folder, 'batches/MY-TANK.yaml', filed.replace('batch: first', 'batch: another'));
    const ran = await neckring(['batch', 'record', '17', 'citric', '4.48', '--name', 'my tank'], { folder });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain('batches/my-tank.yaml differs only in capital letters from MY-TANK.yaml');
  });

  it.each([
    // Told at the question; then the person leaves.
    ['looked at', 0, ['look'], 'clear'],
    ['weighed', 2, ['weigh', '17', '--again'], '5'],
  ])('a trial that vanishes while it is %s', async (_, exit, words, answer) => {
    const folder = await exampleLedger();
    let said = '';
    const code = await run(words, {
      out: (text) => {
        said += text;
      },
      err: (text) => {
        said += text;
      },
      outIsTerminal: false,
      errIsTerminal: false,
      canAsk: true,
      ask: async () => {
        if (!readdirSync(folder).includes('trials')) return undefined;
        rmSync(join(folder, 'trials'), { recursive: true });
        return answer;
      },
      columns: 80,
      environment: {},
      workingFolder: folder,
      now: () => Date.parse('2026-03-12T12:00:00Z'),
      random: () => 0.5,
    });
    expect([code, said]).toEqual([
      exit,
      expect.stringMatching(/trials\/.*\.yaml is gone|there is no trial 17/),
    ]);
    expect(readdirSync(folder)).not.toContain('trials');
  });
});

function chownAll(folder: string, owner: number | undefined): void {
  if (owner === undefined) return;
  chownSync(folder, owner, owner);
  for (const name of readdirSync(folder, { recursive: true }))
    lchownSync(join(folder, String(name)), owner, owner);
}
