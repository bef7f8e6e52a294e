import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, rows, writeIn } from './neckring.ts';

const ledger = async () => ({ folder: await exampleLedger() });

describe('what is typed completes what the trial gives', () => {
  it('a typed droplet stands for one that was never measured', async () => {
    const of = await ledger();
    const answer = await found(['ring', '--trial', '17', '--droplet', '200 nm'], of);
    expect(answer['verdict']).toContain('a ring, not before');
    const alone = await neckring(['ring', '--trial', '17'], of);
    expect(alone.code).toBe(0);
    expect(alone.out.replace(/\s+/g, ' ')).toContain('give --droplet "200 nm"');
  });

  it('a concentrate is answered when it is asked about, with what can be told', async () => {
    const of = await ledger();
    const { code, out } = await neckring(['clarity', '--trial', '13', '--droplet', '30 nm'], of);
    expect([code, out.includes('No NTU can be told')]).toEqual([1, true]);
    const unasked = await neckring(['clarity', '--trial', '13'], of);
    expect([unasked.code, unasked.out.includes('This is a concentrate')]).toEqual([1, true]);
    const { out: page } = await neckring(['reckon', '13', '--dry-run', '--all'], of);
    expect(page).toContain('clarity does not apply');
  });

  it('the strength of an emulsion without a drink goes into a typed dose', async () => {
    const words = ['dose', '--trial', '13', '--oil', '60 mg/L', '--in', '6 L'];
    const { out, code } = await neckring(words, await ledger());
    expect([code, out.includes('emulsion to weigh')]).toEqual([0, true]);
  });

  it('without a drink a typed pH answers, at the temperature of the bench', async () => {
    const of = await ledger();
    const kept = await found(['lasts', 'sucrose', '--trial', '13', '--ph', '3'], of);
    const plain = await found(
      ['lasts', 'sucrose', '--ph', '3', '--temperature', '20 C', '--sugar', '0 %'],
      of,
    );
    expect(leafValue(kept['halfLifeDays'])).toBeCloseTo(leafValue(plain['halfLifeDays']), 8);
  });

  it.each([
    [['drops', '--target', '0.5 ppb', '--in', '6 L', '--stock', '1 ppm', '--drop', '0.021 g']],
    [['ph', '4.5 g/L citric acid']],
    [['brix', '--brix', '10']],
    [['acid', '--acid', '4 g citric acid', '--drink', '8 L']],
    [['adjust', '--acidity', '4.5 g/L', '--ph', '3']],
    [['hlb-of', '--saponification', '45.5', '--acid', '276']],
  ])('%j is whole without the trial, and answered beside it', async (words) => {
    const { code, err } = await neckring([...words, '--trial', '13'], await ledger());
    expect({ code, err }).toEqual({ code: 0, err: '' });
  });

  it('what is still missing is named, with why the trial gives none', async () => {
    const { code, err } = await neckring(['drops', '--trial', '13', '--target', '0.5 ppb'], await ledger());
    expect([code, err.includes('it has no stage named drink')]).toEqual([2, true]);
    expect(err).toContain('--in');
  });
});

describe('the own meter of the ledger', () => {
  it('law: three observations with size and reading set it, twice too high as it reads', async () => {
    const of = await ledger();
    const plain = await found(['clarity', '--trial', '17', '--droplet', '40 nm'], of);
    for (const [size, hour] of [
      [30, '09'],
      [40, '10'],
      [50, '11'],
    ] as const) {
      const at = ['--sample', 'cold glass', '--at', `2026-03-14 ${hour}:00`];
      const { ntu } = await found(['clarity', '--trial', '17', '--droplet', `${size} nm`], of);
      const reading = `${(2 * leafValue(ntu)).toFixed(6)} NTU`;
      await neckring(['observe', '17', ...at, '--droplet', `${size} nm`, '--turbidity', reading], {
        ...of,
        now: '2026-03-20T12:00:00Z',
      });
    }
    const own = await found(['clarity', '--trial', '17', '--droplet', '40 nm'], of);
    expect(leafValue(own['meterFactor'])).toBeCloseTo(2, 5);
    expect(leafValue(own['ntu']) / leafValue(plain['ntu'])).toBeCloseTo(2, 5);
    const recorded = await neckring(['clarity', '--trial', '17', '--droplet', '40 nm', '--record'], of);
    expect([recorded.code, recorded.out.includes('your meter')]).toEqual([0, false]);
    expect((await neckring(['check'], { ...of, now: '2026-03-20T12:00:00Z' })).out).toContain(
      'no errors, no warnings',
    );
  });
});

describe('a formula where a trial is named', () => {
  it('is answered, and its stages stand beside each other', async () => {
    const of = await ledger();
    const answer = await found(['lasts', 'ethyl butyrate', '--trial', 'orange cardamom'], of);
    expect(rows(answer['stages']).map(({ stage }) => stage)).toEqual(['drink', 'syrup']);
    expect(
      leafValue((await found(['clarity', '--trial', 'orange cardamom'], of))['largestClearDiameter']),
    ).toBeGreaterThan(20);
  });

  it('takes no answer of its own', async () => {
    const { code, err } = await neckring(
      ['clarity', '--trial', 'orange cardamom', '--record'],
      await ledger(),
    );
    expect([code, err.includes('--record')]).toEqual([2, true]);
  });

  it('a syrup without acid stands beside its drink, with what is known of it', async () => {
    const of = await ledger();
    await writeIn(
      of.folder,
      'trials/0018-late-acid.yaml',
      `trial: 18
title: acid in the drink alone
made: 2026-03-12T10:00+00:00
stages:
  syrup:
    - sucrose: 90 g
    - water: to 200 mL
  drink:
    - syrup: 200 mL
    - citric acid: 4.5 g
    - water: to 1 L
`,
    );
    const words = ['lasts', 'ethyl butyrate', '--trial', '18'];
    const answer = await found(words, of);
    const syrup = rows(answer['stages']).find(({ stage }) => stage === 'syrup');
    expect(syrup?.['note']).toBe('too little acid');
    expect((await neckring(words, of)).out.replace(/\s+/g, ' ')).toContain('about 2 years at pH 7');
  });
});
