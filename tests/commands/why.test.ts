import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';

type Found = Readonly<Record<string, unknown>>;

const causesOf = (answer: Found): readonly unknown[] => rows(answer['causes']).map((row) => row['cause']);

const drink = 'trials/0017-orange-cardamom-drink.yaml';

async function seen(...words: readonly string[]): Promise<string> {
  const folder = await exampleLedger();
  const at = ['--sample', 'cold glass', '--at', '2026-03-14 09:00'];
  const { code, err } = await neckring(['observe', '17', ...at, ...words], {
    folder,
    now: '2026-03-20T12:00:00Z',
  });
  expect([code, err.includes('wrote')]).toEqual([0, true]);
  return folder;
}

describe('why', () => {
  it('takes the look at which a sample failed, and gives every cause with its next step and source', async () => {
    const folder = await exampleLedger();
    const answer = await found(['why', '16'], { folder });
    expect([answer['sample'], answer['looks'], leafValue(answer['day'])]).toEqual([
      'beaker',
      ['hazy', 'ring'],
      2,
    ]);
    const causes = rows(answer['causes']);
    expect(causes[0]).toMatchObject({ cause: 'rising-droplets', likelihood: 'likely' });
    for (const one of causes)
      for (const key of ['title', 'because', 'next', 'source'])
        expect([one['cause'], key, String(one[key]).length > 5]).toEqual([one['cause'], key, true]);
    const { code, out } = await neckring(['why', '16'], { folder });
    expect([code, out.includes('1 likely: large or clumped droplets that rose')]).toEqual([0, true]);
    expect(out).toContain('The order is common practice, not a measurement');
  });

  it('tells what was seen since the look at which it failed', async () => {
    const { out } = await neckring(['why', '15'], { folder: await exampleLedger() });
    expect(out).toContain('Trial 15, beaker, day 2: bluish.');
    expect(out).toMatch(/since then +hazy, ring on day 7/);
  });

  it('an oil without emulsifier lacks it first of all, and a gel without it is no gel stage', async () => {
    const folder = await exampleLedger();
    await writeIn(
      folder,
      'trials/0018-bare.yaml',
      `trial: 18
title: no emulsifier yet
made: 2026-03-12T10:00+00:00
stages:
  drink:
    - sweet orange oil: 50 mg
    - water: to 1 L
samples:
  glass:
    of: drink
observations:
  - at: 2026-03-16T09:00+00:00
    look: cloudy
  - at: 2026-03-17T09:00+00:00
    look: gel
`,
    );
    const [first] = rows((await found(['why', '18'], { folder }))['causes']);
    expect([first?.['cause'], first?.['because']]).toEqual([
      'too-little-emulsifier',
      'no stage holds the oil and an emulsifier together',
    ]);
    const [gel] = rows((await found(['why', '18', '--at', '5'], { folder }))['causes']);
    expect(gel?.['cause']).toBe('spoiled');
  });

  it('names the large droplets that a reading could mean too', async () => {
    const folder = await seen('--look', 'hazy', '--turbidity', '20 NTU');
    const page = (await neckring(['why', '17'], { folder })).out.replace(/\s+/g, ' ');
    expect(page).toMatch(/20 NTU means droplets of \d+ to \d+ nm, or from \d+ nm up, at this dose/);
  });

  it('law: what rose 50 mm in its age is at least the droplet that Stokes gives', async () => {
    const answer = await found(['why', '16'], { folder: await exampleLedger() });
    const least = leafValue(answer['leastRisenDiameter']) * 1e-9;
    // 1.8 d, about 172 kg/m3 and the viscosity of water at 20 C.
    const speed = (9.80665 * least ** 2 * 172) / (18 * 1.0016e-3);
    expect((speed * 1.8 * 86_400) / 0.05).toBeCloseTo(1, 1);
  });

  it('says of a clear look that nothing needs explaining, and never a shelf life', async () => {
    const { code, out } = await neckring(['why', '17', '--sample', 'warm glass'], {
      folder: await exampleLedger(),
    });
    expect([code, out.includes('Nothing here needs explaining')]).toEqual([0, true]);
    expect(out.replace(/\s+/g, ' ')).toContain('never a shelf life');
  });

  it('law: the size that the haze implies is that which a reading implies', async () => {
    const folder = await seen('--look', 'hazy', '--turbidity', '9 NTU');
    const answer = await found(['why', '17'], { folder });
    const clarity = await found(['clarity', '--trial', '17', '--turbidity', '9 NTU'], { folder });
    const [small] = rows(clarity['impliedDroplets']);
    expect(leafValue(answer['impliedLow'])).toBeCloseTo(leafValue(small?.['low']), 3);
    expect(leafValue(answer['impliedHigh'])).toBeCloseTo(leafValue(small?.['high']), 3);
    expect(causesOf(answer)).toEqual(
      expect.arrayContaining(['droplets-grew', 'cold-haze', 'too-little-emulsifier']),
    );
  });

  it('a size that was measured is not asked for again, and the look before stands there', async () => {
    const folder = await seen('--look', 'hazy', '--turbidity', '9 NTU', '--droplet', '60 nm');
    const [first] = rows((await found(['why', '17'], { folder }))['causes']);
    expect([first?.['cause'], String(first?.['because'])]).toEqual([
      'droplets-grew',
      expect.stringContaining('60.0 nm were measured'),
    ]);
    expect(String(first?.['next'])).toContain('measure the size again');
    const page = (await neckring(['why', '17'], { folder })).out;
    expect(page).toMatch(/before +clear on day 1/);
    expect(page).toMatch(/measured +droplets of 60.0 nm/);
  });

  it('says so where nothing was seen on the day that is asked about', async () => {
    const { out } = await neckring(['why', '17', '--sample', 'warm glass', '--at', '4'], {
      folder: await exampleLedger(),
    });
    expect(out).toContain('Nothing was seen on day 4: this is the last look before it.');
  });

  it('tells no size from the haze of a concentrate', async () => {
    const answer = await found(['why', '14'], { folder: await exampleLedger() });
    expect([record(answer['impliedLow'])['value'], record(answer['largestClearDiameter'])['value']]).toEqual([
      null,
      null,
    ]);
    const { out } = await neckring(['why', '14'], { folder: await exampleLedger() });
    expect(out).toContain('none can be told in a concentrate; its look counts');
  });

  it('a sediment in the cold is first of all wax of the citrus oil', async () => {
    const answer = await found(['why', '17'], { folder: await seen('--look', 'sediment') });
    expect(rows(answer['causes'])[0]).toMatchObject({ cause: 'wax', likelihood: 'likely' });
  });

  it('names what sets the beaker apart, and what control and blank say', async () => {
    const folder = await exampleLedger();
    const series = await readIn(folder, 'series/orange-ladder.yaml');
    await writeIn(
      folder,
      'series/orange-ladder.yaml',
      `${series.replace(/^control:.*\n/m, '').trimEnd()}\ncontrol: 11\n`,
    );
    const trial = 'trials/0016-orange-1-to-1.5.yaml';
    const text = await readIn(folder, trial);
    await writeIn(folder, trial, text.replace(/to: 60 C/, 'to: 25 C'));
    const answer = await found(['why', '16'], { folder });
    expect(answer['control']).toBe('held');
    expect(JSON.stringify(answer['differences'])).toContain('25 C');
    expect(causesOf(answer).slice(0, 3)).toContain('made-otherwise');
  });

  it.each([
    [['why', '99'], 'there is no trial 99'],
    [['why', '17', '--sample', 'warm'], 'did you mean "warm glass"'],
    [['why', '17', '--at', 'never'], 'give the day, such as --at 4'],
    [['why', '17', '--sample', 'cold glass', '--at', '0'], 'nothing was seen yet'],
  ])('refuses %j', async (words, message) => {
    const { code, err, out } = await neckring(words, { folder: await exampleLedger() });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
  });
});

