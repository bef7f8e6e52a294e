import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, writeIn } from './neckring.ts';
import { ledgerOf, plainTrial, trialLedger } from './small-ledger.ts';

interface Leaf {
  readonly value: number;
  readonly unit: string;
}
interface ShownStage {
  readonly stage: string;
  readonly mass: Leaf;
  readonly items: readonly { readonly mass: Leaf; readonly planned: Leaf; readonly weighed: boolean }[];
  readonly substances: readonly {
    readonly substance: string;
    readonly mass: Leaf;
    readonly massFraction: Leaf;
  }[];
}

const total = (leaves: readonly Leaf[]): number => leaves.reduce((sum, leaf) => sum + leaf.value, 0);
async function shown(folder: string, trial: string): Promise<readonly ShownStage[]> {
  const { out } = await neckring(['show', trial, '--json'], { folder });
  return JSON.parse(out).found.stages;
}

describe('show', () => {
  it('puts planned beside weighed, and says what each comes to', async () => {
    const folder = await exampleLedger();
    const { out, code, err } = await neckring(['show', '13'], { folder });
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Trial 13: sweet orange, one part to 3 of emulsifier\n');
    expect(out).toMatch(/item +planned +weighed +comes to +share/);
    expect(out).toMatch(/orange oil lot 2231 +2 g +2\.01 g +2\.010 g +4\.02 %/);
    expect(out).toMatch(/water +to 50 g +- +35\.97 {2}g/);
    expect(out).toContain('- warm oil and emulsifier to 60 C, stir 400 rpm\n');
  });

  it('names where it came from and what came from it', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['show', '13'], { folder });
    expect(out).toMatch(/came from +12\n/);
    expect(out).toMatch(/came from it +14\n/);
  });

  it('draws equal looks of neighbouring days together', async () => {
    const folder = await exampleLedger();
    expect((await neckring(['show', '14'], { folder })).out).toMatch(/^d1-d4 clear {2}d7 bluish$/m);
    expect((await neckring(['show', '15'], { folder })).out).toMatch(
      /^d1 clear {2}d2 bluish {2}d4 hazy {2}d7 hazy, ring$/m,
    );
  });

  it('says what comes to the drink, as dosed, with the volume named as an estimate', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['show', '17'], { folder });
    expect(out).toContain('In the finished drink, as dosed\n');
    expect(out).toMatch(/citric acid +acid +0\.4347 % +4\.500 +g\/L/);
    expect(out).toMatch(/4-methoxy-2-methyl-2-butanethiol +aroma +0\.4869 ppb/);
    expect(out).toContain('Volume by estimate: sugar-water by ICUMSA');
  });

  it.each(['11', '12', '13', '14', '15', '16', '17'])(
    'law: the masses of trial %s add up in every stage, by items and by substances',
    async (trial) => {
      const stages = await shown(await exampleLedger(), trial);
      expect(stages.length).toBeGreaterThan(0);
      for (const stage of stages) {
        const whole = stage.mass.value;
        expect(Math.abs(total(stage.items.map((one) => one.mass)) / whole - 1)).toBeLessThan(1e-12);
        expect(Math.abs(total(stage.substances.map((one) => one.mass)) / whole - 1)).toBeLessThan(1e-12);
        expect(total(stage.substances.map((one) => one.massFraction))).toBeCloseTo(1, 12);
      }
    },
  );

  it('law: what a stage hands on is what its own mixture holds of it', async () => {
    const folder = await exampleLedger();
    const [emulsion] = await shown(folder, '13');
    const [syrup] = await shown(folder, '17');
    const of = (stage: ShownStage | undefined, name: string): number =>
      stage?.substances.find((one) => one.substance === name)?.mass.value ?? Number.NaN;
    for (const name of ['orange oil lot 2231', 'polysorbate 80', 'propylene glycol'])
      expect(of(syrup, name)).toBeCloseTo((1.5 / 50) * of(emulsion, name), 12);
  });

  it('tells planned, weighed and what it comes to in JSON', async () => {
    const [stage] = await shown(await exampleLedger(), '13');
    expect(stage?.items.map((one) => [one.planned.value, one.weighed, one.mass.value])).toEqual([
      [2, true, 2.01],
      [6, true, 6.02],
      [6, true, 6],
      [36, false, expect.closeTo(35.97, 9)],
    ]);
  });

  it('shows results that were written, without the marks they are filed by', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '13'], { folder });
    const { out } = await neckring(['show', '13'], { folder });
    expect(out).toMatch(/^hlb, emulsion, 2026-03-12T12:00$/m);
    expect(out).toMatch(/required HLB +14\.9000/);
    expect(out).not.toMatch(/\b[0-9a-f]{8}\b/);
  });

  it('a trial that cannot be solved is shown with what is wrong with it', async () => {
    const folder = await trialLedger(plainTrial.replace('sweet orange oil', 'sweet ornge oil'));
    const { code, out, err } = await neckring(['show', '1'], { folder });
    expect(code).toBe(0);
    expect(out).toContain('sweet ornge oil');
    expect(err).toContain('trials/1.yaml:5:7: ');
    expect(err).toContain('sweet orange oil');
  });

  it('takes a number with zeros, or a file from where one stands', async () => {
    const folder = await exampleLedger();
    const byNumber = await neckring(['show', '13'], { folder });
    expect(await neckring(['show', '0013'], { folder })).toEqual(byNumber);
    expect(await neckring(['show', '0013-orange-1-to-3.yaml'], { folder: `${folder}/trials` })).toEqual(
      byNumber,
    );
  });

  it.each([
    ['99', 'there is no trial 99; name it by its number or its file; the last one is 17'],
    ['thirteen', 'there is no trial thirteen'],
    ['../elsewhere.yaml', 'is outside the ledger'],
  ])('%s: says what there is', async (typed, message) => {
    const ran = await neckring(['show', typed], { folder: await exampleLedger() });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
  });

  it('in an empty ledger says how to write the first', async () => {
    const ran = await neckring(['show', '1'], { folder: await ledgerOf({}) });
    expect(ran.err).toContain('there are none yet: neckring new writes the first');
  });

  it('shows what could drive a terminal as signs, wherever it stands', async () => {
    const folder = await trialLedger(
      `trial: 1
title: "t\\x1b[2J"
made: 2026-03-02T10:15+00:00
why: "w\\x1b]0;x\\a"
stages:
  "s\\x1b":
    process:
      - do: mix
        what: "d\\x1b"
    items:
      - sweet orange oil: 2 g
        note: "n\\x1b"
      - water: to 50 g
samples:
  "p\\x1b":
    of: "s\\x1b"
    in: "i\\x1b"
observations:
  - at: 2026-03-03T09:00+00:00
    note: "o\\x1b"
concluded: "c\\x1b"
`,
    );
    for (const words of [
      ['show', '1'],
      ['reckon', '1', '--dry-run'],
      ['reckon', '1'],
      ['show', '1'],
      ['list'],
    ]) {
      const ran = await neckring(words, { folder });
      expect([words, ran.code]).toEqual([words, 0]);
      expect([words, `${ran.out}${ran.err}`.match(/[\x00-\x09\x0b-\x1f]/g)]).toEqual([words, null]);
      expect(ran.out).toMatch(/␛/);
    }
  });

  it('keeps to 80 columns', async () => {
    const folder = await exampleLedger();
    const file = 'trials/0013-orange-1-to-3.yaml';
    const long = 'a note that goes on and on '.repeat(8).trim();
    await writeIn(folder, file, (await readIn(folder, file)).replace('held the week', long));
    for (const trial of ['13', '17']) {
      const { out } = await neckring(['show', trial], { folder });
      expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
    }
  });
});
