/** New files begin with the line that points editors to their schema; what reads files passes over it. */

import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mergeTexts } from '../../src/ledger/merge/merge-texts.ts';
import { schemaLine } from '../../src/ledger/schema-files.ts';
import { filesOf, parsed, refusals } from '../ledger/schema/validators.ts';
import { exampleLedger, neckring, readIn, scratchFolder, writeIn } from './neckring.ts';

const now = '2026-03-16T09:00:00Z';

const ladder = ['ladder', '13', '--rungs', '1:4, 1:2.5', '--series', 'cold ladder', '--write'];
const makers: readonly (readonly string[])[] = [
  ['new', '--title', 'an empty one'],
  ['new', '--from', '13', '--title', 'the third again'],
  ladder,
  ['batch', 'record', 'orange cardamom', '--to', '20 L syrup', '--name', 'b1'],
  ['import', 'notes.csv', '--map', 'map.yaml'],
  ['take', 'gift.yaml'],
];

const gift = `given: 1
ingredients:
  bergamot oil of mine:
    role: oil
trials:
  - trial: 3
    title: bergamot
    stages:
      emulsion:
        - bergamot oil of mine: 2 g
        - polysorbate 80: 6 g
        - water: to 50 g
formulas:
  - formula: bergamot water
    stages:
      drink:
        - emulsion of 3: 1 g
        - water: to 1 L
`;

/** A ledger with everything that the commands above make, and the files that were new. */
async function made(hasSchemas: boolean) {
  const folder = await exampleLedger();
  if (!hasSchemas) await rm(join(folder, 'schema'), { recursive: true });
  const before = new Map(filesOf(folder).map(({ file, text }) => [file, text]));
  await writeIn(folder, 'gift.yaml', gift);
  await writeIn(folder, 'notes.csv', 'Date,Oil (g),Soap (g),Total (g)\n2026-01-05,2,6,50\n');
  await writeIn(
    folder,
    'map.yaml',
    'Date: made\nOil (g): stages.emulsion.sweet orange oil in g\nSoap (g): stages.emulsion.polysorbate 80 in g\nTotal (g): stages.emulsion.water in g, made up\n',
  );
  for (const words of makers) {
    const ran = await neckring(words, { folder, now });
    expect([words, ran.code <= 1, ran.err]).toEqual([words, true, ran.err]);
  }
  const files = filesOf(folder);
  return { folder, before, files, fresh: files.filter(({ file }) => !before.has(file)) };
}

describe('the line in new files', () => {
  it('stands first in every new file of every command, valid by its schema; others are as they were', async () => {
    const { folder, before, files, fresh } = await made(true);
    expect(fresh.map(({ kind }) => kind).sort()).toEqual([
      ...['batch', 'formula', 'series', 'trial', 'trial', 'trial', 'trial', 'trial', 'trial'],
    ]);
    for (const { file, kind, text } of fresh) {
      expect([file, text.startsWith(schemaLine(kind)), text.split('yaml-language-server').length]).toEqual([
        file,
        true,
        2,
      ]);
      const isEmpty = text.includes('# in the order of addition');
      expect([file, isEmpty ? [] : refusals(kind, parsed(text))]).toEqual([file, []]);
    }
    for (const { file, text } of files)
      if (before.has(file) && file !== 'ingredients.yaml') expect(text).toBe(before.get(file));
    // The empty trial has nothing in it yet; nothing else is wrong.
    const { out } = await neckring(['check'], { folder, now });
    expect(out.match(/ error/gu)?.length).toBe(1);
  });

  it('is left out where the ledger has no schemas', async () => {
    const { fresh } = await made(false);
    expect(fresh.length).toBe(9);
    for (const { text } of fresh) expect(text).not.toContain('yaml-language-server');
  });

  it('stands in the files of a new ledger', async () => {
    const folder = await scratchFolder();
    await neckring(['init', '--time-zone', 'Europe/Lisbon'], { folder, now });
    for (const { kind, text } of filesOf(folder)) {
      expect(text.startsWith(schemaLine(kind))).toBe(true);
      expect(refusals(kind, parsed(text))).toEqual([]);
    }
    await rm(join(folder, 'ingredients.yaml'));
    await neckring(['stocks', 'new', 'salt 1', '--contains', '1 % sodium chloride', '--in', 'water'], {
      folder,
      now,
    });
    expect((await readIn(folder, 'ingredients.yaml')).split('\n').slice(0, 2)).toEqual([
      '# yaml-language-server: $schema=schema/ingredients.json',
      'ingredients:',
    ]);
  });
});

