import { describe, expect, it } from 'vitest';
import published from '../fixtures/published/dilutions.json' with { type: 'json' };
import { agreesWithPrint } from '../support/printed.ts';
import { leafValue, neckring, record, rows } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

const solute = 'sodium chloride';

interface Flask {
  readonly massFraction: number;
  readonly gramsPerLitre: number;
  readonly soluteGrams: number;
  readonly restGrams: number;
}

/** The last stage of trial 1 of a ledger, as `show --json` gives it. */
async function flaskIn(files: Readonly<Record<string, string>>): Promise<Flask> {
  const folder = await ledgerOf(files);
  const ran = await neckring(['show', '1', '--json'], { folder });
  expect([ran.code, record(JSON.parse(ran.out))['problems']]).toEqual([0, []]);
  const stage = rows(record(record(JSON.parse(ran.out))['found'])['stages']).at(-1);
  const substance = rows(stage?.['substances']).find((one) => one['substance'] === solute);
  const items = rows(stage?.['items']);
  return {
    massFraction: leafValue(substance?.['massFraction']),
    gramsPerLitre: leafValue(substance?.['gramsPerLitre']),
    soluteGrams: leafValue(substance?.['mass']),
    restGrams: leafValue(items.at(-1)?.['mass']),
  };
}

const reading: Readonly<Record<string, (flask: Flask) => number>> = {
  '%': (flask) => flask.massFraction * 1e2,
  ppm: (flask) => flask.massFraction * 1e6,
  ppb: (flask) => flask.massFraction * 1e9,
  '% w/v': (flask) => flask.gramsPerLitre / 10,
  'g of solute': (flask) => flask.soluteGrams,
  'g of the rest': (flask) => flask.restGrams,
};
const read = (flask: Flask, unit: string): number => reading[unit]?.(flask) ?? Number.NaN;

const inWater = `  thin water:
    like: water
    density: 1 g/mL
`;

describe('published dilutions, through a trial and show --json', () => {
  it.each(published.dilutions)(
    'published: $take of $stock to $makeUpTo is $answer $unit, $source',
    async (row) => {
      const flask = await flaskIn({
        'ingredients.yaml': `ingredients:\n${inWater}  stock:\n    contains:\n      ${solute}: ${row.stock}\n      thin water: rest\n    density: 1 g/mL\n`,
        'trials/1.yaml': `trial: 1\nstages:\n  flask:\n    - stock: ${row.take}\n    - thin water: to ${row.makeUpTo}\n`,
      });
      expect(agreesWithPrint(read(flask, row.unit), row.answer), `${read(flask, row.unit)}`).toBe(true);
    },
  );

  it.each(published.amounts)('published: $solute, rest $rest, is $answer $unit, $source', async (row) => {
    const flask = await flaskIn({
      'trials/1.yaml': `trial: 1\nstages:\n  flask:\n    - ${solute}: ${row.solute}\n    - water: ${row.rest}\n`,
    });
    expect(agreesWithPrint(read(flask, row.unit), row.answer), `${read(flask, row.unit)}`).toBe(true);
  });
});

describe('published dilutions whose printed answer is wrong', () => {
  // Molar mass of sodium chloride 58.44 g/mol (IUPAC, standard atomic weights).
  const molarity = async (stock: string, take: string, makeUpTo: string): Promise<number> => {
    const flask = await flaskIn({
      'trials/1.yaml': `trial: 1\nstages:\n  stock:\n    - ${solute}: ${stock} mol/L\n    - water: to 1 L\n  flask:\n    - stock: ${take}\n    - water: to ${makeUpTo}\n`,
    });
    return flask.gramsPerLitre / 58.44;
  };

  it.each(published.misprinted)('published: $right and not $printed, $source', async (row) => {
    const made = (answer: string): Promise<number> =>
      row.asks === 'stock'
        ? molarity(answer, row.take ?? '', row.makeUpTo)
        : molarity(row.stock ?? '', `${answer} mL`, row.makeUpTo);
    expect(agreesWithPrint(await made(row.right), row.comesTo)).toBe(true);
    expect(agreesWithPrint(await made(row.printed), row.comesTo)).toBe(false);
  });
});
