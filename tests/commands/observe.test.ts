import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn } from './neckring.ts';
import { ledgerOf, plainTrial, trialLedger } from './small-ledger.ts';

const now = '2026-03-12T12:00:00Z';
const observe = (folder: string, words: readonly string[]) =>
  neckring(['observe', '1', ...words], { folder, now });
const noted = async (folder: string): Promise<string> => {
  const text = await readIn(folder, 'trials/1.yaml');
  return text.slice(text.indexOf('observations:'));
};

describe('observe: what can be said', () => {
  it.each([
    ['look', 'clear', 'look: clear'],
    ['look', 'Hazy, RING', 'look: hazy, ring'],
    ['look', 'gel', 'look: gel'],
    ['temperature', '4 C', 'temperature: 4 C'],
    ['temperature', '39.2F', 'temperature: 39.2F'],
    ['turbidity', '3.2 NTU', 'turbidity: 3.2 NTU'],
    ['droplet', '45 nm', 'droplet: 45 nm'],
    ['ph', '3.05', 'ph: 3.05'],
    ['acid', '4.6 g/L', 'acid: 4.6 g/L'],
    ['brix', '9.2', 'brix: 9.2'],
    ['density', '1.036 g/mL', 'density: 1.036 g/mL'],
    ['mass', '(30 + 2.5) g', 'mass: (30 + 2.5) g'],
    ['co2', '3.4 vol', 'co2: 3.4 vol'],
    ['head', '18 mm', 'head: 18 mm'],
    ['head-life', '40 s', 'head life: 40 s'],
    ['taste', 'soapy=2', 'taste:\n      soapy: 2'],
    ['taste', 'soapy=2, bright: 4.5', 'taste:\n      soapy: 2\n      bright: 4.5'],
    ['served', 'cold, 30 mL', 'served: cold, 30 mL'],
    ['against', 'trial 13', 'against: trial 13'],
    ['blind', 'yes', 'blind: yes'],
    ['smell', 'peel: bright', 'smell: "peel: bright"'],
    ['colour', 'straw', 'colour: straw'],
    ['viewed', 'black card', 'viewed: black card'],
    ['by', 'K', 'by: K'],
    ['note', '# 3 on the shelf', 'note: "# 3 on the shelf"'],
    ['ended', 'spilled', 'ended: spilled'],
  ])('--%s %j is written as a line and passes check', async (option, value, line) => {
    const folder = await trialLedger(plainTrial);
    const ran = await observe(folder, [`--${option}`, value]);
    expect([ran.code, ran.err.split('\n')[0]]).toEqual([0, 'wrote trials/1.yaml:8']);
    expect(await noted(folder)).toBe(`observations:\n  - at: 2026-03-12T12:00+00:00\n    ${line}\n`);
    const checked = await neckring(['check', '--json'], { folder, now });
    expect(
      JSON.parse(checked.out).problems.filter((one: { severity: string }) => one.severity === 'error'),
    ).toEqual([]);
  });

  it('takes an amount without quotes after an option that is one', async () => {
    const folder = await trialLedger(plainTrial);
    await observe(folder, ['--temperature', '21', 'C', '--turbidity', '3.2', 'NTU']);
    expect(await noted(folder)).toContain('    temperature: 21 C\n    turbidity: 3.2 NTU\n');
  });

  it('writes several facts as one entry, in the order of the help', async () => {
    const folder = await trialLedger(plainTrial);
    await observe(folder, ['--note', 'both', '--look', 'clear', '--look', 'specks', '--ph', '3.1']);
    expect(await noted(folder)).toBe(
      'observations:\n  - at: 2026-03-12T12:00+00:00\n    look: clear, specks\n    ph: 3.1\n    note: both\n',
    );
  });

  it.each([
    [['--look', 'claer'], '--look: "claer" is not a look; did you mean clear?'],
    [['--look', 'clear, quux'], '"quux" is not a look; say clear, bluish'],
    [['--temperature', '21'], '--temperature: "21" has no unit; write 21 C'],
    [['--temperature', '4 g'], '--temperature: '],
    [['--turbidity', '3,2 NTU'], '--turbidity: '],
    [['--droplet', '45 nM'], '--droplet: '],
    [['--ph', 'three'], '--ph: '],
    [['--ph', '3.1 pH'], '--ph: '],
    [['--acid', '4.6'], '--acid: '],
    [['--brix', '9 %'], '--brix: '],
    [
      ['--brix', '900'],
      "--brix: Brix 900 can't be, it lies between -5 and 100; check the decimal point (90?)",
    ],
    [['--ph', '15'], "--ph: pH 15 can't be, it lies between -1 and 15; check the decimal point (1.5?)"],
    [['--density', '1.036'], '--density: '],
    [['--mass', '-2 g'], '--mass: '],
    [['--co2', '3.4 L'], '--co2: '],
    [['--head', '18'], '--head: "18" has no unit; write 18 mm'],
    [['--head-life', '40 mm'], '--head-life: '],
    [['--taste', 'soapy'], '--taste: "soapy" is not a word with a score; write soapy=2, from 0 to 5'],
    [['--taste', 'soapy=6'], '--taste: '],
    [['--taste', 'soapy=5.5'], '--taste: '],
    [['--note', ' '], '--note: nothing stands there'],
    [['--note', 'a', '--note', 'b'], '--note: "a" and "b" are both given; give it once'],
    [['--look', ' , '], '--look: nothing stands there'],
    [['--blind', 'perhaps'], '--blind: '],
    [['--note'], '--note needs a value'],
    [[], 'nothing is said about it; give --look clear'],
    [['--sample', 'glass', '--look', 'clear'], '--sample: trial 1 has no sample "glass"'],
  ])('refuses %j and writes nothing', async (words, message) => {
    const folder = await trialLedger(plainTrial);
    const ran = await observe(folder, words);
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
    expect(await readIn(folder, 'trials/1.yaml')).toBe(plainTrial);
  });

  it('says everything that is wrong at once', async () => {
    const folder = await trialLedger(plainTrial);
    const ran = await observe(folder, ['--look', 'claer', '--ph', 'low', '--at', 'noon']);
    expect(
      ran.err
        .trimEnd()
        .split('\n')
        .map((line) => line.slice(0, 5)),
    ).toEqual(['--at:', '--loo', '--ph:']);
  });

  it('writes a taste that the bench does not list, and mentions it', async () => {
    const folder = await exampleLedger();
    const ran = await neckring(['observe', '13', '--taste', 'metallic=1'], { folder, now });
    expect(ran.code).toBe(0);
    expect(ran.err).toContain(
      'warning: "metallic" is not among the bench\'s tastes; they are soapy, bright, dull',
    );
  });
});