describe('measured haze beside the model', () => {
  it('shows where they differ, after observe and in reckon, and does not explain it away', async () => {
    const folder = await exampleLedger();
    const observed = await neckring(
      [
        'observe',
        '17',
        '--sample',
        'cold glass',
        '--look',
        'hazy',
        '--turbidity',
        '9 NTU',
        '--droplet',
        '60 nm',
      ],
      { folder },
    );
    expect(observed.out).toContain('Haze beside the model');
    expect(observed.out).toContain('DIFFERS');
    const { out } = await neckring(['reckon', '17', '--dry-run', '--json'], { folder });
    const parsed: unknown = JSON.parse(out);
    const [trial] = rows(record(record(parsed)['found'])['trials']);
    const haze = rows(trial?.['haze']);
    expect(haze.map(({ what, agrees }) => [what, agrees])).toEqual([
      ['turbidity', false],
      ['droplet', false],
      ['look', true],
    ]);
    const modelled = await found(['clarity', '--trial', '17', '--droplet', '60 nm'], { folder });
    expect(leafValue(haze[0]?.['low'])).toBeCloseTo(leafValue(modelled['ntuLow']), 6);
  });

  it('law: three readings with sizes in the ledger set the meter', async () => {
    const folder = await exampleLedger();
    const modelled = leafValue(
      (await found(['clarity', '--trial', '17', '--droplet', '40 nm'], { folder }))['ntu'],
    );
    const readings = [1.9, 2, 2.1].map((factor) => (factor * modelled).toPrecision(6));
    for (const [at, reading] of readings.entries())
      await neckring(
        [
          ...['observe', '17', '--sample', 'warm glass', '--at', `2026-03-1${at + 2} 09:00`],
          ...['--turbidity', `${reading} NTU`, '--droplet', '40 nm'],
        ],
        { folder, now: '2026-03-20T12:00:00Z' },
      );
    const { out } = await neckring(['reckon', '17', '--dry-run'], { folder });
    expect(out.replace(/\s+/g, ' ')).toContain('your meter');
    expect(out).toContain('agrees');
  });

  it('says nothing where nothing was measured, and keeps the file as it was', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, drink);
    const { out } = await neckring(['reckon', '17', '--dry-run'], { folder });
    expect([out.includes('Haze beside the model'), await readIn(folder, drink)]).toEqual([false, before]);
  });
});
