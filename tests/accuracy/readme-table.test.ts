import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { acidAndGas } from './acid-and-gas.ts';
import type { Measured } from './measured.ts';
import { otherTables } from './other-tables.ts';
import { sugarAndWater } from './sugar-and-water.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

const row = ({ what, beside, rows, worst }: Measured): string =>
  `| ${what} | ${beside} | ${rows} | ${worst} |`;

it('published: the table of what was measured in the README is what comes out beside the printed tables', () => {
  const wanted = [...otherTables(), ...acidAndGas(), ...sugarAndWater()].map(row);
  const table = readme
    .split('\n')
    .filter((line) => wanted.some((one) => one.split('|')[1] === line.split('|')[1]));
  expect(table).toEqual(wanted);
});
