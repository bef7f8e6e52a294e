import { describe, expect, it } from 'vitest';
import { exampleLedger, found, leafValue, neckring, record, rows } from './neckring.ts';
import {
  failedAtOnce,
  fortyBeakers,
  heldWeek,
  ladderText,
  rungText,
  seriesLedger,
  usualProcess,
} from './series-ledger.ts';

const series = (folder: string, ...words: readonly string[]) => neckring(['series', ...words], { folder });

const held = (trial: number, oil: number) => ({ trial, oil, looks: heldWeek });
const failed = (trial: number, oil: number) => ({ trial, oil, looks: failedAtOnce });

describe('series NAME', () => {
  it('the example, from the first rung to the decision', async () => {
    const { code, out } = await series(await exampleLedger(), 'orange', 'ladder');
    expect(code).toBe(0);
    for (const text of [
      'how much sweet orange oil does one part of polysorbate 80 hold for a week?',
      '6 beakers: 3 held, 3 failed, 0 watching',
      'made the same way: yes',
      '0.400       2.5     14  failed d4-d7  d1-d4 clear  d7 bluish',
      'last held      1 part oil to 3 of emulsifier, 0.334 (13)',
      'first failed   1 part oil to 2.5 of emulsifier, 0.400 (14)',
      '7 d, 20 C, orange oil lot 2231, steps of trial 13. That is no\n               shelf life',
      'for      1 part oil to 3 of emulsifier, 0.333',
    ])
      expect(out).toContain(text);
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /a new beaker at it holds with a chance of 7\d %; it is nearer the break than the ratio to work at/,
    );
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    expect(out).toMatch(/^[\x20-\x7e\n]*$/);
  });

  it('law: the break lies in its interval, the amount to work at below both it and the margin', async () => {
    const answer = await found(['series', 'orange ladder'], { folder: await exampleLedger() });
    const value = (key: string): number => leafValue(answer[key]);
    expect(value('breakLow')).toBeLessThan(value('breakPoint'));
    expect(value('breakPoint')).toBeLessThan(value('breakHigh'));
    expect(value('workingPoint')).toBeLessThanOrEqual(value('breakPoint') * 0.9 + 1e-12);
    expect(['beakers', 'held', 'failed', 'watching'].map(value)).toEqual([6, 3, 3, 0]);
    expect(record(answer['breakPoint'])['unit']).toBe('');
  });

  it('forty beakers, one of them odd', async () => {
    const folder = await seriesLedger(fortyBeakers);
    const answer = await found(['series', 'ladder'], { folder });
    // The made-up break is a third.
    expect(leafValue(answer['breakLow'])).toBeLessThan(1 / 3);
    expect(leafValue(answer['breakHigh'])).toBeGreaterThan(1 / 3);
    expect(rows(answer['rungs'])).toHaveLength(40);
    const { out } = await series(folder, 'ladder');
    expect(out).toContain('beakers held above one that failed');
    expect(out).toContain('- made on 10 days, 2026-03-02 to 2026-03-11\n');
    expect(out).not.toContain('day made');
  });

  it('--explain states what is believed, the formula, the beakers and the sources', async () => {
    const { out } = await series(await exampleLedger(), 'orange ladder', '--explain');
    for (const text of [
      'Believed before the first beaker',
      'the break lies anywhere from 0.125 to 2.00',
      'P(fails) = odd + (1 - 2 odd) Phi(',
      'nothing is drawn at random',
      'common practice, no source',
    ])
      expect(out.replace(/\n\s+/g, ' ')).toContain(text);
  });

  it('late failures, recoveries, cold glasses and tastes are shown', async () => {
    const both = 'samples:\n  beaker:\n    of: emulsion\n  cold glass:\n    of: emulsion\n    at: 4 C\n';
    const seen = (sample: string, line: string): string =>
      `  - at: 2026-03-09T10:00+00:00\n    sample: ${sample}\n    ${line}\n`;
    const observations =
      seen('beaker', 'look: clear') +
      seen('cold glass', 'look: hazy') +
      seen('beaker', 'taste:\n      soapy: 2');
    const folder = await seriesLedger([
      { trial: 1, oil: 1, looks: { ...heldWeek, 30: 'clear', 90: 'ring' } },
      { trial: 2, oil: 2, looks: { 1: 'clear', 3: 'bluish', 4: 'clear' } },
      { trial: 3, oil: 0.5, looks: {}, more: both, observations },
    ]);
    const { out } = await series(folder, 'ladder');
    for (const text of [
      '1: held the watch, failed between day 30 and day 90; it counts as failed',
      '2: failed between day 1 and day 3, passed again on day 4; it counts as failed',
      '3: its cold glass (at 4 C) failed by day 7, though its beaker held',
      'tasted d7: soapy 2',
    ])
      expect(out).toContain(text);
  });

  it('which rung was made otherwise, in what', async () => {
    const folder = await seriesLedger([
      held(1, 1),
      held(2, 1.5),
      { ...failed(3, 2), process: usualProcess.replace('60 C', '70 C').replace('4 min', '6 min') },
      { ...failed(4, 2.5), day: 4, items: ['cardamom oil: 2.5 g', 'polysorbate 80: 6 g', 'water: to 50 g'] },
    ]);
    const { out } = await series(folder, 'ladder');
    for (const text of [
      'made the same way: no',
      '3: temperature of step 1 (warm) 70 C, against 60 C',
      '3: time of step 2 (add) 6 min, against 4 min',
      '4: oil cardamom oil, against sweet orange oil',
      '4: day made 2026-03-04, against 2026-03-02',
    ])
      expect(out).toContain(text);
  });
});