describe('what reads files passes over the line', () => {
  const pointed = async (): Promise<string> => {
    const folder = await exampleLedger();
    for (const { file, kind, text } of filesOf(folder))
      await writeIn(folder, file, schemaLine(kind) + bare(text));
    return folder;
  };
  const bare = (text: string): string => text.replace(/^# yaml-language-server:.*\n/u, '');
  const unpointed = async (): Promise<string> => {
    const folder = await exampleLedger();
    for (const { file, text } of filesOf(folder)) await writeIn(folder, file, bare(text));
    return folder;
  };

  it('the everyday commands say the same with it and without', async () => {
    const [folder, other] = [await pointed(), await unpointed()];
    const lines =
      'check|list|due|show 17|series orange-ladder|drink 17|give orange-cardamom --as yaml|give 17'.split(
        '|',
      );
    for (const words of [...lines, 'export compositions', 'reckon 17 --dry-run'].map((line) =>
      line.split(' '),
    )) {
      const named = words.map((word) => (word.startsWith('orange-') ? word.replace('-', ' ') : word));
      const [ran, bare] = [
        await neckring(named, { folder, now }),
        await neckring(named, { folder: other, now }),
      ];
      expect([named, ran.code, ran.out]).toEqual([named, bare.code, bare.out]);
      expect([named, ran.code <= 1]).toEqual([named, true]);
    }
  });

  it('a ladder and a batch that were written without it are not written a second time', async () => {
    const folder = await exampleLedger();
    const batch = ['batch', 'record', 'orange cardamom', '--to', '20 L syrup'];
    expect((await neckring(batch, { folder, now })).code).toBeLessThan(2);
    await neckring(['new', '--title', 'kept'], { folder, now });
    const [file = ''] = await readdir(join(folder, 'batches'));
    await writeIn(folder, `batches/${file}`, bare(await readIn(folder, `batches/${file}`)));
    const again = await neckring(batch, { folder, now });
    expect([again.code, again.err.includes('says the same already')]).toEqual([2, true]);
    expect(await readdir(join(folder, 'batches'))).toEqual([file]);
  });

  it('a trial that is looked at or gets another number keeps it at the top', async () => {
    const folder = await pointed();
    await neckring(['observe', '14', '--look', 'hazy'], { folder, now });
    await neckring(['reckon', '14'], { folder, now });
    await neckring(['renumber', '14', '--to', '24'], { folder, now });
    const text = await readIn(folder, 'trials/0024-orange-1-to-2.5.yaml');
    expect(text.startsWith(`${schemaLine('trial')}trial: 24\n`)).toBe(true);
    expect(text).toContain('look: hazy');
    expect(refusals('trial', parsed(text))).toEqual([]);
  });
});

describe('a merge of a trial to which both sides added', () => {
  const [base, line] = ['trial: 3\nstages:\n  emulsion:\n    - water: 2 g\n', schemaLine('trial')];
  const ours = `${base}concluded: it holds\n`;
  const theirs = base.replace('trial: 3\n', 'trial: 3\ntitle: water\n');
  const both = `${theirs}concluded: it holds\n`;
  const merged = (...[one, two, three]: readonly [string, string, string]) => {
    const done = mergeTexts({
      file: 'trials/3.yaml',
      texts: { base: one, ours: two, theirs: three },
      labels: { ours: 'ours', theirs: 'theirs', size: 7 },
      timeOf: () => undefined,
    });
    return 'text' in done ? done.text : JSON.stringify(done);
  };

  it('keeps the line at the top, once', () => {
    expect(merged(line + base, line + ours, line + theirs)).toBe(line + both);
  });

  it('keeps the line that one side or both put there', () => {
    expect(merged(base, line + ours, theirs)).toBe(line + both);
    expect(merged(base, ours, line + theirs)).toBe(line + both);
    expect(merged(base, line + ours, line + theirs)).toBe(line + both);
  });
});
