import { describe, expect, it } from 'vitest';
import { neckring, record, rows } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const bench = 'ledger: 1\nbench:\n  time zone: UTC\n  tastes:\n    - soapy\n    - bright\n    - dull\n';
const trial = `trial: 1
made: 2026-03-01T10:00+00:00
stages:
  drink:
    - water: 1 kg
observations:
  - at: 2026-03-02T10:00+00:00
    look: clear
`;
const now = '2026-03-08T12:00:00Z';

const tasted = async (...words: readonly string[]) => {
  const folder = await ledgerOf({ 'bench.yaml': bench, 'trials/1.yaml': trial });
  return { folder, ran: await neckring(['observe', '1', ...words], { folder, now }) };
};

describe('tastes', () => {
  const words = ['--taste', 'waxy=1', '--taste', 'dull=0.5', '--taste', 'Soapy=2', '--against', 'trial 16'];
  const more = ['--served', 'cold', '--blind', 'yes', '--by', 'K', '--note', 'orange first'];

  it("show has them beside the looks, in the bench's order, then other words", async () => {
    const { folder } = await tasted(...words, ...more);
    await neckring(['observe', '1', '--taste', 'soapy=3', '--at', '2026-03-05 12:00'], { folder, now });
    const { out } = await neckring(['show', '1'], { folder, now });
    const lines = out.slice(out.indexOf('d1 clear')).trimEnd().split('\n');
    expect(lines).toEqual([
      'd1 clear',
      '',
      'watching, passed to day 1',
      '',
      'tasted  soapy  dull  waxy  served  against   blind  by',
      'd4      3',
      'd7      2      0.5   1     cold    trial 16  yes    K',
      '',
      '- 2026-03-08T12:00 orange first',
    ]);
  });

  it('show --json has them too', async () => {
    const { folder } = await tasted(...words, ...more);
    const { out } = await neckring(['show', '1', '--json'], { folder, now });
    expect(rows(record(record(JSON.parse(out))['found'])['observations'])[1]).toMatchObject({
      taste: [
        { word: 'waxy', score: { value: 1, unit: '' } },
        { word: 'dull', score: { value: 0.5, unit: '' } },
        { word: 'Soapy', score: { value: 2, unit: '' } },
      ],
      ...{ served: 'cold', against: 'trial 16', blind: 'yes', by: 'K' },
    });
  });

  it("a word that is not the bench's is written and mentioned", async () => {
    const { ran } = await tasted(...words);
    expect([ran.code, ran.err.split(';')[0]]).toEqual([
      0,
      'warning: "waxy" is not among the bench\'s tastes',
    ]);
  });

  it('one word has one score', async () => {
    const { ran } = await tasted('--taste', 'soapy=2', '--taste', 'Soapy=3');
    expect([ran.code, ran.err]).toEqual([
      2,
      '--taste: "Soapy" has more than one score; give it one; two tastings are two observations\n',
    ]);
  });
});
