import { describe, expect, it } from 'vitest';
import { readLog } from '../../src/ledger/git-log.ts';
import { readCommit, readObjects, readTree } from '../../src/ledger/git-objects.ts';
import { checkedRevision, splitRevision } from '../../src/ledger/revision-name.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const id = 'a'.repeat(40);

// Source: git-cat-file(1), "BATCH OUTPUT": `<oid> SP <type> SP <size> LF <contents> LF`, `<object> SP missing LF`.
describe('readObjects', () => {
  it('reads objects and what is missing, line ends in the contents included', () => {
    const found = readObjects(bytes(`${id} blob 5\na\nb\n\n\nHEAD:./no file missing\n`), 2);
    expect(found?.[1]).toBeUndefined();
    expect(new TextDecoder().decode(found?.[0]?.bytes)).toBe('a\nb\n\n');
  });

  it('waits for what is still to come', () => {
    const whole = `${id} blob 3\nabc\n`;
    for (let end = 0; end < whole.length; end += 1)
      expect(readObjects(bytes(whole.slice(0, end)), 1)).toBeUndefined();
    expect(readObjects(bytes(whole), 1)).toHaveLength(1);
  });
});

// Source: gitformat, tree object: `<mode> SP <name> NUL <20 bytes of the object's name>`.
describe('readTree', () => {
  it('tells files from folders, links and other repositories', () => {
    const entry = (mode: string, name: string): Uint8Array =>
      Uint8Array.from([...bytes(`${mode} ${name}\0`), ...new Uint8Array(20).fill(0x10)]);
    const all = ['100644', '100755', '40000', '120000', '160000'].flatMap((mode, at) => [
      ...entry(mode, `ü ${at}`),
    ]);
    const read = readTree({ id, kind: 'tree', bytes: Uint8Array.from(all) });
    expect(read.map(({ name, kind }) => [name, kind])).toEqual([
      ['ü 0', 'file'],
      ['ü 1', 'file'],
      ['ü 2', 'folder'],
      ['ü 3', 'other'],
      ['ü 4', 'other'],
    ]);
    expect(read[0]?.id).toBe('10'.repeat(20));
  });
});

it('reads the time of a commit with the offset of who wrote it', () => {
  const text = `tree ${id}\nauthor A B <a@b> 1767225600 -0330\ncommitter C <c@d> 1 +0000\n\nauthor x <y> 5 +0100\n`;
  expect(readCommit({ id, kind: 'commit', bytes: bytes(text) })).toEqual({
    id,
    epochMilliseconds: Date.parse('2026-01-01T00:00:00Z'),
    offsetMinutes: -210,
  });
});

it('reads the log with names that look like anything', () => {
  const other = 'b'.repeat(40);
  const out = `\0${id}\0aaaaaaa\0T\0An\0\0\0\nR090\0old name\0new\nname\0\0${other}\0bbbbbbb\0T\0Bo\0says M\0\0`;
  expect(readLog(out).map(({ short, message, status, paths }) => [short, message, status, paths])).toEqual([
    ['aaaaaaa', '', 'R090', ['old name', 'new\nname']],
    ['bbbbbbb', 'says M', undefined, []],
  ]);
});

describe('splitRevision', () => {
  const none = (): boolean => false;

  it('parts at the first @, but not in the path of a file that is there', () => {
    expect(splitRevision('14@HEAD~3', none)).toEqual({ name: '14', revision: 'HEAD~3' });
    expect(splitRevision('x@HEAD@{1}', none)).toEqual({ name: 'x', revision: 'HEAD@{1}' });
    expect(splitRevision('a@b.yaml', () => true)).toEqual({ name: 'a@b.yaml', revision: undefined });
    expect(splitRevision('a@b.yaml@v2', (path) => path === 'a@b.yaml')).toEqual({
      name: 'a@b.yaml',
      revision: 'v2',
    });
    expect(splitRevision('orange @ home', none).revision).toBeUndefined();
  });

  it('refuses what git could take for an option, a file or two lines', () => {
    for (const odd of ['-p', '--upload-pack=x', 'HEAD:x', 'a\nb', 'a\0b', ''])
      expect(() => checkedRevision(odd)).toThrow();
    expect(checkedRevision('main@{2026-03-01 10:00}')).toBe('main@{2026-03-01 10:00}');
  });
});
