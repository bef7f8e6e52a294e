/** The example ledger with the files beside it that an example of a command reads. */

import { gitIn } from './git-ledger.ts';
import { exampleLedger, neckring, writeIn } from './neckring.ts';
import { ledgerOf } from './small-ledger.ts';

export async function exampleFor(command: string): Promise<string> {
  const folder = await exampleLedger();
  if (command === 'take') await writeIn(folder, 'cassis-water.yaml', await cassisWater());
  if (command === 'import') {
    await writeIn(folder, 'notes.csv', 'Date,Oil (g),Emulsifier (g),Total (g)\r\n2026-01-05,2,6,50\r\n');
    await writeIn(folder, 'notes-map.yaml', notesMap);
  }
  if (inGit.has(command)) await committed(folder);
  return folder;
}

const inGit: ReadonlySet<string> = new Set(['compare', 'history', 'git', 'merge-driver', 'diff-driver']);

/** In git, with a tag and a second branch. */
async function committed(folder: string): Promise<void> {
  const { git, commit } = gitIn(folder);
  await git('init', '-q', '-b', 'main', '.');
  await commit('begin');
  await git('tag', 'v1');
  await git('branch', 'cassis');
}

const notesMap = `Date: made
Oil (g): stages.emulsion.sweet orange oil in g
Emulsifier (g): stages.emulsion.polysorbate 80 in g
Total (g): stages.emulsion.water in g, made up
`;

/** A recipe of somebody else's ledger. */
async function cassisWater(): Promise<string> {
  const theirs = await ledgerOf({
    'ingredients.yaml':
      'ingredients:\n  cassis drops:\n    contains:\n      cassis thiol: 2 ppm\n      propylene glycol: rest\n    drop: 0.020 g\n',
    'formulas/cassis-water.yaml':
      'formula: cassis water\nstages:\n  drink:\n    - cassis drops: 10 drops\n    - water: to 1 L\n',
  });
  return (await neckring(['give', 'cassis water', '--as', 'yaml'], { folder: theirs })).out;
}
