/** A later reading or look at a batch. */

import type { Io } from '../io.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { addObservation } from '../ledger/observations-edit.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { readTime } from '../ledger/times.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { readLookTime } from './look-time.ts';
import { factOf, optionProblem } from './observation-facts.ts';
import { observedFacts } from './observation-options.ts';
import { madeWords, type OpenedBatch } from './open-batch.ts';
import type { Here } from './open-ledger.ts';

export async function observeBatch(call: Call, io: Io, here: Here, batch: OpenedBatch): Promise<Outcome> {
  const { card, file } = batch;
  const seen = await withArithmetic(() => seenOf(call, io, here, batch));
  let line = 0;
  let state = 'unchanged';
  let diff: readonly string[] = [];
  const make = async () => {
    const before = textNow(here.root, file, io);
    const added = addObservation(file, before, {
      facts: seen.facts,
      atEpoch: seen.atEpoch,
      timeOf: (text) => {
        const time = readTime(text, here.settings.zone);
        return time.ok ? time.value.epochMilliseconds : undefined;
      },
      firstSample: card.samples[0]?.name ?? '',
    });
    if (!added.ok) throw new ProblemError(added.problems);
    line = added.line;
    state = added.state ?? 'added';
    diff = changedLines(before, added.text);
    return state === 'unchanged' ? [] : [{ path: file, before, after: added.text }];
  };
  const isDry = call.flags.has('dry-run');
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  return {
    exitCode: 0,
    page: diff.length > 0 ? [{ kind: 'lines', lines: diff }] : [],
    json: envelope({ schema: 'observe@1', given: { batch: card.name }, found: { file, line, state } }),
    notes: [
      state === 'unchanged'
        ? `${file}:${line} says so already; nothing written`
        : `${isDry ? 'would write' : 'wrote'} ${file}:${line}`,
    ],
  };
}

function seenOf(call: Call, io: Io, here: Here, batch: OpenedBatch) {
  const { card } = batch;
  const problems: Problem[] = [];
  const at = readLookTime(optionValue(call, 'at'), here, io);
  if (!at.ok) problems.push(optionProblem('at', at.fault));
  const facts: Fact[] = [];
  for (const fact of observedFacts) {
    if (fact.name === 'photo' && call.values['photo'])
      fail(
        'not-of-batches',
        '--photo is taken of trials only',
        'write `photo: PATH` into the file of the batch',
      );
    const texts = call.values[fact.name] ?? [];
    if (texts.length > 0) facts.push(...factOf(fact, texts, problems));
  }
  if (problems.length > 0) throw new ProblemError(problems);
  if (!at.ok) throw new Error('a fault was seen and not told');
  if (facts.length === 0)
    fail('missing', 'nothing is said about it', 'give --look clear, --note "…", or a reading');
  const made = card.made;
  if (made && at.value.epochMilliseconds < made.epochMilliseconds)
    fail(
      'before-made',
      `${at.value.written} is before ${madeWords(batch)} was made, ${made.written}`,
      'give the time with --at',
    );
  return {
    atEpoch: at.value.epochMilliseconds,
    facts: [['at', at.value.written] as const, ...sampleFacts(call, batch), ...facts],
  };
}

function sampleFacts(call: Call, batch: OpenedBatch): readonly Fact[] {
  const { samples } = batch.card;
  const typed = optionValue(call, 'sample');
  const names = samples.map(({ name }) => name);
  if (typed === undefined) {
    if (samples.length <= 1) return [];
    return fail(
      'which-sample',
      `${madeWords(batch)} has ${samples.length} samples: ${names.join(', ')}`,
      `say which with --sample "${names[0]}"`,
    );
  }
  const sample = samples.find(({ name }) => isSameName(name, typed));
  if (!sample)
    return fail(
      'unknown-sample',
      `--sample: ${madeWords(batch)} has no sample "${typed}"`,
      `its samples are ${names.join(', ')}`,
    );
  return samples.length > 1 ? [['sample', sample.name]] : [];
}
