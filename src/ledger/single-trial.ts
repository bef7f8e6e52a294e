/** One trial by its number, without reading the others. */

import type { TrialCard } from './cards.ts';
import { filesIn, type LedgerPlace, openBench, settingsOf } from './folder.ts';
import { type Opened, openFile } from './open-file.ts';
import type { ReadPort } from './port.ts';
import { readTrialCard } from './read-trial.ts';
import { trialsUsedIn } from './used-loop.ts';

export interface TrialFile {
  readonly number: number;
  /** From the root of the ledger, with `/`. */
  readonly file: string;
}

/** The number that the name of a trial's file begins with, zeros apart. */
export function numberInName(file: string): number | undefined {
  const digits = /^0*(\d{1,9})(?!\d)/u.exec(file.slice(file.lastIndexOf('/') + 1))?.[1];
  return digits === undefined ? undefined : Number(digits);
}

/** The trials of a ledger by the names of their files; none is read. */
export function trialFiles(root: string, port: ReadPort): readonly TrialFile[] {
  return filesIn(root, 'trials', port).flatMap((file) => {
    const number = numberInName(file);
    return number === undefined ? [] : [{ number, file }];
  });
}

/** A trial by its number; undefined where no file is named so. */
export async function readTrial(
  root: string,
  port: ReadPort,
  number: number,
): Promise<Opened<TrialCard> | undefined> {
  const bench = await openBench(root, port);
  return openTrial({ root, port, settings: settingsOf(bench.card) }, number);
}

/** The same where the bench has been read. */
export async function openTrial(place: LedgerPlace, number: number): Promise<Opened<TrialCard> | undefined> {
  const { root, port, settings } = place;
  const found = trialFiles(root, port).find((file) => file.number === number);
  if (!found) return undefined;
  return openFile(port, { root, file: found.file, read: (document) => readTrialCard(document, settings) });
}

/** A card, and the trials whose stages it uses, directly or through others; each is read once. */
export async function openTrialsUsedBy(
  place: LedgerPlace,
  card: Pick<TrialCard, 'stages'>,
): Promise<ReadonlyMap<number, Opened<TrialCard>>> {
  const found = new Map<number, Opened<TrialCard>>();
  const wanted = [...trialsUsedIn(card.stages)];
  for (let number = wanted.pop(); number !== undefined; number = wanted.pop()) {
    if (found.has(number)) continue;
    const opened = await openTrial(place, number);
    if (!opened) continue;
    found.set(number, opened);
    if (opened.card) wanted.push(...trialsUsedIn(opened.card.stages));
  }
  return found;
}
