import { describe, expect, it } from 'vitest';
import { neckring } from './neckring.ts';

describe('completion', () => {
  it.each(['bash', 'zsh', 'fish'])(
    'the script for %s, with how to install it and no path of this machine',
    async (shell) => {
      const { code, out, err } = await neckring(['completion', shell]);
      expect([code, err]).toEqual([0, '']);
      expect(out).toContain(`neckring completion ${shell}`);
      expect(out).toContain(`command neckring complete-words ${shell} `);
      expect(out).not.toMatch(/\/(?:home|root|work|tmp|usr)\//u);
      expect(out).toMatch(/^[\x20-\x7e\n]+$/u);
    },
  );

  it('another word is told the three', async () => {
    const { code, err } = await neckring(['completion', 'csh']);
    expect(code).toBe(2);
    expect(err).toContain('"csh" is no shell that is known here');
    expect(err).toContain('say bash, zsh, fish');
  });

  it('as JSON', async () => {
    const { out } = await neckring(['completion', 'bash', '--json']);
    const { out: script } = await neckring(['completion', 'bash']);
    expect(JSON.parse(out)).toMatchObject({
      schema: 'completion@1',
      given: { shell: 'bash' },
      found: { script },
    });
  });

  it('what the shells call is not listed', async () => {
    expect((await neckring(['--help'])).out).not.toContain('complete-words');
  });
});
