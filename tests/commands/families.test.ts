import { describe, expect, it } from 'vitest';
import { calculators } from '../../src/calc/calculators/index.ts';
import { allCommands, commandNamed } from '../../src/commands/families.ts';

describe('families of commands', () => {
  it('every command is found by its name, as it stands in the list of all', async () => {
    const all = await allCommands();
    for (const { load: _, ...words } of all) expect(await commandNamed(words.name)).toMatchObject(words);
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
    expect(await commandNamed('nothing')).toBeUndefined();
  });

  it('every calculator has its quick command', async () => {
    const names = (await allCommands()).map(({ name }) => name);
    expect(calculators.filter(({ name }) => !names.includes(name))).toEqual([]);
  });
});
