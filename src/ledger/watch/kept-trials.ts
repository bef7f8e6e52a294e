/**
 * All trials with what looking asks of them, without reading again what did not change.
 *
 * What was read is kept in `.neckring/trials.json`: for each file its size, its times of change and its
 * number on the disk, as they were before it was read. A file counts as unchanged only where all of them are the
 * same and its last change lay well before that reading, by the disk's own clock; so a second edit in the same tick of
 * the clock, a clock set back, a checkout or a copy is never taken for what was there before. The whole is thrown away
 * where the bench (its time zone tells what a time means) or the program is another.
 */

import type { TrialCard } from '../cards.ts';
import type { LedgerPlace } from '../folder.ts';
import { filesIn, openOne } from '../folder.ts';
import { type DayLook, newestLook } from '../look-strip.ts';
import { readTrialCard } from '../read-trial.ts';
import type { KeepPort } from './keep-port.ts';
import { openPacked, type PackedTrial, packTrial } from './packed-card.ts';

/** Below this reading is quicker. */
const fewestKept = 100;
/** So many may have changed before the kept ones are written anew. */
const mostChanged = 16;

interface KeptFile {
  /** What the disk says of the file: size, times, number. */
  readonly mark: string;
  readonly errors: number;
  readonly head?: TrialHead;
  /** The packed trial as text: of thousands of trials most commands look into few. */
  readonly trial?: string;
}

/** A trial in a line. */
export interface TrialHead {
  readonly number: number;
  readonly title: string;
  /** As written. */
  readonly made: string;
  readonly series: string;
  /** The newest look of each sample. */
  readonly newest: readonly { readonly sample: string; readonly look?: DayLook }[];
}

export interface TrialToLookAt extends TrialHead {
  readonly file: string;
  /** With titles, times, samples and looks: no items, readings, results or places. */
  readonly card: TrialCard;
}

interface Kept {
  readonly of: string;
  readonly files: Readonly<Record<string, KeptFile>>;
}

export interface TrialsToLookAt {
  /** By number. */
  readonly trials: readonly TrialToLookAt[];
  /** How many errors stand in their files. */
  readonly errors: number;
}

export interface LooksWanted {
  readonly place: LedgerPlace;
  /** Absent where nothing may be kept. */
  readonly keep: KeepPort | undefined;
  /** What the reading depends on besides the files: the program and the bench. */
  readonly of: string;
}

/**
 * Input     where the ledger is; the port to what is kept
 * Output    the trials with what looking asks of them
 */
export async function trialsToLookAt({ place, keep, of }: LooksWanted): Promise<TrialsToLookAt> {
  const files = filesIn(place.root, 'trials', place.port);
  const before = keep && files.length >= fewestKept ? (keptBefore(keep.load(), of) ?? {}) : undefined;
  const next: Record<string, KeptFile> = Object.create(null);
  const trials: TrialToLookAt[] = [];
  let [errors, changed] = [0, 0];
  let tick: number | undefined;
  for (const file of files) {
    const known = before?.[file];
    let kept = known && known.mark === keep?.stateOf(file)?.mark ? known : undefined;
    if (kept) next[file] = kept;
    else {
      changed += 1;
      if (before) tick ??= keep?.tick();
      const state = before && keep?.stateOf(file);
      kept = { mark: state?.mark ?? '', ...(await readAnew(place, file)) };
      // A file that changed a moment ago may change again within the same tick: it is read again the next time.
      if (state && tick !== undefined && state.changedAt < tick) next[file] = kept;
    }
    errors += kept.errors;
    if (kept.head) trials.push(trialToLookAt(file, kept.head, kept.trial ?? ''));
  }
  if (before && changed > mostChanged) keep?.save(JSON.stringify({ of, files: next } satisfies Kept));
  return { trials: trials.sort((left, right) => left.number - right.number), errors };
}

function keptBefore(text: string | undefined, of: string): Readonly<Record<string, KeptFile>> | undefined {
  if (text === undefined) return undefined;
  try {
    const kept: Kept = JSON.parse(text);
    return kept.of === of && typeof kept.files === 'object' ? kept.files : undefined;
  } catch {
    return undefined;
  }
}

async function readAnew(place: LedgerPlace, file: string): Promise<Omit<KeptFile, 'mark'>> {
  const opened = await openOne(place, file, readTrialCard);
  if (!opened) return { errors: 0 };
  const errors = opened.problems.filter(({ severity }) => severity === 'error').length;
  const { card } = opened;
  return card ? { errors, head: headOf(card), trial: JSON.stringify(packTrial(card)) } : { errors };
}

const headOf = (card: TrialCard): TrialHead => ({
  number: card.number,
  title: card.title ?? '',
  made: card.made?.written ?? '',
  series: card.series?.text ?? '',
  newest: card.samples.map((sample) => {
    const look = newestLook(card, sample);
    return { sample: sample.name, ...(look ? { look } : {}) };
  }),
});

function trialToLookAt(file: string, head: TrialHead, packed: string): TrialToLookAt {
  let card: TrialCard | undefined;
  return {
    ...head,
    file,
    get card() {
      if (!card) {
        const opened: PackedTrial = JSON.parse(packed);
        card = openPacked(file, opened);
      }
      return card;
    },
  };
}
