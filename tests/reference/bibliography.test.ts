import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { allCommands } from '../../src/commands/families.ts';
import { bibliography } from '../../src/reference/bibliography.ts';
import { allUses } from '../../src/reference/uses/index.ts';

const folder = join(import.meta.dirname, '../../src/reference');

/** Every module of figures; the bibliography and what is made of it in words are left out. */
const made: readonly string[] = ['bibliography.ts', 'library.ts', 'antifoam-figures.ts'];
const modules = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
  (path) =>
    path.endsWith('.ts') && !path.startsWith('uses') && !path.endsWith('sources.ts') && !made.includes(path),
);

/** Each text under the key `source`, however deep it stands, with whether it is from memory. */
function sourcesIn(value: unknown, seen = new Set<unknown>()): readonly string[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  return Object.entries(value).flatMap(([key, one]: readonly [string, unknown]) =>
    key === 'source' && typeof one === 'string' ? [one] : sourcesIn(one, seen),
  );
}

const works = bibliography();
const keys = new Set(works.map(({ key }) => key));

describe('the bibliography', () => {
  it('law: holds the source of every figure in the reference', async () => {
    const used = await Promise.all(
      modules.map(async (path) => {
        const module: unknown = await import(join(folder, path));
        return sourcesIn(module).map((source) => [path, source] as const);
      }),
    );
    const all = used.flat();
    expect(all.length).toBeGreaterThan(1000);
    expect(all.filter(([, source]) => !keys.has(source))).toEqual([]);
  });

  it('law: every work is used by something, is named once, and has words', () => {
    expect(works.filter(({ uses }) => uses.length === 0).map(({ key }) => key)).toEqual([]);
    expect(keys.size).toBe(works.length);
    const texts = works.map(({ text }) => text);
    expect(texts.filter((text, at) => texts.indexOf(text) !== at)).toEqual([]);
    expect(texts.filter((text) => text.length < 8)).toEqual([]);
  });

  it('law: every use says what it is, and names commands that there are', async () => {
    const names = new Set((await allCommands()).map(({ name }) => name));
    for (const { what, by, always = [] } of allUses()) {
      expect(what).not.toMatch(/\*|undefined/u);
      expect(by.length, what).toBeGreaterThan(0);
      expect(
        [...by, ...always].filter((name) => !names.has(name)),
        what,
      ).toEqual([]);
      expect(
        always.filter((name) => !by.includes(name)),
        what,
      ).toEqual([]);
    }
  });

  it('law: a figure that the reference marks as from memory is so in the list', async () => {
    const remembered = new Set(
      allUses()
        .filter(({ fromMemory }) => fromMemory)
        .map(({ source }) => source),
    );
    for (const path of modules) {
      const module: unknown = await import(join(folder, path));
      for (const source of rememberedIn(module))
        expect(remembered.has(source), `${path}: ${source}`).toBe(true);
    }
  });
});

/** Sources beside `fromMemory: true` or `read: from memory`. */
function rememberedIn(value: unknown, seen = new Set<unknown>()): readonly string[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  const facts = new Map<string, unknown>(Object.entries(value));
  const source = facts.get('source');
  const isRemembered = facts.get('fromMemory') === true || facts.get('read') === 'from memory';
  const below = [...facts.values()].flatMap((one) => rememberedIn(one, seen));
  return isRemembered && typeof source === 'string' ? [source, ...below] : below;
}
