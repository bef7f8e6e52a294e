import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, scratchFolder } from '../commands/neckring.ts';
import { ledgerWriters, textsIn } from './writers.ts';

const now = '2026-03-12T12:00:00Z';
const picture = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0);

/** Puts a file or a folder somewhere else and a link in its place. */
function lead(from: string, to: string): void {
  mkdirSync(dirname(to), { recursive: true });
  renameSync(from, to);
  symlinkSync(relative(dirname(from), to), from);
}

const yamlIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => name.endsWith('.yaml'));

/** The ledger in a folder of its own, so that there is something outside it. */
async function place() {
  const folder = await exampleLedger();
  const outside = await scratchFolder();
  writeFileSync(join(outside, 'seen.jpg'), picture);
  const linesOf = (words: readonly string[]): readonly string[] =>
    words.map((word) => (word === '../seen.jpg' ? join(outside, 'seen.jpg') : word));
  return { folder, outside, linesOf };
}

const rewriting: ReadonlySet<string> = new Set(
  'observe look same end reckon weigh overpoured decide stocks dropper'.split(' '),
);

describe('links and permission bits of a ledger, through every command that writes', () => {
  it('files that are links inside the ledger: the link stays, what it leads to is written', async () => {
    const { folder, linesOf } = await place();
    const names = yamlIn(folder).filter((name) => name !== 'bench.yaml');
    for (const name of names) lead(join(folder, name), join(folder, 'kept', name));
    const writers = ledgerWriters.filter(([, name = '']) => rewriting.has(name));
    for (const [hour, [file, ...words]] of writers.entries()) {
      const before = textsIn(folder);
      const ran = await neckring(linesOf(words), { folder, now: `2026-03-13T${10 + hour}:00:00Z` });
      expect([words, ran.code <= 1, ran.code <= 1 ? '' : ran.err]).toEqual([words, true, '']);
      const after = textsIn(folder);
      const changed = Object.keys(after).filter((name) => after[name] !== before[name]);
      expect([words, changed.length > 0]).toEqual([words, true]);
      for (const name of changed)
        expect([words, name]).toEqual([words, expect.stringMatching(/^kept|^photos/)]);
      expect([words, changed.join()]).toEqual([words, expect.stringMatching(file)]);
    }
    expect(names.filter((name) => !lstatSync(join(folder, name)).isSymbolicLink())).toEqual([]);
  });

  it('folders that are links inside the ledger: what is new goes to where they lead', async () => {
    const { folder, linesOf } = await place();
    for (const name of ['trials', 'series']) lead(join(folder, name), join(folder, 'kept', name));
    for (const name of ['batches', 'photos']) {
      mkdirSync(join(folder, 'kept', name));
      symlinkSync(join('kept', name), join(folder, name));
    }
    for (const [, ...words] of ledgerWriters) {
      const ran = await neckring(linesOf(words), { folder, now });
      expect([words, ran.code <= 1, ran.code <= 1 ? '' : ran.err]).toEqual([words, true, '']);
    }
    const kept = ['trials', 'series', 'batches', 'photos'];
    expect(kept.filter((name) => !lstatSync(join(folder, name)).isSymbolicLink())).toEqual([]);
    expect(readdirSync(join(folder, 'kept/batches'))).toEqual(['2026-03-12-1.yaml']);
    expect(readdirSync(join(folder, 'kept/photos'))).toHaveLength(1);
    expect(readdirSync(join(folder, 'kept/series'))).toContain('cold.yaml');
  });

  it('links that lead outside are refused: exit 2, both named, nothing written on either side', async () => {
    const { folder, outside, linesOf } = await place();
    for (const name of yamlIn(folder).filter((one) => one !== 'bench.yaml'))
      lead(join(folder, name), join(outside, name));
    for (const name of ['batches', 'photos']) {
      mkdirSync(join(outside, name), { recursive: true });
      symlinkSync(join(outside, name), join(folder, name));
    }
    for (const [file, ...words] of ledgerWriters) {
      // New trials go into a folder that is the ledger's own.
      if (file.source === 'trials\\/0018') continue;
      const refused = file.source === 'trials\\/0040' ? 'trials/0016' : file.source;
      const before = [textsIn(folder), textsIn(outside)];
      const ran = await neckring(linesOf(words), { folder, now });
      expect([words, ran.code, ran.out]).toEqual([words, 2, '']);
      expect([words, ran.err]).toEqual([
        words,
        expect.stringMatching(new RegExp(`^${refused}\\S* is a link that leads outside the ledger, to `)),
      ]);
      expect([words, textsIn(folder), textsIn(outside)]).toEqual([words, ...before]);
    }
  });

  it('folders of the ledger that lead outside take no new file', async () => {
    const { folder, outside, linesOf } = await place();
    for (const name of ['trials', 'series', 'formulas']) lead(join(folder, name), join(outside, name));
    for (const [, ...words] of ledgerWriters.filter(([, name = '']) =>
      /new|ladder|next|renumber/.test(name),
    )) {
      const before = textsIn(outside);
      const ran = await neckring(linesOf(words), { folder, now });
      expect([words, ran.code, ran.err]).toEqual([
        words,
        2,
        expect.stringMatching(/leads outside the ledger|there is no/),
      ]);
      expect([words, textsIn(outside)]).toEqual([words, before]);
    }
  });

  it('what the tool keeps for itself is never written through a link that leads outside', async () => {
    const { folder, outside } = await place();
    symlinkSync(outside, join(folder, '.neckring'));
    const before = textsIn(outside);
    const ran = await neckring(['observe', '14', '--look', 'clear'], { folder, now });
    expect([ran.code, ran.err]).toEqual([
      2,
      expect.stringMatching(/^\.neckring is a link that leads outside/),
    ]);
    for (const words of [['list'], ['due'], ['check'], ['series', 'orange ladder']])
      expect([words, (await neckring(words, { folder, now })).code <= 1]).toEqual([words, true]);
    expect(textsIn(outside)).toEqual(before);
  });

  it('permission bits stay as they are, whoever may read', async () => {
    const { folder, linesOf } = await place();
    const names = yamlIn(folder);
    for (const [at, name] of names.entries())
      chmodSync(join(folder, name), [0o600, 0o640, 0o664][at % 3] ?? 0);
    const bits = (): readonly (readonly [string, number])[] =>
      names.map((name) => [name, statSync(join(folder, name)).mode & 0o777]);
    const before = bits();
    for (const [, ...words] of ledgerWriters.filter(([, name = '']) => rewriting.has(name)))
      expect([words, (await neckring(linesOf(words), { folder, now })).code <= 1]).toEqual([words, true]);
    expect(bits()).toEqual(before);
  });

  it('a page may be written outside, where the person typed it, and through a link of theirs', async () => {
    const { folder, outside } = await place();
    const page = join(outside, 'report.html');
    expect((await neckring(['report', 'orange ladder', '--html', page], { folder, now })).code).toBe(0);
    symlinkSync(page, join(folder, 'mine.html'));
    expect((await neckring(['report', 'orange ladder', '--html', 'mine.html'], { folder, now })).code).toBe(
      0,
    );
    expect(lstatSync(join(folder, 'mine.html')).isSymbolicLink()).toBe(true);
    expect(readFileSync(page, 'utf8')).toContain('<!doctype html>');
  });

  it('init goes where it is told, through a link too, and not into a ledger by one', async () => {
    const { folder, outside } = await place();
    symlinkSync(outside, join(folder, '..', `${folder.split('/').at(-1)}-link`));
    const made = await neckring(['init', 'drinks', '--time-zone', 'Europe/Lisbon'], {
      folder: `${folder}-link`,
      now,
    });
    expect([made.code, readdirSync(join(outside, 'drinks'))]).toEqual([
      0,
      expect.arrayContaining(['bench.yaml']),
    ]);
    symlinkSync(folder, join(outside, 'back'));
    const refused = await neckring(['init', 'back/new', '--time-zone', 'Europe/Lisbon'], {
      folder: outside,
      now,
    });
    expect([refused.code, readdirSync(folder).includes('new')]).toEqual([2, false]);
  });
});
