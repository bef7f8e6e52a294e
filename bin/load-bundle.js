// Loads the parts of the program from dist: parts that are mostly needed together lie in one pack. With each pack
// goes the compiled form of it that was kept when it was built, where this Node can use it: compiling takes a third
// of the time of a short command. Another version of Node compiles anew.
const { readFileSync, writeFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

const dist = join(__dirname, '..', 'dist');
const parts = new Map();
const packs = new Map();
let packOf;

function readPackOf() {
  try {
    return JSON.parse(readFileSync(join(dist, 'packs.json'), 'utf8'));
  } catch {
    return {};
  }
}

function kept(file) {
  try {
    return readFileSync(`${file}.compiled`);
  } catch {
    return undefined;
  }
}

/** The parts of a pack, each a function that has not run yet. */
function openPack(name) {
  const known = packs.get(name);
  if (known) return known.functions;
  const file = join(dist, name);
  const script = new Script(readFileSync(file, 'utf8'), { filename: file, cachedData: kept(file) });
  const functions = script.runInThisContext();
  packs.set(name, { functions, script, file });
  return functions;
}

function load(name) {
  const known = parts.get(name);
  if (known) return known.exports;
  packOf ??= readPackOf();
  const module = { exports: {} };
  parts.set(name, module);
  const requireBeside = (request) => (request.startsWith('./') ? load(request.slice(2)) : require(request));
  openPack(packOf[name] ?? name)[name](module.exports, requireBeside, module);
  return module.exports;
}

/** Keeps the compiled form of what has been loaded and run so far. */
function keep() {
  for (const { script, file } of packs.values()) writeFileSync(`${file}.compiled`, script.createCachedData());
}

/** The names of the parts that were loaded since the last time; they are loaded afresh after it. */
function takeLoaded() {
  const names = [...parts.keys()];
  parts.clear();
  return names;
}

module.exports = { load, keep, takeLoaded };
