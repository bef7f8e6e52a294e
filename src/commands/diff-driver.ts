/** What git calls to show a file of the ledger: two versions compared, or one told a fact a line. */

import { dirname, join, relative, sep } from 'node:path';
import type { Io } from '../io.ts';
import { findRoot } from '../ledger/find-root.ts';
import { decodeFile, largestBytes, tooLarge } from '../ledger/guard.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail, ProblemError } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { comparisonOfTexts, notebookText } from './compare-texts.ts';
import { openHere, readPort } from './open-ledger.ts';

/** How many words git gives: for one version, for two, and for two under different names. */
const whole = [7, 9];

export async function runDiffDriver(call: Call, io: Io): Promise<Outcome> {
  const [path = '', before, , , after] = call.words;
  if (call.flags.has('text')) {
    const text = textAt(path, io) ?? '';
    return outcome([
      { kind: 'lines', lines: (await told(path, text, io)).trimEnd().split('\n').map(visible) },
    ]);
  }
  if (call.words.length === 1)
    return outcome([{ kind: 'text', text: `${visible(path)}: a merge is not settled here.`, tone: 'warn' }]);
  if (!whole.includes(call.words.length))
    return fail(
      'seven-words',
      'git names a path, and a file, an object and a mode of each version',
      'neckring git setup tells git how to call it',
    );
  const there = await placeOf(path, io);
  const here = await openHere(there.io);
  const [was, now] = [textAt(before ?? '', io), textAt(after ?? '', io)];
  const page = await comparisonOfTexts(here, there.io, { file: there.file, before: was, after: now });
  return outcome([...headed(there.file, page), { kind: 'lines', lines: [''] }]);
}

/** Git may show one file after another: each says which it is. */
function headed(file: string, page: Page): Page {
  const [first] = page;
  const isNamed = first?.kind === 'heading' && first.text.startsWith(visible(file));
  return isNamed ? page : [{ kind: 'text', text: visible(file), tone: 'faint' }, ...page];
}

/** Git shows what is written here line by line against the same of another version. */
async function told(path: string, text: string, io: Io): Promise<string> {
  const there = await placeOf(path, io);
  return notebookText(there.io, { file: there.file, text });
}

interface There {
  /** From the root of the ledger; the whole path where there is none. */
  readonly file: string;
  /** With the folder of the file as the working folder, so that the ledger around it is found. */
  readonly io: Io;
}

async function placeOf(path: string, io: Io): Promise<There> {
  const absolute = path.startsWith(sep) ? path : join(io.workingFolder, path);
  const near = await findRoot(dirname(absolute));
  const root = near ?? (await findRoot(io.workingFolder));
  const file = near === undefined ? path : relative(near, absolute).split(sep).join('/');
  return { file, io: { ...io, workingFolder: root ?? io.workingFolder } };
}

/** Undefined for what is not there on one side: git names the null device. */
function textAt(path: string, io: Io): string | undefined {
  if (path === '/dev/null' || path === 'nul') return undefined;
  const port = readPort(io);
  const absolute = path.startsWith(sep) ? path : join(io.workingFolder, path);
  const size = port.sizeOf(absolute);
  if (size === undefined) return fail('no-file', `there is no file ${path}`, 'git names the files');
  if (size > largestBytes) throw new ProblemError([tooLarge(path, size)]);
  const decoded = decodeFile(path, port.read(absolute));
  if ('problem' in decoded) throw new ProblemError([decoded.problem]);
  return decoded.text;
}

const outcome = (page: Page): Outcome => ({ exitCode: 0, page, json: envelope({ schema: 'diff-driver@1' }) });
