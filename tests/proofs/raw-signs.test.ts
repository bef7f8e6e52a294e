import { readdir, readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { allCommands } from '../../src/commands/families.ts';
import { readCsv } from '../../src/ledger/csv/csv-read.ts';
import { quotedText } from '../../src/ledger/yaml-text.ts';
import { exampleFor } from '../commands/example-files.ts';
import { gitIn } from '../commands/git-ledger.ts';
import { neckring, record, scratchFolder, writeIn } from '../commands/neckring.ts';
import { ledgerOf } from '../commands/small-ledger.ts';
import { hostileLedger, signs, spoilt, unrulyCodes } from './hostile-ledger.ts';
import { drink, lines } from './hostile-lines.ts';

/** What no terminal, page, sheet, calendar or shell may get from a file: every unruly sign but the line feed. */
const raw = new RegExp(
  `[${unrulyCodes
    .filter((code) => code !== 0x0a)
    .map((code) => `\\u${code.toString(16).padStart(4, '0')}`)
    .join('')}]`,
  'u',
);

/** Where a text has a raw sign: what stands around it, to be seen in the failure. */
const rawIn = (given: string): string | undefined => {
  // Tables and calendars end their lines with both.
  const text = given.replaceAll('\r\n', '\n');
  const at = text.search(raw);
  return at === -1
    ? undefined
    : `${JSON.stringify(text.slice(Math.max(0, at - 60), at + 20))} U+${text.charCodeAt(at).toString(16)}`;
};

interface Written {
  readonly name: string;
  readonly text: string;
}

/** What stands in a folder, git and what lay there before apart. */
async function writtenIn(folder: string): Promise<readonly Written[]> {
  const names = (await readdir(folder, { recursive: true })).filter(
    (name) => extname(name) !== '' && !/^\.(git|neckring)/.test(name) && !given.has(name),
  );
  return Promise.all(names.map(async (name) => ({ name, text: await readFile(join(folder, name), 'utf8') })));
}

const given: ReadonlySet<string> = new Set(['notes.csv', 'theirs.yaml']);
const program = ['node', 'neckring.js'] as const;

/** The words of a line as a shell splits them; only double quotes are used. */
const wordsOf = (line: string): readonly string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');

/** Git and command lines take no NUL. */
const tamed = (text: string): string => text.replaceAll('\0', '');

/** A ledger of such names in git, changed since, with a table and a recipe from elsewhere beside it. */
async function workplace(): Promise<string> {
  const folder = await hostileLedger();
  const { git, commit } = gitIn(folder);
  await git('init', '-q', '-b', 'main');
  await commit(`begin ${tamed(signs)}`, `Ada ${tamed('\u001b[31m\u009b\u202e')}`);
  const formula = 'formulas/orange-cardamom.yaml';
  const text = await readFile(join(folder, formula), 'utf8');
  await writeIn(folder, formula, text.replace(': 12 drops', ': 13 drops'));
  const theirs = await neckring(['give', drink, '--as', 'yaml', '--with', 'all'], { folder });
  await writeIn(folder, 'theirs.yaml', theirs.out);
  const cell = `"${signs.replaceAll('"', '""').replaceAll('\0', '')}"`;
  await writeIn(folder, 'notes.csv', `${cell},Oil\r\n${cell},2\r\n`);
  const column = quotedText(tamed(signs));
  await writeIn(folder, 'map.yaml', `${column}: title\nOil: stages.emulsion.sweet orange oil in g\n`);
  return folder;
}

describe('names, notes and words of a stranger', () => {
  it('there is a line for every command', async () => {
    const said = new Set(lines.map(([, command]) => command));
    expect((await allCommands()).map(({ name }) => name).filter((name) => !said.has(name))).toEqual([]);
  });

  it('drive no terminal through any command, nor through what the commands write', async () => {
    const folder = await workplace();
    for (const [code, ...words] of lines) {
      const ran = await neckring(words, { folder, answers: [], program });
      expect([words, ran.code, rawIn(ran.out), rawIn(ran.err)]).toEqual([words, code, undefined, undefined]);
    }
    expect((await readdir(folder)).includes('owned')).toBe(false);
    const written = await writtenIn(folder);
    for (const { name, text } of written) expect([name, rawIn(text)]).toEqual([name, undefined]);
    const all = (ending: string): readonly string[] =>
      written.filter(({ name }) => name.endsWith(ending)).map(({ text }) => text);
    expect(['.html', '.md', '.csv', '.ics', '.txt'].map((ending) => all(ending).length)).toEqual([
      3, 1, 1, 1, 2,
    ]);
    all('.html').forEach(expectTamePage);
    all('.md').forEach(expectTameMarkdown);
    all('.csv').forEach(expectTameSheet);
    all('.ics').forEach(expectTameCalendar);
  }, 120_000);

  it('drive no terminal through JSON, which reads back', async () => {
    const folder = await workplace();
    for (const [code, ...words] of lines.filter((line) => !asks.has(line.slice(1).join(' ')))) {
      const ran = await neckring([...words, '--json'], { folder, answers: [], program });
      expect([words, ran.code, rawIn(ran.out), ran.err]).toEqual([words, code, undefined, '']);
      expect(Object.keys(record(JSON.parse(ran.out)))).toContain('found');
    }
    const shown = await neckring(['series', '--json'], { folder });
    expect(JSON.stringify(JSON.parse(shown.out))).toContain(JSON.stringify(spoilt('orange ladder')));
  }, 120_000);

  it('drive no terminal when they are typed wrong', async () => {
    for (const { name, examples } of await allCommands()) {
      const [example] = examples;
      const folder = name === 'init' ? await scratchFolder() : await exampleFor(name);
      const words = wordsOf(example?.line ?? '');
      for (const [at, word] of words.entries()) {
        const spoiltWords = words.with(at, `${word}${tamed(signs)}`);
        const ran = await neckring(spoiltWords, { folder, answers: [], program });
        expect([spoiltWords, rawIn(ran.out), rawIn(ran.err)]).toEqual([spoiltWords, undefined, undefined]);
        expect([spoiltWords, ran.code === 70 ? ran.err : '']).toEqual([spoiltWords, '']);
      }
    }
  }, 120_000);

  it('drive no terminal from a file that is broken at any of them', async () => {
    const files = unrulyCodes.map((code, at): readonly [string, string] => {
      const sign = String.fromCharCode(code);
      const text = `trial: ${at + 1}\ntitle: a${sign}b\nstag${sign}s: c\nstages: x${sign}\n`;
      return [`trials/${at + 1}.yaml`, text];
    });
    const folder = await ledgerOf(Object.fromEntries(files));
    for (const words of [['check'], ['check', '--json'], ['show', '28'], ['list'], ['reckon', '60']]) {
      const ran = await neckring(words, { folder });
      expect([words, rawIn(ran.out), rawIn(ran.err)]).toEqual([words, undefined, undefined]);
    }
    const { out } = await neckring(['check'], { folder });
    for (const [file] of files) expect(out).toContain(`${file}:`);
  });
});

/** Lines that ask a person, which JSON does not. */
const asks: ReadonlySet<string> = new Set(['look', 'weigh 17 --again']);

/** Markup is only ours: no element that could load, run or lead anywhere, nothing closed early. */
function expectTamePage(page: string): void {
  expect(page.match(/<\/?(?:script|img|iframe|object|embed|link|base|form)\b/giu)).toBeNull();
  const links = [...page.matchAll(/<a\b[^>]*>/giu)].map(([tag]) => tag);
  expect(links.filter((tag) => !/ href="#[\w-]*"/u.test(tag))).toEqual([]);
  // Pictures have titles of their own.
  const count = (pattern: RegExp): number => page.match(pattern)?.length ?? 0;
  expect([count(/<\/style>/gu), count(/<\/title>/gu)]).toEqual([1, count(/<title\b/gu)]);
  expect(page).toContain('&lt;script&gt;alert(1)');
}

function expectTameMarkdown(card: string): void {
  expect(card.replaceAll(/<!--.*?-->/gu, '').match(/(?<!\\)(?:<|!?\[|`)/gu)).toBeNull();
  expect(card).toContain('\\<script\\>alert(1)');
}

function expectTameSheet(sheet: string): void {
  const { head, rows } = readCsv('a.csv', sheet);
  const texts = [head, ...rows].flat().map(({ text }) => text);
  expect(texts.filter((text) => /^[=+\-@\t\r\n]/u.test(text) && !Number.isFinite(Number(text)))).toEqual([]);
  expect(texts.some((text) => text.startsWith("'=HYPERLINK("))).toBe(true);
}

function expectTameCalendar(calendar: string): void {
  const properties = calendar
    .replaceAll('\r\n ', '')
    .split('\r\n')
    .map((line) => line.split(':')[0]);
  expect(new Set(properties)).toEqual(
    new Set(
      'BEGIN PRODID VERSION CALSCALE UID DTSTAMP DTSTART DURATION SUMMARY DESCRIPTION TRANSP END'
        .split(' ')
        .concat(''),
    ),
  );
}
