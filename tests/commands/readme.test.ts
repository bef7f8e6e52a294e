import { readFileSync } from 'node:fs';
import { cp, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { commands } from '../../src/commands/index.ts';
import { neckring, scratchFolder, writeIn } from './neckring.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

type Step =
  | { readonly kind: 'line'; readonly words: readonly string[]; readonly typed: string }
  | { readonly kind: 'file'; readonly text: string }
  | { readonly kind: 'answer'; readonly lines: readonly string[] };

/** The code blocks in order: each command line, what is shown of its answer, and each file that is typed out. */
const steps: readonly Step[] = [...readme.matchAll(/^```(\w*)\n(.*?)^```$/gms)].flatMap(
  ([, language, body = '']): readonly Step[] => {
    if (language === 'yaml') return [{ kind: 'file', text: body }];
    if (language === 'text') return [{ kind: 'answer', lines: body.trimEnd().split('\n') }];
    return body
      .split('\n')
      .filter((line) => /^(neckring|cd|cp)\b/.test(line))
      .map((typed) => ({ kind: 'line', typed, words: wordsOf(typed) }));
  },
);

/** The words of a line as a shell splits them; what stands after two spaces says what it does. */
function wordsOf(line: string): readonly string[] {
  const command = /^(?:"[^"]*"|[^\s"]| (?! ))+/.exec(line)?.[0] ?? '';
  return [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');
}

/** Where a file that is typed out belongs: into the trial that was begun, or beside it. */
async function placeOf(text: string, folder: string): Promise<string> {
  if (!text.startsWith('trial:')) return `${text.slice(0, text.indexOf(':'))}.yaml`;
  const number = /^trial: (\d+)/.exec(text)?.[1] ?? '';
  const [file = ''] = (await readdir(join(folder, 'trials'))).filter(
    (name) => Number.parseInt(name, 10) === Number(number),
  );
  return `trials/${file}`;
}

describe('README', () => {
  it('has command lines and files to go through', () => {
    expect(steps.filter((step) => step.kind === 'line').length).toBeGreaterThan(15);
    expect(steps.filter((step) => step.kind === 'file').length).toBeGreaterThanOrEqual(2);
  });

  it('every line of it runs in order in a scratch folder, and the files that it types out pass check', async () => {
    let folder = await scratchFolder();
    let answer = '';
    for (const step of steps) {
      if (step.kind === 'answer') {
        const shown = answer.split('\n').filter((line) => step.lines.includes(line));
        expect(shown).toEqual(step.lines);
      } else if (step.kind === 'file') {
        const place = await placeOf(step.text, folder);
        await writeIn(folder, place, step.text);
        const checked = await neckring(['check', place], { folder });
        expect([place, checked.out]).toEqual([place, '1 file: no errors, no warnings\n']);
      } else if (step.words[0] === 'cp') {
        folder = await scratchFolder();
        const [, , from = '', to = ''] = step.words;
        await cp(new URL(`../../${from}`, import.meta.url), join(folder, to), { recursive: true });
      } else if (step.words[0] === 'cd') {
        folder = join(folder, step.words[1] ?? '');
      } else {
        const ran = await neckring(step.words.slice(1), { folder });
        answer = ran.out;
        // Two records that differ are an answer that needs attention.
        const code = step.words[1] === 'compare' ? 1 : 0;
        expect([step.typed, ran.code, ran.err.includes(': warning:')]).toEqual([step.typed, code, false]);
      }
    }
    const checked = await neckring(['check'], { folder });
    expect([checked.code, checked.out]).toEqual([0, expect.stringContaining('no errors')]);
  });

  it('names the files that the commands write as they are written', async () => {
    const folder = await scratchFolder();
    const lines = steps.flatMap((step) => (step.kind === 'line' ? [step.words] : []));
    const first = lines.find((words) => words[1] === 'new') ?? [];
    await neckring(['init'], { folder });
    const { err } = await neckring(first.slice(1), { folder });
    expect(readme).toContain(`\`${err.replace('wrote ', '').trim()}\``);
  });

  it('names every command at least once', () => {
    const unnamed = commands.filter(({ name }) => !new RegExp(`neckring\\s+${name}\\b`).test(readme));
    expect(unnamed.map(({ name }) => name)).toEqual([]);
  });
});