describe('series that say little yet', () => {
  const only = async (...asked: Parameters<typeof seriesLedger>) => {
    const folder = await seriesLedger(...asked);
    const { code, out } = await series(folder, 'ladder');
    const { out: json } = await series(folder, 'ladder', '--json');
    return { code, out: out.replace(/\n\s+/g, ' '), json: record(JSON.parse(json)) };
  };

  it('all held: which side, what next', async () => {
    const { code, out, json } = await only([held(1, 1), held(2, 2)]);
    expect(code).toBe(1);
    expect(out).toContain(
      'all held, up to 1 part oil to 3 of emulsifier, 0.333: the break lies above; make next:',
    );
    expect(out).toContain('1 part oil to 1.5 of emulsifier, 0.667');
    const answer = record(json['found']);
    expect([answer['breakPoint'], answer['breakHigh']]).toEqual([
      { value: null, unit: '' },
      { value: null, unit: '' },
    ]);
    expect(leafValue(answer['workingPoint'])).toBeLessThanOrEqual(1 / 3);
  });

  it('all failed: which side, what next', async () => {
    const { code, out, json } = await only([failed(1, 1), failed(2, 2)]);
    expect(code).toBe(1);
    expect(out).toContain('all failed, down to 1 part oil to 6 of emulsifier, 0.167: the break lies below');
    expect(record(json['found'])['workingPoint']).toEqual({ value: null, unit: '' });
    expect(rows(json['problems'])[0]).toMatchObject({ code: 'all-failed', severity: 'warning' });
  });

  it('no outcome yet', async () => {
    const { code, out } = await only([{ trial: 1, looks: { 1: 'clear' } }]);
    expect(code).toBe(1);
    expect(out).toContain('no outcome yet: 1 beaker still watched');
  });

  it('nothing varied, and no rung', async () => {
    const nothing = await only([held(1, 1)], 'series: ladder\n');
    expect(nothing.code).toBe(1);
    expect(nothing.out).toContain(
      'does not say what it varies; add "varies: oil per emulsifier" to series/ladder.yaml',
    );
    expect(nothing.out).toContain('d1-d7 clear');
    expect(await only([])).toMatchObject({
      code: 1,
      out: expect.stringContaining('no trial that could be read'),
    });
    const same = await only([held(1, 2), failed(2, 2)]);
    expect(same.out).toContain('all rungs have the same oil per emulsifier');
  });

  it('a rung without its oil is named with its place and left out', async () => {
    const folder = await seriesLedger([
      held(1, 1),
      failed(2, 2),
      { trial: 3, looks: heldWeek, items: ['polysorbate 80: 6 g', 'water: to 50 g'] },
    ]);
    const { code, out, err } = await series(folder, 'ladder');
    expect(code).toBe(1);
    expect(err).toContain('trials/3.yaml:4:1: trial 3 has no oil in the stage with its emulsifier');
    expect(out).toContain('left out: trials/3.yaml');
    expect(out).toContain('2 beakers: 1 held, 1 failed');
  });

  it('a control that failed and a blank that is hazy', async () => {
    const { code, out } = await only(
      [
        held(1, 1),
        failed(2, 3),
        failed(3, 1.1),
        { trial: 4, looks: failedAtOnce, items: ['polysorbate 80: 6 g', 'water: to 50 g'] },
      ],
      `${ladderText}control: 3\nblank: 4\n`,
    );
    expect(code).toBe(1);
    expect(out).toContain('the control (trial 3) failed between day 1 and day 3 (hazy); something besides');
    expect(out).toContain('the blank (trial 4) failed between day 1 and day 3 (hazy): what is seen there');
    expect(out).toContain('3 beakers: 1 held, 2 failed');
    const missing = await only([held(1, 1), failed(2, 3)], `${ladderText}control: 9\n`);
    expect(missing.out).toContain('the control, trial 9, is not there');
  });
});

