import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  exampleLedger,
  found,
  leafValue,
  neckring,
  readIn,
  record,
  rows,
  type Setting,
  writeIn,
} from './neckring.ts';
import { ledgerOf, lisbonBench, plainTrial } from './small-ledger.ts';

/** A gift of `folder` in the file `gift.yaml` of another ledger. */
async function handed(from: string, what: string, to: string, ...more: readonly string[]): Promise<void> {
  const { code, out, err } = await neckring(['give', what, '--as', 'yaml', ...more], { folder: from });
  expect(code, err).toBe(0);
  await writeIn(to, 'gift.yaml', out);
}

const take = (folder: string, words: readonly string[] = [], setting: Setting = {}) =>
  neckring(['take', 'gift.yaml', ...words], { folder, ...setting });

type Grams = ReadonlyMap<string, number>;

/** Grams of every substance of every stage, in the order in which they are exported. */
async function gramsOf(folder: string, what: string): Promise<readonly number[]> {
  const { compositions } = await found(['export', 'compositions', what], { folder });
  return rows(compositions).map(({ mass }) => leafValue(mass));
}

async function names(folder: string, what: string): Promise<Grams> {
  const { compositions } = await found(['export', 'compositions', what], { folder });
  return new Map(
    rows(compositions).map(({ stage, substance, mass }) => [`${stage} ${substance}`, leafValue(mass)]),
  );
}

async function errorsIn(folder: string): Promise<readonly unknown[]> {
  const { out } = await neckring(['check', '--json'], { folder });
  return rows(record(JSON.parse(out))['problems']).filter(
    ({ severity, code }) => severity === 'error' && code !== 'aim-missed',
  );
}

describe('law: what is given and taken into an empty ledger is the same mixture, and check is clean', () => {
  const dropLedger = {
    'bench.yaml': `${lisbonBench}  drop: 0.031 g\n`,
    'ingredients.yaml':
      'ingredients:\n  polysorbate 80:\n    density: 1.07 g/mL\n  soap lot 9:\n    like: polysorbate 80\n    lot: 9\n  blend, lot 12:\n    contains:\n      soap lot 9: 1 part\n      sweet orange oil: 2 parts\n      water: 1 part\n    density: 0.95 g/mL\n    aliases:\n      - the blend\n',
    'trials/1.yaml':
      'trial: 1\nstages:\n  base:\n    - sweet orange oil: 3 mL\n    - polysorbate 80: 20 drops\n    - water: to 30 g\n      weighed: 26.02 g\n  unused:\n    - water: 1 g\n',
    'trials/2.yaml':
      'trial: 2\nstages:\n  emulsion:\n    - base of 1: 10 g\n    - the blend: 5 drops\n    - water: to 40 mL\n',
    'formulas/f.yaml':
      'formula: a drink\nstages:\n  syrup:\n    - sucrose: 90 g\n    - citric acid: 4.5 g/L in drink\n    - emulsion of 2: 1.5 g\n    - blend, lot 12: (1 + 0.5) g\n    - water: to 200 mL\n  drink:\n    - syrup: 200 mL\n    - cardamom oil: 2 drops\n    - water: to 1 L\n',
  };

  it.each(['17', 'orange cardamom', '14'])('%s of the example ledger', async (what) => {
    const from = await exampleLedger();
    const to = await ledgerOf({ 'bench.yaml': await readIn(from, 'bench.yaml') });
    await handed(from, what, to);
    const { code, err } = await take(to);
    expect([code, err.includes('warning: trial') || err.includes('does not come to')]).toEqual([0, false]);
    const here = what === '17' ? '2' : what === '14' ? '1' : what;
    const [there, now] = [await gramsOf(from, what), await gramsOf(to, here)];
    expect(now).toHaveLength(there.length);
    for (const [at, grams] of there.entries()) expect(now[at]).toBeCloseTo(grams, 10);
    expect(await errorsIn(to)).toEqual([]);
  });

  it('own ingredients over built-in ones, solutions of solutions, drops, chains of trials, weighed masses', async () => {
    const from = await ledgerOf(dropLedger);
    const to = await ledgerOf({});
    await handed(from, 'a drink', to);
    const taken = await take(to);
    expect([taken.code, taken.err]).toEqual([0, expect.not.stringContaining('does not come to')]);
    const [there, now] = [await gramsOf(from, 'a drink'), await gramsOf(to, 'a drink')];
    expect(now).toHaveLength(there.length);
    for (const [at, grams] of there.entries()) expect(now[at]).toBeCloseTo(grams, 10);
    expect(await errorsIn(to)).toEqual([]);
    expect(await readdir(join(to, 'trials'))).toEqual(['0001.yaml', '0002.yaml']);
    expect(await readIn(to, 'trials/0001.yaml')).not.toContain('unused');
  });

  it('with everything given along', async () => {
    const from = await exampleLedger();
    const to = await ledgerOf({ 'bench.yaml': await readIn(from, 'bench.yaml') });
    await handed(from, '14', to, '--with', 'all');
    expect((await take(to)).code).toBe(0);
    expect(await readIn(to, 'trials/0001-sweet-orange-one-part-to-2-5-of-emulsifier.yaml')).toContain(
      'note: only against the black card',
    );
    expect([...(await names(to, '1')).keys()]).toContain('emulsion orange oil lot 2231');
    expect(await errorsIn(to)).toEqual([]);
  });
});

