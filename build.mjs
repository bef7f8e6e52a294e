// Builds what bin/neckring.js starts: CommonJS bundles, which start sooner than modules. Each module that the
// source loads with `await import(…)` becomes a bundle of its own, and what several bundles use becomes one that
// they share, so that no command loads what it does not use and nothing is loaded twice.
import { spawnSync } from 'node:child_process';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import { build, transform } from 'esbuild';

const root = import.meta.dirname;
const out = resolve(root, 'dist');

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

const shape = { platform: 'node', target: 'node20.19', minifySyntax: true, minifyWhitespace: true };
const { outputFiles } = await build({
  ...shape,
  absWorkingDir: root,
  entryPoints: ['src/main.ts'],
  outdir: out,
  bundle: true,
  splitting: true,
  format: 'esm',
  legalComments: 'none',
  plugins: [lateChildProcess],
  logLevel: 'warning',
  write: false,
});

// Only modules can be split into shared parts, so each part is made CommonJS afterwards.
await rm(out, { recursive: true, force: true });
await mkdir(out);
for (const { path, text } of outputFiles) {
  const { code } = await transform(text, { ...shape, format: 'cjs', supported: { 'dynamic-import': false } });
  const named = code.replace(/require\("(\.\/[^"]+)\.js"\)/g, 'require("$1.cjs")');
  await writeFile(resolve(out, `${basename(path, '.js')}.cjs`), named);
}
await writeFile(resolve(out, 'package.json'), '{"type":"commonjs"}\n');

// The compiled form of each bundle, kept from a run of everyday commands.
const kept = spawnSync(
  process.execPath,
  [resolve(root, 'bin/keep-compiled.js'), resolve(root, 'examples/orange-cardamom')],
  {
    encoding: 'utf8',
  },
);
if (kept.status !== 0) throw new Error(`the everyday commands failed: ${kept.stderr}`);