describe('windows, grids, two series', () => {
  const blend = (much: number) => [
    'sweet orange oil: 2 g',
    `polysorbate 80: ${much} g`,
    `sorbitan oleate: ${6 - much} g`,
    'water: to 50 g',
  ];

  it('an HLB has a window and no curve', async () => {
    const rungs = [6, 5, 4, 3].map((much, at) => ({
      trial: at + 1,
      items: blend(much),
      looks: much === 6 || much === 3 ? failedAtOnce : heldWeek,
    }));
    const folder = await seriesLedger(rungs, 'series: ladder\nvaries: blend HLB\n');
    const { code, out } = await series(folder, 'ladder');
    expect(code).toBe(0);
    // HLB 15.0 and 4.3 weighted by 4:2 and 5:1, 3:3 and 6:0.
    for (const text of ['held from  11.4', 'held to    13.2', 'failed at 9.65', 'failed at 15.0'])
      expect(out).toContain(text);
    expect(out).not.toContain('chance');
    const answer = await found(['series', 'ladder'], { folder });
    expect(answer['breakPoint']).toEqual({ value: null, unit: '' });
    expect(leafValue(record(answer['window'])['lowestHeld'])).toBeCloseTo((4 * 15 + 2 * 4.3) / 6, 9);
  });

  it('two things varied: a grid of looks', async () => {
    const rungs = [1, 2].flatMap((oil) =>
      [0, 3].map((glycol) => ({
        trial: oil * 10 + glycol,
        items: [
          `sweet orange oil: ${oil} g`,
          'polysorbate 80: 6 g',
          `propylene glycol: ${glycol} g`,
          'water: to 50 g',
        ],
        looks: oil === 2 && glycol === 0 ? failedAtOnce : heldWeek,
      })),
    );
    const folder = await seriesLedger(
      rungs,
      'series: ladder\nvaries: oil per emulsifier, propylene glycol\n',
    );
    const { code, out } = await series(folder, 'ladder');
    expect(code).toBe(0);
    expect(out).toContain('What held: oil per emulsifier downwards, propylene glycol across');
    expect(out).toMatch(/0\.167 +held \(10\) +held \(13\)\n0\.333 +failed d1-d3 \(20\) +held \(23\)/);
  });

  it('an amount that fails below: the edge is found on that side', async () => {
    const rungs = [2, 3, 4, 5, 6].map((much) => ({
      trial: much,
      items: ['sweet orange oil: 2 g', `polysorbate 80: ${much} g`, 'water: to 50 g'],
      looks: much < 4 ? failedAtOnce : heldWeek,
    }));
    const folder = await seriesLedger(rungs, 'series: ladder\nvaries: polysorbate 80\n');
    const answer = await found(['series', 'ladder'], { folder });
    const { value, unit } = record(answer['breakPoint']);
    expect(unit).toBe('g');
    expect(value).toBeGreaterThan(3);
    expect(value).toBeLessThan(4);
    expect(leafValue(answer['workingPoint'])).toBeGreaterThan(4);
    const { out } = await series(folder, 'ladder');
    expect(out).toContain('last held      4.00 g (4)');
  });

  const other = (oil: number, at: number) =>
    rungText({
      trial: 11 + at,
      items: [`sweet orange oil: ${oil} g`, 'polysorbate 20: 6 g', 'water: to 50 g'],
      looks: oil > 1 ? failedAtOnce : heldWeek,
      series: 'other',
    });

  it('--against: the ratio of the breaks, the chance, what else was otherwise', async () => {
    const folder = await seriesLedger([held(1, 1), held(2, 1.5), held(3, 2), failed(4, 2.5)], undefined, {
      'series/other.yaml': 'series: other\nvaries: oil per emulsifier\n',
      ...Object.fromEntries([0.5, 1, 1.5, 2].map((oil, at) => [`trials/${11 + at}.yaml`, other(oil, at)])),
    });
    const { code, out } = await series(folder, 'ladder', '--against', 'other');
    expect(code).toBe(0);
    expect(out).toContain('% that ladder breaks at more than other');
    expect(out).toContain('otherwise made alike  no');
    expect(out).toContain('- emulsifier: polysorbate 80; there polysorbate 20');
    const one = record((await found(['series', 'ladder', '--against', 'other'], { folder }))['against']);
    const turned = record((await found(['series', 'other', '--against', 'ladder'], { folder }))['against']);
    // Turned round the ratio is one over, the chance what is missing to 1.
    expect(leafValue(one['ratio']) * leafValue(turned['ratio'])).toBeCloseTo(1, 2);
    expect(leafValue(one['chanceHigher']) + leafValue(turned['chanceHigher'])).toBeCloseTo(1, 2);
  });

  it('what can not be compared is refused in words', async () => {
    const folder = await seriesLedger([held(1, 1), failed(2, 2)], undefined, {
      'series/other.yaml': 'series: other\nvaries: propylene glycol\n',
    });
    const { code, out } = await series(folder, 'ladder', '--against', 'other');
    expect(code).toBe(1);
    expect(out.replace(/\n\s+/g, ' ')).toContain(
      'they vary different things: oil per emulsifier and propylene glycol',
    );
    expect((await series(folder, 'ladder', '--against', 'ladder')).out).toContain('another one only');
  });
});