describe('take: numbers and references', () => {
  it('trials get the next free numbers, and what names them follows', async () => {
    const from = await exampleLedger();
    const to = await ledgerOf({ 'trials/0007-mine.yaml': plainTrial.replace('trial: 1', 'trial: 7') });
    await handed(from, '17', to);
    const { out, err } = await take(to);
    expect(out).toMatch(/trial 13 +8 +new\ntrial 17 +9 +new\n/u);
    expect(err).toContain('wrote trials/0009-first-drink-on-the-third.yaml\n');
    const text = await readIn(to, 'trials/0009-first-drink-on-the-third.yaml');
    expect(text).toContain('- emulsion of 8: 1.5 g\n');
    expect(text).toContain('why: does the emulsion of 8 stay clear in the glass, cold and warm?\n');
  });

  it('--dry-run says what it would add and writes nothing', async () => {
    const to = await ledgerOf({});
    await handed(await exampleLedger(), '17', to);
    const { err, code } = await take(to, ['--dry-run']);
    expect([code, err]).toEqual([0, expect.stringContaining('would write ingredients.yaml\n')]);
    expect(await readdir(to)).toEqual(['bench.yaml', 'gift.yaml']);
    expect(JSON.parse((await take(to, ['--dry-run', '--json'])).out).found).toMatchObject({
      taken: [{ kind: 'trial', given: '13', here: '1', how: 'new' }, { kind: 'trial' }, {}, {}],
      isWritten: false,
    });
  });

  it('a second time there is nothing to write', async () => {
    const to = await ledgerOf({});
    await handed(await exampleLedger(), '17', to);
    await take(to);
    const again = await take(to);
    expect([again.code, again.err]).toEqual([0, 'nothing to write\n']);
    expect(await readdir(join(to, 'trials'))).toHaveLength(2);
  });
});

const otherOil =
  'ingredients:\n  # mine\n  orange oil (own lot):\n    like: sweet orange oil\n    density: 0.9 g/mL\n    price: 4 EUR/kg\n';