describe('observe --at', () => {
  // Lisbon: clocks went forward at 01:00 on 29 March 2026, and go back at 02:00 on 25 October (IANA time zone database).
  it.each([
    ['09:10', '2026-03-12T09:10+00:00'],
    ['9:10', '2026-03-12T09:10+00:00'],
    ['today 11:59', '2026-03-12T11:59+00:00'],
    ['yesterday 18:00', '2026-03-11T18:00+00:00'],
    ['2026-03-11 18:30', '2026-03-11T18:30+00:00'],
    ['2026-03-11T18:30', '2026-03-11T18:30+00:00'],
    ['2026-03-11T18:30Z', '2026-03-11T18:30+00:00'],
    ['2026-03-11T18:30+02:00', '2026-03-11T16:30+00:00'],
    ['2026-03-11T18:30:45+00:00', '2026-03-11T18:30+00:00'],
    ['2026-03-12T12:01', '2026-03-12T12:01+00:00'],
  ])('%s is written as %s', async (typed, line) => {
    const folder = await trialLedger(plainTrial);
    const ran = await observe(folder, ['--at', typed, '--look', 'clear']);
    expect(ran.err).toBe('wrote trials/1.yaml:8\n');
    expect(await noted(folder)).toBe(`observations:\n  - at: ${line}\n    look: clear\n`);
  });

  it.each([
    ['2026-06-01 09:10', '2026-06-01T09:10+01:00'],
    ['yesterday 23:30', '2026-10-25T23:30+00:00'],
    ['2026-10-25 01:30', '2026-10-25T01:30+01:00'],
    ['2026-10-25T01:30+00:00', '2026-10-25T01:30+00:00'],
  ])('across the summer of Lisbon, %s is %s', async (typed, line) => {
    const folder = await trialLedger(plainTrial);
    await neckring(['observe', '1', '--at', typed, '--look', 'clear'], {
      folder,
      now: '2026-10-26T12:00:00Z',
    });
    expect(await noted(folder)).toBe(`observations:\n  - at: ${line}\n    look: clear\n`);
  });

  it.each([
    ['12:02', '--at: 2026-03-12T12:02+00:00 has not come yet; type the time of the look'],
    ['2027-01-01 09:00', 'has not come yet'],
    ['25:00', '--at: '],
    [
      'tomorrow 09:00',
      '--at: "tomorrow 09:00" is not a time; type 09:10, "yesterday 18:00" or 2026-03-02T10:15',
    ],
    ['noon', '--at: "noon" is not a time'],
    ['2026-03-11', '--at: "2026-03-11" is a day without a time; type "2026-03-11 09:10"'],
    ['2026-02-30 09:00', 'there is no day 2026-02-30'],
    ['11.3.2026 09:00', '--at: '],
    ['', '--at: '],
  ])('refuses "%s"', async (typed, message) => {
    const folder = await trialLedger(plainTrial);
    const ran = await observe(folder, ['--at', typed, '--look', 'clear']);
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
    expect(await readIn(folder, 'trials/1.yaml')).toBe(plainTrial);
  });

  it('refuses an hour that the clocks skipped', async () => {
    const folder = await trialLedger(plainTrial);
    const words = ['observe', '1', '--look', 'clear', '--at'];
    const skipped = await neckring([...words, '2026-03-29 01:30'], { folder, now: '2026-04-01T12:00:00Z' });
    expect(skipped.code).toBe(2);
    expect(skipped.err).toContain(
      'there was no 01:30 on 2026-03-29 in Europe/Lisbon: the clocks went forward',
    );
  });
});

