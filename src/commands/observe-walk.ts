/** `observe` alone on a terminal: which trial, which sample, what is seen, and whether to write it. */

import type { Io } from '../io.ts';
import { looks, type SampleCard } from '../ledger/cards.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { type Fault, type Parsed, type Problem, parsed, refused } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { withArithmetic } from './calculate.ts';
import type { Call, Outcome, Run } from './command.ts';
import { dueLooks, watchedSamples } from './due-samples.ts';
import { nameOf, ranges } from './due-words.ts';
import { readLooks } from './look-words.ts';
import { factOf } from './observation-facts.ts';
import { type ObservedFact, observedFacts } from './observation-options.ts';
import { isBatch, madeWords, type OpenedMade, openMade } from './open-batch.ts';
import { type Here, openHere } from './open-ledger.ts';
import { asked, askedLines, askedYes, nothingWritten, say } from './questions.ts';

type Values = Readonly<Record<string, readonly string[]>>;

export async function walkObserve(call: Call, io: Io, write: Run): Promise<Outcome> {
  const here = await openHere(io);
  const filled = await filledCall(call, io, here);
  if (!filled) return nothingWritten('observe@1');
  const planned = await write({ ...filled, flags: new Set([...filled.flags, 'dry-run']) }, io);
  if (call.flags.has('dry-run')) return planned;
  const lines = planned.page.flatMap((block) => (block.kind === 'lines' ? block.lines : []));
  io.out('\n');
  for (const line of lines) say(io, line.replace(/^\+ ?/u, '  '));
  io.out('\n');
  return (await askedYes(io, 'Write this?')) ? write(filled, io) : nothingWritten('observe@1');
}

/** The command line that says the same as the answers; undefined where the person left. */
async function filledCall(call: Call, io: Io, here: Here): Promise<Call | undefined> {
  say(io, 'Write down what is seen or measured. Ctrl-C leaves and writes nothing.');
  const [named] = call.words;
  const made = named === undefined ? await askedMade(io, here) : await openMade(here, io, named);
  if (!made) return undefined;
  const sample = await askedSample(made, io);
  const seen = sample && (await askedFacts(io));
  if (!seen) return undefined;
  const word = named ?? (isBatch(made) ? made.file : String(made.card.number));
  return { ...call, words: [word], values: { ...sample, ...seen } };
}

/** Those that are due are named by their numbers; what is in them would lead the eye. */
async function askedMade(io: Io, here: Here): Promise<OpenedMade | undefined> {
  const { watched } = await watchedSamples(io, here);
  const due = dueLooks(watched, io.now()).map(({ watched: one }) => one);
  const trials = due.flatMap(({ card }) => (card.kind === 'trial' ? [card.number] : []));
  const batches = due.flatMap((one) => (one.card.kind === 'trial' ? [] : [nameOf(one)]));
  const names = [...(trials.length > 0 ? [ranges(trials).replaceAll(',', ', ')] : []), ...new Set(batches)];
  if (names.length > 0) say(io, `A look is due at ${names.join(', ')}.`);
  return asked({
    io,
    text: 'Which trial or batch? ',
    read: async (typed): Promise<Parsed<OpenedMade>> =>
      typed === ''
        ? refused('empty', 'nothing stands there', 'type a number, such as 14')
        : parsed(await openMade(here, io, typed)),
  });
}

async function askedSample(made: OpenedMade, io: Io): Promise<Values | undefined> {
  const samples: readonly SampleCard[] = made.card.samples;
  if (samples.length < 2) return {};
  const names = samples.map(({ name }) => name);
  say(io, `The samples of ${madeWords(made)} are ${names.join(', ')}.`);
  return asked({
    io,
    text: 'Which sample? ',
    read: (typed) => {
      const sample = names.find((name) => isSameName(name, typed));
      if (sample !== undefined) return parsed({ sample: [sample] });
      const [near] = nearestNames(typed, names, 1);
      const hint = near === undefined ? `type one of ${names.join(', ')}` : `did you mean ${near}?`;
      return refused('unknown-sample', `there is no sample "${typed}"`, hint);
    },
  });
}

/** At least one thing is said. */
async function askedFacts(io: Io): Promise<Values | undefined> {
  for (;;) {
    say(io, `Looks are ${looks.join(', ')}; several with commas.`);
    const look = await asked({ io, text: 'What do you see? Enter for no look: ', read: readLook });
    if (look === undefined) return undefined;
    say(io, 'Readings, one a line, such as ph 3.05, turbidity 3.2 NTU or taste soapy=2. Enter alone ends.');
    const readings = await askedLines({ io, text: '  reading: ', read: readReading });
    const note = readings && (await asked({ io, text: 'A note? Enter for none: ', read: parsed<string> }));
    if (!readings || note === undefined) return undefined;
    const values = gathered([
      ...look.map((one) => ['look', one] as const),
      ...readings,
      ...(note === '' ? [] : [['note', note] as const]),
    ]);
    if (Object.keys(values).length > 0) return values;
    say(io, 'Nothing is said about it yet; type a look, a reading or a note, or leave with Ctrl-C.');
  }
}

function readLook(typed: string): Parsed<readonly string[]> {
  if (typed === '') return parsed([]);
  const [fault] = readLooks([typed]).faults;
  return fault ? { ok: false, fault } : parsed([typed]);
}

type Reading = readonly [name: string, text: string];

/** `ph 3.05`, `head life 40 s`, `ph: 3.05`: the name of a reading, then what it says. */
async function readReading(typed: string): Promise<Parsed<Reading>> {
  const known = readable.filter(({ name }) => startsWithName(typed, wordsOf(name)));
  const fact = [...known].sort((one, other) => other.name.length - one.name.length)[0];
  if (!fact) return { ok: false, fault: notAReading(typed) };
  const text = typed.slice(fact.name.length).replace(/^[\s:=]+/u, '');
  const problems: Problem[] = [];
  await withArithmetic(() => {
    problems.length = 0;
    factOf(fact, [text], problems);
  });
  const [problem] = problems;
  if (!problem) return parsed([fact.name, text]);
  const message = problem.message.replace(/^--[a-z0-9-]+: /u, '');
  return refused(problem.code, `${wordsOf(fact.name)}: ${message}`, problem.hint);
}

const readable = observedFacts.filter(({ name }) => !['look', 'note', 'photo'].includes(name));
const wordsOf = (name: ObservedFact['name']): string => name.replaceAll('-', ' ');
const startsWithName = (typed: string, name: string): boolean =>
  typed.toLowerCase().startsWith(name) && !/^[a-z0-9]/iu.test(typed.slice(name.length));

function notAReading(typed: string): Fault {
  const names = readable.map(({ name }) => wordsOf(name));
  const [word = ''] = typed.split(/[\s:=]/u);
  const [near] = nearestNames(word, names, 1);
  const hint = near === undefined ? `begin with one of ${names.join(', ')}` : `did you mean ${near}?`;
  return { code: 'unknown-word', message: `"${word}" is not a reading`, hint };
}

/** Several scores of taste stand under one name. */
function gathered(said: readonly Reading[]): Values {
  const values: Record<string, readonly string[]> = {};
  for (const [name, text] of said) values[name] = [...(values[name] ?? []), text];
  return values;
}
