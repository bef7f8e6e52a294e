/** Which sample is meant, and whether it can still be looked at. */

import type { ObservationCard, SampleCard, TrialCard } from '../ledger/cards.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { endOf, madeOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { type Parsed, type Problem, parsed, refused } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import type { OpenedTrial } from './open-ledger.ts';

/** The sample that was named; one alone needs no name. */
export function chooseSample(card: TrialCard, typed: string | undefined): Parsed<SampleCard> {
  const { samples, number } = card;
  const names = samples.map(({ name }) => name);
  const [first] = samples;
  if (!first) return refused('no-sample', `trial ${number} has no sample`, 'add one under `samples`');
  if (typed === undefined) {
    if (samples.length === 1) return parsed(first);
    const message = `trial ${number} has ${samples.length} samples: ${names.join(', ')}`;
    return refused('which-sample', message, `say which with --sample "${first.name}"`);
  }
  const sample = samples.find(({ name }) => isSameName(name, typed));
  if (sample) return parsed(sample);
  const near = nearestNames(typed, names, 2);
  const hint =
    near.length > 0
      ? `did you mean ${near.map((name) => `"${name}"`).join(' or ')}?`
      : `its ${names.length === 1 ? 'sample is' : 'samples are'} ${names.join(', ')}`;
  return refused('unknown-sample', `--sample: trial ${number} has no sample "${typed}"`, hint);
}

/** A sample is named in the file where there are several. */
export const sampleFacts = (card: TrialCard, { name }: SampleCard): readonly Fact[] =>
  card.samples.length > 1 ? [['sample', name]] : [];

export const sampleText = (card: TrialCard, { name }: SampleCard): string =>
  `the ${name} of trial ${card.number}`;

/** Nothing can have been seen of a sample after it was spilled or drunk. */
export function endProblem(
  { card, document }: OpenedTrial,
  sample: SampleCard,
  atEpoch: number,
): Problem | undefined {
  const end = endOf(card, sample);
  if (!end || atEpoch < end.at.epochMilliseconds) return undefined;
  const { file, line } = document.source.placeAt(end);
  return {
    code: 'ended',
    severity: 'error',
    message: `${sampleText(card, sample)} ended ${whenAndWhy(end)}`,
    hint: `give the time with --at if it was seen before; if it goes on, take "ended" out of ${file}:${line}`,
  };
}

const whenAndWhy = ({ at, ended }: ObservationCard): string => `${at.written} (${ended})`;

export function beforeMadeProblem(
  card: TrialCard,
  sample: SampleCard,
  at: { readonly epochMilliseconds: number; readonly written: string },
): Problem | undefined {
  const made = madeOf(card, sample);
  if (!made || at.epochMilliseconds >= made.epochMilliseconds) return undefined;
  return {
    code: 'before-made',
    severity: 'error',
    message: `${at.written} is before ${sampleText(card, sample)} was made, ${made.written}`,
    hint: `give the time of the look with --at, or put "made" right in ${card.file}`,
  };
}
