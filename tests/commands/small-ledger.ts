/** Small ledgers typed out by a test. */

import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { scratchFolder } from './neckring.ts';

export const lisbonBench = 'ledger: 1\nbench:\n  time zone: Europe/Lisbon\n';

/** A ledger with these files; the bench is in Lisbon unless it is among them. */
export async function ledgerOf(files: Readonly<Record<string, string>>): Promise<string> {
  const folder = await scratchFolder();
  for (const [path, text] of Object.entries({ 'bench.yaml': lisbonBench, ...files })) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
  return folder;
}

/** One trial in `trials/1.yaml`. */
export const trialLedger = (text: string): Promise<string> => ledgerOf({ 'trials/1.yaml': text });

export const plainTrial = `trial: 1
made: 2026-03-02T10:15+00:00
stages:
  emulsion:
    - sweet orange oil: 2 g
    - polysorbate 80: 6 g
    - water: to 50 g
`;
