import { describe, expect, it } from 'vitest';
import { exampleLedger } from './neckring.ts';
import { failedAtOnce, heldWeek, rungsOf, rungText, seriesLedger, usualProcess } from './series-ledger.ts';

const values = async (...asked: Parameters<typeof seriesLedger>): Promise<readonly string[]> => {
  const { rungs, scales } = await rungsOf(await seriesLedger(...asked));
  return rungs.map((rung) =>
    rung.values.map((value, at) => `${value.toPrecision(4)}${scales[at]?.unit ?? ''}`).join(' '),
  );
};

describe('what is varied, from the stages of each trial', () => {
  it('the example: from what was weighed, with the outcome of the beaker', async () => {
    const series = await rungsOf(await exampleLedger(), 'Orange  Ladder');
    // 0.75/6.01, 1.50/6.00, 2.01/6.02, 2.40/6.00, 3.02/6.01, 3.99/6.00 g, divided by hand.
    const shown = series.rungs.map(
      ({ values: [value], judged }) => `${value?.toFixed(4)} ${judged?.outcome.outcome}`,
    );
    expect(shown).toEqual([
      '0.1248 held',
      '0.2500 held',
      '0.3339 held',
      '0.4000 failed',
      '0.5025 failed',
      '0.6650 failed',
    ]);
    expect(series).toMatchObject({ shape: 'edge', making: 'stirred', differences: [], problems: [] });
    expect(new Set(series.beakers.map(({ day }) => day))).toEqual(new Set(['2026-03-02']));
  });

  const item = (name: string, amount: string) => [
    'sweet orange oil: 2 g',
    'polysorbate 80: 6 g',
    `${name}: ${amount}`,
    'water: to 50 g',
  ];
  const two = (name: string, first: string, second: string) => [
    { trial: 1, items: item(name, first), looks: heldWeek },
    { trial: 2, items: item(name, second), looks: failedAtOnce },
  ];
  const varies = (text: string): string => `series: ladder\nvaries: ${text}\n`;

  it('an item by name, alias or role, in the unit that was typed', async () => {
    const glycol = two('propylene glycol', '6 g', '3 g');
    expect(await values(glycol, varies('propylene glycol'))).toEqual(['3.000g', '6.000g']);
    expect(await values(glycol, varies('carrier'))).toEqual(['3.000g', '6.000g']);
    const shares = two('propylene glycol', '12 %', '60000 ppm');
    expect(await values(shares, varies('Propylene  Glycol'))).toEqual(['6.000%', '12.00%']);
  });

  it('another ratio, an HLB, a temperature', async () => {
    const glycol = two('propylene glycol', '6 g', '3 g');
    expect(await values(glycol, varies('propylene glycol per oil'))).toEqual(['1.500', '3.000']);
    // 2 g at 15.0 with 6 g at 15.0, and 6 g at 15.0 with 2 g at 4.3: HLB of the reference, weighted by hand.
    const blend = await rungsOf(
      await seriesLedger(two('sorbitan oleate', '0 g', '2 g'), varies('blend HLB')),
    );
    expect(blend.shape).toBe('window');
    const [low = 0, high = 0] = blend.rungs.map((rung) => rung.values[0] ?? 0);
    expect([low, high]).toEqual([expect.closeTo((6 * 15 + 2 * 4.3) / 8, 6), expect.closeTo(15, 6)]);
    const hot = [
      { trial: 1, looks: heldWeek },
      { trial: 2, looks: failedAtOnce, process: usualProcess.replace('60 C', '75 C') },
    ];
    const warm = await rungsOf(await seriesLedger(hot, varies('temperature')));
    expect(warm).toMatchObject({ shape: 'window', differences: [] });
    expect(warm.rungs.map((rung) => rung.values[0])).toEqual([expect.closeTo(60, 9), expect.closeTo(75, 9)]);
  });

  it('two things at once', async () => {
    const glycol = two('propylene glycol', '6 g', '3 g');
    expect(await values(glycol, varies('oil per emulsifier, propylene glycol'))).toEqual([
      '0.3333 3.000g',
      '0.3333 6.000g',
    ]);
  });

  it('different kinds of unit are counted by mass of the stage, and said so', async () => {
    const mixed = await rungsOf(
      await seriesLedger(two('propylene glycol', '6 g', '6 %'), varies('propylene glycol')),
    );
    // 6 g in 50 g is 12 %.
    expect(mixed.rungs.map((rung) => rung.values[0])).toEqual([expect.closeTo(6, 9), expect.closeTo(12, 9)]);
    expect(mixed.problems).toEqual([
      {
        code: 'two-units',
        severity: 'warning',
        message:
          'propylene glycol is given in g in trial 1 and in % in trial 2: counted in % by mass of its stage',
        hint: 'type it in one kind of unit in all rungs',
      },
    ]);
  });

  it('a volume among masses is counted as a mass, and said so', async () => {
    const mixed = await rungsOf(
      await seriesLedger(two('propylene glycol', '6 g', '6 mL'), varies('propylene glycol')),
    );
    expect(mixed.rungs.map((rung) => rung.values[0])).toEqual([
      expect.closeTo(6, 9),
      expect.closeTo(6.216, 1),
    ]);
    expect(mixed.problems).toMatchObject([
      {
        code: 'two-units',
        message:
          'propylene glycol is given in mL in trial 2 and as a mass in others: counted in g, as weighed or as its density says',
      },
    ]);
    const volumes = await rungsOf(
      await seriesLedger(two('propylene glycol', '5 mL', '6 mL'), varies('propylene glycol')),
    );
    expect(volumes.problems).toEqual([]);
  });

  it('stages of different mass are not compared by mass', async () => {
    const rungs = two('propylene glycol', '6 g', '6 g');
    const other = rungText({ trial: 2, items: item('propylene glycol', '6 g'), looks: {} });
    const series = await rungsOf(
      await seriesLedger(rungs, varies('propylene glycol'), {
        'trials/2.yaml': other.replace('to 50 g', 'to 100 g'),
      }),
    );
    expect(series.rungs.map((rung) => rung.values[0])).toEqual([expect.closeTo(6, 9), expect.closeTo(12, 9)]);
    expect(series.problems).toMatchObject([{ code: 'stages-differ' }]);
  });

  it('more than a stirrer, and samples that ended early', async () => {
    const shear = usualProcess.replace('do: add', 'do: shear');
    const rungs = [
      { trial: 1, looks: { 1: 'clear', 3: 'clear' }, process: shear },
      {
        trial: 2,
        looks: { 2: 'clear' },
        process: shear,
        observations: '  - at: 2026-03-05T10:00+00:00\n    ended: spilled\n',
      },
    ];
    const series = await rungsOf(await seriesLedger(rungs));
    expect(series.making).toBe('homogenised');
    // 3 and 2 of 7 days.
    expect(series.beakers).toMatchObject([
      { outcome: 'watching', lasted: expect.closeTo(3 / 7, 9) },
      { outcome: 'watching', lasted: expect.closeTo(2 / 7, 9) },
    ]);
  });
});

