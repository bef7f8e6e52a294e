import { describe, expect, it } from 'vitest';
import { mergeTexts } from '../../../src/ledger/merge/merge-texts.ts';
import { readTime } from '../../../src/ledger/times.ts';

const timeOf = (text: string): number | undefined => {
  const time = readTime(text, undefined);
  return time.ok ? time.value.epochMilliseconds : undefined;
};

const merge = (base: string, ours: string, theirs: string) =>
  mergeTexts({
    file: 'trials/0001-a.yaml',
    texts: { base, ours, theirs },
    labels: { ours: 'main', theirs: 'cassis', size: 7 },
    timeOf,
  });

const textOf = (base: string, ours: string, theirs: string): string => {
  const merged = merge(base, ours, theirs);
  return merged.state === 'not merged' ? `not merged: ${merged.version}` : merged.text;
};

const trial = `# a notebook page
trial: 1
made: 2026-03-02T10:15+00:00   # by the clock on the wall
stages:
  emulsion:
    process:
      - do: warm
        to: 60 C
    items:
      # weighed first
      - sweet orange oil: 2 g
      - polysorbate 80: 6 g   # from the new bottle
        weighed: 6.01 g
      - water: to 50 g
samples:
  beaker:
    of: emulsion

observations:
  - at: 2026-03-03T09:10+00:00
    look: clear
  # the lamp was changed here

  - at: 2026-03-05T09:10+00:00
    look: hazy
    note: a ring?
  # to be looked at on the 9th
results:
  - at: 2026-03-02T10:20:11+00:00
    calculator: hlb
    of: 5c1e09aa
    required HLB: 12.0000
# end
`;

const withLine = (text: string, after: string, line: string): string =>
  text.replace(after, `${after}${line}`);

