import { describe, expect, it } from 'vitest';
import { neckring, type Ran } from '../commands/neckring.ts';
import { ledgerOf, lisbonBench } from '../commands/small-ledger.ts';

const objectWords = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype', 'valueOf'];

/** A ledger in which nearly everything that has a name has this one. */
const namedLedger = (name: string): Promise<string> =>
  ledgerOf({
    'bench.yaml': `${lisbonBench}  tastes:\n    - ${name}\n  vessels:\n    - name: ${name}\n      volume: 1 L\n`,
    'ingredients.yaml': `ingredients:\n  ${name} stock:\n    contains:\n      cassis thiol: 2 ppm\n      propylene glycol: rest\n    drop: 0.021 g\n    aliases:\n      - ${name}\n`,
    'trials/1.yaml': `trial: 1\ntitle: ${name}\nmade: 2026-03-02T10:15+00:00\nseries: ${name}\nstages:\n  ${name} emulsion:\n    - sweet orange oil: 2 g\n    - polysorbate 80: 6 g\n    - ${name}: 1 g\n    - water: to 50 g\nsamples:\n  ${name}:\n    of: ${name} emulsion\nobservations:\n  - at: 2026-03-03T10:15+00:00\n    sample: ${name}\n    look: hazy\n    taste:\n      ${name}: 2\n    note: ${name}\n`,
    'trials/2.yaml': `trial: 2\nmade: 2026-03-02T10:20+00:00\nfrom: 1\nseries: ${name}\nstages:\n  ${name}:\n    - sweet orange oil: 1 g\n    - polysorbate 80: 6 g\n    - water: to 50 g\n  drink:\n    - ${name}: 1 g\n    - citric acid: 4.5 g/L\n    - water: to 1 L\n`,
    [`series/${name}.yaml`]: `series: ${name}\nvaries: oil per emulsifier\nsame:\n  - ${name}\n`,
    [`formulas/${name}.yaml`]: `formula: ${name}\nstages:\n  drink:\n    - ${name} stock: 1 g\n    - citric acid: 4.5 g/L\n    - water: to 1 L\naim:\n  ph: 2 to 4\n`,
    'notes.csv': `${name},Oil\n${name},2\n`,
    'map.yaml': `${name}: title\nOil: stages.${name}.sweet orange oil in g\n`,
  });

const onNames = (name: string): readonly (readonly string[])[] => [
  ...[
    ['check'],
    ['list'],
    ['show', '1'],
    ['show', '2'],
    ['series', name],
    ['drink', name],
    ['drink', '2'],
    ['due', '--all'],
  ],
  ...[['why', '1'], ['uses', name], ['compare', '1', '2'], ['reckon', '1', '2'], ['stocks'], ['cost', name]],
  ...[
    ['give', name],
    ['give', name, '--as', 'yaml', '--with', 'all'],
    ['export', 'compositions', '1'],
    ['export', 'observations', name],
  ],
  ...[
    ['scale', name, '--to', '20 L drink'],
    ['ladder', '1', '--rungs', '1:4, 1:3', '--series', name, '--write'],
    ['next', name],
  ],
  ...[
    ['observe', '1', '--sample', name, '--taste', `${name}=3`],
    ['look', '1', 'clear', '--sample', name, '--note', name],
  ],
  ...[
    ['decide', name, name],
    ['import', 'notes.csv', '--map', 'map.yaml'],
    ['new', '--title', name, '--stage', name, '--item', `2 g ${name}`],
  ],
  ...[
    ['batch', 'record', name, '--to', '20 L drink', '--name', name],
    ['batch'],
    ['show', name],
    ['weigh', '1', name, '1.01'],
    ['end', '1', '--sample', name, '--why', name],
  ],
  ...[
    ['swap', name, '--out', `${name} stock`, '--in', 'cassis thiol'],
    ['dilute', '--of', `${name} stock`, '--to', '1 ppb', '--in', '1 kg', '--balance', '0.01 g up to 600 g'],
  ],
  ...[['ingredient', name], [name], [`--${name}`], ['help', name], ['new', `--${name}`]],
];

describe('names that every object has are names like others', () => {
  /** What every command says to the plain name; asked once. */
  const plain: Ran[] = [];
  const askPlain = async (): Promise<void> => {
    const folder = await namedLedger('zeta');
    for (const words of onNames('zeta')) plain.push(await neckring(words, { folder }));
  };

  it.each(objectWords)(
    'law: %s behaves as "zeta" does, in every command',
    async (name) => {
      if (plain.length === 0) await askPlain();
      const named = await namedLedger(name);
      for (const [at, words] of onNames(name).entries()) {
        const ran = await neckring(words, { folder: named });
        const other = plain[at];
        expect([words, ran.code, ran.err.includes('defect')]).toEqual([words, other?.code, false]);
        // Marks of answers, widths, carets and the order of names follow the letters of a name; the words do not.
        const wordsOf = (text: string): readonly string[] =>
          text
            .replaceAll('\\_', '_')
            .toLowerCase()
            .replaceAll(name.toLowerCase(), 'zeta')
            .replace(new RegExp(`${name.toLowerCase().slice(0, 8)}\\w*…`, 'g'), 'zeta')
            .replaceAll(name.toLowerCase().replaceAll('_', ''), 'zeta')
            .split(/[0-9a-f]{8}|[\s|^-]+/)
            .sort();
        expect([words, wordsOf(ran.out)]).toEqual([words, wordsOf(other?.out ?? '')]);
      }
      expect([Object.getPrototypeOf({}), Object.keys(Object.prototype)]).toEqual([Object.prototype, []]);
    },
    60_000,
  );
});
