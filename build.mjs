// Builds what bin/neckring.js starts: CommonJS bundles, which start sooner than modules. Each module that the
// source loads with `await import(…)` becomes a bundle of its own, so that no command loads what it does not use.
import { spawnSync } from 'node:child_process';
import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, resolve } from 'node:path';
import { build } from 'esbuild';

const root = import.meta.dirname;
const out = resolve(root, 'dist');

/** Bundles that are loaded late, by the path of their module under src. */
const late = [
  'calc/expression.ts',
  'commands/with-ledger.ts',
  'output/paint.ts',
  'output/table.ts',
  'reference/library.ts',
];

const isLate = (path) => late.includes(path.slice(resolve(root, 'src').length + 1));

const lateBundles = {
  name: 'late-bundles',
  setup(builder) {
    builder.onResolve({ filter: /^\.{1,2}\// }, (request) => {
      if (request.kind !== 'dynamic-import') return undefined;
      const path = resolve(dirname(request.importer), request.path);
      return isLate(path) ? { path: `./${basename(path, '.ts')}.cjs`, external: true } : undefined;
    });
  },
};

/** Starting other programs is loaded only when it is done: the option parser asks for it and never does it. */
const lateChildProcess = {
  name: 'late-child-process',
  setup(builder) {
    builder.onResolve({ filter: /^(node:)?child_process$/ }, (request) =>
      request.importer.includes('commander') ? { path: 'child_process', namespace: 'late' } : undefined,
    );
    builder.onLoad({ filter: /.*/, namespace: 'late' }, () => ({
      contents: `module.exports = { spawn: (...words) => require('node:child_process').spawn(...words) };`,
    }));
  },
};

await mkdir(out, { recursive: true });
await build({
  absWorkingDir: root,
  entryPoints: ['main.ts', ...late].map((path) => ({ in: `src/${path}`, out: basename(path, '.ts') })),
  outdir: 'dist',
  outExtension: { '.js': '.cjs' },
  bundle: true,
  format: 'cjs',
  platform: 'node',
  target: 'node20.19',
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  supported: { 'dynamic-import': false },
  plugins: [lateBundles, lateChildProcess],
  logLevel: 'warning',
});
await writeFile(resolve(out, 'package.json'), '{"type":"commonjs"}\n');

// The compiled form of each bundle, kept from a run of everyday commands. Old ones go first: they are told from
// new ones by little more than their length.
for (const name of await readdir(out)) if (name.endsWith('.compiled')) await rm(resolve(out, name));
const kept = spawnSync(
  process.execPath,
  [resolve(root, 'bin/keep-compiled.js'), resolve(root, 'examples/orange-cardamom')],
  {
    encoding: 'utf8',
  },
);
if (kept.status !== 0) throw new Error(`the everyday commands failed: ${kept.stderr}`);
