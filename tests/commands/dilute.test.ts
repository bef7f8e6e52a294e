import { describe, expect, it } from 'vitest';
import published from '../fixtures/published/dilutions.json' with { type: 'json' };
import { agreesWithPrint } from '../support/printed.ts';
import { exampleLedger, found, leafValue, neckring, readIn, record, rows } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const quick = [
  '--of',
  'cassis thiol',
  '--to',
  '0.5',
  'ppb',
  '--in',
  '20',
  'kg',
  '--balance',
  '0.01 g up to 600 g',
];

describe('dilute', () => {
  it('law: outside a ledger it goes from neat to the batch, mass by mass', async () => {
    const answer = await found(['dilute', ...quick]);
    const steps = rows(answer['steps']);
    let strength = 1;
    for (const step of steps) {
      strength *=
        leafValue(step['takeMass']) / (leafValue(step['takeMass']) + leafValue(step['solventMass']));
      expect(leafValue(step['strength']) / strength).toBeCloseTo(1, 9);
    }
    expect(leafValue(answer['finalStrength'])).toBeCloseTo(5e-10, 18);
    expect(leafValue(answer['relativeUncertainty'])).toBeGreaterThan(0);
  });

  it('says to keep the neat compound small, closed and aired', async () => {
    const { out } = await neckring(['dilute', ...quick, '--json']);
    const cautions = rows(record(JSON.parse(out))['cautions']);
    expect(cautions[0]).toMatchObject({ code: 'neat-potent-aroma' });
    expect(String(cautions[0]?.['text'])).toContain('closed vial');
  });

  it('uses a stock of the shelf that has not expired, and its own drop', async () => {
    const folder = await exampleLedger();
    const answer = await found(['dilute', '--of', 'cassis thiol', '--to', '0.5 ppb', '--in', '2.1 kg'], {
      folder,
    });
    expect(answer['from']).toBe('cassis stock');
    expect(rows(answer['steps'])).toHaveLength(1);
    // 0.5 ppb of 2.1 kg from 2 ppm is 0.525 g: 25 drops of 0.021 g; to the division 0.53 g on 0.01 g.
    expect(leafValue(answer['drops'])).toBeCloseTo(0.53 / 0.021, 1);
  });

  it('leaves an expired stock aside and says so, and uses it where that is said', async () => {
    const folder = await exampleLedger();
    const words = ['dilute', '--of', 'cassis thiol', '--to', '0.5 ppb', '--in', '20 kg'];
    const setting = { folder, now: '2026-07-01T12:00:00Z' };
    const fresh = await found(words, setting);
    expect(fresh['from']).toBe('cassis thiol');
    expect(String(fresh['leftAside'])).toContain('2026-06-07');
    const { out } = await neckring([...words, '--expired', '--json'], setting);
    expect(record(record(JSON.parse(out))['found'])['from']).toBe('cassis stock');
    expect(rows(record(JSON.parse(out))['cautions'])[0]).toMatchObject({ code: 'past-keep' });
  });

  it('says what it took for granted: bottles of 100 mL, a batch as dense as water', async () => {
    const { out } = await neckring(['dilute', ...quick]);
    expect(out).toContain('no vessel is listed: bottles of 100 mL are taken to be there');
    expect(out).not.toContain('1 g/mL');
    const litres = await neckring(['dilute', ...quick.slice(0, 6), '20 L', ...quick.slice(8)]);
    expect(litres.out).toContain('20 L are taken for 20 kg, at 1 g/mL');
    const told = [...quick.slice(0, 6), '20 L', '--density', '1.04 g/mL', ...quick.slice(8), '--vessel'];
    const { out: nothing } = await neckring(['dilute', ...told, '100 mL']);
    expect(nothing).not.toContain('taken');
  });

  it('takes little of anything neat, potent or not', async () => {
    const words = ['--of', 'vanillin', '--to', '1 ppb', '--in', '20 kg', '--balance', '0.01 g up to 600 g'];
    const [first] = rows((await found(['dilute', ...words, '--vessel', '10 L']))['steps']);
    // 0.5 g is the least that 0.01 g weighs within 1 %.
    expect(leafValue(first?.['takeMass'])).toBe(0.5);
  });

  it('names what was withdrawn from food and dilutes none of it', async () => {
    const words = ['--of', 'safrole', '--to', '1 ppb', '--in', '20 kg', '--balance', '0.01 g'];
    const { code, out, err } = await neckring(['dilute', ...words]);
    // 21 CFR 189.180.
    expect([code, out, err]).toEqual([2, '', expect.stringContaining('no dose is given')]);
  });

  it('keeps to 80 columns', async () => {
    const { out, err } = await neckring(['dilute', ...quick, '--explain']);
    expect(err).toBe('');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it.each([
    [['--to', '0 ppb', '--in', '20 kg'], '"0 ppb" is nothing'],
    [['--to', '0.5', '--in', '20 kg'], 'write 0.5 ppb, 0.5 ppm or 0.5 %'],
    [['--to', '0.5 ppb', '--in', '0 kg'], '"0 kg" is nothing'],
    [['--to', '200 %', '--in', '20 kg'], 'no weaker than what there is'],
    [['--in', '20 kg'], '--to is needed'],
    [['--to', '0.5 ppb'], '--in is needed'],
  ])('refuses %j', async (words, message) => {
    const ran = await neckring([
      'dilute',
      '--of',
      'cassis thiol',
      '--balance',
      '0.01 g up to 600 g',
      ...words,
    ]);
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
  });

  it('says which balance would do where none here does', async () => {
    const ran = await neckring([
      'dilute',
      '--of',
      'cassis thiol',
      '--to',
      '0.5 ppb',
      '--in',
      '20 kg',
      '--balance',
      '1 g up to 15 kg',
    ]);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('a balance that shows 0.1 g');
    expect(ran.err).toContain('a stock of 0.2 ppm');
  });

  it('asks for a balance where the bench has none', async () => {
    const folder = await ledgerOf({});
    const ran = await neckring(['dilute', '--of', 'cassis thiol', '--to', '0.5 ppb', '--in', '20 kg'], {
      folder,
    });
    expect(ran.err).toContain('the bench has no balance');
  });
});

describe('dilute --check', () => {
  const checked = (from: string, chain: string) =>
    found([
      'dilute',
      '--of',
      'sodium chloride',
      '--from',
      from,
      '--check',
      chain,
      '--balance',
      '0.01 g up to 600 g',
    ]);

  it.each(published.dilutions)(
    'published: $take of $stock to $makeUpTo is $answer $unit, $source',
    async (row) => {
      const grams = (typed: string): string => typed.replace('mL', 'g');
      const answer = await checked(row.stock, `${grams(row.take)} in ${grams(row.makeUpTo)}`);
      const per: Readonly<Record<string, number>> = { ppb: 1e9, ppm: 1e6, '% w/v': 100 };
      expect(agreesWithPrint(leafValue(answer['finalStrength']) * (per[row.unit] ?? 1), row.answer)).toBe(
        true,
      );
    },
  );

  it('exits 1 and says why where the bench can not, or the aim is missed', async () => {
    const ran = await neckring([
      ...['dilute', '--check', '0.1 g in 10 g; 0.1 g in 10 g; 0.05 g in 1 kg', '--to', '0.5 ppb'],
      ...['--balance', '0.01 g up to 600 g'],
    ]);
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('weighed to 5 %');
    expect(ran.out).toContain('the 0.5 ppb that is wanted');
  });

  it('shows a mass as it was typed, finer than the balance', async () => {
    const { out } = await neckring(['dilute', '--check', '0.004 g in 10 g', '--balance', '0.01 g']);
    expect(out).toContain('0.004 g');
    expect(out).toContain('9.996 g');
  });

  it('keeps to 80 columns with drops', async () => {
    const { out } = await neckring(['dilute', '--check', '1 g in 100 g; 1 g in 100 g; 0.5 g in 10 kg'], {
      folder: await exampleLedger(),
    });
    expect(out).toContain('the last take as drops');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('exits 0 where all is in order', async () => {
    const ran = await neckring([
      ...['dilute', '--check', '1 g in 100 g; 1 g in 100 g; 1 g in 1 kg', '--to', '100 ppb'],
      ...['--balance', '0.01 g up to 600 g'],
    ]);
    expect([ran.code, ran.err]).toEqual([0, '']);
  });
});

describe('stocks', () => {
  it('lists strength, age and the end of keeping as the owner thinks', async () => {
    const folder = await exampleLedger();
    const answer = await found(['stocks'], { folder });
    const [stock] = rows(answer['stocks']);
    expect(stock).toMatchObject({
      name: 'cassis stock',
      keepsUntil: '2026-06-07',
      expired: false,
      keepingIs: "the owner's estimate",
    });
    expect(leafValue(rows(stock?.['contains'])[0]?.['massFraction'])).toBeCloseTo(2e-6, 12);
    const { out } = await neckring(['stocks'], { folder });
    expect(out).toContain("the owner's own estimate");
  });

  it('marks one that is past its keeping', async () => {
    const { out } = await neckring(['stocks'], {
      folder: await exampleLedger(),
      now: '2026-07-01T12:00:00Z',
    });
    expect(out).toContain('PAST');
  });

  it('writes one as a block, keeps what stands there, and reads it again', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, 'ingredients.yaml');
    const ran = await neckring(
      [
        'stocks',
        'new',
        'cassis 100 ppm',
        '--contains',
        '100 ppm cassis thiol',
        '--in',
        'propylene glycol',
        '--keep',
        '90 d',
        '--left',
        '100 g',
      ],
      { folder },
    );
    expect([ran.code, ran.err]).toEqual([0, 'wrote cassis 100 ppm to ingredients.yaml\n']);
    const after = await readIn(folder, 'ingredients.yaml');
    expect(after).toBe(
      `${before}  cassis 100 ppm:\n    contains:\n      cassis thiol: 100 ppm\n      propylene glycol: rest\n    left: 100 g\n    made: 2026-03-12\n    keep: 90 d\n`,
    );
    expect((await neckring(['check'], { folder })).code).toBe(0);
  });

  it('works the strength out from what was weighed', async () => {
    const folder = await exampleLedger();
    await neckring(
      ['stocks', 'new', 'weak', '--from', '2 g cassis stock in 100 g', '--in', 'propylene glycol'],
      { folder },
    );
    const weak = rows((await found(['stocks'], { folder }))['stocks']).find((one) => one['name'] === 'weak');
    // 2 ppm x 2 g / 100 g
    expect(leafValue(rows(weak?.['contains'])[0]?.['massFraction'])).toBeCloseTo(4e-8, 15);
  });

  it('goes by plain names: no short word of a carrier, no formula of an aroma', async () => {
    const folder = await exampleLedger();
    await neckring(['stocks', 'new', 'weak', '--from', '2 g cassis stock in 100 g', '--in', 'water'], {
      folder,
    });
    expect(await readIn(folder, 'ingredients.yaml')).toContain(
      '      cassis thiol: 40 ppb\n      propylene glycol: 1.999996 %\n      water: rest\n',
    );
  });

  it('makes a block of an empty book', async () => {
    const folder = await ledgerOf({ 'ingredients.yaml': 'ingredients: {}\n' });
    await neckring(
      ['stocks', 'new', 'weak', '--contains', '1 ppm cassis thiol', '--in', 'propylene glycol'],
      { folder },
    );
    expect(await readIn(folder, 'ingredients.yaml')).toBe(
      'ingredients:\n  weak:\n    contains:\n      cassis thiol: 1 ppm\n      propylene glycol: rest\n    made: 2026-03-12\n',
    );
  });

  it.each([
    [['new'], 'the stock has no name'],
    [['new', 'cassis stock', '--contains', '1 ppm cassis thiol', '--in', 'water'], 'on the shelf already'],
    [['new', 'x', '--contains', '1 ppm cassis tiol', '--in', 'water'], 'did you mean cassis thiol'],
    [['new', 'x', '--contains', '1 ppm cassis thiol'], '--in is needed'],
    [['new', 'x', '--in', 'water'], 'nothing is said of what it contains'],
    [['new', 'x', '--contains', '1 ppm safrole', '--in', 'water'], 'no dose is given'],
    [['new', 'x', '--contains', '120 % cassis thiol', '--in', 'water'], 'come to 120 %'],
    [['old'], 'more than stocks takes'],
  ])('refuses %j and writes nothing', async (words, message) => {
    const folder = await exampleLedger();
    const before = await readIn(folder, 'ingredients.yaml');
    const ran = await neckring(['stocks', ...words], { folder });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
    expect(await readIn(folder, 'ingredients.yaml')).toBe(before);
  });
});

describe('dropper', () => {
  const weighings = ['--weighings', '0.612 g / 20', '--weighings', '0.604 g / 20; 0.608 g / 20'];

  it('law: the drop is all grams over all drops, with a 95 % interval around it', async () => {
    const answer = await found(['dropper', ...weighings]);
    expect(leafValue(answer['drop'])).toBeCloseTo(1.824 / 60, 12);
    expect(leafValue(answer['low'])).toBeLessThan(leafValue(answer['drop']));
    expect(leafValue(answer['high'])).toBeGreaterThan(leafValue(answer['drop']));
  });

  it('writes it to an ingredient with liquid and temperature, and dilute counts drops by it', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(
      [
        'dropper',
        ...weighings,
        '--liquid',
        'cassis stock',
        '--temperature',
        '21 C',
        '--record',
        'Cassis stock',
      ],
      { folder },
    );
    expect([ran.code, ran.err]).toEqual([0, 'wrote ingredients.yaml\n']);
    const text = await readIn(folder, 'ingredients.yaml');
    expect(text).toContain('    drop: 0.0304 g\n');
    expect(text).toContain(
      '      liquid: cassis stock\n      temperature: 21 C\n      weighings: 3\n      drops: 60\n',
    );
    expect((await neckring(['check'], { folder })).code).toBe(0);
    const answer = await found(['dilute', '--of', 'cassis thiol', '--to', '0.5 ppb', '--in', '2 kg'], {
      folder,
    });
    expect(leafValue(answer['drops'])).toBeCloseTo(0.5 / 0.0304, 2);
    expect(leafValue(answer['dropsUncertainty'])).toBeLessThan(0.15);
  });

  it('writes it to the bench and keeps the comment', async () => {
    const folder = await exampleLedger();
    await neckring(['dropper', ...weighings, '--record', 'bench'], { folder });
    const text = await readIn(folder, 'bench.yaml');
    expect(text).toContain('# water from the glass dropper, 20 drops weighed');
    expect(text).toContain('  dropper:\n    drop: 0.0304 g\n');
    expect((await neckring(['check'], { folder })).code).toBe(0);
  });

  it('asks whether a drop ten times too heavy is meant', async () => {
    const { out } = await neckring(['dropper', '--weighings', '6.12 g / 20']);
    expect(out).toContain('count meant?');
  });

  it.each([
    [[], '--weighings is needed'],
    [['--weighings', '0.612 g'], 'does not say how many drops'],
    [[...weighings, '--record', 'nothing'], '"nothing" is not in ingredients.yaml'],
  ])('refuses %j', async (words, message) => {
    const ran = await neckring(['dropper', ...words], { folder: await exampleLedger() });
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(message);
  });
});

describe('drops from the shelf', () => {
  const words = ['drops', '--target', '0.5 ppb', '--in', '1 L'];

  it.each([[[]], [['--stock', 'cassis stock']]])(
    'takes strength and drop of the stock (%j)',
    async (more) => {
      const folder = await exampleLedger();
      const answer = await found([...words, ...more], { folder });
      // 0.5 ug in a litre of 1 kg, by drops of 0.021 g at 2 ppm.
      expect(leafValue(answer['drops'])).toBeCloseTo(5e-7 / (2e-6 * 0.021), 9);
      const { err } = await neckring([...words, ...more], { folder });
      expect(err).toBe('from the shelf: cassis stock, 2 ppm, a drop 0.021 g\n');
    },
  );

  it('leaves an expired one, and says so of one that is named', async () => {
    const setting = { folder: await exampleLedger(), now: '2026-07-01T12:00:00Z' };
    expect((await neckring(words, setting)).err).toContain('--stock is needed');
    expect((await neckring([...words, '--stock', 'cassis stock'], setting)).err).toContain(
      'past the end of its keeping',
    );
  });
});
