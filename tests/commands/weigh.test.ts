import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, record, rows, writeIn } from './neckring.ts';

const file = 'trials/0018-scale.yaml';

const plan = `trial: 18
made: 2026-03-12T09:00+00:00
stages:
  emulsion:
    - orange oil lot 2231: 2 g      # from the small bottle
    - polysorbate 80: 6 g
    - propylene glycol: 6 g
    - water: to 50 g
`;

async function ledgerWith(text = plan): Promise<string> {
  const folder = await exampleLedger();
  await writeIn(folder, file, text);
  return folder;
}

describe('weigh in one line', () => {
  it('writes each figure under its item, as typed, and only adds lines', async () => {
    const folder = await ledgerWith();
    expect((await neckring(['weigh', '18', '2.03', '6.01', '6.00'], { folder })).code).toBe(0);
    expect(await readIn(folder, file)).toBe(
      plan
        .replace('bottle\n', 'bottle\n      weighed: 2.03 g\n')
        .replace('80: 6 g\n', '80: 6 g\n      weighed: 6.01 g\n')
        .replace('glycol: 6 g\n', 'glycol: 6 g\n      weighed: 6.00 g\n'),
    );
  });

  it('adds only what is missing when the same line is typed again', async () => {
    const folder = await ledgerWith();
    await neckring(['weigh', '18', '2.03'], { folder });
    await neckring(['weigh', '18', '2.03', '6.01'], { folder });
    const once = await readIn(folder, file);
    expect((await neckring(['weigh', '18', '2.03', '6.01'], { folder })).err).toContain('nothing written');
    expect(await readIn(folder, file)).toBe(once);
  });

  it('finds an item by part of its name', async () => {
    const folder = await ledgerWith();
    await neckring(['weigh', '18', 'poly', '6.02'], { folder });
    expect(await readIn(folder, file)).toContain('    - polysorbate 80: 6 g\n      weighed: 6.02 g\n');
  });

  it('law: running readings on one tare are the sums of the weighings', async () => {
    const [single, running] = [await ledgerWith(), await ledgerWith()];
    await neckring(['weigh', '18', '2.03', '6.01', '6.00'], { folder: single });
    await neckring(['weigh', '18', '--readings', '2.03', '8.04', '14.04'], { folder: running });
    expect(await readIn(running, file)).toBe(await readIn(single, file));
  });

  it.each([
    [['1', '2', '3', '4', '5'], '5 figures for 4 items'],
    [['--readings', '2.03', '1.0'], 'the reading falls from 2.03 g to 1.0 g'],
    [['sucrose', '2'], 'there is no item "sucrose"'],
    [['2,03'], '2.03'],
    [['2 mL'], 'is a volume'],
    [['poly'], '"poly" has no figure'],
  ])('refuses %j and writes nothing', async (words, message) => {
    const folder = await ledgerWith();
    const { code, err } = await neckring(['weigh', '18', ...words], { folder });
    expect(code).toBe(2);
    expect(err).toContain(message);
    expect(await readIn(folder, file)).toBe(plan);
  });

  it('asks whether a tenfold weighing is meant, and lets it be put right', async () => {
    const folder = await ledgerWith();
    const { out } = await neckring(['weigh', '18', 'poly', '60.1'], { folder });
    expect(out.replace(/\s+/g, ' ')).toContain('is this meant?');
    expect((await neckring(['weigh', '18', 'poly', '6.01'], { folder })).err).toContain(
      '--again replaces it',
    );
    expect((await neckring(['weigh', '18', 'poly', '6.01', '--again'], { folder })).code).toBe(0);
    expect(await readIn(folder, file)).toContain('weighed: 6.01 g');
  });

  it('says beforehand when no balance takes the load', async () => {
    const folder = await ledgerWith(plan.replace('to 50 g', 'to 20 kg'));
    const { out } = await neckring(['weigh', '18'], { folder });
    expect(out.replace(/\s+/g, ' ')).toContain('more than the 15000 g that the largest balance takes');
  });

  it('without figures and without a terminal says what to weigh and what the balance should read', async () => {
    const folder = await ledgerWith();
    const { out } = await neckring(['weigh', '18', '--json'], { folder });
    const additions = rows(record(record(JSON.parse(out))['found'])['additions']);
    expect(additions.map((one) => record(one['reading'])['value'])).toEqual([2, 8, 14, 50]);
  });
});

