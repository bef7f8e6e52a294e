import { describe, expect, it } from 'vitest';
import { labelGrid } from '../../src/output/sheets/labels-html.ts';
import { exampleLedger, found, neckring, readIn } from './neckring.ts';
import { at, seriesLedger } from './series-ledger.ts';
import { trialLedger } from './small-ledger.ts';

const now = '2026-03-02T12:00:00Z';

async function sheetOf(folder: string, ...words: readonly string[]): Promise<string> {
  const { code, err, out } = await neckring(['labels', ...words, '--html', 'out.html'], { folder, now });
  expect([code, err, out]).toEqual([0, 'wrote out.html\n', '']);
  return readIn(folder, 'out.html');
}

const fresh = () =>
  seriesLedger([
    { trial: 14, oil: 2, looks: {} },
    { trial: 15, oil: 3, looks: {} },
  ]);

describe('beaker labels', () => {
  it('bear the number, the day and the looks, and not what is inside', async () => {
    const page = await sheetOf(await exampleLedger(), 'orange ladder');
    expect(page.match(/<b>1[1-6]<\/b>/gu)).toHaveLength(6);
    expect(page).toContain('2 Mar 2026');
    expect(page).not.toMatch(/1 : 3|part|orange oil/u);
  });

  it('say when to look, by the schedule of the bench', async () => {
    // Made on 2 March; 1, 2, 4 and 7 days later, then 30 and 90: counted on a calendar of 2026.
    const page = await sheetOf(await fresh(), '14');
    expect([...page.matchAll(/☐ ([^<]+)</gu)].map(([, day]) => day)).toEqual([
      '3 Mar',
      '4 Mar',
      '6 Mar',
      '9 Mar',
      '1 Apr',
      '31 May',
    ]);
  });

  it('with --ratio say what is in them', async () => {
    const page = await sheetOf(await exampleLedger(), 'orange ladder', '--ratio');
    expect(page).toContain('<p class="inside">1 : 3, sweet orange, one part to 3 of emulsifier</p>');
  });

  it('law: as many labels on a sheet as fit on A4 of ISO 216', () => {
    expect(labelGrid({ widthMillimetres: 70, heightMillimetres: 37 })).toEqual({ columns: 3, rows: 8 });
    expect(labelGrid({ widthMillimetres: 210, heightMillimetres: 297 })).toEqual({ columns: 1, rows: 1 });
    expect(labelGrid({ widthMillimetres: 105, heightMillimetres: 148 })).toEqual({ columns: 2, rows: 2 });
  });

  it('leave out those of a sheet that are gone, and go on on a second one', async () => {
    const page = await sheetOf(await exampleLedger(), '11-16', '--size', '105 x 148 mm', '--skip', '3');
    expect(page.match(/<li class="gone">/gu)).toHaveLength(3);
    expect(page.match(/<ul class="sheet">/gu)).toHaveLength(3);
  });
});

describe('the look sheet and the weigh sheet', () => {
  it('looks: a row a beaker, a box a look that is to come', async () => {
    const page = await sheetOf(await fresh(), 'ladder', '--sheet', 'looks');
    expect([...page.matchAll(/<th scope="col">([^<]+)</gu)].map(([, head]) => head)).toEqual([
      'beaker',
      'day 1',
      'day 2',
      'day 4',
      'day 7',
      'day 30',
      'day 90',
    ]);
    expect(page.match(/<td><small>/gu)).toHaveLength(12);
    expect(page).not.toContain('1 : ');
  });

  it('weigh: what the balance shall show, in the order of addition', async () => {
    const page = await sheetOf(await fresh(), 'ladder', '--sheet', 'weigh');
    const amounts = [...page.matchAll(/<td><b>([^<]+)</gu)].map(([, text]) => text);
    // Made up to 50 g: 50 - 2 - 6 and 50 - 3 - 6.
    expect(amounts).toEqual(['2.00 g', '6.00 g', '42.00 g', '3.00 g', '6.00 g', '41.00 g']);
    expect(page).toContain('<li>warm oil and emulsifier to 60 C, stir 400 rpm</li>');
  });

  it('weigh: what is too little for the balance stands as it was typed', async () => {
    const page = await sheetOf(await exampleLedger(), '17', '--sheet', 'weigh');
    expect(page).toContain('<b>12 drops</b>');
  });
});

describe('which beakers', () => {
  it('without a word those that are still looked at', async () => {
    const folder = await fresh();
    const { beakers } = await found(['labels', '--html', 'out.html'], { folder, now });
    expect(beakers).toEqual([
      { trial: 14, sample: 'emulsion' },
      { trial: 15, sample: 'emulsion' },
    ]);
  });

  it('names in files never become markup', async () => {
    const folder = await trialLedger(
      `trial: 1\ntitle: "<script>"\nmade: ${at(2, 0)}\nstages:\n  "<b>":\n    - water: 10 g\nsamples:\n  "<i>":\n    of: "<b>"\n  two:\n    of: "<b>"\n`,
    );
    for (const kind of ['labels', 'looks', 'weigh'])
      expect(await sheetOf(folder, '1', '--ratio', '--sheet', kind)).not.toMatch(/<script>|<i>|<b><\/b>/u);
  });

  it('what is refused says what to do', async () => {
    const folder = await exampleLedger();
    const tries: readonly (readonly [readonly string[], string])[] = [
      [['13'], 'add --html labels.html'],
      [['13', '--html', 'a.pdf'], 'name it labels.html'],
      [['13', '--html', 'a.html', '--sheet', 'look'], 'did you mean looks?'],
      [['13', '--html', 'a.html', '--size', 'large'], 'such as "70 x 37 mm"'],
      [['13', '--html', 'a.html', '--size', '10 x 10 mm'], 'at least 25 x 15 mm'],
      [['13', '--html', 'a.html', '--size', '300 x 20 mm'], 'A4 is 210 x 297 mm'],
      [['13', '--html', 'a.html', '--skip', '99'], 'a sheet has 21 labels'],
      [['13', '--html', 'a.html', '--sheet', 'weigh', '--skip', '1'], 'leave them out'],
      [['orange laddr', '--html', 'a.html'], 'did you mean "orange ladder"?'],
      [['14-11', '--html', 'a.html'], 'write 11-14'],
      [['16', '--html', 'a.html', '--sheet', 'looks'], 'neckring due'],
    ];
    for (const [words, said] of tries) {
      const { code, err } = await neckring(['labels', ...words], { folder, now });
      expect([words, code, err]).toEqual([words, 2, expect.stringContaining(said)]);
    }
  });
});
