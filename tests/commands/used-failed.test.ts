import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, record, rows, writeIn } from './neckring.ts';

const trial = 'trials/0017-orange-cardamom-drink.yaml';
const said = '"emulsion of 15" did not hold in its own trial';

/** The example, where the drink is made of an emulsion that turned hazy. */
async function failedLedger(): Promise<string> {
  const folder = await exampleLedger();
  await writeIn(folder, trial, (await readIn(folder, trial)).replace('- emulsion of 13', '- emulsion of 15'));
  return folder;
}

const cautionsOf = async (words: readonly string[], folder: string) => {
  const { out } = await neckring([...words, '--json'], { folder });
  return rows(record(JSON.parse(out))['cautions']);
};

// common practice, no source: an emulsion that failed is not built on.
describe('a stage of another trial that failed there', () => {
  it.each([
    [['drink', '17']],
    [['scale', '17', '--to', '20 L syrup']],
    [['batch', 'record', '17', '--to', '20 L syrup', '--dry-run']],
    [['batch', 'record', '17', '--dry-run']],
  ])('pinned: the first caution of %j, as check warns', async (words) => {
    const folder = await failedLedger();
    expect((await neckring(['check'], { folder })).out).toContain(said);
    const [first, ...others] = await cautionsOf(words, folder);
    expect(first).toMatchObject({ code: 'used-failed', text: `${said}: use one that held` });
    expect(others.filter(({ code }) => code === 'used-failed')).toEqual([]);
    const { out } = await neckring(words, { folder });
    expect(out.slice(out.indexOf('\n! ')).startsWith(`\n! ${said}`)).toBe(true);
  });

  it('pinned: also where it is used through a third trial, and in the sheets', async () => {
    const folder = await failedLedger();
    const third = 'trial: 18\nstages:\n  drink:\n    - syrup of 17: 200 g\n    - water: to 1 kg\n';
    await writeIn(folder, 'trials/0018-again.yaml', third);
    const sheets = ['--sheet', 'sheet.html', '--sheet', 'sheet.md'];
    const [first] = await cautionsOf(['scale', '18', '--to', '20 kg drink', ...sheets], folder);
    expect(first).toMatchObject({ code: 'used-failed' });
    expect(await readIn(folder, 'sheet.md')).toMatch(/\n## .*\n\n- "emulsion of 15" did not hold/u);
    expect(await readIn(folder, 'sheet.html')).toContain('did not hold in its own trial');
  });

  it('pinned: nothing of one that held', async () => {
    const plain = await cautionsOf(['drink', '17'], await exampleLedger());
    expect(plain.filter(({ code }) => String(code).startsWith('used'))).toEqual([]);
  });
});
