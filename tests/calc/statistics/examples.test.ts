import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const files = ['statistics', 'ladder'].flatMap((name) => {
  const folder = new URL(`../../../src/calc/${name}/`, import.meta.url);
  return readdirSync(folder).map((file) => new URL(file, folder).pathname);
});

/** Everything that the two folders export, by name. */
const scope: Record<string, unknown> = Object.assign(
  {},
  ...(await Promise.all(files.map((file) => import(file)))),
);

/** The `Example` lines of the comments, call and result. */
const examples = files.flatMap((file) =>
  [...readFileSync(file, 'utf8').matchAll(/\* Example {3}(.+) -> (.+)/g)].map(
    ([, call = '', printed = '']) => ({ call, printed }),
  ),
);

const run = (call: string): unknown =>
  new Function(...Object.keys(scope), `return (${call})`)(...Object.values(scope));

describe('law: the examples in the comments', () => {
  it('are many', () => expect(examples.length).toBeGreaterThan(9));

  it.each(examples)('$call', ({ call, printed }) => {
    const found = run(call);
    if (typeof found !== 'number') return expect(found).toBe(printed);
    const decimals = printed.split('.')[1]?.length ?? 0;
    return expect(Math.abs(found - Number(printed))).toBeLessThanOrEqual(0.51 * 10 ** -decimals);
  });
});
