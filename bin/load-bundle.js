// Loads the parts of the program from dist: parts that are mostly needed together lie in one pack. With each pack
// goes the compiled form of it that was kept when it was built, where this Node can use it: compiling takes a third
// of the time of a short command. Another version of Node compiles anew.
const { closeSync, openSync, readFileSync, readSync, writeFileSync } = require('node:fs');
const { Script } = require('node:vm');

const dist = `${__dirname}/../dist`;
const parts = new Map();
const packs = new Map();
let packOf;

/** One space for all that is read: memory that was touched before is quicker. */
const space = Buffer.allocUnsafeSlow(1 << 20);

/** A file's bytes, good until the next is read; undefined where there is none. */
function bytesOf(name) {
  try {
    const file = openSync(`${dist}/${name}`);
    const length = readSync(file, space);
    closeSync(file);
    return length < space.length ? space.subarray(0, length) : readFileSync(`${dist}/${name}`);
  } catch {
    return undefined;
  }
}

/** The text of a pack; it is ASCII. */
function textOf(name) {
  const bytes = bytesOf(name);
  if (!bytes) throw new Error(`dist/${name} is missing: build anew with node build.mjs`);
  return bytes.latin1Slice();
}

/** The parts of a pack, each a function that has not run yet. */
function openPack(name) {
  const known = packs.get(name);
  if (known) return known.functions;
  const script = new Script(textOf(name), { filename: name, cachedData: bytesOf(`${name}.compiled`) });
  const functions = script.runInThisContext();
  packs.set(name, { functions, script });
  return functions;
}

function load(name) {
  const known = parts.get(name);
  if (known) return known.exports;
  packOf ??= JSON.parse(bytesOf('packs.json')?.latin1Slice() ?? '{}');
  const module = { exports: {} };
  parts.set(name, module);
  const requireBeside = (request) => (request.startsWith('./') ? load(request.slice(2)) : require(request));
  openPack(packOf[name] ?? name)[name](module.exports, requireBeside, module);
  return module.exports;
}

/** Keeps the compiled form of what has been loaded and run so far. */
function keep() {
  for (const [name, { script }] of packs)
    writeFileSync(`${dist}/${name}.compiled`, script.createCachedData());
}

/** The names of the parts that were loaded since the last time; they are loaded afresh after it. */
function takeLoaded() {
  const names = [...parts.keys()];
  parts.clear();
  return names;
}

module.exports = { load, keep, takeLoaded };
