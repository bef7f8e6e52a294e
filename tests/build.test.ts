import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = new URL('..', import.meta.url);
const dist = new URL('dist/', root);

describe('what the build made', () => {
  it('is plain ASCII, as its loader reads it: signs such as the micro sign stand as escapes', () => {
    const parts = readdirSync(dist).filter((name) => name.endsWith('.cjs'));
    expect(parts.length).toBeGreaterThan(10);
    const other = parts.filter((name) => readFileSync(new URL(name, dist)).some((byte) => byte >= 0x80));
    expect(other).toEqual([]);
  });

  it('reads the signs that people type', () => {
    const bin = fileURLToPath(new URL('bin/neckring.js', root));
    const found = (micro: string): unknown => {
      const words = ['dose', '--oil', `60000 ${micro}g/L`, '--emulsion', '4 %', '--in', '6 L', '--json'];
      return JSON.parse(execFileSync(process.execPath, [bin, ...words], { encoding: 'utf8' })).found;
    };
    expect(found('\u00b5')).toEqual(found('u'));
  });
});
