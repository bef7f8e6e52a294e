import { readFileSync } from 'node:fs';
import type { Parsed } from '../../../src/problem.ts';

/** The value, or the fault as an exception. */
export function answered<T>(answer: Parsed<T>): T {
  if (answer.ok) return answer.value;
  throw new Error(`${answer.fault.code}: ${answer.fault.message}`);
}

export const celsius = (degrees: number): number => degrees + 273.15;

type Cell = string | number | null;

export interface Table {
  readonly source: string;
  readonly rows: readonly (readonly Cell[])[];
}

/** A table of a fixture. */
export function tableOf(file: string, name: string): Table {
  const fixture: Record<string, Table> = JSON.parse(
    readFileSync(new URL(`../../fixtures/published/${file}.json`, import.meta.url), 'utf8'),
  );
  const table = fixture[name];
  if (!table) throw new Error(`no table ${name} in ${file}`);
  return table;
}

/** Rows of a table whose cells are all numbers. */
export function numbersOf(file: string, name: string): number[][] {
  return tableOf(file, name).rows.map((row) => row.map((cell) => Number(cell)));
}

/** The rows that lie further from the printed figure than allowed, as text; empty when all are near. */
export function misses(
  rows: readonly (readonly number[])[],
  found: (row: readonly number[]) => { readonly value: number; readonly printed: number },
  allowed: number,
  relative = false,
): string[] {
  return rows.flatMap((row) => {
    const { value, printed } = found(row);
    const off = relative ? value / printed - 1 : value - printed;
    return Math.abs(off) <= allowed + 1e-12 ? [] : [`${row.join(', ')}: ${value} is off by ${off}`];
  });
}
