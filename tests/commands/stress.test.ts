import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, rows, writeIn } from './neckring.ts';

const trial = 'trials/0017-orange-cardamom-drink.yaml';

/** The example ledger with one more sample of trial 17, made on 2026-03-10 at 16:40. */
async function withSample(...lines: readonly string[]): Promise<string> {
  const folder = await exampleLedger();
  const text = await readIn(folder, trial);
  const sample = ['  harsh:', '    of: drink', ...lines.map((line) => `    ${line}`), ''].join('\n');
  await writeIn(folder, trial, text.replace('observations:', `${sample}observations:`));
  return folder;
}

const dueDays = async (folder: string, now: string): Promise<readonly number[]> =>
  rows((await found(['due', '--all'], { folder, now }))['due'])
    .concat(rows((await found(['due', '--all'], { folder, now }))['coming']))
    .filter(({ sample }) => sample === 'harsh')
    .map((one) => Math.round(leafValue(one['look'])));

describe('samples under stress', () => {
  it('published: three cycles of freeze and thaw of four days each (testing-laboratory protocol) come up in due', async () => {
    const folder = await withSample('stress: freeze-thaw');
    expect((await neckring(['check', trial], { folder })).out).toContain('no errors, no warnings');
    expect(await dueDays(folder, '2026-03-11T08:00:00Z')).toEqual([4, 8, 12]);
    await neckring(['observe', '17', '--sample', 'harsh', '--look', 'clear'], {
      folder,
      now: '2026-03-14T16:40:00Z',
    });
    expect(await dueDays(folder, '2026-03-18T17:00:00Z')).toEqual([8, 12]);
    await neckring(['observe', '17', '--sample', 'harsh', '--look', 'clear'], {
      folder,
      now: '2026-03-22T16:40:00Z',
    });
    expect(await dueDays(folder, '2026-04-30T17:00:00Z')).toEqual([]);
  });

  it('takes its own number of cycles, and own looks before those', async () => {
    expect(await dueDays(await withSample('stress: heat-cool', 'cycles: 2'), '2026-03-11T08:00:00Z')).toEqual(
      [2, 4],
    );
    const own = await withSample('stress: heat-cool', 'looks:', '  - 3 d');
    expect(await dueDays(own, '2026-03-11T08:00:00Z')).toEqual([3, 12]);
  });

  it('a fail under stress is not held against what was made of it, nor called never whole', async () => {
    const folder = await exampleLedger();
    const path = 'trials/0013-orange-1-to-3.yaml';
    const text = (await readIn(folder, path)).replaceAll('look: clear', 'sample: beaker\n    look: clear');
    const frozen = '  frozen:\n    of: emulsion\n    in: 30 mL glass vial\n    stress: freeze-thaw\n';
    const broken = '  - at: 2026-03-06T12:00+00:00\n    sample: frozen\n    look: broken\n';
    await writeIn(folder, path, text.replace('observations:\n', `${frozen}observations:\n${broken}`));
    expect((await neckring(['check'], { folder })).out).toContain('no errors, no warnings');
    const why = (await neckring(['why', '13'], { folder })).out.replace(/\s+/g, ' ');
    expect(why).toContain('1 likely: the stress itself');
    expect(why).not.toContain('never was whole');
  });

  it.each([
    [['stress: hot'], 'freeze-thaw'],
    [['cycles: 3'], '"cycles" stands without "stress"'],
    [['stress: heat-cool', 'cycles: 2000000'], 'at most 100'],
    [['stress: heat-cool', 'cycles: 2.5'], 'whole number'],
  ])('check finds %j', async (lines, words) => {
    const { code, out } = await neckring(['check', trial], { folder: await withSample(...lines) });
    expect([code, out.includes(words)]).toEqual([1, true]);
  });
});
