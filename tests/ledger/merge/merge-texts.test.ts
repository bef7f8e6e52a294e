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
});
