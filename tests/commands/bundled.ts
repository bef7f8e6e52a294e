/** A neckring that git can start, in a folder with an awkward name. */

import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll } from 'vitest';

export function bundledNeckring(): () => readonly [node: string, script: string] {
  let scratch = '';
  let script = '';
  beforeAll(async () => {
    scratch = await mkdtemp(join(tmpdir(), 'neckring-program-'));
    const folder = join(scratch, "50 % of ada's tools");
    await mkdir(folder);
    script = join(folder, 'neckring.mjs');
    await build({
      stdin: {
        contents: `import { main } from './src/main.ts'; await main();`,
        resolveDir: join(import.meta.dirname, '../..'),
      },
      outfile: script,
      bundle: true,
      platform: 'node',
      format: 'esm',
      banner: {
        js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
      },
      logLevel: 'silent',
    });
  }, 60_000);
  afterAll(() => rm(scratch, { recursive: true, force: true }));
  return () => [process.execPath, script];
}
