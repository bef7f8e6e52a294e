/** All trials for the commands that only ask when they were made and how they look. */

import { buildMark } from '../build-mark.ts';
import type { Io } from '../io.ts';
import type { BenchCard } from '../ledger/cards.ts';
import { openBench, settingsOfRead } from '../ledger/folder.ts';
import type { Opened } from '../ledger/open-file.ts';
import { diskKeepPort } from '../ledger/watch/keep-port.ts';
import {
  type KeptWanted,
  type MadeToWatch,
  madeToWatch,
  type TrialLines,
  trialLines,
} from '../ledger/watch/kept-trials.ts';
import { readPort, requireRoot } from './open-ledger.ts';

/** The trials of the ledger around the working folder, each in a line, mostly without reading them again. */
export async function openLines(io: Io): Promise<TrialLines> {
  const { wanted, errors } = await keptWanted(io);
  const lines = await trialLines(wanted);
  return { ...lines, errors: lines.errors + errors };
}

/** Trials and batches that are still looked at, mostly without reading them again. */
export async function openWatched(io: Io): Promise<MadeToWatch> {
  const { wanted, errors } = await keptWanted(io);
  const made = await madeToWatch(wanted);
  return { ...made, errors: made.errors + errors };
}

async function keptWanted(io: Io): Promise<{ readonly wanted: KeptWanted; readonly errors: number }> {
  const root = await requireRoot(io);
  const port = readPort(io);
  const opened = await openBench(root, port);
  const place = { root, port, settings: settingsOfRead(opened) };
  const keep = buildMark === undefined ? undefined : diskKeepPort(root, String(process.pid));
  const wanted = { place, keep, of: keptFor(opened), bench: opened.card };
  return { wanted, errors: opened.problems.filter(({ severity }) => severity === 'error').length };
}

/** The program, what it runs on, the zones that the computer knows, and the bench. */
const keptFor = ({ document }: Opened<BenchCard>): string =>
  [buildMark, process.version, process.versions['tz'], document.source.text].join(' ');
