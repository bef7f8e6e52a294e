/** A curve of chances with counted marks under it, in characters that any terminal and pipe carries. */

export interface PlotRow {
  readonly label: string;
  /** What one mark looks like; several in one place are shown by their number. */
  readonly mark: string;
  readonly values: readonly number[];
}

export interface Plot {
  /** Above 0; laid out on the logarithm. */
  readonly low: number;
  readonly high: number;
  /** 0 to 1. */
  readonly chanceAt: (value: number) => number;
  readonly rows: readonly PlotRow[];
  /** Labels under the axis, each where its value lies. */
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
  readonly width: number;
}

const heights = 10;
const gutter = 9;

/** The lines of the plot: the chance from 100 % down to 0, then a line for each row of marks, then the axis. */
export function plotLines(plot: Plot): readonly string[] {
  const columns = Math.max(20, plot.width - gutter - 1);
  const lowLog = Math.log(plot.low);
  const span = Math.log(plot.high) - lowLog;
  const columnOf = (value: number): number =>
    Math.max(0, Math.min(columns - 1, Math.round(((Math.log(value) - lowLog) / span) * (columns - 1))));
  const chances = Array.from({ length: columns }, (_, at) =>
    plot.chanceAt(Math.exp(lowLog + (span * at) / (columns - 1))),
  );
  const level = chances.map((chance) => Math.round(Math.max(0, Math.min(1, chance)) * heights));
  const curve = Array.from({ length: heights + 1 }, (_, row) => {
    const height = heights - row;
    const label = height % 5 === 0 ? `${height * 10} %` : '';
    const cells = level.map((at) => (at === height ? '*' : ' '));
    return `${label.padStart(gutter - 2)} |${cells.join('')}`.trimEnd();
  });
  return [
    ...curve,
    ...plot.rows.map((row) =>
      `${row.label.padStart(gutter - 2)} |${marks(row, columns, columnOf)}`.trimEnd(),
    ),
    ...axis(plot, columns, columnOf),
  ];
}

function marks({ mark, values }: PlotRow, columns: number, columnOf: (value: number) => number): string {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(columnOf(value), (counts.get(columnOf(value)) ?? 0) + 1);
  return Array.from({ length: columns }, (_, at) => {
    const count = counts.get(at) ?? 0;
    return count === 0 ? ' ' : count === 1 ? mark : count < 10 ? String(count) : '#';
  }).join('');
}

function axis({ ticks }: Plot, columns: number, columnOf: (value: number) => number): readonly string[] {
  const places = ticks.map(({ value, text }) => ({ at: columnOf(value), text }));
  const line = Array.from({ length: columns }, (_, at) =>
    places.some((place) => place.at === at) ? '+' : '-',
  ).join('');
  let labels = '';
  for (const { at, text } of [...places].sort((one, other) => one.at - other.at)) {
    const from = Math.max(0, Math.min(columns - text.length, at - Math.floor(text.length / 2)));
    if (labels !== '' && from < labels.length + 2) continue;
    labels = labels.padEnd(from) + text;
  }
  return [`${' '.repeat(gutter - 1)}+${line}`, `${' '.repeat(gutter)}${labels}`.trimEnd()];
}

/** Round values between two, on the logarithm: 1, 2 and 5 times powers of ten, or their halves where few fit. */
export function roundTicks(low: number, high: number): readonly number[] {
  const within = (steps: readonly number[]): readonly number[] => {
    const found: number[] = [];
    for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power += 1) {
      for (const step of steps) {
        const value = Number(`${step}e${power}`);
        if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9)) found.push(value);
      }
    }
    return found;
  };
  const coarse = within([1, 2, 5]);
  if (coarse.length >= 3) return coarse;
  const fine = within([1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8]);
  return fine.length >= 3 ? fine : [low, Math.sqrt(low * high), high];
}
