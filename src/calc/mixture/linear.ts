/**
 * A small system of linear equations.
 *
 * Formula   A x = b by elimination with partial pivoting
 * Input     `rows`, each the coefficients of one equation with its right side last; they are used up
 * Output    x; undefined where the equations have no single answer
 * Example   solveLinear([[2, 1, 5], [1, -1, 1]]) -> [2, 1]
 */
export function solveLinear(rows: readonly number[][]): number[] | undefined {
  const size = rows.length;
  const system = [...rows];
  for (let column = 0; column < size; column += 1) {
    let best = column;
    for (let row = column + 1; row < size; row += 1) {
      if (Math.abs(at(system, row, column)) > Math.abs(at(system, best, column))) best = row;
    }
    const pivotRow = system[best];
    const pivot = pivotRow?.[column] ?? 0;
    if (pivotRow === undefined || !Number.isFinite(pivot) || Math.abs(pivot) < 1e-14) return undefined;
    system[best] = system[column] ?? pivotRow;
    system[column] = pivotRow;
    for (let row = column + 1; row < size; row += 1) {
      const target = system[row];
      const factor = at(system, row, column) / pivot;
      if (target === undefined || factor === 0) continue;
      for (let index = column; index <= size; index += 1) {
        target[index] = (target[index] ?? 0) - factor * (pivotRow[index] ?? 0);
      }
    }
  }
  return substituted(system);
}

const at = (rows: readonly (readonly number[])[], row: number, column: number): number =>
  rows[row]?.[column] ?? 0;

function substituted(system: readonly (readonly number[])[]): number[] {
  const size = system.length;
  const answer = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row -= 1) {
    let right = at(system, row, size);
    for (let column = row + 1; column < size; column += 1)
      right -= at(system, row, column) * (answer[column] ?? 0);
    answer[row] = right / at(system, row, row);
  }
  return answer;
}
