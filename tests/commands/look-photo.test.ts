import { mkdir, readdir, readFile, rm, symlink, truncate, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sizeText } from '../../src/commands/photo.ts';
import { exampleLedger, neckring, readIn, record, scratchFolder } from './neckring.ts';

const now = '2026-03-12T12:00:00Z';
const fourteen = 'trials/0014-orange-1-to-2.5.yaml';
const named = 'photos/0014-2026-03-12-beaker.jpg';
/** Bytes that are no text in any encoding. */
const picture = Uint8Array.from({ length: 3_210_000 }, (_, at) => (at * 7919 + (at >> 8)) % 256);

async function camera(name = 'IMG_1.JPG', bytes: Uint8Array = picture): Promise<string> {
  const path = join(await scratchFolder(), name);
  await writeFile(path, bytes);
  return path;
}

const observe = (folder: string, photo: string, more: readonly string[] = []) =>
  neckring(['observe', '14', '--look', 'clear', '--photo', photo, ...more], { folder, now });

describe('observe --photo', () => {
  it('copies a picture from anywhere, byte for byte, and says how large it is', async () => {
    const folder = await exampleLedger();
    const from = await camera();
    const ran = await observe(folder, from);
    expect(ran.code).toBe(0);
    expect(ran.err).toContain(`copied ${from} (3.2 MB) to ${named}\n`);
    expect(await readIn(folder, fourteen)).toContain(`    look: clear\n    photo: ${named}\n`);
    expect(Buffer.compare(await readFile(join(folder, named)), picture)).toBe(0);
    expect(await readdir(join(folder, 'photos'))).toEqual(['0014-2026-03-12-beaker.jpg']);
    expect((await neckring(['check'], { folder, now })).out).not.toContain('photo');
  });

  it('takes day, sample and ending for its name, and counts on where that is taken', async () => {
    const folder = await exampleLedger();
    await observe(folder, await camera());
    await observe(folder, await camera('b.jpg', new Uint8Array([1, 2, 3])), ['--note', 'again']);
    expect(await readIn(folder, fourteen)).toContain('photo: photos/0014-2026-03-12-beaker-2.jpg');
    const cold = ['observe', '17', '--sample', 'cold glass', '--at', 'yesterday 18:00', '--photo'];
    await neckring([...cold, await camera('c.png')], { folder, now });
    expect((await readdir(join(folder, 'photos'))).sort()).toEqual([
      '0014-2026-03-12-beaker-2.jpg',
      '0014-2026-03-12-beaker.jpg',
      '0017-2026-03-11-cold-glass.png',
    ]);
  });

  it('the same line typed again copies and writes nothing', async () => {
    const folder = await exampleLedger();
    const from = await camera();
    await observe(folder, from);
    const before = await readIn(folder, fourteen);
    const ran = await observe(folder, from);
    expect(ran.err).toContain('says so already; nothing written');
    expect(await readIn(folder, fourteen)).toBe(before);
    expect(await readdir(join(folder, 'photos'))).toHaveLength(1);
  });

  it('only refers to one that is in the ledger, from the root or from the working folder', async () => {
    const folder = await exampleLedger();
    await mkdir(join(folder, 'photos'));
    await writeFile(join(folder, 'photos/bench.jpg'), picture);
    const ran = await observe(folder, 'photos/bench.jpg');
    expect(ran.err).toContain('photos/bench.jpg (3.2 MB) is in the ledger\n');
    const below = join(folder, 'photos');
    const words = ['observe', '14', '--note', 'x', '--photo'];
    for (const typed of ['bench.jpg', './bench.jpg', 'photos/bench.jpg', join(below, 'bench.jpg')])
      await neckring([...words, typed, '--by', typed], { folder: below, now });
    expect((await readIn(folder, fourteen)).match(/photo: photos\/bench\.jpg/g)).toHaveLength(5);
    expect(await readdir(below)).toEqual(['bench.jpg']);
  });

  it('with --dry-run says what it would copy', async () => {
    const folder = await exampleLedger();
    const ran = await observe(folder, await camera(), ['--dry-run']);
    expect(ran.err).toMatch(/would copy .* \(3\.2 MB\) to photos\/0014-2026-03-12-beaker\.jpg/);
    expect(await readdir(folder)).not.toContain('photos');
  });

  it('says it as JSON', async () => {
    const folder = await exampleLedger();
    const { out } = await observe(folder, await camera(), ['--json']);
    expect(record(JSON.parse(out))['found']).toMatchObject({
      photo: named,
      photoSize: { value: 3_210_000, unit: 'bytes' },
    });
  });

  it('refuses one that is missing, a folder, or over 50 MB, and writes nothing', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, fourteen);
    const large = await camera('large.jpg', new Uint8Array());
    await truncate(large, 61_200_000);
    for (const [typed, message] of [
      ['nowhere.jpg', '--photo: there is no file nowhere.jpg; give its path from this folder'],
      ['trials', '--photo: trials is a folder; name the picture in it'],
      [large, `--photo: ${large} is 61 MB; pictures up to 50 MB are copied into the ledger`],
    ] as const) {
      const ran = await observe(folder, typed);
      expect([ran.code, ran.out]).toEqual([2, '']);
      expect(ran.err).toContain(message);
    }
    expect(await readIn(folder, fourteen)).toBe(before);
    expect(await readdir(folder)).not.toContain('photos');
  });

  it('copies nothing where the look is refused', async () => {
    const folder = await exampleLedger();
    await neckring(['end', '14', '--why', 'spilled'], { folder, now });
    expect((await observe(folder, await camera())).code).toBe(2);
    expect(await readdir(folder)).not.toContain('photos');
  });

  it('does not follow a photos folder that leads out of the ledger', async () => {
    const folder = await exampleLedger();
    const outside = await scratchFolder();
    await symlink(outside, join(folder, 'photos'));
    const ran = await observe(folder, await camera());
    expect([ran.code, await readdir(outside)]).toEqual([2, []]);
    expect(ran.err).toContain('leads outside the ledger');
  });

  it('copies nothing where the file can not be written', async () => {
    const folder = await exampleLedger();
    await writeFile(join(folder, '.neckring'), 'in the way of the lock');
    const ran = await observe(folder, await camera());
    expect(ran.code).toBe(2);
    expect(await readdir(folder)).not.toContain('photos');
  });

  it('typed again it copies a picture that was lost meanwhile', async () => {
    const folder = await exampleLedger();
    const from = await camera();
    await observe(folder, from);
    const before = await readIn(folder, fourteen);
    await rm(join(folder, named));
    await observe(folder, from);
    expect(await readIn(folder, fourteen)).toBe(before);
    expect(Buffer.compare(await readFile(join(folder, named)), picture)).toBe(0);
  });

  it('two at once get two names', async () => {
    const folder = await exampleLedger();
    const bytes = [1, 2, 3].map((first) => Uint8Array.from({ length: 1000 }, () => first));
    const cameras = await Promise.all(bytes.map((one, at) => camera(`${at}.jpg`, one)));
    await Promise.all(cameras.map((from, at) => observe(folder, from, ['--note', `number ${at}`])));
    const names = await readdir(join(folder, 'photos'));
    expect(names).toHaveLength(3);
    const firsts = await Promise.all(
      names.map(async (name) => (await readFile(join(folder, 'photos', name)))[0]),
    );
    expect(firsts.sort()).toEqual([1, 2, 3]);
  });

  it('check names a photo that is missing or outside the ledger', async () => {
    const folder = await exampleLedger();
    const text = await readIn(folder, fourteen);
    const at = '  - at: 2026-03-10T09:00+00:00\n    photo: ';
    await writeFile(join(folder, fourteen), `${text}${at}photos/gone.jpg\n${at}../out.jpg\n`);
    const { code, out } = await neckring(['check'], { folder, now });
    expect(code).toBe(1);
    expect(out).toContain('there is no photo "photos/gone.jpg"');
    expect(out).toContain('the photo "../out.jpg" is outside the ledger');
  });
});

describe('sizes', () => {
  it.each([
    [0, '0 bytes'],
    [999, '999 bytes'],
    [1000, '1 kB'],
    [839_600, '840 kB'],
    [999_499, '999 kB'],
    [999_500, '1.0 MB'],
    [3_249_999, '3.2 MB'],
    [50_000_000, '50 MB'],
  ])('%d is %s', (bytes, text) => {
    expect(sizeText(bytes)).toBe(text);
  });
});
