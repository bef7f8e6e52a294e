import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const source = resolve(import.meta.dirname, '../src');

interface Import {
  readonly from: string;
  readonly to: string;
}

function filesIn(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesIn(path) : path.endsWith('.ts') ? [path] : [];
  });
}

const importsOf = (file: string): readonly Import[] =>
  [
    ...readFileSync(file, 'utf8').matchAll(
      /^(?:import|export)\s[^';]*?from\s'([^']+)'|import\('([^']+)'\)/gm,
    ),
  ].map((match) => {
    const target = match[1] ?? match[2] ?? '';
    const to = target.startsWith('.') ? relative(source, resolve(dirname(file), target)) : target;
    return { from: relative(source, file), to };
  });

const files = filesIn(source);
const imports = files.flatMap(importsOf);

/** Who may import from whom; `problem.ts` and `io.ts` are open to those that are named with them. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  reference: ['reference', 'problem.ts'],
  calc: ['calc', 'reference', 'problem.ts'],
  ledger: ['ledger', 'calc', 'reference', 'problem.ts'],
  output: ['output', 'calc', 'problem.ts'],
  commands: ['commands', 'ledger', 'calc', 'reference', 'output', 'problem.ts', 'io.ts', 'build-mark.ts'],
};

const areaOf = (path: string): string => (path.includes('/') ? (path.split('/')[0] ?? '') : path);

/** Each library is met in one place, so that a new major version is dealt with once. */
const libraries: Readonly<Record<string, readonly RegExp[]>> = {
  commander: [/^cli\.ts$/],
  chalk: [/^output\/paint\.ts$/],
  'cli-table3': [/^output\/table\.ts$/],
  yaml: [/^ledger\/(?:library-document|walk|syntax)\.ts$/],
  'zod/mini': [/^ledger\/schema-misfits\.ts$/],
  'mathjs/number': [/^calc\/expression\.ts$/],
};

describe('who imports whom', () => {
  it('one way only: reference, calc, ledger, commands, with output beside them', () => {
    const wrong = imports.filter(({ from, to }) => {
      const may = allowed[areaOf(from)];
      return may !== undefined && files.includes(join(source, to)) && !may.includes(areaOf(to));
    });
    expect(wrong).toEqual([]);
  });

  it('each library in its one place', () => {
    const outside = imports.filter(({ to }) => !to.startsWith('node:') && !files.includes(join(source, to)));
    const wrong = outside.filter(({ from, to }) => !(libraries[to] ?? []).some((place) => place.test(from)));
    expect(wrong).toEqual([]);
  });

  it('no files, clock or terminal in calc and reference', () => {
    const pure = files.filter((file) => /^(calc|reference)\//.test(relative(source, file)));
    const wrong = pure.filter((file) =>
      /\bprocess\.(?:env|argv|std|exit|cwd)|console\.|Date\.now|from 'node:/.test(readFileSync(file, 'utf8')),
    );
    expect(wrong).toEqual([]);
  });
});
