/** All trials for the commands that only ask when they were made and how they look. */

import { buildMark } from '../build-mark.ts';
import type { Io } from '../io.ts';
import type { BenchCard } from '../ledger/cards.ts';
import { openBench, settingsOfRead } from '../ledger/folder.ts';
import { diskKeepPort } from '../ledger/watch/keep-port.ts';
import { type TrialsToLookAt, trialsToLookAt } from '../ledger/watch/kept-trials.ts';
import { readPort, requireRoot } from './open-ledger.ts';

export interface OpenedLooks extends TrialsToLookAt {
  readonly root: string;
  /** Absent where it can't be read. */
  readonly bench: BenchCard | undefined;
}

/** The trials of the ledger around the working folder, mostly without reading them again. */
export async function openLooks(io: Io): Promise<OpenedLooks> {
  const root = await requireRoot(io);
  const port = readPort(io);
  const opened = await openBench(root, port);
  const { card: bench, document, problems } = opened;
  const settings = settingsOfRead(opened);
  const keep = buildMark === undefined ? undefined : diskKeepPort(root, String(process.pid));
  const of = `${buildMark} ${document.source.text}`;
  const { trials, errors } = await trialsToLookAt({ place: { root, port, settings }, keep, of });
  const own = problems.filter(({ severity }) => severity === 'error').length;
  return { root, bench, trials, errors: errors + own };
}