describe('mergeTexts', () => {
  it('lands edits to different items, beside comments', () => {
    const ours = trial.replace('oil: 2 g', 'oil: 2.5 g');
    const theirs = trial.replace('80: 6 g', '80: 7 g').replace('# weighed first', '# weighed last');
    expect(textOf(trial, ours, theirs)).toBe(
      ours.replace('80: 6 g', '80: 7 g').replace('# weighed first', '# weighed last'),
    );
  });

  it('lands an amount and a comment on one line', () => {
    const ours = trial.replace('80: 6 g', '80: 6.5 g');
    const theirs = trial.replace('new bottle', 'old bottle');
    expect(textOf(trial, ours, theirs)).toBe(ours.replace('new bottle', 'old bottle'));
  });

  it('leaves one amount that both changed to a person, on its own line', () => {
    const ours = trial.replace('oil: 2 g', 'oil: 2.5 g');
    const theirs = trial.replace('oil: 2 g', 'oil: 3 g');
    expect(textOf(trial, ours, theirs)).toBe(
      trial.replace(
        '      - sweet orange oil: 2 g\n',
        '<<<<<<< main\n      - sweet orange oil: 2.5 g\n=======\n      - sweet orange oil: 3 g\n>>>>>>> cassis\n',
      ),
    );
  });

  it('keeps what both saw, in time order', () => {
    const ours = withLine(trial, 'note: a ring?\n', '  - at: 2026-03-09T09:00+00:00\n    look: ring\n');
    const theirs = withLine(
      trial,
      'note: a ring?\n',
      '  - at: 2026-03-07T09:00+00:00\n    look: hazy\n  # mine, in the evening\n  - at: 2026-03-09T20:00+00:00\n    look: broken\n',
    );
    expect(textOf(trial, ours, theirs)).toBe(
      withLine(
        trial,
        'note: a ring?\n',
        '  - at: 2026-03-07T09:00+00:00\n    look: hazy\n  - at: 2026-03-09T09:00+00:00\n    look: ring\n  # mine, in the evening\n  - at: 2026-03-09T20:00+00:00\n    look: broken\n',
      ),
    );
  });

  it('takes the same observation once, and two of one time with other contents twice', () => {
    const seen = '  - at: 2026-03-09T09:00+00:00\n    look: ring\n    by: a\n';
    const ours = withLine(trial, 'note: a ring?\n', seen);
    const theirs = withLine(
      trial,
      'note: a ring?\n',
      '  - at: 2026-03-09T10:00+01:00\n    sample: beaker\n    by: a\n    look: ring\n  - at: 2026-03-09T09:00+00:00\n    look: specks\n',
    );
    expect(textOf(trial, ours, theirs)).toBe(
      withLine(trial, 'note: a ring?\n', `${seen}  - at: 2026-03-09T09:00+00:00\n    look: specks\n`),
    );
  });

  it('keeps what both added in one place, ours first, and says so', () => {
    const ours = withLine(trial, 'oil: 2 g\n', '      - sucrose: 3 g\n');
    const theirs = withLine(trial, 'oil: 2 g\n', '      - citric acid: 1 g\n');
    const merged = merge(trial, ours, theirs);
    expect(merged).toMatchObject({
      state: 'clean',
      text: withLine(trial, 'oil: 2 g\n', '      - sucrose: 3 g\n      - citric acid: 1 g\n'),
      together: [
        { path: ['stages', 'emulsion', 'items'], ours: { key: 'sucrose' }, theirs: { key: 'citric acid' } },
      ],
    });
  });

  it('leaves one ingredient that both added to a person, wherever each put it', () => {
    const ours = withLine(trial, 'oil: 2 g\n', '      - sucrose: 3 g\n');
    const theirs = withLine(trial, 'weighed: 6.01 g\n', '      - sucrose: 4 g\n');
    expect(merge(trial, ours, theirs)).toMatchObject({
      state: 'conflict',
      conflicts: [{ why: 'added on both sides', path: ['stages', 'emulsion', 'items', 'sucrose'] }],
    });
  });

  it('leaves one ingredient that both renamed to a person', () => {
    const ours = trial.replace('sweet orange oil', 'orange oil lot 2231');
    const theirs = trial.replace('sweet orange oil', 'bitter orange oil');
    expect(textOf(trial, ours, theirs)).toBe(
      trial.replace(
        '      # weighed first\n      - sweet orange oil: 2 g\n',
        '      # weighed first\n<<<<<<< main\n      - orange oil lot 2231: 2 g\n=======\n      - bitter orange oil: 2 g\n>>>>>>> cassis\n',
      ),
    );
  });

  it('leaves an item that one renamed and the other weighed to a person', () => {
    const ours = trial.replace('sweet orange oil', 'orange oil lot 2231');
    const theirs = withLine(trial, 'oil: 2 g\n', '        weighed: 2.01 g\n');
    expect(merge(trial, ours, theirs)).toMatchObject({
      state: 'conflict',
      conflicts: [{ why: 'changed on both sides' }],
    });
    const taken = trial.replace('      - sweet orange oil: 2 g\n', '');
    expect(merge(trial, taken, theirs)).toMatchObject({
      state: 'conflict',
      conflicts: [{ why: 'changed on one side, taken out on the other' }],
    });
  });

  it('takes the order of addition that one side changed, with the amounts of the other', () => {
    const moved = trial.replace(
      /( {6}- polysorbate.*\n.*\n)( {6}- water.*\n)/u,
      (_, first: string, second: string) => second + first,
    );
    const theirs = trial.replace('80: 6 g', '80: 7 g');
    expect(textOf(trial, moved, theirs)).toBe(moved.replace('80: 6 g', '80: 7 g'));
    expect(textOf(trial, theirs, moved)).toBe(moved.replace('80: 6 g', '80: 7 g'));
  });

  it('leaves two orders of addition to a person', () => {
    const items = ['a: 1 g', 'b: 2 g', 'c: 3 g'];
    const page = (order: readonly number[]): string =>
      `formula: x\nstages:\n  drink:\n${order.map((at) => `    - ${items[at]}\n`).join('')}`;
    expect(merge(page([0, 1, 2]), page([1, 0, 2]), page([0, 2, 1]))).toMatchObject({ state: 'conflict' });
    expect(textOf(page([0, 1, 2]), page([2, 0, 1]), page([2, 0, 1]))).toBe(page([2, 0, 1]));
  });

  it('tells two lines of one name apart by what they say', () => {
    const page = (lines: readonly string[]): string =>
      `formula: x\nstages:\n  drink:\n${lines.map((line) => `    - ${line}\n`).join('')}`;
    const base = page(['sucrose: 5 g', 'water: to 50 g']);
    const ours = page(['water: 10 g', 'sucrose: 5 g', 'water: to 50 g']);
    const theirs = page(['sucrose: 5 g', 'water: to 50 g', '  note: chilled'].slice(0, 2)).replace(
      'to 50 g\n',
      'to 50 g\n      note: chilled\n',
    );
    expect(textOf(base, ours, theirs)).toBe(ours.replace('to 50 g\n', 'to 50 g\n      note: chilled\n'));
  });

  it('leaves the steps of a process to a person where both changed them, unless they are equal', () => {
    const ours = withLine(trial, 'to: 60 C\n', '      - do: cool\n');
    const theirs = withLine(trial, 'to: 60 C\n', '        stir: 400 rpm\n');
    expect(merge(trial, ours, theirs)).toMatchObject({
      state: 'conflict',
      conflicts: [{ path: ['stages', 'emulsion', 'process'] }],
    });
    expect(textOf(trial, ours, ours)).toBe(ours);
  });

  it('collapses answers that differ only in their time to the earlier', () => {
    const answer = (at: string): string =>
      `  - at: ${at}\n    calculator: ph\n    of: 0a1b2c3d\n    ph: 3.10000\n`;
    const ours = withLine(trial, 'HLB: 12.0000\n', answer('2026-03-04T10:00:00+00:00'));
    const theirs = withLine(trial, 'HLB: 12.0000\n', answer('2026-03-03T10:00:00+00:00'));
    expect(textOf(trial, ours, theirs)).toBe(theirs);
    expect(textOf(trial, theirs, ours)).toBe(theirs);
  });

  it('merges what both began: a list that was not there, or stood empty', () => {
    const bare = 'trial: 1\nstages:\n  drink:\n    - water: 50 g\n';
    const seen = (day: number): string => `  - at: 2026-03-0${day}T09:00Z\n    look: clear\n`;
    const both = `${bare}observations:\n${seen(3)}${seen(4)}`;
    const ours = `${bare}observations:\n${seen(4)}`;
    const theirs = `${bare}observations:\n${seen(3)}`;
    expect(textOf(bare, ours, theirs)).toBe(both);
    expect(textOf(`${bare}observations: []\n`, ours, theirs)).toBe(both);
    expect(textOf('', ours, theirs)).toBe(both);
  });

  it('writes what came from a page with other indentation as ours has it', () => {
    const wide =
      'trial: 1\nstages:\n    drink:\n        - water: 50 g\n          note: |\n            two\n\n            lines\n';
    const narrow =
      'trial: 1\nstages:\n  drink:\n    - water: 50 g\n      note: |\n        two\n\n        lines\n';
    const theirs = `${wide}        - sucrose: 3 g\n          note: |\n              one\n\n                more\n`;
    expect(textOf(narrow, narrow.replace('50 g', '60 g'), theirs)).toBe(
      `${narrow.replace('50 g', '60 g')}    - sucrose: 3 g\n      note: |\n          one\n\n            more\n`,
    );
  });

  it('keeps the line ends of ours, and takes those that theirs changed', () => {
    const windows = (text: string): string => text.replaceAll('\n', '\r\n');
    const [ours, theirs] = [trial.replace('oil: 2 g', 'oil: 2.5 g'), trial.replace('80: 6 g', '80: 7 g')];
    const both = ours.replace('80: 6 g', '80: 7 g');
    expect(textOf(windows(trial), windows(ours), windows(theirs))).toBe(windows(both));
    expect(textOf(trial, ours, windows(theirs))).toBe(windows(both));
    expect(textOf(trial, windows(ours), theirs)).toBe(windows(both));
    expect(textOf(trial, `\ufeff${ours}`, theirs.trimEnd())).toBe(`\ufeff${both.trimEnd()}`);
  });

  it('leaves alone what it can not read', () => {
    const broken = trial.replace('trial: 1', 'trial: [1');
    expect(merge(trial, broken, trial)).toEqual({ state: 'not merged', version: 'ours' });
    expect(merge(trial, trial, '<<<<<<< HEAD\n')).toEqual({ state: 'not merged', version: 'theirs' });
  });

  it('leaves apart what is wrong only when both are together', () => {
    const file = 'formulas/x.yaml';
    const page = (oil: string, acid: string): string =>
      `formula: x\nstages:\n  drink:\n    - oil: ${oil}\n    - acid: ${acid}\n    - water: to 1 L\n`;
    const shares = (text: string): number =>
      [...text.matchAll(/(\d+) %/gu)].reduce((sum, [, share]) => sum + Number(share), 0);
    const merged = mergeTexts({
      file,
      texts: { base: page('10 %', '10 %'), ours: page('60 %', '10 %'), theirs: page('10 %', '70 %') },
      labels: { ours: 'main', theirs: 'cassis', size: 7 },
      timeOf,
      faultsOf: (text) =>
        shares(text) > 100 ? [{ code: 'shares-over', message: 'over 100 %', path: ['stages', 'drink'] }] : [],
    });
    expect(merged).toMatchObject({
      state: 'conflict',
      text:
        'formula: x\nstages:\n  drink:\n<<<<<<< main\n    - oil: 60 %\n    - acid: 10 %\n=======\n' +
        '    - oil: 10 %\n    - acid: 70 %\n>>>>>>> cassis\n    - water: to 1 L\n',
      broken: [{ code: 'shares-over' }],
    });
  });
});
