import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isRecord, scope } from './scope.ts';

const folder = new URL('../../../src/calc/solution/', import.meta.url);

interface Example {
  readonly file: string;
  readonly call: string;
  readonly printed: string;
}

/** The `Example` lines of the comments, call and result. */
const examples: readonly Example[] = readdirSync(folder).flatMap((file) =>
  [...readFileSync(new URL(file, folder), 'utf8').matchAll(/\* Example {3}(.+) -> (.+)/g)].map(
    ([, call = '', printed = '']) => ({ file, call, printed }),
  ),
);

const run = (text: string): unknown =>
  new Function(...Object.keys(scope), `return (${text})`)(...Object.values(scope));

/** An answer that came as `{ ok, value }` is compared by its value. */
function bare(found: unknown): unknown {
  return isRecord(found) && found['ok'] === true ? found['value'] : found;
}

/** Every figure printed is the one found, to six figures at most; what is not printed is not compared. */
function compare(found: unknown, printed: unknown, path: string): void {
  if (typeof printed === 'number') {
    const off = Math.abs(Number(found) - printed);
    expect(off, `${path}: ${found} for ${printed}`).toBeLessThanOrEqual(lastDigit(printed));
  } else if (isRecord(printed) && isRecord(found)) {
    for (const key in printed) compare(found[key], printed[key], `${path}.${key}`);
  } else {
    expect(found, path).toEqual(printed);
  }
}

/** Half of the last digit that is printed, with room for zeros that were left off. */
function lastDigit(printed: number): number {
  const decimals = String(printed).split('.')[1]?.length ?? 0;
  return 0.51 * 10 ** -decimals;
}

describe('published: the examples in the comments', () => {
  it('are many', () => expect(examples.length).toBeGreaterThan(30));

  for (const { file, call, printed } of examples) {
    it(`${file}: ${call.slice(0, 60)}`, () => {
      compare(bare(run(call)), run(printed.replaceAll(/,? ?\.\./g, '')), call);
    });
  }
});
