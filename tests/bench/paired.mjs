// Times commands in pairs, one of each after the other, so that what else the machine does hits both alike.
import { spawnSync } from 'node:child_process';
import { performance } from 'node:perf_hooks';

export const median = (values) => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
};

export function timed(argv, options = {}) {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, argv, { stdio: 'ignore', ...options });
  return { milliseconds: performance.now() - start, status };
}

/** Median of each, and the median of the ratios pair by pair. `argvs` are node's arguments; the first is the base. */
export function paired(argvs, rounds, options = {}) {
  const times = argvs.map(() => []);
  for (let round = 0; round < rounds; round++) {
    for (const [at, argv] of argvs.entries()) times[at].push(timed(argv, options).milliseconds);
  }
  return times.map((each) => ({
    median: median(each),
    ratio: median(each.map((one, at) => one / times[0][at])),
  }));
}

export function printTable(head, rows) {
  const widths = head.map((title, at) =>
    Math.max(title.length, ...rows.map((row) => String(row[at]).length)),
  );
  const line = (cells) =>
    cells
      .map((cell, at) => String(cell).padEnd(widths[at]))
      .join('  ')
      .trimEnd();
  console.log([line(head), ...rows.map(line)].join('\n'));
}
