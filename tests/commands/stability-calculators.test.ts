import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows, writeIn } from './neckring.ts';

const value = async (words: readonly string[], key: string): Promise<number> =>
  leafValue((await found(words))[key]);

const orange = '60 mg/L sweet orange oil';

describe('clarity', () => {
  it('published: the sphere of Wiscombe 1979, 1.33 - 1e-5i at x = 10000, through the command line', async () => {
    const answer = await found(['clarity', '--mie', '--size-parameter', '1e4', '--index', '1.33+1e-5i']);
    expect(leafValue(answer['qExt'])).toBeCloseTo(2.004089, 5);
    expect(leafValue(answer['qSca'])).toBeCloseTo(1.723857, 5);
    expect(leafValue(answer['g'])).toBeCloseTo(0.90784, 5);
  });

  it('published: 30 nm limonene droplets at a volume share of 1e-4, 0.1677 1/m and 0.91 NTU (Mie at 40 digits)', async () => {
    const answer = await found([
      ...['clarity', '85 mg/L limonene', '--oil-density', '0.85 g/mL', '--oil-index', '1.4727'],
      ...['--medium-index', '1.3330', '--droplet', '30 nm'],
    ]);
    expect(leafValue(answer['turbidityPerMetre'])).toBeCloseTo(0.1677, 4);
    expect(leafValue(answer['ntu'])).toBeCloseTo(0.91, 2);
    expect(leafValue(answer['ntuHigh']) / leafValue(answer['ntuLow'])).toBeCloseTo(4, 10);
    expect(leafValue(answer['transmission'])).toBeCloseTo(Math.exp(-0.1677 * 0.05), 4);
    expect(answer['look']).toBe('clear on white, faint on black');
    expect(leafValue(answer['largestClearDiameter'])).toBeLessThan(30);
  });

  it('law: the syrup hides what its drink shows', async () => {
    const syrup = ['clarity', '300 mg/L sweet orange oil', '60 % sucrose', '--droplet', '60 nm'];
    const drink = ['clarity', orange, '10 % sucrose', '--droplet', '60 nm'];
    expect(await value(syrup, 'ntu')).toBeLessThan(await value(drink, 'ntu'));
    expect((await neckring(syrup)).out).toContain('judge at drinking strength');
  });

  it('gives no NTU where light is scattered more than once, and says what is known instead', async () => {
    const words = ['clarity', '4 % sweet orange oil', '--droplet', '30 nm'];
    const { code, out } = await neckring(words);
    expect([code, out.includes('No NTU can be told'), out.includes('it looks cloudy')]).toEqual([
      1,
      true,
      true,
    ]);
    const answer = await found(words);
    expect([record(answer['ntu'])['value'], record(answer['transmission'])['value']]).toEqual([null, null]);
  });

  it('law: a reading gives back the droplets that made it, and both branches where there are two', async () => {
    const made = [
      'clarity',
      '85 mg/L limonene',
      '--oil-density',
      '0.85 g/mL',
      '--oil-index',
      '1.4727',
      '--medium-index',
      '1.333',
    ];
    const small = rows((await found([...made, '--turbidity', '4.0965 NTU']))['impliedDroplets']);
    expect(small.map(({ branch }) => branch)).toEqual(['small']);
    expect(leafValue(small[0]?.['diameter'])).toBeCloseTo(50, 1);
    const two = rows((await found([...made, '--turbidity', '64.06 NTU']))['impliedDroplets']);
    expect(two.map(({ branch }) => branch)).toEqual(['small', 'large']);
    expect(leafValue(two[1]?.['diameter'])).toBeCloseTo(300, -1);
    const none = await neckring([...made, '--turbidity', '4000 NTU']);
    expect([none.code, none.out.includes('No droplet size makes 4000 NTU')]).toEqual([1, true]);
  });

  it('says first what a reading or a dose means, and where droplets larger still would read so too', async () => {
    const drink = ['clarity', orange, '100 g/L sucrose'];
    expect((await neckring(drink)).out).toMatch(/^At this dose it stays clear, seen against black/);
    const read = async (ntu: string) =>
      (await neckring([...drink, '--turbidity', ntu])).out.replace(/\s+/g, ' ');
    expect(await read('20 NTU')).toMatch(
      /^20 NTU means droplets of about \d+ nm \(\d+ to \d+ nm\), or large ones/,
    );
    expect(await read('8 NTU')).toContain('Droplets above 5 um would read so too');
    expect(await read('200 NTU')).not.toContain('would read so too');
  });

  it('converts no infra-red reading', async () => {
    const { code, err } = await neckring(['clarity', orange, '--turbidity', '3 FNU']);
    expect([code, err.includes('"FNU" is of another meter than NTU')]).toEqual([2, true]);
  });

  it('law: three readings of the own meter set it, and its band with it', async () => {
    const base = ['clarity', orange, '--droplet', '40 nm'];
    const plain = await found(base);
    const own = await found([
      ...base,
      ...[30, 40, 50].flatMap((size) => [
        '--reading',
        `${size} nm, ${(1.5 * modelled(size)).toFixed(6)} NTU`,
      ]),
    ]);
    expect(leafValue(own['meterFactor'])).toBeCloseTo(1.5, 1);
    expect(leafValue(own['ntu']) / leafValue(plain['ntu'])).toBeCloseTo(leafValue(own['meterFactor']), 8);
    expect(leafValue(own['ntuHigh']) / leafValue(own['ntu'])).toBeLessThan(1.3);

    function modelled(size: number): number {
      return leafValue(plain['ntu']) * (size / 40) ** 3;
    }
  });

  it.each([
    [['--size-parameter', '3', '--index', '1.1'], 'add --mie'],
    [['--mie', '--size-parameter', '3'], '--index is needed'],
    [['--mie', '--index', '1.1'], '--size-parameter is needed'],
    [['--mie', '--size-parameter', '3', '--index', '1.5-0.1i'], 'write 1.5+0.1i'],
    [['--mie', '--size-parameter', '3', '--index', '1.5i'], '1.33+1e-5i'],
    [['--mie', '--size-parameter', '0', '--index', '1.5'], 'size parameter 0'],
    [[orange, '--droplet', '0 nm'], 'a droplet has a size'],
    [[orange, '--droplet', '1.5 mm'], 'no emulsion'],
    [['100 g/L sucrose', '--droplet', '40 nm'], 'no oil'],
    [['60 mg/L ethyl 2-methylbutyrate', '--droplet', '40 nm'], 'no oil'],
    [[orange, '--droplet', '40 nm', '--wavelength', '1200 nm'], '400 to 900 nm'],
    [[orange, '--reading', '30 nm, 1 NTU'], 'too few'],
    [[orange, '--reading', '30 nm'], 'what the meter showed'],
    [['60 mg/L orange stuff', '--droplet', '40 nm'], 'not an ingredient'],
  ])('refuses %j', async (words, message) => {
    const { code, err, out } = await neckring(['clarity', ...words]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
  });

  it('names the field to add where an oil of the own book has no refractive index', async () => {
    const folder = await exampleLedger();
    const book = await readIn(folder, 'ingredients.yaml');
    await writeIn(folder, 'ingredients.yaml', `${book}  attic oil:\n    role: oil\n    density: 0.9 g/mL\n`);
    const { code, err } = await neckring(['clarity', '60 mg/L attic oil', '--droplet', '40 nm'], { folder });
    expect([code, err.includes('no refractive index is known of attic oil')]).toEqual([2, true]);
    expect(err).toContain('"refractive index: 1.473"');
    const rising = await neckring(['ring', '60 mg/L attic oil', '--droplet', '400 nm'], { folder });
    expect(rising.code).toBe(0);
  });
});

describe('ring', () => {
  it('published: 500 nm of citrus oil, 155 kg/m3 lighter, 0.890 mPa s: 2.049 mm a day, 48.79 d for 100 mm', async () => {
    const answer = await found([
      ...['ring', '1 mg/L limonene', '--droplet', '500 nm', '--height', '100 mm', '--temperature', '25 C'],
      ...['--oil-density', '0.845 g/mL', '--medium-density', '1 g/mL', '--viscosity', '0.890'],
    ]);
    expect(leafValue(answer['riseMillimetresPerDay'])).toBeCloseTo(2.049, 3);
    expect(leafValue(answer['days'])).toBeCloseTo(48.79, 1);
    expect(leafValue(answer['scaleHeight'])).toBeCloseTo(0.04138, 5);
    expect(leafValue(answer['peclet'])).toBeCloseTo(0.00025 / 0.04138, 4);
  });

  it('law: its own motion keeps a small droplet mixed; a denser oil sinks; sugar slows', async () => {
    expect((await found(['ring', orange, '--droplet', '20 nm']))['verdict']).toContain('no ring');
    const heavy = await found(['ring', '60 mg/L eugenol', '--droplet', '900 nm']);
    expect(leafValue(heavy['riseMillimetresPerDay'])).toBeLessThan(0);
    expect(heavy['verdict']).toContain('sediment');
    const thin = await value(['ring', orange, '--droplet', '500 nm'], 'days');
    const thick = await value(['ring', orange, '40 % sucrose', '--droplet', '500 nm'], 'days');
    expect(thick).toBeGreaterThan(thin);
  });

  it('published: 3750 rpm, 10 cm, 5 h is 328 days of gravity, of today’s droplets only', async () => {
    const words = ['ring', '--centrifuge', '3750 rpm', '--radius', '10 cm', '--spun', '5 h'];
    expect(await value(words, 'gravityDays')).toBeCloseTo(327.6, 0);
    expect((await neckring(words)).out).toContain("today's droplets only");
    expect((await neckring(['help', 'ring'])).out).toContain("today's");
  });

  it('tells no rate of ripening, and says what slows it', async () => {
    const { out } = await neckring(['ring', orange, '--droplet', '100 nm']);
    expect(out).toContain('How fast droplets ripen is not said');
    expect(out.replace(/\s+/g, ' ')).toContain('5 to 20 % of the oil phase by mass');
  });

  it.each([
    [[orange, '--droplet', '0 nm'], 'a droplet has a size'],
    [[orange, '--droplet', '2 mm'], 'no emulsion'],
    [[orange, '--droplet', '400 nm', '--temperature', '80 C'], '0 to 50 C'],
    [[orange, '--droplet', '400 nm', '--temperature', '-4 C'], '0 to 50 C'],
    [[orange, '--droplet', '400 nm', '--viscosity', '0'], 'is no liquid'],
    [['--droplet', '400 nm'], 'nothing is given'],
    [['--centrifuge', '3750 rpm'], 'a spin has a speed'],
    [[orange, '--droplet', '400 nm', '--weigh-with', 'MCT oil'], 'no heavier than the drink'],
  ])('refuses %j', async (words, message) => {
    const { code, err, out } = await neckring(['ring', ...words]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
  });
});

describe('coat', () => {
  it('published: 2 mg/m2 on 10 % of oil by volume takes 10 g/L at 120 nm (McClements, Food Emulsions)', async () => {
    const answer = await found([
      ...[
        'coat',
        '100 mL sweet orange oil',
        '--oil-density',
        '0.85 g/mL',
        '--batch',
        '1000 g',
        '--droplet',
        '120 nm',
      ],
    ]);
    expect(leafValue(answer['emulsifierMass'])).toBeCloseTo(10, 8);
    expect(leafValue(answer['fraction'])).toBeCloseTo(0.01, 10);
    expect(leafValue(answer['emulsifierHigh']) / leafValue(answer['emulsifierLow'])).toBeCloseTo(4, 10);
  });

  it('published: 1 part of oil to 5 of polysorbate 80 is a microemulsion of about 15.5 nm (Rao and McClements 2011; Tanford)', async () => {
    const answer = await found(['coat', '2 g limonene', '--ratio', '1:5']);
    expect(leafValue(answer['dropletEstimate'])).toBeCloseTo(15.5, 1);
    expect(answer['map']).toContain('microemulsion');
    const poor = await found(['coat', '2 g limonene', '--ratio', '2:1']);
    expect([poor['map'], poor['dropletEstimate']]).toEqual([expect.stringContaining('cloudy'), undefined]);
  });

  it.each([
    [['--droplet', '100 nm'], 'OIL is needed'],
    [['2 g limonene'], 'neither a droplet size nor a ratio'],
    [['2 g limonene', '--droplet', '0 nm'], 'a droplet has a size'],
    [['60 g limonene', '--droplet', '100 nm', '--batch', '50 g'], 'more than the batch'],
  ])('refuses %j', async (words, message) => {
    const { code, err, out } = await neckring(['coat', ...words]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
  });
});

describe('lasts', () => {
  it('published: ethyl acetate at pH 3, 25 C: half in 72.9 d (Mabey and Mill 1978)', async () => {
    expect(await value(['lasts', 'ethyl acetate', '--ph', '3'], 'halfLifeDays')).toBeCloseTo(72.9, 1);
  });

  it('law: the ratio of two conditions is that of their half-lives turned round', async () => {
    const words = ['lasts', 'ethyl butyrate', '--ph', '3.1', '--temperature', '4 C'];
    const ratio = await value([...words, '--against', 'ph 2.7, 22 C'], 'rateRatio');
    const here = await value(words, 'halfLifeDays');
    const there = await value(
      ['lasts', 'ethyl butyrate', '--ph', '2.7', '--temperature', '22 C'],
      'halfLifeDays',
    );
    expect(ratio).toBeCloseTo(there / here, 10);
    expect((await neckring([...words, '--against', 'ph 2.7, 22 C'])).out).toContain('times slower');
  });

  it('law: legs of storage add up, and half is left after a half-life', async () => {
    const words = ['lasts', 'sucrose', '--ph', '2.8', '--temperature', '22 C'];
    const half = await value(words, 'halfLifeDays');
    expect(await value([...words, '--after', `${half} d`], 'remaining')).toBeCloseTo(0.5, 8);
    const legs = await found([...words, '--plan', '4 wk at 22 C, 26 wk at 4 C']);
    const one = await value([...words, '--plan', '4 wk at 22 C'], 'remaining');
    const other = await value([...words, '--plan', '26 wk at 4 C'], 'remaining');
    expect(leafValue(legs['remaining'])).toBeCloseTo(one * other, 10);
    expect(leafValue(legs['remainingLow'])).toBeLessThan(leafValue(legs['remaining']));
  });

  it('law: a cold leg of storage is as unsure as the cold is', async () => {
    const words = ['lasts', 'sucrose', '--ph', '2.8', '--temperature', '22 C', '--plan'];
    const band = async (plan: string): Promise<number> => {
      const answer = await found([...words, plan]);
      return Math.log(leafValue(answer['remainingLow'])) / Math.log(leafValue(answer['remaining']));
    };
    expect(await band('4 wk at 22 C')).toBeCloseTo(1.5, 8);
    expect(await band('4 wk at 22 C, 26 wk at 4 C')).toBeCloseTo(2, 8);
  });

  it('says that nothing finer is told of polysorbate', async () => {
    const { out } = await neckring(['lasts', 'polysorbate 80', '--ph', '3', '--against', 'ph 2.7, 22 C']);
    expect(out.replace(/\s+/g, ' ')).toContain('No comparison, rest or loss of it is told');
  });

  it('compares the stages of a formula: an acid syrup is harder on esters than its drink', async () => {
    const answer = await found([
      ...['lasts', 'ethyl butyrate', '--ph', '2.38', '--temperature', '20 C'],
      ...['--stage', 'acid syrup: ph 1.87', '--stage', 'plain syrup: ph 7'],
    ]);
    const stages = rows(answer['stages']);
    expect(leafValue(stages[0]?.['rateRatio'])).toBeCloseTo(10 ** (2.38 - 1.87), 6);
    expect([record(stages[1]?.['halfLifeDays'])['value'], stages[1]?.['note']]).toEqual([
      null,
      expect.stringContaining('too little acid'),
    ]);
  });

  it('shows polysorbate as a range in words only', async () => {
    const answer = await found(['lasts', 'polysorbate 80', '--ph', '3']);
    expect(record(answer['halfLifeDays'])['value']).toBe(null);
    expect(leafValue(answer['halfLifeHigh']) / leafValue(answer['halfLifeLow'])).toBeCloseTo(16, 8);
    expect((await neckring(['lasts', 'polysorbate 80', '--ph', '3.4'])).out).toContain('Months to years');
  });

  it.each([
    [['citral', '--ph', '3'], 'known for citral: in acid it goes in days'],
    [['limonene', '--ph', '3'], 'known for limonene'],
    [['methyl anthranilate', '--ph', '3'], '10 to 1000 times longer'],
    [['aspartame', '--ph', '3'], '8 weeks at 20 C'],
    [['ascorbic acid', '--ph', '3'], 'air rules'],
    [['linalyl acetate', '--ph', '3'], '--measured "82 % left after 30 d at 40 C"'],
    [['ethyl butyrate'], '--ph is needed'],
    [['--ph', '3'], 'nothing is named'],
    [['ethyl butyrate', '--ph', '3', '--temperature', '90 C'], '0 to 50 C'],
    [['ethyl butyrate', '--ph', '3', '--activation', '80'], 'goes with a figure of your own'],
    [['citral', '--measured', '60 % left after 7 d at 25 C', '--temperature', '4 C'], 'state --activation'],
    [
      ['citral', '--measured', '60 % left after 7 d at 25 C', '--activation', '90', '--against', 'ph 2, 4 C'],
      'at which they were measured',
    ],
    [['ethyl butyrate', '--ph', '3', '--plan', 'long at 4 C'], 'no time at a temperature'],
  ])('refuses %j, with the mend', async (words, message) => {
    const { code, err, out } = await neckring(['lasts', ...words]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
  });
});

describe('in a trial', () => {
  it('reckon answers what applies, writes it once and check finds nothing stale', async () => {
    const folder = await exampleLedger();
    const first = await neckring(['reckon', '17', '--all'], { folder });
    for (const heading of ['clarity, drink', 'clarity, syrup', 'coat, emulsion of 13', 'lasts, drink'])
      expect([heading, first.out.includes(heading)]).toEqual([heading, true]);
    expect(first.out.replace(/\s+/g, ' ')).toContain('ring does not apply: no droplet size was measured');
    const again = await neckring(['reckon', '17'], { folder });
    expect(again.err).toContain('nothing new; nothing written');
    expect((await neckring(['check'], { folder })).out).toContain('no errors, no warnings');
  });

  it('a measured droplet size goes into clarity and ring, and --trial takes what is not typed', async () => {
    const folder = await exampleLedger();
    await neckring(['observe', '17', '--sample', 'cold glass', '--droplet', '45 nm'], { folder });
    const { out } = await neckring(['reckon', '17', '--dry-run'], { folder });
    expect(out).toContain('ring, drink');
    expect(out).toContain('light straight through');
    const answer = await found(['clarity', '--trial', '17', '--droplet', '25 nm'], { folder });
    expect(answer['look']).toBe('clear');
    const kept = await found(['lasts', 'ethyl butyrate', '--trial', '17'], { folder });
    expect(rows(kept['stages']).map(({ stage }) => stage)).toEqual(['drink', 'syrup']);
    const recorded = await neckring(['ring', '--trial', '17', '--record'], { folder });
    expect([recorded.code, recorded.err.includes('wrote 1 result')]).toEqual([0, true]);
  });
});
