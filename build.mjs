// Builds what bin/neckring.js starts: CommonJS bundles, which start sooner than modules. Each module that the
// source loads with `await import(…)` becomes a bundle of its own, and what several bundles use becomes one that
// they share, so that no command loads what it does not use and nothing is loaded twice.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
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

/** A mark that changes with any file of the source: what is kept of a ledger is kept for one build. */
async function sourceMark() {
  const hash = createHash('sha256');
  const names = await readdir(resolve(root, 'src'), { recursive: true });
  for (const name of names.filter((one) => one.endsWith('.ts')).sort())
    hash.update(name).update(await readFile(resolve(root, 'src', name)));
  return hash.digest('hex').slice(0, 16);
}

/**
 * Modules of `src/ledger` that are imported as others are and loaded when the one function that they give is first
 * called: most files need neither the YAML library nor zod. They have their own copies of the small modules they use.
 */
const deferred = { 'library-document': 'libraryDocument', 'schema-misfits': 'misfitsOf' };

const deferredModules = {
  name: 'deferred-modules',
  setup(builder) {
    builder.onResolve({ filter: /^\.\/[a-z-]+\.ts$/ }, ({ path }) => {
      const name = basename(path, '.ts');
      return name in deferred ? { path: `./${name}.js`, external: true } : undefined;
    });
  },
};

/** `require("./x.cjs")` of a deferred module becomes an object that loads it at the first call. */
const loadLater = (code) =>
  code.replace(/require\("\.\/([a-z-]+)\.cjs"\)/g, (whole, name) =>
    name in deferred ? `{get ${deferred[name]}(){return ${whole}.${deferred[name]}}}` : whole,
  );

const shape = { platform: 'node', target: 'node20.19', minifySyntax: true, minifyWhitespace: true };
const common = {
  ...shape,
  absWorkingDir: root,
  outdir: out,
  bundle: true,
  legalComments: 'none',
  define: { BUILD_MARK: JSON.stringify(await sourceMark()) },
  logLevel: 'warning',
};
const { outputFiles } = await build({
  ...common,
  entryPoints: ['src/main.ts'],
  splitting: true,
  format: 'esm',
  plugins: [lateChildProcess, deferredModules],
  write: false,
});

/** A part is a function of its own in the text of its pack. */
const packText = (parts) =>
  `({${parts.map(({ name, code }) => `"${name}":function(exports,require,module){${code}\n}`).join(',')}})`;

// Only modules can be split into shared parts, so each part is made CommonJS afterwards.
const parts = [];
for (const { path, text } of outputFiles) {
  const { code } = await transform(text, { ...shape, format: 'cjs', supported: { 'dynamic-import': false } });
  const named = code.replace(/require\("(\.\/[^"]+)\.js"\)/g, 'require("$1.cjs")');
  parts.push({ name: `${basename(path, '.js')}.cjs`, code: loadLater(named) });
}
const later = await build({
  ...common,
  entryPoints: Object.keys(deferred).map((name) => `src/ledger/${name}.ts`),
  format: 'cjs',
  write: false,
});
for (const { path, text } of later.outputFiles)
  parts.push({ name: `${basename(path, '.js')}.cjs`, code: text });

await rm(out, { recursive: true, force: true });
await mkdir(out);
for (const part of parts) await writeFile(resolve(out, part.name), packText([part]));
await writeFile(resolve(out, 'package.json'), '{"type":"commonjs"}\n');

/** Runs the everyday commands on the example ledger. */
function runEveryday(...mode) {
  const words = [resolve(root, 'bin/keep-compiled.js'), resolve(root, 'examples/orange-cardamom'), ...mode];
  const ran = spawnSync(process.execPath, words, { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(`the everyday commands failed: ${ran.stderr}`);
  return ran.stdout;
}

// Parts that the same everyday commands load go into one pack; those that none of them loads stay on their own.
const traced = JSON.parse(runEveryday('trace'));
const byUse = new Map();
for (const part of parts) {
  const use = traced.flatMap((names, at) => (names.includes(part.name) ? [at] : [])).join(' ');
  if (use !== '') byUse.set(use, [...(byUse.get(use) ?? []), part]);
}
const packOf = {};
let number = 0;
for (const together of byUse.values()) {
  if (together.length === 1) continue;
  number += 1;
  const pack = `pack-${number}.cjs`;
  await writeFile(resolve(out, pack), packText(together));
  for (const { name } of together) {
    packOf[name] = pack;
    await rm(resolve(out, name));
  }
}
await writeFile(resolve(out, 'packs.json'), JSON.stringify(packOf));

// The compiled form of each pack, kept from a run of the same commands.
runEveryday();
