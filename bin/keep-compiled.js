// Runs everyday commands that only read. With `trace` it writes which parts each of them loaded to descriptor 3, as JSON;
// without, it keeps the compiled form of the packs that they loaded.
const { writeSync } = require('node:fs');
const { tmpdir } = require('node:os');
const { keep, load, takeLoaded } = require('./load-bundle.js');

const [, , ledger, mode] = process.argv;
const anywhere = [
  'acid --acid "40 g citric acid" --drink "8 L"',
  'adjust --acidity "4.5 g/L" --ph 3',
  'brix --brix 65',
  'carbonation --temperature 4 C --pressure 2 bar',
  'clarity "60 mg/L sweet orange oil" "100 g/L sucrose" --droplet 40 nm --glass 65 mm',
  'coat "4 % sweet orange oil" --batch 50 g --droplet 100 nm',
  'dose --oil "60 mg/L" --emulsion 4% --ratio 1:3 --in 6 L',
  'drops --target 0.5 ppb --in 6 L --stock 10 ppm --drop 0.021 g',
  'emulsifier --batch "50 g" --oil 4% --ratio 1:2',
  'hlb --target 12 --emulsifier "1 g polysorbate 80" --emulsifier "1 g sorbitan oleate"',
  'hlb-of --ethylene-oxide 78.4',
  'lasts sucrose --ph 2.8 --temperature 22 C --after 90 d',
  'ph "4.5 g/L citric acid"',
  'ring "60 mg/L sweet orange oil" "100 g/L sucrose" --droplet 500 nm --height 80 mm',
  'titrate --base "0.1 mol/L" --used 7.80 mL --sample 10 mL',
  'water-activity "65 % sucrose" "35 % water"',
  '--help',
];
const inLedger = [
  'check',
  'compare 13 14',
  'complete-words bash "neckring show "',
  'drink 17',
  'due',
  'list',
  'look 11-13 clear 14 hazy --dry-run',
  'next "orange ladder"',
  'observe 13 --look clear --dry-run',
  'reckon 17 --dry-run',
  'series "orange ladder"',
  'show 17',
];

const wordsOf = (line) => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare);

async function run() {
  const traced = [];
  for (const [folder, lines] of [
    [tmpdir(), anywhere],
    [ledger, inLedger],
  ]) {
    process.chdir(folder);
    for (const line of lines) {
      process.argv.splice(2, Number.POSITIVE_INFINITY, ...wordsOf(line));
      await load('main.cjs').main();
      if (mode === 'trace') traced.push(takeLoaded());
    }
  }
  if (mode === 'trace') writeSync(3, JSON.stringify(traced));
  else keep();
  process.exitCode = 0;
}

run();
