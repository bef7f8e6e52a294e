import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring } from './neckring.ts';

describe('correct: what it says, and in which order', () => {
  it('pinned: a mass is shown as the balance shows it, not to a tenth of its division', async () => {
    const folder = await exampleLedger();
    const words = ['correct', '17', '--stage', 'syrup', '--brix', '38', '--tank', '24.5619 kg'];
    const { out } = await neckring(words, { folder });
    // 24 561.9 g on a balance of 1 g.
    expect(out).toContain('24.562 kg in the tank');
    expect(out).not.toMatch(/\d\.\d{4,} kg/u);
  });

  it('pinned: that it can not be mended is said before what it would take', async () => {
    const folder = await exampleLedger();
    const words = ['correct', '17', '--stage', 'syrup', '--brix', '80', '--tank', '20 kg'];
    const { code, out } = await neckring(words, { folder });
    expect(code).toBe(1);
    const [no, takes] = [out.indexOf("can't"), out.indexOf('What it would take')];
    expect([no > 0, takes > no]).toEqual([true, true]);
    expect(out).not.toContain('Add, and everything is as planned');
  });
});
