// Runs everyday commands that only read, then keeps the compiled form of the bundles that they loaded.
const { tmpdir } = require('node:os');
const { keep, load } = require('./load-bundle.js');

const [, , ledger] = process.argv;
const everyday = [
  [tmpdir(), 'acid', '--acid', '40 g citric acid', '--drink', '8 L'],
  [
    tmpdir(),
    'hlb',
    '--target',
    '12',
    '--emulsifier',
    '1 g polysorbate 80',
    '--emulsifier',
    '1 g sorbitan oleate',
  ],
  [tmpdir(), '--help'],
  [ledger, 'check'],
  [ledger, 'list'],
  [ledger, 'show', '17'],
  [ledger, 'reckon', '17', '--dry-run'],
  [ledger, 'observe', '13', '--look', 'clear', '--dry-run'],
  [ledger, 'look', '11-13', 'clear', '14', 'hazy', '--dry-run'],
  [ledger, 'series', 'orange ladder'],
  [ledger, 'next', 'orange ladder'],
];

async function run() {
  const program = process.argv.slice(0, 2);
  process.stdout.write = () => true;
  process.stderr.write = () => true;
  for (const [folder, ...words] of everyday) {
    process.chdir(folder);
    process.argv = [...program, ...words];
    await load('main.cjs').main();
  }
  keep();
  process.exitCode = 0;
}

run();
