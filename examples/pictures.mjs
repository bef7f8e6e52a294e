// Makes the pictures of the README anew from the example ledger, with a headless Chromium of this machine:
//
//   node build.mjs && node examples/pictures.mjs

import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const browser = process.env.CHROMIUM ?? 'chromium';
const scratch = mkdtempSync(join(tmpdir(), 'neckring-pictures-'));

/** Which section of which page, and the size of the window in CSS pixels. */
const pictures = [
  { file: 'board.png', of: 'orange ladder', ids: ['header', '#board'], width: 860, height: 1010 },
  { file: 'break.png', of: 'orange ladder', ids: ['#chance', '#map'], width: 1000, height: 895 },
];

function run(program, words, folder) {
  const { status, stderr } = spawnSync(program, words, { cwd: folder, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program} ${words.join(' ')}: ${stderr}`);
}

try {
  const ledger = join(scratch, 'orange-cardamom');
  mkdirSync(join(here, 'pictures'), { recursive: true });
  cpSync(join(here, 'orange-cardamom'), ledger, { recursive: true });
  for (const { file, of, ids, width, height } of pictures) {
    run(process.execPath, [join(here, '../bin/neckring.js'), 'report', of, '--html', 'page.html'], ledger);
    const page = join(ledger, 'page.html');
    // Only these parts of the page are taken.
    const kept = ids.map((id) => `:not(${id})`).join('');
    const hidden = `nav, footer, dl.pairs, header${kept}, section${kept} { display: none !important; } body { padding: 1.6rem 1.8rem !important; } section:first-of-type, header + nav + main section { border-top: 0; }`;
    writeFileSync(page, readFileSync(page, 'utf8').replace('</style>', `${hidden}\n</style>`));
    run(
      browser,
      [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--hide-scrollbars',
        `--user-data-dir=${join(scratch, 'profile')}`,
        `--window-size=${width},${height}`,
        `--screenshot=${join(here, 'pictures', file)}`,
        pathToFileURL(page).href,
      ],
      here,
    );
  }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
