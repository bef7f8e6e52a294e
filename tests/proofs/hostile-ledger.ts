/** The example ledger with hostile signs in every name, title, note and word of its own. */

import { readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { quotedText } from '../../src/ledger/yaml-text.ts';
import { exampleLedger } from '../commands/neckring.ts';

const between = (first: number, last: number): readonly number[] =>
  Array.from({ length: last - first + 1 }, (_, at) => first + at);

/** C0, DEL, C1, the marks and overrides of direction, line and paragraph separators, the byte order mark. */
export const unrulyCodes: readonly number[] = [
  ...between(0, 0x1f),
  ...between(0x7f, 0x9f),
  ...[0x061c, 0x200e, 0x200f],
  ...between(0x2028, 0x202e),
  ...between(0x2066, 0x2069),
  0xfeff,
];

/** Colours, moves the cursor, sets the title of the window, asks for a report; then every sign alone. */
const forTerminals = `\u001b[31m\u001b[2J\u001b]0;owned\u0007\u001b[6n\u009b31m${String.fromCharCode(...unrulyCodes)}`;
const forPages = '</title></style><script>alert(1)</script><img src=x onerror=alert(1)>"\'&';
const forSheets = '=HYPERLINK("http://x.invalid","x")';
const forCalendars = '\r\nEND:VEVENT\r\nATTENDEE:mailto:x\r\n,;\\n';
const forMarkdown = '|![x](http://x.invalid/x)[x](javascript:alert(1))`#*_';
const forShells = '$(touch owned)`touch owned`';

export const signs = `${forTerminals}${forPages}${forMarkdown}${forCalendars}${forShells}`;

/** A name or a text with all of them, and a formula of a spreadsheet at its head. */
export const spoilt = (word: string): string => `${forSheets} ${word}${signs}`;

/** The same without line ends, for a stage that another trial refers to by its name. */
export const spoiltLine = (word: string): string => spoilt(word).replace(/[\n\r\u2028\u2029]/g, '');

const names: ReadonlySet<string> = new Set([
  'orange oil lot 2231',
  'cardamom oil lot 7',
  'cassis stock',
  'orange ladder',
  'orange cardamom',
  'beaker',
  'warm glass',
  'cold glass',
  'syrup',
  'emulsion',
  'barrel',
  'soapy',
  'bright',
]);

const freeTexts: ReadonlySet<string> = new Set(
  'title why note question source what text viewed in cover lot same'.split(' '),
);

const spoiltName = (text: string): string | undefined => {
  const name = text.replace(/ of \d+$/, '');
  if (!names.has(name)) return undefined;
  return quotedText((name === 'emulsion' ? spoiltLine : spoilt)(name) + text.slice(name.length));
};

function withSigns(line: string): string {
  const [, head = '', key = '', value = '', comment = ''] =
    /^(\s*(?:- )?)([^:#]+?)(?::(?: ([^#]*?))?)?(\s+#.*)?$/.exec(line) ?? [];
  if (key === '') return line;
  const said = freeTexts.has(key) && value !== '' ? quotedText(spoilt(value)) : (spoiltName(value) ?? value);
  const colon = line.slice(head.length + key.length).startsWith(':') ? ':' : '';
  return `${head}${spoiltName(key) ?? key}${colon}${said === '' ? '' : ` ${said}`}${comment}`;
}

async function yamlFiles(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder, { recursive: true });
  return names.filter((name) => name.endsWith('.yaml'));
}

/** A copy of the example ledger, spoilt, and a trial whose file is named and written with raw signs. */
export async function hostileLedger(): Promise<string> {
  const folder = await exampleLedger();
  for (const name of await yamlFiles(folder)) {
    const text = await readFile(join(folder, name), 'utf8');
    await writeFile(join(folder, name), text.split('\n').map(withSigns).join('\n'));
  }
  await rename(
    join(folder, 'trials/0012-orange-1-to-4.yaml'),
    join(folder, 'trials/0012-\u001b[31m\u202e\u009b.yaml'),
  );
  return folder;
}
