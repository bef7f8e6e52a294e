import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, writeIn } from './neckring.ts';
import { plainTrial, trialLedger } from './small-ledger.ts';

const now = '2026-03-12T12:00:00Z';
const third = 'trials/0013-orange-1-to-3.yaml';
const drink = 'trials/0017-orange-cardamom-drink.yaml';

/** The results of a file: each as its lines without the dash and the indent. */
function resultsIn(text: string): readonly (readonly string[])[] {
  const [, list = ''] = text.split(/^results:\n/m);
  return list
    .split(/^ {2}- /m)
    .slice(1)
    .map((entry) =>
      entry
        .trimEnd()
        .split('\n')
        .map((line, at) => (at === 0 ? line : line.slice(4))),
    );
}

describe('reckon', () => {
  it('shows every answer and writes it back, one fact a line, after what stood there', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, third);
    const ran = await neckring(['reckon', '13'], { folder, now });
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/^hlb, emulsion +required HLB 14\.90; blended HLB 15\.00; /m);
    expect(ran.out).toMatch(/^emulsifier, emulsion +1 part oil to /m);
    const after = await readIn(folder, third);
    expect(after.startsWith(before)).toBe(true);
    const results = resultsIn(after);
    expect(ran.err).toBe(`wrote ${results.length} results to ${third}\n`);
    const hlb = results.find((result) => result.includes('calculator: hlb'));
    expect(hlb).toEqual([
      'at: 2026-03-12T12:00:00+00:00',
      'calculator: hlb',
      'stage: emulsion',
      expect.stringMatching(/^of: [0-9a-f]{8}$/),
      'given:',
      '  orange oil lot 2231: 2.01 g',
      '  polysorbate 80: 6.02 g',
      'required HLB: 14.9000',
      'blended HLB: 15.0000',
      'blended minus required: 0.100000',
      'oil: 2.01000 g',
      'emulsifier: 6.02000 g',
      expect.stringMatching(/^can be met with these: (yes|no)$/),
    ]);
    expect((await neckring(['check'], { folder, now })).out).toContain('no errors, no warnings');
  });

  it('stamps the time of the bench', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '13'], { folder, now: '2026-07-01T09:30:15.9Z' });
    expect(resultsIn(await readIn(folder, third)).map(([at]) => at)).toEqual(
      expect.arrayContaining(['at: 2026-07-01T10:30:15+01:00']),
    );
  });

  it('an answer that has not changed is not written twice, whatever the hour', async () => {
    const folder = await exampleLedger();
    const first = await neckring(['reckon', '17'], { folder, now });
    const once = await readIn(folder, drink);
    const second = await neckring(['reckon', '17'], { folder, now: '2026-04-01T08:00:00Z' });
    expect(second).toEqual({ code: 0, out: first.out, err: `${drink}: nothing new; nothing written\n` });
    expect(await readIn(folder, drink)).toBe(once);
  });

  it('a changed amount writes a new answer beside the old one', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '17'], { folder, now });
    const once = await readIn(folder, drink);
    const changed = once.replace('citric acid: 4.5 g/L', 'citric acid: 4.2 g/L');
    await writeIn(folder, drink, changed);
    await neckring(['reckon', '17'], { folder, now: '2026-03-13T12:00:00Z' });
    const twice = await readIn(folder, drink);
    expect(twice.startsWith(changed)).toBe(true);
    const acids = resultsIn(twice).filter((result) => result.includes('calculator: acid'));
    expect(acids.map((result) => result.find((line) => line.startsWith('all acids')))).toEqual([
      'all acids as weighed: 4.50000 g/L',
      'all acids as weighed: 4.20000 g/L',
    ]);
    expect(new Set(acids.map((result) => result.find((line) => line.startsWith('of:')))).size).toBe(2);
    expect(resultsIn(twice).filter((result) => result.includes('calculator: hlb')).length).toBe(1);
  });

  it('with --dry-run and --all shows the lines it would add and writes nothing', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, third);
    const dry = await neckring(['reckon', '13', '--dry-run', '--all'], { folder, now });
    expect(await readIn(folder, third)).toBe(before);
    expect(dry.err).toMatch(/^would write \d+ results? to trials\/0013-orange-1-to-3\.yaml\n$/);
    await neckring(['reckon', '13'], { folder, now });
    const added = (await readIn(folder, third)).slice(before.length).trimEnd().split('\n');
    expect(dry.out).toContain(`${third}\n${added.map((line) => `+ ${line}`).join('\n')}\n`);
    expect(dry.out).not.toMatch(/^- [^a-z]/m);
  });

  it('says which did not apply, and why', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['reckon', '13', '--all'], { folder, now });
    expect(out).toMatch(/^- dose, acid, drops(, [a-z-]+)* do not apply: it has no stage named\s+drink$/m);
    expect(out).toContain('- hlb-of does not apply: it works on the numbers of a data sheet\n');
  });

  it('is short unless --all or --explain asks for more, says each caution once, and JSON is whole', async () => {
    const folder = await exampleLedger();
    const lines = async (...more: string[]) =>
      (await neckring(['reckon', '17', '--dry-run', ...more], { folder, now })).out.split('\n');
    const [short, all] = [await lines(), await lines('--all')];
    expect(short.length).toBeLessThan(all.length / 3);
    expect(short.join(' ')).toContain('--all shows every figure');
    const cautionsIn = (text: readonly string[]) => text.filter((line) => line.startsWith('! ')).sort();
    expect(cautionsIn(short)).toEqual(cautionsIn(all));
    for (const word of ['hlb, emulsion of 13', 'ph, drink']) {
      expect(all).toContain(word);
      expect(short.some((line) => line.startsWith(`${word}  `))).toBe(true);
    }
    const json = await neckring(['reckon', '17', '--dry-run', '--json'], { folder, now });
    expect(await neckring(['reckon', '17', '--dry-run', '--all', '--json'], { folder, now })).toEqual(json);
  });

  it('says what changed since it was last written', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '13'], { folder, now });
    const quiet = await neckring(['reckon', '13'], { folder, now });
    expect(quiet.out).not.toContain('what changed');
    const text = await readIn(folder, third);
    await writeIn(folder, third, text.replace('weighed: 2.01 g', 'weighed: 2.41 g'));
    const { out } = await neckring(['reckon', '13', '--dry-run'], { folder, now });
    expect(out).toMatch(/^answer +what changed +was +is$/m);
    expect(out).toMatch(/^hlb, emulsion +oil +2\.01000 +g +2\.41000 +g$/m);
  });

  it('says once, after the last caution, who decides', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['reckon', '13', '17'], { folder, now });
    expect(out.match(/^! /gm)?.length).toBeGreaterThan(1);
    expect(out.match(/local food law/g)?.length).toBe(1);
    expect(out.lastIndexOf('local food law')).toBeGreaterThan(out.lastIndexOf('\n! '));
  });

  it('says a caution once, though two stages ask for it', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['reckon', '17', '--dry-run'], { folder });
    expect(out.split('NTU is a white-light estimate').length - 1).toBe(1);
  });

  it('takes several trials, and writes to each', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(['reckon', '13', '17'], { folder, now });
    expect(ran.err).toMatch(/^wrote \d+ results to .*0013.*\nwrote \d+ results to .*0017.*\n$/);
    const json = await neckring(['reckon', '13', '17', '--json'], { folder, now });
    const trials = JSON.parse(json.out).found.trials;
    expect(trials.map((one: { trial: number }) => one.trial)).toEqual([13, 17]);
    expect(trials[1].answers.map((one: { schema: string }) => one.schema)).toEqual(
      expect.arrayContaining(['hlb@1', 'emulsifier@1', 'dose@1', 'acid@1', 'drops@1']),
    );
    expect(trials[0].notApplied).toContainEqual({ calculator: 'acid', why: 'it has no stage named drink' });
  });

  it('writes to none where one of them cannot be solved', async () => {
    const folder = await exampleLedger();
    const before = await readIn(folder, third);
    const text = await readIn(folder, drink);
    await writeIn(folder, drink, text.replace('sucrose: 90 g', 'sucrse: 90 g'));
    const ran = await neckring(['reckon', '13', '17'], { folder, now });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(`${drink}:7:`);
    expect(await readIn(folder, third)).toBe(before);
  });

  it('shows the equations and the sources with --explain', async () => {
    const folder = await exampleLedger();
    const { out } = await neckring(['reckon', '13', '--dry-run', '--explain'], { folder, now });
    expect(out).toContain('Working\n');
    expect(out).toContain('Sources\n');
  });

  it('works from the weighed amounts where they stand', async () => {
    const folder = await trialLedger(
      plainTrial.replace('sweet orange oil: 2 g\n', 'sweet orange oil: 2 g\n      weighed: 2.4 g\n'),
    );
    await neckring(['reckon', '1'], { folder, now });
    expect(await readIn(folder, 'trials/1.yaml')).toContain('    oil per emulsifier: 0.400000\n');
  });

  it.each([
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['no last line end', (text: string) => text.trimEnd()],
    ['an empty list', (text: string) => `${text}results: []\n`],
    ['a comment at the end', (text: string) => `${text}# the end\n`],
  ])('leaves the rest byte for byte: %s', async (_, turn) => {
    const before = turn(plainTrial);
    const folder = await trialLedger(before);
    expect((await neckring(['reckon', '1'], { folder, now })).code).toBe(0);
    const after = await readIn(folder, 'trials/1.yaml');
    for (const line of before.replace('results: []\n', '').split(/(?<=\n)/))
      expect(after).toContain(line.trimEnd());
    expect(after.includes('\r\n')).toBe(before.includes('\r\n'));
    expect(after.replaceAll('\r\n', '').includes('\r')).toBe(false);
    expect(/(?<!\r)\n/.test(after)).toBe(!before.includes('\r\n'));
    const again = await neckring(['reckon', '1'], { folder, now });
    expect(again.err).toContain('nothing new');
    expect(await readIn(folder, 'trials/1.yaml')).toBe(after);
  });

  it('needs a trial that is there', async () => {
    const folder = await exampleLedger();
    expect((await neckring(['reckon'], { folder })).err).toContain('reckon needs TRIAL');
    const none = await neckring(['reckon', '99'], { folder });
    expect([none.code, none.out]).toEqual([2, '']);
  });
});
