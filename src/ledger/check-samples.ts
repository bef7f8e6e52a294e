/** Checks of samples and observations: what they point at, and when. */

import type { Problem } from '../problem.ts';
import { normaliseName } from '../reference/name.ts';
import type { MadeCard, ObservationCard, SampleCard } from './cards.ts';
import { type Check, type CheckContext, found, madeIn } from './check.ts';
import { offer } from './nearest.ts';
import { isSameName } from './stage-name.ts';

export const checkSamples: Check = (context) =>
  madeIn(context.ledger).flatMap((card) => [
    ...card.samples.flatMap((sample, index) => sampleProblems(context, card, sample, index)),
    ...card.observations.flatMap((observation) => pointerProblems(context, card, observation)),
  ]);

function sampleProblems(
  context: CheckContext,
  card: MadeCard,
  sample: SampleCard,
  index: number,
): readonly Problem[] {
  if (sample.isImplied) return [];
  const problems: Problem[] = [];
  const twin = card.samples.slice(0, index).find(({ name }) => isSameName(name, sample.name));
  if (twin) {
    const message = `"${sample.name}" is the same name as the sample "${twin.name}"`;
    const finding = { code: 'same-name', message, hint: 'give it another name' };
    problems.push(found(context, card, finding, sample.nameSpan));
  }
  const names = card.stages.map(({ name }) => name);
  if (names.length > 0 && !names.some((name) => isSameName(name, sample.of))) {
    const message = `"${sample.of}" is not a stage of this file`;
    const finding = { code: 'unknown-stage', message, hint: offer(sample.of, names) };
    problems.push(found(context, card, finding, sample.ofSpan));
  }
  return problems;
}

function pointerProblems(
  context: CheckContext,
  card: MadeCard,
  { sample, headSpan }: ObservationCard,
): readonly Problem[] {
  const names = card.samples.map(({ name }) => name);
  if (sample) {
    if (names.some((name) => isSameName(name, sample.text))) return [];
    const message = `"${sample.text}" is not a sample of this file`;
    return [
      found(context, card, { code: 'unknown-sample', message, hint: offer(sample.text, names) }, sample),
    ];
  }
  if (names.length < 2) return [];
  const finding = {
    code: 'which-sample',
    severity: 'warning',
    message: `this does not say which sample was looked at, so it counts for "${names[0]}"`,
    hint: `add ${names.map((name) => `"sample: ${name}"`).join(' or ')}`,
  } as const;
  return [found(context, card, finding, headSpan)];
}

/** A minute of grace for clocks that differ. */
const grace = 60_000;
const day = 86_400_000;

/** Observations before the make, or later than now. */
export const checkTimes: Check = (context) =>
  madeIn(context.ledger).flatMap((card) =>
    card.observations.flatMap((observation) => timeProblems(context, card, observation)),
  );

function timeProblems(
  context: CheckContext,
  card: MadeCard,
  { at, sample }: ObservationCard,
): readonly Problem[] {
  if (at.epochMilliseconds > context.ledger.now + grace) {
    const message = `${at.written} is in the future`;
    return [found(context, card, { code: 'in-future', message, hint: 'write the time of the look' }, at)];
  }
  const made = madeOf(card, sample?.text);
  if (!made || at.epochMilliseconds >= made.epochMilliseconds) return [];
  const message = `${at.written} is before it was made, ${made.written}`;
  return [found(context, card, { code: 'before-made', message, hint: 'put one of the two times right' }, at)];
}

/** When what a sample holds was made. */
function madeOf(card: MadeCard, sampleName: string | undefined): MadeCard['made'] {
  const sample =
    card.samples.find(({ name }) => sampleName !== undefined && isSameName(name, sampleName)) ??
    card.samples[0];
  const stage = card.stages.find(({ name }) => sample && isSameName(name, sample.of));
  return stage?.made ?? card.made;
}

/** A make that is later than now is only asked about: a plan may carry its day. */
export const checkMadeTimes: Check = (context) =>
  madeIn(context.ledger).flatMap((card) => {
    const { made } = card;
    if (!made || made.epochMilliseconds <= context.ledger.now + (made.isDay ? day : grace)) return [];
    const message = `${made.written} is in the future`;
    const finding = {
      code: 'in-future',
      severity: 'warning',
      message,
      hint: 'write when it was made',
    } as const;
    return [found(context, card, finding, made)];
  });

/** Words that are not on the bench's own lists, where it has them. */
export const checkWords: Check = (context) => {
  const { bench } = context.ledger;
  if (!bench) return [];
  const unknown = wordChecker(context);
  return madeIn(context.ledger).flatMap((card) => [
    ...card.samples.flatMap(({ cover, coverSpan, nameSpan }) =>
      cover === undefined ? [] : unknown(card, cover, bench.covers, 'cover', coverSpan ?? nameSpan),
    ),
    ...card.observations.flatMap(({ taste, viewed }) => [
      ...taste.flatMap(({ word, wordSpan }) => unknown(card, word, bench.tastes, 'taste', wordSpan)),
      ...(viewed && bench.viewed.length > 1
        ? unknown(card, viewed.text, bench.viewed, 'way of viewing', viewed)
        : []),
    ]),
  ]);
};

function wordChecker(context: CheckContext) {
  return (
    card: MadeCard,
    typed: string,
    words: readonly string[],
    what: string,
    span: { readonly start: number; readonly end: number },
  ): readonly Problem[] => {
    if (words.length === 0 || words.some((word) => normaliseName(word) === normaliseName(typed))) return [];
    const message = `"${typed}" is not a ${what} on the bench's list`;
    const hint = `${offer(typed, words)}, or add it to bench.yaml`;
    return [found(context, card, { code: 'not-on-list', severity: 'warning', message, hint }, span)];
  };
}
