// Builds what bin/neckring.js starts: CommonJS bundles, which start sooner than modules. Each module that the
// source loads with `await import(…)` becomes a bundle of its own, and what several bundles use becomes one that
// they share, so that no command loads what it does not use and nothing is loaded twice.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, resolve } from 'node:path';
import { build, transform } from 'esbuild';

const root = import.meta.dirname;
const out = resolve(root, 'dist');

/**
 * Parts of Node that are loaded at the first call, as most commands that could call them do not: the option parser asks
 * for the starting of programs and never does it, and few answers are marked.
 */
const late = {
  child_process: { of: /commander/, names: ['spawn'] },
  crypto: { of: /\.ts$/, names: ['createHash', 'randomBytes'] },
};

const lateBuiltIns = {
  name: 'late-built-ins',
  setup(builder) {
    builder.onResolve({ filter: /^(node:)?(child_process|crypto)$/ }, ({ path, importer }) => {
      const name = path.replace('node:', '');
      return late[name].of.test(importer) ? { path: name, namespace: 'late' } : undefined;
    });
    builder.onLoad({ filter: /.*/, namespace: 'late' }, ({ path }) => ({
      contents: late[path].names
        .map((name) => `exports.${name} = (...words) => require('node:${path}').${name}(...words);`)
        .join('\n'),
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

/** Modules that are worked out here: what they give out stands in their place as JSON. */
const workedOut = /\/kept-(?:ingredients|sources|list)\.ts$/;

/** What is loaded with `await import(…)` is not asked for there. */
const lateImports = {
  name: 'late-imports',
  setup(builder) {
    builder.onResolve({ filter: /^\./ }, ({ kind, path }) =>
      kind === 'dynamic-import' ? { path, external: true } : undefined,
    );
  },
};

const workedOutModules = {
  name: 'worked-out-modules',
  setup(builder) {
    builder.onLoad({ filter: workedOut }, async ({ path }) => {
      const plugins = [lateImports];
      const made = await build({ ...common, entryPoints: [path], format: 'cjs', write: false, plugins });
      const module = { exports: {} };
      new Function('module', 'require', made.outputFiles[0].text)(module, createRequire(path));
      const lines = Object.entries(module.exports).map(
        ([name, value]) => `export const ${name} = JSON.parse(${JSON.stringify(asciiJson(value))});`,
      );
      return { contents: lines.join('\n'), loader: 'js' };
    });
  },
};

const asciiJson = (value) =>
  JSON.stringify(value).replace(
    /[^ -~]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
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
  plugins: [lateBuiltIns, deferredModules, workedOutModules],
  write: false,
});

/** Packs are read as ASCII; patterns and templates come with their other signs as they are. */
const ascii = (code) =>
  code.replace(/[^\0-\x7f]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** A part is a function of its own in the text of its pack. */
const packText = (parts) =>
  `({${parts.map(({ name, code }) => `"${name}":function(exports,require,module){${ascii(code)}\n}`).join(',')}})`;

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
  const ran = spawnSync(process.execPath, words, {
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe', 'pipe'],
  });
  if (ran.status !== 0) throw new Error(`the everyday commands failed: ${ran.stderr}`);
  return ran.output[3];
}

/** What opening a pack costs a command, as much as taking up so many bytes of text more. */
const openingBytes = 12_000;

const costOf = ({ users, bytes }) => users.size * (openingBytes + bytes);

const joined = (one, other) => ({
  users: new Set([...one.users, ...other.users]),
  bytes: one.bytes + other.bytes,
  parts: [...one.parts, ...other.parts],
});

/** The two packs that the everyday commands are best served with as one; undefined where no two are. */
function bestPair(packs) {
  let best = { saved: 0 };
  for (const [at, one] of packs.entries()) {
    for (const other of packs.slice(at + 1)) {
      const pack = joined(one, other);
      const saved = costOf(one) + costOf(other) - costOf(pack);
      if (saved > best.saved) best = { saved, one, other, pack };
    }
  }
  return best.pack && best;
}

/** The parts that everyday commands load, in packs: few to open, and little in them that is not used. */
function packsOf(traced) {
  const usersOf = (name) => traced.flatMap((names, at) => (names.includes(name) ? [at] : []));
  let packs = parts
    .map((part) => ({ users: new Set(usersOf(part.name)), bytes: part.code.length, parts: [part] }))
    .filter(({ users }) => users.size > 0);
  for (let pair = bestPair(packs); pair; pair = bestPair(packs)) {
    const { one, other, pack } = pair;
    packs = [...packs.filter((each) => each !== one && each !== other), pack];
  }
  return packs;
}

const packOf = {};
for (const [at, pack] of packsOf(JSON.parse(runEveryday('trace'))).entries()) {
  if (pack.parts.length === 1) continue;
  const file = `pack-${at + 1}.cjs`;
  await writeFile(resolve(out, file), packText(pack.parts));
  for (const { name } of pack.parts) {
    packOf[name] = file;
    await rm(resolve(out, name));
  }
}
await writeFile(resolve(out, 'packs.json'), JSON.stringify(packOf));

// The compiled form of each pack, kept from a run of the same commands.
runEveryday();