describe('take: names that clash', () => {
  const clashing = async (): Promise<string> => {
    const from = await exampleLedger();
    const to = await ledgerOf({
      'bench.yaml': await readIn(from, 'bench.yaml'),
      'ingredients.yaml': otherOil,
      'formulas/mine.yaml': 'formula: Orange Cardamom\nstages:\n  drink:\n    - water: 1 kg\n',
    });
    await handed(from, 'orange cardamom', to);
    return to;
  };

  it('are refused away from a terminal, all of them, with what settles them', async () => {
    const to = await clashing();
    const { code, err } = await take(to);
    expect(code).toBe(2);
    expect(err).toContain(
      '"orange oil (own lot)" stands on this shelf with other figures; --rename takes theirs',
    );
    expect(err).toContain('the formula "Orange Cardamom" in formulas/mine.yaml is another one');
    expect(await readIn(to, 'ingredients.yaml')).toBe(otherOil);
  });

  it('--rename takes theirs under new names, and comes to the same', async () => {
    const to = await clashing();
    const { code, err } = await take(to, ['--rename']);
    expect([code, err.includes('does not come to')]).toEqual([0, false]);
    const text = await readIn(to, 'formulas/orange-cardamom-2.yaml');
    expect(text).toContain('formula: orange cardamom 2\n');
    expect(text).toContain('- orange oil (own lot) (2): 3.6 %\n');
    expect(await readIn(to, 'ingredients.yaml')).toContain(otherOil);
    const again = await take(to, ['--rename']);
    expect(again.err).toContain('nothing to write');
  });

  it('--keep mine leaves it out with what only it needs', async () => {
    const to = await clashing();
    const { out, err } = await take(to, ['--keep', 'mine']);
    expect(err).toBe('nothing to write\n');
    expect(out).toContain('mine kept');
    expect(await readIn(to, 'ingredients.yaml')).toBe(otherOil);
  });

  it('--keep theirs replaces, the old record as a comment, and the price stays', async () => {
    const to = await clashing();
    expect((await take(to, ['--keep', 'theirs'])).code).toBe(0);
    const shelf = await readIn(to, 'ingredients.yaml');
    expect(shelf).toContain(
      '  # before:\n  # orange oil (own lot):\n  #   like: sweet orange oil\n  #   density: 0.9 g/mL\n',
    );
    expect(shelf).toContain('    density: 0.846 g/mL\n    fold: 1\n    price: 4 EUR/kg\n');
    expect(await readIn(to, 'formulas/mine.yaml')).toContain('formula: Orange Cardamom\n');
    expect(await readIn(to, 'formulas/mine.yaml')).toContain('cassis stock: 12 drops\n');
  });

  it('are asked about on a terminal, one by one', async () => {
    const to = await clashing();
    const { code, out } = await take(to, [], { answers: ['what?', 'mine', 'r'] });
    expect(code).toBe(0);
    expect(out).toContain('say rename, mine or theirs');
    expect(await readIn(to, 'formulas/orange-cardamom-2.yaml')).toContain('- orange oil (own lot): 3.6 %\n');
  });

  it('leaving the question writes nothing', async () => {
    const to = await clashing();
    const { code, err } = await take(to, [], { answers: [] });
    expect([code, err]).toEqual([2, 'nothing was taken in; type it again when it is settled\n']);
    expect(await readdir(join(to, 'formulas'))).toEqual(['mine.yaml']);
  });

  it('a built-in name with figures of its own clashes only where files here use it', async () => {
    const from = await ledgerOf({
      'ingredients.yaml': 'ingredients:\n  polysorbate 80:\n    density: 1.2 g/mL\n',
      'trials/1.yaml': plainTrial.replace('polysorbate 80: 6 g', 'polysorbate 80: 6 mL'),
    });
    const used = await ledgerOf({ 'trials/1.yaml': plainTrial });
    await handed(from, '1', used);
    expect((await take(used)).err).toContain('"polysorbate 80" is a built-in ingredient that files here use');
    expect((await take(used, ['--rename'])).code).toBe(0);
    expect(await readIn(used, 'ingredients.yaml')).toContain(
      '  polysorbate 80 (2):\n    like: polysorbate 80\n',
    );
    // 6 mL at 1.2 g/mL: arithmetic.
    expect((await names(used, '2')).get('emulsion polysorbate 80 (2)')).toBeCloseTo(7.2, 10);
    expect((await names(used, '1')).get('emulsion polysorbate 80')).toBe(6);
    const empty = await ledgerOf({});
    await handed(from, '1', empty);
    expect((await take(empty)).code).toBe(0);
  });

  it('warns where it comes to something else here', async () => {
    const from = await ledgerOf({ 'trials/1.yaml': plainTrial.replace('oil: 2 g', 'oil: 2 mL') });
    const to = await ledgerOf({
      'ingredients.yaml': 'ingredients:\n  sweet orange oil:\n    density: 0.9 g/mL\n',
    });
    await handed(from, '1', to);
    expect((await take(to)).err).toMatch(
      /trial 1 does not come to the same here: emulsion: .* g of sweet orange oil there, 1\.80000 g here/u,
    );
  });

  it.each([
    [['--rename', '--keep', 'mine'], 'both --rename and --keep are given'],
    [['--keep', 'ours'], 'say mine or theirs'],
  ])('refuses %j', async (words, message) => {
    expect(await take(await clashing(), words)).toMatchObject({
      code: 2,
      err: expect.stringContaining(message),
    });
  });
});

const recipe = (stage: string, more = ''): string =>
  `given: 1\nwhat: formula x\n${more}formulas:\n  - formula: x\n    stages:\n      drink:\n${stage}`;

