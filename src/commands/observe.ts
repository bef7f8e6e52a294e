import type { Io } from '../io.ts';
import type { BenchCard, SampleCard, TrialCard } from '../ledger/cards.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { addObservation } from '../ledger/observations-edit.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { readTime } from '../ledger/times.ts';
import type { TypedTime } from '../ledger/typed-time.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { measuredBlocks, measuredJson } from './drink-measured.ts';
import { hazeNow, isHazeReading } from './haze-beside.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { problemOf } from './look-entry.ts';
import { beforeMadeProblem, chooseSample, endProblem, sampleFacts } from './look-sample.ts';
import { readLookTime } from './look-time.ts';
import { isReading, measuredNow } from './measured-of.ts';
import { factOf, optionProblem } from './observation-facts.ts';
import { observedFacts } from './observation-options.ts';
import { observeBatch } from './observe-batch.ts';
import { isBatch, openMade } from './open-batch.ts';
import { type Here, type OpenedTrial, openHere } from './open-ledger.ts';
import { findPhoto, type Photo, photoChange, photoNote } from './photo.ts';
import { mayAsk } from './questions.ts';

/** What was seen, ready to be written. */
interface Seen {
  readonly at: TypedTime;
  readonly sample: SampleCard;
  readonly facts: readonly Fact[];
}

export async function runObserve(call: Call, io: Io): Promise<Outcome> {
  const isAlone = Object.keys(call.values).length === 0;
  if (isAlone && mayAsk(call, io))
    return (await import('./observe-walk.ts')).walkObserve(call, io, writeObserved);
  if (call.words.length === 0)
    return fail(
      'usage',
      'observe needs TRIAL',
      'type neckring observe 14 --look clear; alone on a terminal it asks',
    );
  return writeObserved(call, io);
}

async function writeObserved(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const made = await openMade(here, io, call.words[0] ?? '');
  if (isBatch(made)) return observeBatch(call, io, here, made);
  const trial = made;
  const seen = await withArithmetic(() => seenIn(call, trial.card, here, io));
  const photo = await photoOf({ call, io, here, trial, seen });
  const written = await writeSeen({ call, io, here, trial, seen, photo });
  const taken = written.photo;
  const hasReading = seen.facts.some(([key]) => isReading(key)) && !call.flags.has('dry-run');
  const measured = hasReading ? await measuredNow(here, io, trial.file) : undefined;
  const hasHaze = seen.facts.some(([key]) => isHazeReading(key)) && !call.flags.has('dry-run');
  const haze = hasHaze ? await hazeNow(here, io, trial.file) : undefined;
  return {
    exitCode: 0,
    page: [
      ...(written.diff.length > 0 ? [{ kind: 'lines', lines: written.diff } as const] : []),
      ...measuredBlocks(measured),
      ...(haze?.blocks ?? []),
    ],
    json: envelope({
      schema: 'observe@1',
      given: { trial: trial.card.number },
      found: {
        ...{ file: trial.file, line: written.line, state: written.state },
        ...measuredJson(measured),
        ...(haze ? { haze: haze.json } : {}),
        ...(taken ? { photo: taken.path, photoSize: { value: taken.sizeBytes, unit: 'bytes' } } : {}),
      },
    }),
    problems: warnings(call, here.bench),
    notes: [...(taken ? [photoNote(taken, call.flags.has('dry-run'))] : []), written.note],
  };
}

async function photoOf({ call, io, here, trial, seen }: Writing): Promise<Photo | undefined> {
  const typed = optionValue(call, 'photo')?.trim();
  if (typed === undefined) return undefined;
  const { at, sample } = seen;
  return findPhoto({ typed, here, io, trial: trial.card.number, sample: sample.name, at: at.written });
}

interface Writing {
  readonly call: Call;
  readonly io: Io;
  readonly here: Here;
  readonly trial: OpenedTrial;
  readonly seen: Seen;
  readonly photo?: Photo | undefined;
}

