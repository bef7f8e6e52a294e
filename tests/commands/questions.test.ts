import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, scratchFolder } from './neckring.ts';
import { ledgerOf, plainTrial } from './small-ledger.ts';

const now = '2026-03-03T12:00:00Z';
let folder = '';
/** Wide enough that no sentence is broken. */
const at = (words: readonly string[], answers: readonly string[]) =>
  neckring(words, { folder, now, answers, terminal: true, columns: 200, environment: { NO_COLOR: '1' } });
const trials = () => readdir(join(folder, 'trials'));

describe('new alone on a terminal', () => {
  beforeEach(async () => {
    folder = await ledgerOf({ 'trials/1.yaml': plainTrial });
  });

  const answers = [
    'cardamom, hot',
    '2 g sweet ornge oil',
    'sweet orange oil',
    '2 g sweet orange oil',
    'to 50 g water',
    '',
    'warm to 60 C: stir',
    '',
  ];

  it('asks what goes in, again where it can not be read, shows the file and writes it', async () => {
    const { code, out, err } = await at(['new'], [...answers, 'perhaps', 'y']);
    expect(out).toContain(
      '"sweet ornge oil" is not an ingredient that is known; did you mean sweet orange oil',
    );
    expect(out).toContain('"sweet orange oil" does not begin with an amount; type the amount first');
    expect(out).not.toContain('--item');
    expect(out).toContain('"perhaps" is neither y nor n; type y or n');
    expect([code, err]).toEqual([0, 'wrote trials/0002-cardamom-hot.yaml\n']);
    const text = await readIn(folder, 'trials/0002-cardamom-hot.yaml');
    expect(text).toContain('stages:\n  emulsion:\n    process:\n      - "warm to 60 C: stir"\n    items:\n');
    expect(text).toContain('      - sweet orange oil: 2 g\n      - water: to 50 g\n');
    // What was shown is what was written.
    for (const line of text.trimEnd().split('\n')) expect(out).toContain(`  ${line}\n`);
    expect((await neckring(['check'], { folder, now })).code).toBe(0);
  });

  it.each([
    ['at the first question', []],
    ['among the items', answers.slice(0, 4)],
    ['at the last question', answers],
  ])('left %s nothing is written', async (_, typed) => {
    const { code, err } = await at(['new'], typed);
    expect([code, err]).toEqual([0, 'nothing written\n']);
    expect(await trials()).toEqual(['1.yaml']);
  });

  it('n writes nothing, and --dry-run does not ask whether to write', async () => {
    expect((await at(['new'], [...answers, 'n'])).err).toBe('nothing written\n');
    const dry = await at(['new', '--dry-run'], [...answers, 'y']);
    expect(dry.err).toBe('would write trials/0002-cardamom-hot.yaml\n');
    expect(dry.out).not.toContain('y or n');
    expect(await trials()).toEqual(['1.yaml']);
  });

  it('with nothing but Enter it is an empty trial', async () => {
    expect((await at(['new'], ['', '', 'y'])).err).toBe('wrote trials/0002.yaml\n');
    expect(await readIn(folder, 'trials/0002.yaml')).toContain('# in the order of addition');
  });

  it('says what can not be solved before it is written', async () => {
    const { out } = await at(['new'], ['', 'to 50 g water', 'to 60 g ethanol', '', '', 'n']);
    expect(out).toContain('! "ethanol: to 60 g" is the second line that makes emulsion up');
  });

  it('takes sums and products', async () => {
    await at(['new'], ['', '3 * 1.5 g sweet orange oil', 'to 50 g water', '', '', 'y']);
    expect(await readIn(folder, 'trials/0002.yaml')).toContain('- sweet orange oil: 3 * 1.5 g\n');
  });

  it('asks nothing where anything is typed, in a pipe, or for JSON', async () => {
    expect((await at(['new', '--title', 'x'], [])).err).toBe('wrote trials/0002-x.yaml\n');
    expect((await neckring(['new'], { folder, now })).out).toBe('trial 3\n');
    expect(JSON.parse((await at(['new', '--json'], [])).out).found.file).toBe('trials/0004.yaml');
  });

  it('outside a ledger it says so before it asks', async () => {
    folder = await scratchFolder();
    const { code, out, err } = await at(['new'], ['x']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('neckring init begins one here');
  });
});

describe('observe alone on a terminal', () => {
  beforeEach(async () => {
    folder = await exampleLedger();
  });
  const later = (words: readonly string[], answers: readonly string[]) =>
    neckring(words, { folder, now: '2026-04-02T09:00:00Z', answers, terminal: true, columns: 200 });

  it('names what is due and nothing of what is in it', async () => {
    const { out, err } = await later(['observe'], []);
    expect(out).toMatch(/^A look is due at .*\b13\b/m);
    expect(out).not.toMatch(/orange|parts|1 to/);
    expect(err).toBe('nothing written\n');
  });

  it('asks for trial, sample, look, readings and a note, and writes what it showed', async () => {
    const before = await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml').catch(() => '');
    const file = (await trials()).find((name) => name.startsWith('0017')) ?? '';
    const { code, out, err } = await later(
      ['observe'],
      [
        ...['', '99', '17', 'cold glas', 'cold glass', 'hazzy', 'hazy'],
        ...['fh 3.1', 'ph warm', 'ph 3.05', 'head life: 40 s', 'taste soapy=2', 'taste bright=3', ''],
        ...['only from the side', 'y'],
      ],
    );
    expect(code, err).toBe(0);
    for (const told of [
      'nothing stands there; type a number',
      'there is no trial 99',
      'there is no sample "cold glas"; did you mean cold glass?',
      '"hazzy" is not a look; did you mean hazy?',
      '"fh" is not a reading; did you mean ph?',
      '  ph: "warm"',
    ])
      expect(out).toContain(told);
    const text = await readIn(folder, `trials/${file}`);
    expect(text).not.toBe(before);
    const entry = [
      '  - at: 2026-04-02T10:00+01:00',
      '    sample: cold glass',
      '    look: hazy',
      '    ph: 3.05',
      '    head life: 40 s',
      '    taste:',
      '      soapy: 2',
      '      bright: 3',
      '    note: only from the side',
    ];
    for (const line of entry) {
      expect(text).toContain(`${line}\n`);
      expect(out).toContain(`  ${line}\n`);
    }
  });

  it('with a trial alone it asks for the rest', async () => {
    const { out, err } = await later(['observe', '13'], ['clear', '', '', 'y']);
    expect(out).not.toContain('Which trial');
    expect(err).toMatch(/^wrote trials\/0013\S*:\d+\n$/);
  });

  it('asks again where nothing is said, and leaving writes nothing', async () => {
    const file = (await trials()).find((name) => name.startsWith('0013')) ?? '';
    const before = await readIn(folder, `trials/${file}`);
    const { out, err, code } = await later(['observe', '13'], ['', '', '', 'clear', '', '']);
    expect(out).toContain('Nothing is said about it yet');
    expect([code, err]).toEqual([0, 'nothing written\n']);
    expect(await readIn(folder, `trials/${file}`)).toBe(before);
  });

  it('in a pipe, and for JSON, it says what to type', async () => {
    const piped = await neckring(['observe'], { folder });
    expect([piped.code, piped.out]).toEqual([2, '']);
    expect(piped.err).toBe(
      'observe needs TRIAL; type neckring observe 14 --look clear; alone on a terminal it asks\n',
    );
    expect((await later(['observe', '--json'], ['13'])).code).toBe(2);
    expect((await neckring(['observe', '13'], { folder })).err).toContain('nothing is said about it');
  });
});