describe('observe: where it goes', () => {
  const two = `${plainTrial}observations:
  - at: 2026-03-03T09:00+00:00
    look: clear
  - at: 2026-03-05T09:00+00:00
    look: hazy
`;

  it.each([
    ['before', '2026-03-02 18:00', 9],
    ['between', '2026-03-04 09:00', 11],
    ['after those of the same time', '2026-03-03 09:00', 11],
    ['last', '2026-03-06 09:00', 13],
  ])('goes in by its time: %s', async (_, at, line) => {
    const folder = await trialLedger(two);
    const ran = await observe(folder, ['--at', at, '--look', 'ring']);
    expect(ran.err).toBe(`wrote trials/1.yaml:${line}\n`);
    const lines = two.split('\n');
    const written = `${at.replace(' ', 'T')}+00:00`;
    expect((await readIn(folder, 'trials/1.yaml')).split('\n')).toEqual([
      ...lines.slice(0, line - 1),
      `  - at: ${written}`,
      '    look: ring',
      ...lines.slice(line - 1),
    ]);
    expect(ran.out).toBe(`+   - at: ${written}\n+     look: ring\n`);
  });

  it('an identical one is not written twice, also when its time is typed with another offset', async () => {
    const folder = await trialLedger(two);
    const again = await observe(folder, ['--at', '2026-03-05T10:00+01:00', '--look', 'hazy']);
    expect(again).toEqual({ code: 0, out: '', err: 'trials/1.yaml:11 says so already; nothing written\n' });
    expect(await readIn(folder, 'trials/1.yaml')).toBe(two);
    await observe(folder, ['--at', '2026-03-05 09:00', '--look', 'hazy', '--note', 'more']);
    expect((await noted(folder)).match(/2026-03-05T09:00/g)?.length).toBe(2);
  });

  it('two that are written at once both land', async () => {
    const folder = await trialLedger(two);
    await Promise.all([
      observe(folder, ['--note', 'one']),
      observe(folder, ['--note', 'two']),
      observe(folder, ['--note', 'three']),
    ]);
    const text = await noted(folder);
    for (const note of ['one', 'two', 'three']) expect(text).toContain(`note: ${note}\n`);
  });

  it('with several samples it must be said which; a name in other letters will do', async () => {
    const folder = await exampleLedger();
    const look = ['observe', '17', '--look', 'clear'];
    const before = await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml');
    const unsaid = await neckring(look, { folder, now });
    expect([unsaid.code, unsaid.err]).toEqual([
      2,
      'trial 17 has 2 samples: warm glass, cold glass; say which with --sample "warm glass"\n',
    ]);
    const near = await neckring([...look, '--sample', 'cold glas'], { folder, now });
    expect(near.err).toContain('--sample: trial 17 has no sample "cold glas"; did you mean "cold glass"?');
    expect(await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml')).toBe(before);
    expect((await neckring([...look, '--sample', 'Cold  GLASS'], { folder, now })).code).toBe(0);
    expect(await readIn(folder, 'trials/0017-orange-cardamom-drink.yaml')).toContain(
      '  - at: 2026-03-12T12:00+00:00\n    sample: cold glass\n    look: clear\n',
    );
  });

  it('says what it wrote as JSON', async () => {
    const folder = await trialLedger(two);
    const ran = await observe(folder, ['--look', 'clear', '--json']);
    expect(JSON.parse(ran.out)).toMatchObject({
      schema: 'observe@1',
      given: { trial: 1 },
      found: { file: 'trials/1.yaml', line: 13, state: 'added' },
      problems: [],
    });
  });

  it('with --dry-run shows the lines and writes nothing', async () => {
    const folder = await trialLedger(two);
    const ran = await observe(folder, ['--look', 'clear', '--dry-run']);
    expect(ran).toEqual({
      code: 0,
      out: '+   - at: 2026-03-12T12:00+00:00\n+     look: clear\n',
      err: 'would write trials/1.yaml:13\n',
    });
    expect(await readIn(folder, 'trials/1.yaml')).toBe(two);
  });

  it('takes the trial by its file, from the folder that one stands in', async () => {
    const folder = await trialLedger(two);
    const ran = await neckring(['observe', '1.yaml', '--look', 'clear'], { folder: `${folder}/trials`, now });
    expect(ran.err).toBe('wrote trials/1.yaml:13\n');
  });
});

describe('observe: bytes of the person', () => {
  const odd = `# my own heading
trial:   1      # the first
"made": '2026-03-02T10:15+00:00'

stages:
    emulsion:
      - { 'sweet orange oil':  2.00 g }   # weighed by K
      - polysorbate 80:   6.0g
      - water: "to 50 g"
observations:
# above the list
- at: 2026-03-03T09:00+00:00   # at breakfast
  look:   [clear,   'bluish']
  note: >
    folded
    words

- {at: 2026-03-04T09:00+00:00, look: hazy}
  # after the last, indented like its facts
# less far in
concluded: 'not "yet"'
`;

  it.each([
    ['line feeds', (text: string) => text],
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['a byte order mark', (text: string) => `\ufeff${text}`],
    ['CRLF and a byte order mark', (text: string) => `\ufeff${text.replaceAll('\n', '\r\n')}`],
  ])('stay as they are with %s', async (_, turn) => {
    const before = turn(odd);
    const folder = await trialLedger(before);
    const ran = await observe(folder, ['--look', 'clear', '--note', 'new']);
    expect([ran.code, ran.out]).toEqual([
      0,
      // A blank line comes before it, since one stands between the others.
      '+ \n+ - at: 2026-03-12T12:00+00:00\n+   look: clear\n+   note: new\n',
    ]);
    const text = await readIn(folder, 'trials/1.yaml');
    const end = before.includes('\r') ? '\r\n' : '\n';
    const added = ['', '- at: 2026-03-12T12:00+00:00', '  look: clear', '  note: new', ''].join(end);
    expect(text.replace(added, '')).toBe(before);
    expect(text).toContain(added);
    expect((await neckring(['check'], { folder, now })).code).toBe(0);
  });

  it.each([
    ['no observations key', '', 'observations:\n  - at: 2026-03-12T12:00+00:00\n    look: clear\n'],
    [
      'a key with nothing after it',
      'observations:\n',
      'observations:\n  - at: 2026-03-12T12:00+00:00\n    look: clear\n',
    ],
    [
      'an empty list',
      'observations: []\n',
      'observations:\n  - at: 2026-03-12T12:00+00:00\n    look: clear\n',
    ],
    [
      'no line end at the end of the file',
      'observations:\n  - at: 2026-03-03T09:00+00:00\n    look: clear',
      'observations:\n  - at: 2026-03-03T09:00+00:00\n    look: clear\n  - at: 2026-03-12T12:00+00:00\n    look: clear\n',
    ],
    [
      'a flow list',
      'observations: [{at: 2026-03-03T09:00+00:00, look: clear}]\n',
      'observations:\n  - {at: 2026-03-03T09:00+00:00, look: clear}\n  - at: 2026-03-12T12:00+00:00\n    look: clear\n',
    ],
    [
      'a literal block last, and a key behind it',
      'observations:\n  - at: 2026-03-03T09:00+00:00\n    note: |\n      two\n      lines\nconcluded: yes\n',
      'observations:\n  - at: 2026-03-03T09:00+00:00\n    note: |\n      two\n      lines\n  - at: 2026-03-12T12:00+00:00\n    look: clear\nconcluded: yes\n',
    ],
  ])('%s', async (_, before, now_) => {
    const folder = await trialLedger(plainTrial + before);
    expect((await observe(folder, ['--look', 'clear'])).code).toBe(0);
    expect((await readIn(folder, 'trials/1.yaml')).trimEnd()).toBe((plainTrial + now_).trimEnd());
  });

  it('a file that is not understood is never rewritten', async () => {
    const broken = `${plainTrial}observations:\n  - at: 2026-03-03T09:00+00:00\n    look: [clear\n`;
    const folder = await ledgerOf({ 'trials/1.yaml': broken });
    const ran = await observe(folder, ['--look', 'clear']);
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain('trials/1.yaml:');
    expect(await readIn(folder, 'trials/1.yaml')).toBe(broken);
  });
});
