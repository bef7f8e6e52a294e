// The project's own sources of the ladder, bundled in memory so that this version of node can run them.
import { resolve } from 'node:path';
import { build } from 'esbuild';

const { outputFiles } = await build({
  stdin: {
    contents: ['break-point', 'next-beakers', 'priors']
      .map((name) => `export * from './src/calc/ladder/${name}.ts';`)
      .join('\n'),
    resolveDir: resolve(import.meta.dirname, '../..'),
  },
  bundle: true,
  format: 'esm',
  platform: 'node',
  write: false,
});
const code = Buffer.from(outputFiles[0].contents).toString('base64');
export const { breakPoint, nextBeakers, priorsFor } = await import(`data:text/javascript;base64,${code}`);