describe('take: a file of a stranger', () => {
  it.each([
    ['a file of a ledger', plainTrial, 'this is not a file that neckring give wrote'],
    [
      'another version',
      recipe('        - water: 1 g\n').replace('given: 1', 'given: 9'),
      'a form that is not known here',
    ],
    ['a key that is not known', recipe('        - water: 1 g\n', 'run: rm -rf\n'), '"run" is not known here'],
    ['no recipe', 'given: 1\n', 'there is no recipe in this file'],
    ['an anchor', recipe('        - &a water: 1 g\n'), 'gift.yaml:'],
    ['a tag', recipe('        - water: !!js/function 1 g\n'), 'gift.yaml:'],
    [
      'a merge key',
      recipe('        - water: 1 g\n', '<<: [a]\n'),
      '"<<" takes over another part of the file',
    ],
    [
      'a sign that is not seen',
      recipe('        - "wa\\u202eter": 1 g\n'),
      'a sign that is not seen stands in this text (U+202E)',
    ],
    ['an escape', recipe('        - "\\e[2Jwater": 1 g\n'), '(U+001B)'],
    ['a name without end', recipe(`        - ${'x'.repeat(200)}: 1 g\n`), 'this name has 200 characters'],
    ['an unknown ingredient', recipe('        - moon dust: 1 g\n'), '"moon dust" is not a known ingredient'],
    [
      'a stage of a trial that is not in it',
      recipe('        - emulsion of 1: 1 g\n'),
      'trial 1 is not in the file',
    ],
    ['a wrong amount', recipe('        - water: 1,5 g\n'), 'write 1.5 g'],
    ['a wrong shape', 'given: 1\nformulas: x\n', '"formulas" is no list'],
    ['stages that are none', 'given: 1\nformulas:\n  - formula: x\n    stages: x\n', 'gift.yaml:4'],
    [
      'the same formula twice',
      `${recipe('        - water: 1 g\n')}  - formula: x\n    stages:\n      a:\n        - water: 1 g\n`,
      'formula x stands here twice',
    ],
    [
      'a conflict',
      `<<<<<<< ours\n${recipe('        - water: 1 g\n')}`,
      'a git conflict was left unsettled here',
    ],
    ['NUL', recipe('        - wa\0ter: 1 g\n'), 'there is a NUL character here'],
    ['too large', `given: 1\nwhat: ${'x '.repeat(140_000)}\n`, 'too large to be read'],
    [
      'a circle',
      'given: 1\ntrials:\n  - trial: 1\n    stages:\n      a:\n        - b of 2: 1 g\n  - trial: 2\n    stages:\n      b:\n        - a of 1: 1 g\n',
      'gift.yaml:6:11: "b of 2" is made with trial 1 itself',
    ],
  ])('%s is refused, and nothing is written', async (_, text, message) => {
    const to = await ledgerOf({ 'trials/1.yaml': plainTrial });
    await writeIn(to, 'gift.yaml', text);
    const { code, err } = await take(to);
    expect(err).toContain(message);
    expect(err).not.toContain('\u001b');
    expect(code).toBe(2);
    expect(await readdir(to)).toEqual(['bench.yaml', 'gift.yaml', 'trials']);
    expect(await readdir(join(to, 'trials'))).toEqual(['1.yaml']);
  });

  it('what is not UTF-8, a folder, and what is not there', async () => {
    const to = await ledgerOf({ 'trials/1.yaml': plainTrial });
    await writeFile(join(to, 'gift.yaml'), new Uint8Array([0x67, 0xe9, 0x0a]));
    expect((await take(to)).err).toContain('not written in UTF-8');
    for (const name of ['trials', 'none.yaml'])
      expect((await neckring(['take', name], { folder: to })).err).toContain(`there is no file ${name}`);
  });

  it('names that mean something to a program are only names; paths lead nowhere', async () => {
    const to = await ledgerOf({});
    await writeIn(
      to,
      'gift.yaml',
      'given: 1\ningredients:\n  __proto__:\n    role: aroma\n  constructor:\n    like: water\nformulas:\n  - formula: ../../evil\n    stages:\n      toString:\n        - __proto__: 1 g\n        - constructor: 1 g\n        - "[=cmd|x": 0 g\n',
    );
    const refused = await take(to);
    expect(refused.err).toContain('"[=cmd|x" is not a known ingredient');
    await writeIn(to, 'gift.yaml', (await readIn(to, 'gift.yaml')).replace(/ +- "\[=cmd.*\n/u, ''));
    expect((await take(to)).code).toBe(0);
    expect(await readdir(join(to, 'formulas'))).toEqual(['evil.yaml']);
    expect([...(await names(to, '../../evil')).keys()]).toEqual([
      'toString __proto__',
      'toString constructor',
    ]);
    expect(Object.hasOwn(Object.prototype, 'role')).toBe(false);
  });

  it('facts that lead out of the file are left behind', async () => {
    const to = await ledgerOf({});
    await writeIn(
      to,
      'gift.yaml',
      `given: 1\ntrials:\n  - trial: 5\n    from: 3\n    series: theirs\n    batch: theirs\n    stages:\n      a:\n        - water: 1 g\n    observations:\n      - at: 2026-03-03T09:10+00:00\n        look: clear\n        photo: ../../../etc/passwd\n        against: trial 3\n    results:\n      - at: 2026-03-03T09:10+00:00\n        calculator: hlb\n`,
    );
    expect((await take(to)).code).toBe(0);
    expect(await readIn(to, 'trials/0001.yaml')).toBe(
      'trial: 1\nstages:\n  a:\n    - water: 1 g\nobservations:\n  - at: 2026-03-03T09:10+00:00\n    look: clear\n',
    );
  });

  it('a shelf of mine that can not be read is not written to', async () => {
    const to = await ledgerOf({ 'ingredients.yaml': 'ingredients:\n  a:\n    densty: 1 g/mL\n' });
    await handed(await exampleLedger(), '17', to);
    const { code, err } = await take(to);
    expect([code, err]).toEqual([2, expect.stringContaining('ingredients.yaml:3:5')]);
  });
});
