import { describe, expect, it } from 'vitest';
import { neckring, record, rows } from './neckring.ts';
import { failedAtOnce, heldWeek, ladderText, type RungText, seriesLedger } from './series-ledger.ts';

const ask = async (rungs: readonly RungText[], text = ladderText, command = 'series') => {
  const folder = await seriesLedger(rungs, text);
  const { code, out, err } = await neckring([command, 'ladder'], { folder });
  return { folder, code, err, out: out.replace(/\s+/g, ' ') };
};

/** 2 g of oil with more or less emulsifier. */
const withEmulsifier = (trial: number, grams: number, looks: RungText['looks']): RungText => ({
  trial,
  items: ['sweet orange oil: 2 g', `polysorbate 80: ${grams} g`, 'water: to 50 g'],
  looks,
});
const varied = (what: string, more = '') => `series: ladder\nvaries: ${what}\n${more}`;

describe('the side on which the break lies, where only one has been seen', () => {
  it('of an emulsifier: less of it breaks, more of it holds (common practice, no source)', async () => {
    const held = [withEmulsifier(1, 6, heldWeek), withEmulsifier(2, 8, heldWeek)];
    const down = await ask(held, varied('polysorbate 80'));
    expect(down.out).toContain('all held, down to 6.00 g: the break lies below; make next: 3.00 g; 4.00 g');
    expect(down.out).toContain('90 % interval open to 6.00 g');
    const failed = [withEmulsifier(1, 6, failedAtOnce), withEmulsifier(2, 8, failedAtOnce)];
    const up = await ask(failed, varied('polysorbate 80'));
    expect(up.out).toContain('all failed, up to 8.00 g: the break lies above; make next: 12.0 g; 16.0 g');
  });

  it('next goes the same way', async () => {
    const held = [withEmulsifier(1, 6, heldWeek), withEmulsifier(2, 8, heldWeek)];
    const { folder } = await ask(held, varied('polysorbate 80'), 'next');
    const { out } = await neckring(['next', 'ladder', '--json'], { folder });
    const ratios = rows(record(record(JSON.parse(out))['found'])['ratios']).map(({ value }) => Number(value));
    expect(Math.min(...ratios)).toBeLessThan(5);
    expect(Math.max(...ratios)).toBeLessThan(7);
  });

  it('of a carrier as an edge; as a window both ways', async () => {
    const carrier = (trial: number, grams: number): RungText => ({
      trial,
      items: [
        'sweet orange oil: 2 g',
        'polysorbate 80: 6 g',
        `propylene glycol: ${grams} g`,
        'water: to 50 g',
      ],
      looks: failedAtOnce,
    });
    const rungs = [carrier(1, 4), carrier(2, 6)];
    const edge = await ask(rungs, varied('propylene glycol', 'shape: edge\n'));
    expect(edge.out).toContain('all failed, up to 6.00 g: the break lies above');
    const window = await ask(rungs, varied('propylene glycol'));
    expect(window.out).toContain('all failed: no side has held yet; go on in both directions');
  });

  it('what is still watched on that side is looked at before more is made', async () => {
    const rungs: readonly RungText[] = [
      { trial: 1, oil: 1, looks: { 1: 'clear' } },
      { trial: 2, oil: 2, looks: failedAtOnce },
    ];
    const { out, code } = await ask(rungs);
    expect(code).toBe(1);
    expect(out).toContain('all failed so far, down to 1 part oil to 3 of emulsifier, 0.333');
    expect(out).toContain('look on: 1 beaker there is still watched; neckring due says when');
    expect(out).not.toContain('make next');
  });

  it('a working ratio below the last that held is not called the last that held', async () => {
    const { out } = await ask([
      { trial: 1, oil: 2, looks: heldWeek },
      { trial: 2, oil: 3, looks: heldWeek },
    ]);
    expect(out).toContain('back a little: holds with 95 % chance');
    expect(out).not.toContain('the highest that held');
  });
});

describe('what a reader is told of single rungs', () => {
  it('one without its oil: which file, and why, on the page', async () => {
    const { out, err } = await ask([
      { trial: 1, oil: 1, looks: heldWeek },
      { trial: 2, items: ['polysorbate 80: 6 g', 'water: to 50 g'], looks: heldWeek },
      { trial: 3, oil: 3, looks: failedAtOnce },
    ]);
    expect(out).toContain(
      'left out: trials/2.yaml: trial 2 has no oil in the stage with its emulsifier; add the line of the oil',
    );
    expect(err).toContain('trials/2.yaml');
  });

  it('a blank with oil in it is told', async () => {
    const blank = (oil: string): RungText => ({
      trial: 3,
      items: [`sweet orange oil: ${oil}`, 'polysorbate 80: 6 g', 'water: to 50 g'],
      looks: heldWeek,
    });
    const text = `${ladderText}blank: 3\n`;
    const rungs = [
      { trial: 1, oil: 1, looks: heldWeek },
      { trial: 2, oil: 3, looks: failedAtOnce },
    ];
    const wrong = await ask([...rungs, blank('0 g\n        weighed: 2.01 g')], text);
    expect(wrong.code).toBe(1);
    expect(wrong.out).toContain('the blank, trial 3, has 2.01 g of oil in it, so it is none');
    const right = await ask([...rungs, blank('0 g')], text);
    expect([right.code, right.out.includes('so it is none')]).toEqual([0, false]);
  });

  it('another sample that failed is remarked only where the one that decides did not', async () => {
    const two = 'samples:\n  beaker:\n    of: emulsion\n  warm:\n    of: emulsion\n    at: 40 C\n';
    const warm = '  - at: 2026-03-05T10:00+00:00\n    sample: warm\n    look: hazy\n';
    const text = `${ladderText}judge: beaker\n`;
    const { out } = await ask(
      [
        { trial: 1, oil: 1, looks: heldWeek, more: two, observations: warm },
        { trial: 2, oil: 3, looks: failedAtOnce, more: two, observations: warm },
      ],
      text,
    );
    expect(out).toContain('1: its warm (at 40 C) failed by day 3, though its beaker held');
    expect(out).not.toContain('2: its warm');
  });
});

describe('a series whose file is gone', () => {
  it('says which trials name it, and what to write', async () => {
    const folder = await seriesLedger(
      [
        { trial: 1, oil: 1, looks: heldWeek },
        { trial: 2, oil: 3, looks: failedAtOnce },
      ],
      'series: renamed\nvaries: oil per emulsifier\n',
    );
    const gone = await neckring(['series', 'ladder'], { folder });
    expect(gone.code).toBe(2);
    expect(gone.err).toContain('there is no series "ladder", though trials 1 and 2 name it');
    expect(gone.err).toContain('"series: ladder" and "varies: oil per emulsifier"');
    const other = await neckring(['series', 'something else'], { folder });
    expect(other.err).toContain('the series here are renamed');
  });
});