describe('weigh: what is off', () => {
  it('shows no rounding noise where the plan was met', async () => {
    const folder = await ledgerWith(plan.replace('oil lot 2231: 2 g', 'oil lot 2231: 3 * 0.1 g'));
    const { out } = await neckring(['weigh', '18', '0.3'], { folder });
    expect(out).not.toMatch(/e-\d/);
    expect(out).toMatch(/0\.30 g +0\.3 g +0 %/);
  });
});

const plainly = (text: string): string => text.replace(/\s+/g, ' ');

describe('weigh: what is off by more than the bench accepts', () => {
  // 2.20 of 2.00 g and 6.07 of 6.00 g are off by 10 % and 1.2 %; bench.yaml of the example says `weighing: 1 %`.
  it('is marked, and one line says how the others follow', async () => {
    const folder = await ledgerWith();
    const { code, out } = await neckring(['weigh', '18', '2.20', '6.07', '6.03'], { folder });
    expect(code).toBe(0);
    expect(out).toMatch(/2\.00 g +2\.20 g +10 +% !\n/);
    expect(out).toMatch(/6\.07 g +1\.2 +% !\n/);
    expect(out).toMatch(/6\.03 g +0\.50 +%\n/);
    expect(plainly(out)).toContain(
      'off by more than 1 %: orange oil lot 2231, polysorbate 80; neckring overpoured 18 "orange oil lot 2231" 2.20 says what the others must become',
    );
    expect((await neckring(['overpoured', '18', 'orange oil lot 2231', '2.20'], { folder })).out).toContain(
      '1.100 times',
    );
  });

  it('is told of each item as JSON', async () => {
    const folder = await ledgerWith();
    const { code, out } = await neckring(['weigh', '18', '2.20', '6.01', '--json'], { folder });
    const answer = record(JSON.parse(out));
    expect(code).toBe(0);
    expect(rows(record(answer['found'])['weighed']).map((one) => one['isOff'])).toEqual([true, false]);
    expect(rows(answer['cautions']).map((one) => one['code'])).toEqual(['off-plan']);
  });

  it('tells what is missing, and follows the bench', async () => {
    const folder = await ledgerWith();
    const { out } = await neckring(['weigh', '18', '1.80'], { folder });
    expect(plainly(out)).toContain('weigh in what is missing and type the sum with --again');
    const bench = await readIn(folder, 'bench.yaml');
    await writeIn(folder, 'bench.yaml', bench.replace('weighing: 1 %', 'weighing: 12 %'));
    expect((await neckring(['weigh', '18', '1.80'], { folder })).out).not.toContain('off by more');
  });

  it('does not mark what the balance cannot show nearer', async () => {
    const folder = await ledgerWith(plan.replace('oil lot 2231: 2 g', 'oil lot 2231: 0.304 g'));
    expect((await neckring(['weigh', '18', '0.30'], { folder })).out).not.toContain('!');
  });
});

