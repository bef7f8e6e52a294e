// The project's own solution chemistry, bundled in memory so that this version of node can run it.
import { resolve } from 'node:path';
import { build } from 'esbuild';

const { outputFiles } = await build({
  stdin: {
    contents: ['equilibrium', 'titration']
      .map((name) => `export * from './src/calc/solution/${name}.ts';`)
      .join('\n'),
    resolveDir: resolve(import.meta.dirname, '../..'),
  },
  bundle: true,
  format: 'esm',
  platform: 'node',
  write: false,
});
const code = Buffer.from(outputFiles[0].contents).toString('base64');
const { solveEquilibrium, titratableEquivalents } = await import(`data:text/javascript;base64,${code}`);

const temperatureKelvin = 293.15;

function solved(result) {
  if (!result.ok) throw new Error(result.fault.message);
  return result.value;
}

export const solvePh = (components) => solved(solveEquilibrium({ components, temperatureKelvin }));
export const titrate = (components) =>
  solved(titratableEquivalents({ components, temperatureKelvin, endPoint: 8.2 }));
export const finishedAcidity = (components) => [solvePh(components), titrate(components)];
