import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bodyMark, kindSchema } from '../../src/ledger/json-schema.ts';
import { fileKinds, schemaFileOf, schemaLine } from '../../src/ledger/schema-files.ts';
import { exampleLedger, found, neckring, readIn, scratchFolder, writeIn } from './neckring.ts';

/** A schema as an older program of another shape would have written it. */
function olderSchema(kind: (typeof fileKinds)[number]): string {
  const { schema } = kindSchema(kind, '0.0.9');
  const older = { ...schema, title: 'a beaker' };
  const head = String(schema['$comment']).replace(/mark [\da-f]{8}/u, `mark ${bodyMark(older)}`);
  return `${JSON.stringify({ ...older, $comment: head }, null, 2)}\n`;
}

describe('schema', () => {
  it('alone lists the kinds of file', async () => {
    const { code, out } = await neckring(['schema']);
    expect(code).toBe(0);
    for (const kind of fileKinds) expect(out).toContain(`${kind} `);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it.each(fileKinds)('%s is printed as JSON, without a ledger', async (kind) => {
    const { code, out, err } = await neckring(['schema', kind]);
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual(kindSchema(kind, '0.1.0').schema);
    const { jsonSchema } = await found(['schema', kind]);
    expect(jsonSchema).toBe(out);
  });

  it('says which kinds there are where the word is none', async () => {
    const { code, err } = await neckring(['schema', 'trail']);
    expect(code).toBe(2);
    expect(err).toBe('"trail" is not a kind of file; write "trial"\n');
  });

  it('refuses --replace and --dry-run without --write', async () => {
    expect((await neckring(['schema', '--replace'])).err).toContain('--replace goes with --write');
    expect((await neckring(['schema', 'trial', '--dry-run'])).code).toBe(2);
  });
});

describe('the schemas in a ledger', () => {
  it('pinned: those of the example ledger are those of this program', async () => {
    const folder = await exampleLedger();
    for (const kind of fileKinds)
      expect(await readIn(folder, schemaFileOf(kind))).toBe(kindSchema(kind, '0.1.0').text);
    expect((await neckring(['schema', '--write'], { folder })).err).toBe(
      'nothing to write: the schemas are those of this neckring\n',
    );
  });

  it('are added to a ledger that has none, whose check has nothing to say before', async () => {
    const folder = await exampleLedger();
    await rm(join(folder, 'schema'), { recursive: true });
    const before = await neckring(['check'], { folder });
    expect(before.out).not.toContain('schema');
    const dry = await neckring(['schema', '--write', '--dry-run'], { folder });
    expect(dry.err).toContain('would write schema/trial.json');
    expect(await readdir(folder)).not.toContain('schema');
    const trial = await readIn(folder, 'trials/0013-orange-1-to-3.yaml');
    const { code, out, err } = await neckring(['schema', '--write'], { folder });
    expect(code).toBe(0);
    expect(err).toContain('wrote schema/trial.json\n');
    expect(out).toContain(schemaLine('trial').trim());
    expect(await readIn(folder, 'trials/0013-orange-1-to-3.yaml')).toBe(trial);
    expect((await readdir(join(folder, 'schema'))).sort()).toEqual(
      [...fileKinds].sort().map((kind) => `${kind}.json`),
    );
  });

  it('that are older are a warning of check, and renewed; those of this program are left alone', async () => {
    const folder = await exampleLedger();
    const quiet = await neckring(['check'], { folder });
    await writeIn(folder, 'schema/trial.json', olderSchema('trial'));
    await writeIn(folder, 'schema/series.json', olderSchema('series'));
    const { code, out } = await neckring(['check'], { folder });
    expect(code).toBe(quiet.code);
    expect(out).toContain('schema/trial.json:4:');
    expect(out).toContain('schema/trial.json and schema/series.json say to editors what neckring 0.0.9 took');
    expect(out).toContain('neckring schema --write renews them');
    const checked = await found(['check'], { folder });
    expect(checked['errors']).toEqual({ value: 0, unit: '' });
    const renewed = await found(['schema', '--write'], { folder });
    expect(renewed['written']).toEqual(['schema/trial.json', 'schema/series.json']);
    expect((await neckring(['check'], { folder })).out).toBe(quiet.out);
  });

  it('of which one is missing are a warning too', async () => {
    const folder = await exampleLedger();
    await rm(join(folder, 'schema/batch.json'));
    const { code, out } = await neckring(['check'], { folder });
    expect(code).toBe(0);
    expect(out).toContain('schema/batch.json is missing');
    expect((await found(['schema', '--write'], { folder }))['written']).toEqual(['schema/batch.json']);
  });

  it('that another version of the same shapes wrote are left alone', async () => {
    const folder = await exampleLedger();
    const { text } = kindSchema('trial', '0.0.9');
    await writeIn(folder, 'schema/trial.json', text.replaceAll('\n', '\r\n'));
    expect((await neckring(['check'], { folder })).out).not.toContain('schema');
    expect((await found(['schema', '--write'], { folder }))['written']).toEqual([]);
  });

  it.each([
    ['was not written by neckring', '{ "title": "mine" }\n'],
    ['was not written by neckring', 'no JSON'],
    ['was changed by hand', kindSchema('trial', '0.1.0').text.replace('a trial', 'my trial')],
  ])('that %s are replaced only where that is asked, and nothing else is written', async (how, text) => {
    const folder = await exampleLedger();
    await writeIn(folder, 'schema/trial.json', text);
    await rm(join(folder, 'schema/batch.json'));
    const refused = await neckring(['schema', '--write'], { folder });
    expect(refused.code).toBe(2);
    expect(refused.err).toBe(`schema/trial.json ${how}; move it away, or write over it with --replace\n`);
    expect(await readIn(folder, 'schema/trial.json')).toBe(text);
    expect(await readdir(join(folder, 'schema'))).not.toContain('batch.json');
    const replaced = await found(['schema', '--write', '--replace'], { folder });
    expect(replaced['written']).toEqual(['schema/trial.json', 'schema/batch.json']);
    expect(await readIn(folder, 'schema/trial.json')).toBe(kindSchema('trial', '0.1.0').text);
  });

  it('of somebody else are nothing to check', async () => {
    const folder = await exampleLedger();
    await rm(join(folder, 'schema'), { recursive: true });
    await mkdir(join(folder, 'schema'));
    await writeIn(folder, 'schema/trial.json', '{}');
    expect((await neckring(['check'], { folder })).out).not.toContain('schema');
  });

  it('are asked for in a ledger', async () => {
    const { code, err } = await neckring(['schema', '--write'], { folder: await scratchFolder() });
    expect([code, err.includes('there is no ledger')]).toEqual([2, true]);
  });
});
