import { describe, expect, it } from 'vitest';
import { exampleLedger, neckring, readIn, writeIn } from './neckring.ts';
import { ledgerOf, plainTrial, trialLedger } from './small-ledger.ts';

const drink = 'trials/0017-orange-cardamom-drink.yaml';

interface Told {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
  readonly hint: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

async function told(folder: string, paths: readonly string[] = []): Promise<readonly Told[]> {
  return JSON.parse((await neckring(['check', ...paths, '--json'], { folder })).out).problems;
}

describe('check', () => {
  it('finds nothing in the example ledger', async () => {
    const folder = await exampleLedger();
    expect(await neckring(['check'], { folder })).toEqual({
      code: 0,
      out: '11 files: no errors, no warnings\n',
      err: '',
    });
  });

  it('says what is wrong with file, line, column, the line and a caret, and exits 1', async () => {
    const folder = await trialLedger(plainTrial.replace('6 g', '6,5 g'));
    expect(await neckring(['check'], { folder })).toEqual({
      code: 1,
      out: expect.stringMatching(
        /^trials\/1\.yaml:6:23: .*6,5.*; .*6\.5 g.*\n {2}6 \| {5}- polysorbate 80: 6,5 g\n {4}\| {23}\^+\n\n2 files: 1 error, no warnings\n$/,
      ),
      err: '',
    });
  });

  it('reports every problem of every file at once, in the order of files and lines', async () => {
    const folder = await ledgerOf({
      'bench.yaml': 'ledger: 1\nbench:\n  temprature: 20 C\n',
      'trials/1.yaml': plainTrial.replace('2 g', '2').replace('to 50 g', 'to fifty'),
      'trials/2.yaml': plainTrial
        .replace('trial: 1', 'trial: 2')
        .replace('sweet orange oil', 'sweet ornge oil'),
      'series/a.yaml': 'question: which?\n',
    });
    const places = (await told(folder)).map(({ file, line }) => `${file}:${line}`);
    expect(places).toEqual(
      expect.arrayContaining([
        'bench.yaml:3',
        'trials/1.yaml:5',
        'trials/1.yaml:7',
        'trials/2.yaml:5',
        'series/a.yaml:1',
      ]),
    );
    expect((await neckring(['check'], { folder })).code).toBe(1);
  });

  it('gives the same list as JSON, with place, message and mend', async () => {
    const folder = await trialLedger(plainTrial.replace('sweet orange oil', 'sweet ornge oil'));
    const ran = await neckring(['check', '--json'], { folder });
    const json = JSON.parse(ran.out);
    expect(ran.code).toBe(1);
    expect(json).toMatchObject({
      schema: 'check@1',
      found: {
        files: { value: 2, unit: '' },
        errors: { value: 1, unit: '' },
        warnings: { value: 0, unit: '' },
      },
    });
    const [problem] = json.problems;
    expect(problem).toEqual({
      code: expect.any(String),
      severity: 'error',
      message: expect.stringContaining('sweet ornge oil'),
      hint: expect.stringContaining('sweet orange oil'),
      file: 'trials/1.yaml',
      line: 5,
      column: 7,
    });
    const { out } = await neckring(['check'], { folder });
    expect(out).toContain(`trials/1.yaml:5:7: ${problem.message}; ${problem.hint}\n`);
  });

  it('a warning is shown and counted, and does not change the exit code', async () => {
    const folder = await trialLedger(
      `${plainTrial}samples:\n  one:\n    of: emulsion\n  two:\n    of: emulsion\nobservations:\n  - at: 2026-03-03T09:00+00:00\n    look: clear\n`,
    );
    const { code, out } = await neckring(['check'], { folder });
    expect(code).toBe(0);
    expect(out).toMatch(/^trials\/1\.yaml:14:\d+: warning: /);
    expect(out).toMatch(/\n2 files: no errors, 1 warning\n$/);
  });
});

describe('check PATHS', () => {
  const files = {
    'trials/1.yaml': plainTrial.replace('2 g', '2'),
    'trials/2.yaml': plainTrial.replace('trial: 1', 'trial: 2'),
    'series/a.yaml': 'question: which?\n',
  };

  it.each([
    [['trials/2.yaml'], 0, '1 file: no errors, no warnings\n'],
    [['trials/1.yaml'], 1, '1 file: 1 error, no warnings\n'],
    [['trials'], 1, '2 files: 1 error, no warnings\n'],
    [['trials/'], 1, '2 files: 1 error, no warnings\n'],
    [['trials/2.yaml', 'series'], 1, '2 files: 1 error, no warnings\n'],
    [['.'], 1, '4 files: 2 errors, no warnings\n'],
  ])('%j', async (paths, code, last) => {
    const ran = await neckring(['check', ...paths], { folder: await ledgerOf(files) });
    expect([ran.code, ran.out.endsWith(last) ? last : ran.out]).toEqual([code, last]);
  });

  it('takes paths from the folder that one stands in', async () => {
    const folder = await ledgerOf(files);
    const ran = await neckring(['check', '2.yaml', '../series'], { folder: `${folder}/trials` });
    expect(ran.out).toContain('series/a.yaml:1:1: ');
    expect(ran.out).toContain('2 files: 1 error');
  });

  it.each([
    ['trials/9.yaml', 'trials/9.yaml is no file of the ledger'],
    ['photos', 'photos is no file of the ledger'],
    ['..', '.. is outside the ledger'],
    ['/etc', '/etc is outside the ledger'],
  ])('refuses %s', async (path, message) => {
    const ran = await neckring(['check', path], { folder: await ledgerOf(files) });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(message);
  });
});

describe('check: many problems', () => {
  it('lists at most 20 of a file, then how many more; the count and the JSON have all', async () => {
    const items = Array.from({ length: 30 }, (_, at) => `    - thing ${at}: ${at}\n`).join('');
    const folder = await ledgerOf({
      'trials/1.yaml': `trial: 1\nstages:\n  emulsion:\n${items}`,
      'trials/2.yaml': plainTrial.replace('trial: 1', 'trial: 2').replace('2 g', '2'),
    });
    const problems = await told(folder);
    const ofFirst = problems.filter((one) => one.file === 'trials/1.yaml').length;
    expect(ofFirst).toBeGreaterThanOrEqual(30);
    const { out } = await neckring(['check'], { folder });
    expect(out.match(/^trials\/1\.yaml:\d+:/gm)?.length).toBe(20);
    expect(out).toContain(`trials/1.yaml: and ${ofFirst - 20} more\n`);
    expect(out).toContain('trials/2.yaml:5');
    expect(out).toMatch(new RegExp(`\\n3 files: ${problems.length} errors, no warnings\\n$`));
  });

  it('reports git conflict markers alone', async () => {
    const text = plainTrial.replace(
      '    - water: to 50 g\n',
      '<<<<<<< ours\n    - water: to 50\n=======\n    - watr: to 60 g\n>>>>>>> theirs\n',
    );
    const problems = await told(await trialLedger(text));
    expect(problems.map(({ line, column }) => [line, column])).toEqual([[7, 1]]);
    expect(problems[0]?.message).toContain('conflict');
  });
});

describe('check: stale results', () => {
  const stale = async (folder: string): Promise<readonly string[]> =>
    (await told(folder))
      .filter((one) => one.code === 'stale-result')
      .map((one) => `${one.severity} ${one.message}`);

  it('none right after reckoning', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '13', '17'], { folder });
    expect(await stale(folder)).toEqual([]);
    expect((await neckring(['check'], { folder })).code).toBe(0);
  });

  it('one after a figure of an ingredient is changed, also of a trial that is used; reckoning mends it', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '13', '17'], { folder });
    const own = await readIn(folder, 'ingredients.yaml');
    await writeIn(
      folder,
      'ingredients.yaml',
      own.replace('    fold: 1\n', '    fold: 1\n    required hlb: 12\n'),
    );
    const problems = (await told(folder)).filter((one) => one.code === 'stale-result');
    expect(problems.map(({ file, severity }) => [file, severity])).toEqual([
      ['trials/0013-orange-1-to-3.yaml', 'warning'],
      [drink, 'warning'],
    ]);
    expect(problems[0]?.hint).toContain('neckring reckon 13');
    const at = problems[0];
    const lines = (await readIn(folder, 'trials/0013-orange-1-to-3.yaml')).split('\n');
    expect(lines[(at?.line ?? 0) - 1]).toMatch(/^ {4}of: [0-9a-f]{8}$/);
    expect((await neckring(['check'], { folder })).code).toBe(0);
    await neckring(['reckon', '13', '17'], { folder });
    expect(await stale(folder)).toEqual([]);
  });

  it('one after an amount is changed', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '17'], { folder });
    const text = await readIn(folder, drink);
    await writeIn(folder, drink, text.replace('citric acid: 4.5 g/L', 'citric acid: 4.4 g/L'));
    expect(await stale(folder)).toContain('warning this acid answer is no longer what the trial comes to');
  });

  it('the drops answer after the drop of the stock is changed', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '17'], { folder });
    const own = await readIn(folder, 'ingredients.yaml');
    await writeIn(folder, 'ingredients.yaml', own.replace('drop: 0.021 g', 'drop: 0.023 g'));
    expect((await stale(folder)).some((one) => one.includes('drops'))).toBe(true);
  });

  it('none after a comment, a note or a look is added', async () => {
    const folder = await exampleLedger();
    await neckring(['reckon', '17'], { folder });
    const text = await readIn(folder, drink);
    await writeIn(
      folder,
      drink,
      `# mine\n${text.replace('sucrose: 90 g', 'sucrose: 90.0 g  # fine\n      note: white')}`,
    );
    await neckring(['observe', '17', '--sample', 'cold glass', '--look', 'clear'], { folder });
    expect(await stale(folder)).toEqual([]);
  });
});