describe('heads over antifoam', () => {
  it('stand under the rungs; looks are then not waited for', async () => {
    const rungs = [0, 5, 10].map((dose, at) => ({
      trial: at + 1,
      looks: {},
      items: [`antifoam emulsion: ${dose} ppm`, 'water: to 1000 g'],
      observations: `  - at: 2026-03-03T10:00+00:00\n    head: ${40 - 3 * dose} mm\n`,
    }));
    const folder = await seriesLedger(rungs, 'series: ladder\nvaries: antifoam\n');
    const { code, out } = await series(folder, 'ladder', '--head', '5 to 15 mm');
    expect(code).toBe(0);
    expect(out).toContain('The smallest dose tried with a head in the band is 10.0 ppm');
    expect(out).not.toContain('no outcome yet');
    expect(record(await found(['series', 'ladder'], { folder }))['foam']).toMatchObject({
      doses: [{}, {}, {}],
    });
  });

  it('a head is not asked of a series over something else', async () => {
    const { code, err } = await series(await exampleLedger(), 'orange ladder', '--head', '5 to 15 mm');
    expect(code).toBe(2);
    expect(err).toContain('--head is for a series over antifoam');
  });
});

describe('naming a series', () => {
  it('without a name all are listed, with counts and decisions', async () => {
    const folder = await exampleLedger();
    const { code, out } = await series(folder);
    expect(code).toBe(0);
    expect(out).toContain('orange ladder  oil per emulsifier     3       3         0');
    const answer = await found(['series'], { folder });
    expect(rows(answer['series'])[0]).toMatchObject({
      series: 'orange ladder',
      held: { value: 3, unit: '' },
    });
  });

  it('by its file, and one that is not there', async () => {
    const folder = await exampleLedger();
    expect((await series(folder, 'series/orange-ladder.yaml')).code).toBe(0);
    const { code, err } = await series(folder, 'orange laddr');
    expect(code).toBe(2);
    expect(err).toContain('there is no series "orange laddr"; did you mean "orange ladder"?');
  });

  it('show tells what became of each sample', async () => {
    const { out } = await neckring(['show', '15'], { folder: await exampleLedger() });
    expect(out).toContain('failed between day 1 and day 2');
  });
});
