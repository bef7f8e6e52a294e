// How long a full curve of haze against droplet size takes: 200 sizes, each as a distribution of 40 sizes.
// Usage: node tests/bench/light.mjs
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';

const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'neckring-light-'));
const outfile = join(folder, 'curve.cjs');
await build({
  entryPoints: [join(root, 'src/calc/light/droplet-of-haze.ts')],
  outfile,
  bundle: true,
  format: 'cjs',
  platform: 'node',
  logLevel: 'error',
});
// A process of its own for each run, since a command runs it once, cold.
const script = `
  const { sizeCurve } = require(${JSON.stringify(outfile)});
  const oil = { volumeFraction: 1e-4, oilIndex: 1.4727, mediumIndex: 1.333, wavelengthNanometres: 550 };
  const started = performance.now();
  sizeCurve(oil, 0.15);
  process.stdout.write(String(performance.now() - started));
`;
const times = Array.from({ length: 9 }, () =>
  Number(spawnSync(process.execPath, ['-e', script], { encoding: 'utf8' }).stdout),
).sort((a, b) => a - b);
rmSync(folder, { recursive: true });
console.log(
  `200 sizes x 40 classes, cold: middle ${times[4]?.toFixed(0)} ms, worst ${times[8]?.toFixed(0)} ms (wanted: under 300 ms)`,
);
