import type { Io } from '../io.ts';
import type { BenchCard, SampleCard } from '../ledger/cards.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { addObservation } from '../ledger/observations-edit.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { readTime } from '../ledger/times.ts';
import { readTypedTime } from '../ledger/typed-time.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { factOf, optionProblem } from './observation-facts.ts';
import { observedFacts } from './observation-options.ts';
import { type Here, type OpenedTrial, openHere, openTrialNamed } from './open-ledger.ts';

/** What was seen, ready to be written. */
export interface Seen {
  readonly facts: readonly Fact[];
  readonly atEpoch: number;
}

export async function runObserve(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const trial = await openTrialNamed(here, io, call.words[0] ?? '');
  const seen = await withArithmetic(() => seenIn(call, trial.card.samples, here, io));
  const written = await writeSeen({ call, io, here, trial, seen });
  return {
    exitCode: 0,
    page: written.diff.length > 0 ? [{ kind: 'lines', lines: written.diff }] : [],
    json: envelope({
      schema: 'observe@1',
      given: { trial: trial.card.number },
      found: { file: trial.file, line: written.line, state: written.state },
    }),
    problems: warnings(call, here.bench),
    notes: [written.note],
  };
}

interface Writing {
  readonly call: Call;
  readonly io: Io;
  readonly here: Here;
  readonly trial: OpenedTrial;
  readonly seen: Seen;
}

async function writeSeen({ call, io, here, trial, seen }: Writing) {
  const isDry = call.flags.has('dry-run');
  const { file } = trial;
  let line = 0;
  let state = 'unchanged';
  let diff: readonly string[] = [];
  const make = async () => {
    const before = textNow(here.root, file, io);
    const added = addObservation(file, before, {
      ...seen,
      timeOf: (text) => timeOf(text, here),
      firstSample: trial.card.samples[0]?.name ?? '',
    });
    if (!added.ok) throw new ProblemError(added.problems);
    line = added.line;
    state = added.state ?? 'added';
    diff = changedLines(before, added.text);
    return state === 'unchanged' ? [] : [{ path: file, before, after: added.text }];
  };
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  const note =
    state === 'unchanged'
      ? `${file}:${line} says so already; nothing written`
      : isDry
        ? `would write ${file}:${line}`
        : `wrote ${file}:${line}`;
  return { line, state, diff, note };
}

function timeOf(text: string, here: Here): number | undefined {
  const time = readTime(text, here.settings.zone);
  return time.ok ? time.value.epochMilliseconds : undefined;
}

/** The facts that were typed, each read as the file would read it; every fault at once. */
function seenIn(call: Call, samples: readonly SampleCard[], here: Here, io: Io): Seen {
  const now = { epochMilliseconds: io.now(), zone: here.settings.zone };
  const typedAt = optionValue(call, 'at');
  const at = readTypedTime(typedAt ?? isoNow(io), now);
  const problems: Problem[] = at.ok ? [] : [optionProblem('at', at.fault)];
  if (at.ok && at.value.epochMilliseconds > io.now() + 60_000) {
    problems.push(
      optionProblem('at', {
        code: 'in-the-future',
        message: `${at.value.written} has not come yet`,
        hint: 'type the time of the look',
      }),
    );
  }
  const sample = sampleFact(optionValue(call, 'sample'), samples, problems);
  const facts: Fact[] = [];
  for (const fact of observedFacts) {
    const texts = call.values[fact.name] ?? [];
    if (texts.length > 0) facts.push(...factOf(fact, texts, problems));
  }
  if (problems.length > 0) throw new ProblemError(problems);
  if (!at.ok) throw new Error('a time was neither read nor refused');
  if (facts.length === 0)
    return fail(
      'missing',
      'nothing is said about it',
      'give --look clear, --note "…", or a reading; see neckring observe --help',
    );
  return { facts: [['at', at.value.written], ...sample, ...facts], atEpoch: at.value.epochMilliseconds };
}

const isoNow = (io: Io): string => new Date(Math.floor(io.now() / 60_000) * 60_000).toISOString();

function sampleFact(
  typed: string | undefined,
  samples: readonly SampleCard[],
  problems: Problem[],
): readonly Fact[] {
  const names = samples.map((sample) => sample.name);
  if (typed === undefined) {
    if (samples.length > 1) {
      problems.push({
        code: 'which-sample',
        severity: 'error',
        message: `there are ${samples.length} samples: ${names.join(', ')}`,
        hint: `say which with --sample "${names[0]}"`,
      });
    }
    return [];
  }
  const sample = samples.find((one) => isSameName(one.name, typed));
  if (sample) return samples.length === 1 ? [] : [['sample', sample.name]];
  const near = nearestNames(typed, names, 2);
  problems.push({
    code: 'unknown-sample',
    severity: 'error',
    message: `--sample: there is no sample "${typed}"`,
    hint: `name one of ${(near.length > 0 ? near : names).join(', ')}`,
  });
  return [];
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