async function writeSeen({ call, io, here, trial, seen, photo: found }: Writing) {
  const isDry = call.flags.has('dry-run');
  let photo = found;
  const { file } = trial;
  let line = 0;
  let state = 'unchanged';
  let diff: readonly string[] = [];
  const make = async () => {
    const before = textNow(here.root, file, io);
    const copy = photo && (await photoChange(photo));
    photo = copy?.photo;
    const added = addObservation(file, before, {
      facts: seen.facts.map((fact) => (fact[0] === 'photo' && photo ? ['photo', photo.path] : fact)),
      atEpoch: seen.at.epochMilliseconds,
      timeOf: (text) => timeOf(text, here),
      firstSample: trial.card.samples[0]?.name ?? '',
    });
    if (!added.ok) throw new ProblemError(added.problems);
    line = added.line;
    state = added.state ?? 'added';
    const refusal = state === 'added' ? refusalOf(trial, seen) : undefined;
    if (refusal) throw new ProblemError([refusal]);
    diff = changedLines(before, added.text);
    // The picture first: what is seen never names one that is not there.
    const seenNow = state === 'unchanged' ? [] : [{ path: file, before, after: added.text }];
    return [...(copy?.changes ?? []), ...seenNow];
  };
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  const note =
    state === 'unchanged'
      ? `${file}:${line} says so already; nothing written`
      : isDry
        ? `would write ${file}:${line}`
        : `wrote ${file}:${line}`;
  return { line, state, diff, note, photo };
}

/** A look, or a second ending, of what has ended; anything before it was made. */
function refusalOf(trial: OpenedTrial, { at, sample, facts }: Seen): Problem | undefined {
  const isLook = facts.some(([key]) => key === 'look' || key === 'ended');
  return (
    beforeMadeProblem(trial.card, sample, at) ??
    (isLook ? endProblem(trial, sample, at.epochMilliseconds) : undefined)
  );
}

function timeOf(text: string, here: Here): number | undefined {
  const time = readTime(text, here.settings.zone);
  return time.ok ? time.value.epochMilliseconds : undefined;
}

/** The facts that were typed, each read as the file would read it; every fault at once. */
function seenIn(call: Call, card: TrialCard, here: Here, io: Io): Seen {
  const at = readLookTime(optionValue(call, 'at'), here, io);
  const sample = chooseSample(card, optionValue(call, 'sample'));
  const problems: Problem[] = at.ok ? [] : [optionProblem('at', at.fault)];
  if (!sample.ok) problems.push(problemOf(sample.fault));
  const facts: Fact[] = [];
  for (const fact of observedFacts) {
    const texts = call.values[fact.name] ?? [];
    if (texts.length > 0) facts.push(...factOf(fact, texts, problems));
  }
  if (problems.length > 0) throw new ProblemError(problems);
  if (!at.ok || !sample.ok) throw new Error('a fault was seen and not told');
  if (facts.length === 0)
    return fail(
      'missing',
      'nothing is said about it',
      'give --look clear, --note "…", or a reading; see neckring observe --help',
    );
  return {
    at: at.value,
    sample: sample.value,
    facts: [['at', at.value.written], ...sampleFacts(card, sample.value), ...facts],
  };
}

/** Words that the bench does not list are written and mentioned. */
function warnings(call: Call, bench: BenchCard): readonly Problem[] {
  const words = (call.values['taste'] ?? [])
    .flatMap((text) => text.split(','))
    .map((text) => text.split(/[=:]/)[0]?.trim() ?? '');
  return words
    .filter((word) => bench.tastes.length > 0 && !bench.tastes.some((known) => isSameName(known, word)))
    .map((word) => ({
      code: 'unknown-taste',
      severity: 'warning',
      message: `"${word}" is not among the bench's tastes`,
      hint: `they are ${bench.tastes.join(', ')}; add it to bench.yaml if it is meant`,
    }));
}
