import type { Io } from '../io.ts';
import type { BenchCard } from '../ledger/cards.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { type Fault, fail, type Problem } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { problemOf, type Said } from './look-entry.ts';
import { readLookLine, readTrialWords } from './look-line.ts';
import { mannerOf } from './look-manner.ts';
import { roundOutcome } from './look-outcome.ts';
import { walkDue } from './look-walk.ts';
import { writeRound } from './look-write.ts';
import { observeBatch } from './observe-batch.ts';
import { findBatch } from './open-batch.ts';
import { openHere } from './open-ledger.ts';

/** `look 14-17 clear 18 bluish`; alone on a terminal, the samples that are due. */
export async function runLook(call: Call, io: Io): Promise<Outcome> {
  if (call.words.length > 0) {
    const ofBatch = await lookAtBatch(call, io);
    if (ofBatch) return ofBatch;
    const { round, faults } = readLookLine(call.words);
    return recordRound(call, io, round, faults);
  }
  if (!io.canAsk || call.flags.has('json'))
    return fail(
      'usage',
      'look needs trials and what was seen',
      'type neckring look 14-17 clear 18 bluish; alone on a terminal it asks for what is due',
    );
  const here = await openHere(io);
  return walkDue({ call, io, here, warnings: viewedWarnings(call, here.bench) });
}

/** `look 2026-03-12-1 clear`: of a batch; undefined where the first word names none. */
async function lookAtBatch(call: Call, io: Io): Promise<Outcome | undefined> {
  const [name = '', ...looks] = call.words;
  if (/^\d+(?:[-,]\d+)*$/.test(name) && !/^\d{4}-\d{2}-\d{2}/.test(name)) return undefined;
  if (looks.length === 0) return undefined;
  const here = await openHere(io);
  const batch = await findBatch(here, io, name);
  return batch && observeBatch({ ...call, values: { ...call.values, look: looks } }, io, here, batch);
}

/** `same 14`: the last look once more. */
export async function runSame(call: Call, io: Io): Promise<Outcome> {
  const { numbers, faults } = readTrialWords(call.words);
  const said = numbers.map((trial) => ({ trial, seen: 'same' as const }));
  return recordRound(call, io, said, faults);
}

/** `end 14 --why spilled`: looking stops here. */
export async function runEnd(call: Call, io: Io): Promise<Outcome> {
  const { numbers, faults } = readTrialWords(call.words);
  const ended = optionValue(call, 'why')?.trim() ?? '';
  const missing: readonly Fault[] =
    ended === ''
      ? [
          {
            code: 'missing',
            message: '--why is needed',
            hint: 'say --why spilled, drunk, mould or "thrown away"',
          },
        ]
      : [];
  const said = numbers.map((trial) => ({ trial, ended }));
  return recordRound(call, io, said, [...faults, ...missing]);
}

async function recordRound(
  call: Call,
  io: Io,
  said: readonly Said[],
  faults: readonly Fault[],
): Promise<Outcome> {
  const here = await openHere(io);
  const { manner, problems } = mannerOf(call, here, io);
  const written = await writeRound({
    ...{ call, io, here, manner, said },
    problems: [...faults.map(problemOf), ...problems],
  });
  return roundOutcome({ call, written, warnings: viewedWarnings(call, here.bench) });
}

/** A way of viewing that the bench does not list is written and mentioned. */
function viewedWarnings(call: Call, { viewed }: BenchCard): readonly Problem[] {
  const typed = optionValue(call, 'viewed');
  if (typed === undefined || viewed.length < 2 || viewed.some((known) => isSameName(known, typed))) return [];
  return [
    {
      code: 'not-on-list',
      severity: 'warning',
      message: `"${typed}" is not a way of viewing on the bench's list`,
      hint: `they are ${viewed.join('; ')}; add it to bench.yaml if it is meant`,
    },
  ];
}
