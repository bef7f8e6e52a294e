// Runs everyday commands that only read. With `trace` it prints which parts each of them loaded, as JSON; without, it
// keeps the compiled form of the packs that they loaded.
const { tmpdir } = require('node:os');
const { keep, load, takeLoaded } = require('./load-bundle.js');

const [, , ledger, mode] = process.argv;
const blend = ['--target', '12', '--emulsifier', '1 g polysorbate 80', '--emulsifier', '1 g sorbitan oleate'];
const everyday = [
  [tmpdir(), 'acid', '--acid', '40 g citric acid', '--drink', '8 L'],
  [tmpdir(), 'hlb', ...blend],
  [tmpdir(), 'emulsifier', '--batch', '50 g', '--oil', '4%', '--ratio', '1:2'],
  [tmpdir(), 'brix', '--brix', '65'],
  [tmpdir(), 'ph', '4.5 g/L citric acid'],
  [tmpdir(), '--help'],
  [tmpdir(), 'lok'],
  [ledger, 'check'],
  [ledger, 'list'],
  [ledger, 'due'],
  [ledger, 'show', '17'],
  [ledger, 'drink', '17'],
  [ledger, 'series', 'orange ladder'],
  [ledger, 'next', 'orange ladder'],
  [ledger, 'compare', '13', '14'],
  [ledger, 'reckon', '17', '--dry-run'],
  [ledger, 'observe', '13', '--look', 'clear', '--dry-run'],
  [ledger, 'look', '11-13', 'clear', '14', 'hazy', '--dry-run'],
];

async function run() {
  const program = process.argv.slice(0, 2);
  const write = process.stdout.write.bind(process.stdout);
  process.stdout.write = () => true;
  process.stderr.write = () => true;
  const traced = [];
  for (const [folder, ...words] of everyday) {
    process.chdir(folder);
    process.argv = [...program, ...words];
    await load('main.cjs').main();
    if (mode === 'trace') traced.push(takeLoaded());
  }
  if (mode === 'trace') write(JSON.stringify(traced));
  else keep();
  process.exitCode = 0;
}

run();