describe('which trials belong', () => {
  it.each([
    ['quoted', 'series: "Ladder"'],
    ['with a comment', 'series: ladder # the first'],
    ['spelled with other spaces', 'series:   LADDER'],
    ['going on in the next line', 'series:\n  ladder'],
    ['with an escape in its key', '"s\\x65ries": ladder'],
  ])('a name %s', async (_, line) => {
    const folder = await seriesLedger([{ trial: 1, looks: heldWeek }], undefined, {
      'trials/2.yaml': rungText({ trial: 2, looks: heldWeek }).replace('series: ladder', line),
      'trials/3.yaml': rungText({ trial: 3, looks: heldWeek }).replace('series: ladder', 'series: ladders'),
      'trials/4.yaml': rungText({ trial: 4, looks: heldWeek }).replace('series: ladder\n', ''),
    });
    const { rungs, problems } = await rungsOf(folder);
    expect(rungs.map(({ trial }) => trial.number)).toEqual([1, 2]);
    expect(problems).toEqual([]);
  });

  it('a trial whose oil line is missing is left out, with its place', async () => {
    const folder = await seriesLedger([
      { trial: 1, looks: heldWeek },
      { trial: 2, looks: heldWeek, items: ['polysorbate 80: 6 g', 'water: to 50 g'] },
    ]);
    const series = await rungsOf(folder);
    expect(series.rungs.map(({ trial }) => trial.number)).toEqual([1]);
    expect(series.leftOut).toEqual(['trials/2.yaml']);
    expect(series.problems).toMatchObject([
      {
        code: 'rung-without',
        message: 'trial 2 has no oil in the stage with its emulsifier',
        place: { file: 'trials/2.yaml', line: 4 },
      },
    ]);
  });

  it('so is a file with an error, and one that is no YAML', async () => {
    const folder = await seriesLedger([{ trial: 1, looks: heldWeek }], undefined, {
      'trials/2.yaml': rungText({ trial: 2, looks: heldWeek }).replace('6 g', '6 kilos'),
      'trials/3.yaml': 'trial: 3\nseries: ladder\nstages: [\n',
    });
    const series = await rungsOf(folder);
    expect(series.rungs).toHaveLength(1);
    expect(series.leftOut).toEqual(['trials/2.yaml', 'trials/3.yaml']);
    expect(series.problems.map(({ place }) => place?.file)).toEqual(['trials/2.yaml', 'trials/3.yaml']);
  });

  it('the sample that decides is the one that the series names', async () => {
    const samples = (names: readonly string[]): string =>
      `samples:\n${names.map((name) => `  ${name}:\n    of: emulsion\n`).join('')}`;
    const looksOf = (sample: string, look: string): string =>
      `  - at: 2026-03-09T10:00+00:00\n    sample: ${sample}\n    look: ${look}\n`;
    const folder = await seriesLedger(
      [
        {
          trial: 1,
          looks: {},
          more: samples(['beaker', 'cold glass']),
          observations: looksOf('beaker', 'clear') + looksOf('cold glass', 'hazy'),
        },
        { trial: 2, looks: {}, more: samples(['jar']), observations: looksOf('jar', 'hazy') },
      ],
      'series: ladder\nvaries: oil per emulsifier\njudge: beaker\n',
    );
    const { rungs, beakers, problems } = await rungsOf(folder);
    expect(rungs[0]?.judged?.outcome.outcome).toBe('held');
    expect(rungs[0]?.others[0]?.outcome.outcome).toBe('failed');
    expect(beakers).toHaveLength(1);
    expect(problems).toMatchObject([{ code: 'no-judged-sample', place: { file: 'trials/2.yaml' } }]);
  });
});
