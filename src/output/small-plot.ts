/** A figure through time as a few lines of characters that any terminal and pipe carries. */

export interface SmallPlot {
  /** From left to right; a gap where there is none. */
  readonly values: readonly (number | undefined)[];
  readonly textOf: (value: number) => string;
  readonly width: number;
  readonly height?: number;
}

const usualHeight = 5;
const widestStep = 8;

/**
 * The lines of the plot, the highest value at the top; of more values than columns the last ones.
 *
 * Example   1, 2, 3 -> a star in the lowest, the middle and the highest line
 */
export function smallPlot({ values, textOf, width, height = usualHeight }: SmallPlot): readonly string[] {
  const there = values.filter((value) => value !== undefined);
  if (there.length === 0) return [];
  const [low, high] = [Math.min(...there), Math.max(...there)];
  const labels = [textOf(high), textOf(low)];
  const gutter = Math.max(...labels.map((label) => label.length));
  const columns = Math.max(1, width - gutter - 3);
  const shown = values.slice(-columns);
  const step = Math.max(1, Math.min(widestStep, Math.floor(columns / shown.length)));
  const rows = labels[0] === labels[1] ? 1 : height;
  const rowOf = (value: number): number =>
    rows === 1 ? 0 : Math.round(((high - value) / (high - low)) * (rows - 1));
  const lines = Array.from({ length: rows }, (_, row) => {
    const label = row === 0 ? labels[0] : row === rows - 1 ? labels[1] : '';
    const cells = shown.map((value) =>
      (value !== undefined && rowOf(value) === row ? '*' : ' ').padEnd(step),
    );
    return `${(label ?? '').padStart(gutter)} | ${cells.join('')}`.trimEnd();
  });
  return [...lines, `${' '.repeat(gutter)} +-${'-'.repeat(Math.max(1, shown.length * step - 1))}`];
}
