import { describe, expect, it } from 'vitest';
import { commands } from '../../src/commands/index.ts';
import { cellWidth } from '../../src/output/wrap.ts';
import { exampleFor } from './example-files.ts';
import { neckring, scratchFolder } from './neckring.ts';

const wordsOf = (line: string): readonly string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');

/** What they print is the text of a file, which is never broken. */
const printsFile: ReadonlySet<string> = new Set([
  ...['give', 'export', 'completion', 'complete-words', 'schema', 'diff-driver', 'merge-driver', 'decide'],
  ...['calendar', 'triangle', 'duo'],
]);

/** A line to copy, an option with its value, a file of the ledger, or one word alone, such as a path, can't be broken. */
const isUnbroken = (line: string): boolean =>
  /^(?:neckring .*|[-+] .*|# .*|--\S+ "[^"]*"(?: \\)?|\S*\/\S*.*|\S+)$/u.test(line.trim()) ||
  /\/\S*\.(?:yaml|html|csv|ics|gitattributes)/u.test(line);

describe.each([40, 80])('on a terminal of %i columns', (columns) => {
  it.each(
    commands
      .filter(({ name }) => !printsFile.has(name))
      .map(({ name, examples }) => [name, examples[0]?.line]),
  )('%s keeps to the width', async (name, line = '') => {
    const folder = name === 'init' ? await scratchFolder() : await exampleFor(name ?? '');
    const { out, err } = await neckring(wordsOf(line), {
      ...{ folder, columns, answers: [], terminal: true },
      environment: { NO_COLOR: '1' },
    });
    const long = `${out}${err}`.split('\n').filter((one) => cellWidth(one) > columns && !isUnbroken(one));
    expect(long).toEqual([]);
  });
});