describe('weigh on a terminal', () => {
  it('marks what is off at once, and ends with the table of the one-line form', async () => {
    const folder = await ledgerWith();
    const { code, out } = await neckring(['weigh', '18'], { folder, answers: ['2.20', '6.01', '', '', ''] });
    expect(code).toBe(0);
    expect(out).toContain('  ! off by 10 %, more than 1 %\n');
    expect(out).toMatch(/item +planned +weighed +off by\n/);
    expect(out).toMatch(/2\.00 g +2\.20 g +10 +% !\n/);
    expect(plainly(out)).toContain('off by more than 1 %: orange oil lot 2231; neckring overpoured 18');
  });

  it('takes figures, Enter for as planned, and keeps what was typed when it is left', async () => {
    const folder = await ledgerWith();
    // The person leaves with Ctrl-C where the second lot is asked.
    const answers = ['2.03', '', 'L9', '6.1'];
    const { out } = await neckring(['weigh', '18'], { folder, answers });
    expect(out).toContain('this addition 2.00 g, the balance should read 2.00 g');
    expect(out).toContain('the balance should read 8.03 g');
    const text = await readIn(folder, file);
    expect(text).toContain('      weighed: 2.03 g\n');
    expect(text).toContain('      weighed: 6.00 g\n      lot: L9\n');
    expect(text).toContain('      weighed: 6.1 g\n');
  });
});

describe('overpoured', () => {
  it('law: every ratio of the plan is kept', async () => {
    const folder = await ledgerWith();
    const { out } = await neckring(['overpoured', '18', 'polysorbate', '6.6', '--json'], { folder });
    const items = rows(record(record(JSON.parse(out))['found'])['items']);
    const totals = items.map((one) => Number(record(one['total'])['value']));
    expect(totals).toEqual([2.2, 6.6, 6.6, 39.6].map((one) => expect.closeTo(one, 10)));
    expect(await readIn(folder, file)).toBe(plan);
  });

  it('writes the weighing and the new plan when asked', async () => {
    const folder = await ledgerWith();
    expect((await neckring(['overpoured', '18', 'polysorbate', '6.6', '--write'], { folder })).code).toBe(0);
    expect(await readIn(folder, file)).toBe(
      plan
        .replace('2231: 2 g', '2231: 2.20 g')
        .replace('80: 6 g\n', '80: 6.6 g\n      weighed: 6.6 g\n')
        .replace('glycol: 6 g', 'glycol: 6.60 g')
        .replace('to 50 g', 'to 55.00 g'),
    );
    expect((await neckring(['check', file], { folder })).code).toBe(0);
  });

  it('law: typed again it writes nothing; the copy that is made of the plan has its ratios', async () => {
    const folder = await ledgerWith();
    const words = ['overpoured', '18', 'polysorbate', '6.6', '--write'];
    await neckring(words, { folder });
    const written = await readIn(folder, file);
    const again = await neckring(words, { folder });
    expect([again.code, again.err]).toEqual([0, `${file} says so already; nothing written\n`]);
    expect(await readIn(folder, file)).toBe(written);
    const { out } = await neckring(['new', '--from', '18', '--dry-run'], { folder });
    expect(out.match(/: (?:to )?[\d.]+ g(?=\s)/g)).toEqual([
      ': 2.20 g',
      ': 6.6 g',
      ': 6.60 g',
      ': to 55.00 g',
    ]);
  });

  it('law: too much of a second item, after an item that was weighed: all ratios are kept', async () => {
    const folder = await ledgerWith();
    await neckring(['weigh', '18', '2'], { folder });
    await neckring(['overpoured', '18', 'polysorbate', '6.6', '--write'], { folder });
    await neckring(['overpoured', '18', 'propylene', '7.26', '--write'], { folder });
    const text = await readIn(folder, file);
    expect(text.match(/: (?:to )?[\d.]+ g(?=\s)/g)).toEqual([
      ...[': 2.42 g', ': 2 g', ': 7.26 g', ': 6.6 g', ': 7.26 g', ': 7.26 g', ': to 60.50 g'],
    ]);
  });

  it('with --same batch says what it comes to if nothing is added', async () => {
    const folder = await ledgerWith();
    const { out } = await neckring(['overpoured', '18', 'polysorbate', '6.6', '--same', 'batch'], { folder });
    expect(out).toContain('If nothing is added');
  });

  it('refuses what is no more than planned', async () => {
    const folder = await ledgerWith();
    const { code, err } = await neckring(['overpoured', '18', 'polysorbate', '5.9'], { folder });
    expect(code).toBe(2);
    expect(err).toContain('is not more than the planned');
  });
});
