/** The daily round on a terminal: every sample that is due, shuffled, and nothing of what is in it. */

import { shuffled } from '../calc/shuffled.ts';
import type { Io } from '../io.ts';
import { looks, type SampleCard, type TrialCard } from '../ledger/cards.ts';
import { openFolder } from '../ledger/folder.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { type LookDue, looksDue } from '../ledger/schedule.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { visible } from '../output/visible.ts';
import { wrapped } from '../output/wrap.ts';
import { isProblemError, type Problem, ProblemError } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import type { Seen } from './look-line.ts';
import { mannerOf } from './look-manner.ts';
import { roundOutcome } from './look-outcome.ts';
import { readLooks } from './look-words.ts';
import { type WrittenLook, writeRound } from './look-write.ts';
import type { Here } from './open-ledger.ts';

interface Walk {
  readonly call: Call;
  readonly io: Io;
  readonly here: Here;
  readonly warnings: readonly Problem[];
}

interface Waiting {
  readonly card: TrialCard;
  readonly due: LookDue;
}

export async function walkDue(walk: Walk): Promise<Outcome> {
  const { io, here } = walk;
  const { problems } = mannerOf(walk.call, here, io);
  if (problems.length > 0) throw new ProblemError(problems);
  const waiting = await samplesWaiting(walk);
  const due = shuffled(
    waiting.filter((one) => one.due.isDue),
    io.random,
  );
  if (due.length === 0) return outcome(walk, [], nothingDue(waiting, here));
  io.out(introduction(due.length, io));
  const written: WrittenLook[] = [];
  for (const [index, one] of due.entries()) {
    const answer = await askLook(walk, one, `${index + 1} of ${due.length}`);
    if (answer === 'left') break;
    written.push(...answer);
  }
  return outcome(walk, written, `${written.length} of ${due.length} written down`);
}

const outcome = (walk: Walk, written: readonly WrittenLook[], text: string): Outcome => {
  const { page, ...rest } = roundOutcome({ ...walk, written });
  return { ...rest, page: [...page, { kind: 'text', text }] };
};

function introduction(count: number, io: Io): string {
  const paragraphs = [
    `${count === 1 ? 'One sample is' : `${count} samples are`} due. Type what you see: ${looks.join(', ')}; several with commas, "same" for the last look, a note after a semicolon.`,
    'Enter skips a sample, Ctrl-C leaves; what was typed is kept.',
  ];
  return `${paragraphs.flatMap((one) => wrapped(one, io.columns)).join('\n')}\n\n`;
}

/** Every sample that is still looked at; files that can't be read are left out. */
async function samplesWaiting({ call, io, here }: Walk): Promise<readonly Waiting[]> {
  const [wanted] = call.values['sample'] ?? [];
  const trials = (await openFolder(here, 'trials', readTrialCard)).flatMap(({ card }) => card ?? []);
  const series = (await openFolder(here, 'series', readSeriesCard)).flatMap(({ card }) => card ?? []);
  return trials
    .filter((card) => card.isSound)
    .flatMap((card) => {
      const own = series.find(({ name }) => card.series && isSameName(name, card.series.text));
      return looksDue({ card, bench: here.bench, series: own, now: io.now() })
        .filter(({ sample }) => wanted === undefined || isSameName(sample.name, wanted))
        .map((due) => ({ card, due }));
    });
}

function nothingDue(waiting: readonly Waiting[], here: Here): string {
  const [next] = [...waiting].sort((left, right) => left.due.atEpoch - right.due.atEpoch);
  if (!next) return 'Nothing is due, and no sample is being watched.';
  const when = writtenTime(next.due.atEpoch, here.settings.zone).slice(0, 16).replace('T', ' ');
  return `Nothing is due. The next look is trial ${next.card.number}, ${visible(next.due.sample.name)}, ${when}.`;
}

/** Asks until the answer can be written, the sample is skipped, or the person leaves. */
async function askLook(
  walk: Walk,
  { card, due }: Waiting,
  place: string,
): Promise<readonly WrittenLook[] | 'left'> {
  const { call, io, here } = walk;
  for (;;) {
    const answer = await io.ask(`${card.number} ${placeText(due.sample)} (${place}): `);
    if (answer === undefined) {
      io.out('\n');
      return 'left';
    }
    const [typed = '', ...note] = answer.split(';').map((part) => part.trim());
    if (typed === '' && note.length === 0) return [];
    const seen = seenIn(typed, io);
    if (!seen) continue;
    try {
      const { manner } = mannerOf(call, here, io);
      const noteText = note.join('; ');
      const one = { trial: String(card.number), sample: due.sample.name, seen };
      const said = noteText === '' ? one : { ...one, note: noteText };
      return await writeRound({ call, io, here, manner, said: [said] });
    } catch (thrown) {
      if (!isProblemError(thrown)) throw thrown;
      tell(thrown.problems, io);
    }
  }
}

function seenIn(typed: string, io: Io): Seen | undefined {
  if (typed.toLowerCase() === 'same') return 'same';
  const { looks: words, faults } = readLooks([typed]);
  if (faults.length === 0) return words;
  tell(faults, io);
  return undefined;
}

function tell(faults: readonly { readonly message: string; readonly hint: string }[], io: Io): void {
  for (const { message, hint } of faults) io.out(`  ${visible(message)}; ${visible(hint)}\n`);
}

/** Where it stands, and not a word of what is in it. */
const placeText = (sample: SampleCard): string =>
  visible([sample.name, sample.in, sample.at && `at ${sample.at.written}`].filter(Boolean).join(', '));
