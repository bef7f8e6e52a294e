/** The series that a ladder is written into: a new one, or one that is there and varies the same. */

import type { Kept } from '../calc/rungs/ratio-masses.ts';
import type { Io } from '../io.ts';
import type { SeriesCard } from '../ledger/cards.ts';
import { filesIn, openFolder } from '../ledger/folder.ts';
import type { Variation } from '../ledger/ladder-vary.ts';
import { readSeriesCard } from '../ledger/read-series.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { isOilPerEmulsifier, readVaried, type Varied } from '../ledger/varied.ts';
import { fail } from '../problem.ts';
import { nearestNames, normaliseName } from '../reference/name.ts';
import { type Call, optionValue } from './command.ts';
import type { LadderStart } from './ladder-plan.ts';
import type { SeriesToWrite } from './ladder-write.ts';
import { openSeriesNamed } from './series-open.ts';

export interface SeriesAsked {
  readonly call: Call;
  readonly start: LadderStart;
  readonly varied: Varied;
  readonly kept: Kept;
  readonly variation: Variation;
}

export async function seriesToWrite(asked: SeriesAsked, io: Io): Promise<SeriesToWrite> {
  const { call, start, varied } = asked;
  const typed = optionValue(call, 'series')?.trim();
  const there = await openFolder(start.here, 'series', readSeriesCard);
  const names = there.flatMap(({ card }) => (card ? [card.name] : []));
  const card =
    typed !== undefined && names.some((name) => isSameName(name, typed))
      ? (await openSeriesNamed(start.here, io, typed)).card
      : undefined;
  if (card) mayAdd(card, asked);
  if (typed === '') fail('usage', '--series is empty', 'write its name, such as "orange ladder"');
  const question = optionValue(call, 'question')?.trim();
  if (card && question !== undefined)
    fail('usage', `${card.file} is there already`, 'leave --question out, or write it into the file');
  const name = card?.name ?? typed ?? freeName(defaultName(start, varied), names, start);
  const judge = judgeOf(asked);
  return { name, card, question, varies: varied.text, same: sameOf(asked), judge };
}

/** Refuses a series that varies something else, or that has the control or blank that is asked for. */
function mayAdd(card: SeriesCard, { call, varied }: SeriesAsked): void {
  const [there, second] = readVaried(card.varies);
  const isSame = there !== undefined && !second && isSameName(there.text, varied.text);
  if (!isSame) {
    const message = `series "${card.name}" varies ${card.varies ?? 'nothing'}, and this ladder ${varied.text}`;
    fail('other-series', message, 'give another name with --series');
  }
  if (optionValue(call, 'control') !== undefined && card.control !== undefined)
    fail(
      'control-there',
      `series "${card.name}" has a control, trial ${card.control}`,
      'leave --control out',
    );
  if (call.flags.has('blank') && card.blank !== undefined)
    fail('blank-there', `series "${card.name}" has a blank, trial ${card.blank}`, 'leave --blank out');
}

/** `sweet orange ladder`, `sweet orange, propylene glycol`: what stands before the comma of the title. */
function defaultName({ design, trial }: LadderStart, varied: Varied): string {
  const { card } = design;
  const whole = card.kind === 'formula' ? card.name : (card.title ?? `trial ${trial.number}`);
  const words = whole.split(',')[0]?.replace(/\s+/gu, ' ').trim() || `trial ${trial.number}`;
  return isOilPerEmulsifier(varied) ? `${words} ladder` : `${words}, ${varied.text}`;
}

/** A name that neither a series nor a file has. */
function freeName(name: string, names: readonly string[], { here }: LadderStart): string {
  const files = filesIn(here.root, 'series', here.port);
  const isTaken = (one: string): boolean =>
    names.some((there) => isSameName(there, one)) || files.includes(`series/${fileWords(one)}.yaml`);
  for (let count = 1; ; count += 1) {
    const tried = count === 1 ? name : `${name} ${count}`;
    if (!isTaken(tried)) return tried;
  }
}

const fileWords = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');

/** The sample that decides, where the trial names its samples. */
function judgeOf({ call, start }: SeriesAsked): string | undefined {
  const typed = optionValue(call, 'judge');
  const samples = start.trial.samples.filter(({ isImplied }) => !isImplied).map(({ name }) => name);
  if (typed === undefined) return samples[0];
  const found = samples.find((name) => isSameName(name, typed));
  if (found !== undefined) return found;
  const near = nearestNames(normaliseName(typed), samples, 2);
  return fail(
    'unknown-sample',
    `there is no sample "${typed}"`,
    samples.length === 0
      ? 'the trial names no samples, so there is one: leave --judge out'
      : `its samples are ${(near.length > 0 ? near : samples).join(', ')}`,
  );
}

/** What every beaker has alike, in the words that a series takes. */
function sameOf({ varied, kept, variation, start }: SeriesAsked): readonly string[] {
  const { stage, base, levers } = variation;
  const sides = varied.kind === 'ratio' ? { over: varied.over, under: varied.under } : undefined;
  const keptSide = sides && kept !== 'both' ? [sides[kept]] : [];
  const isOfSide = (at: number): boolean => {
    const role = base.mixture.stages[base.stageAt]?.items[at]?.role;
    return keptSide.some((side) => side === role);
  };
  const items = stage.items.flatMap(({ name }, at) =>
    at === base.restAt || levers.includes(at) || isOfSide(at) ? [] : [name],
  );
  const hasSteps = start.trial.stages.some(({ process }) => process.length > 0);
  const from = start.trial.number === 0 ? 'the formula' : `trial ${start.trial.number}`;
  const named = [
    ...keptSide,
    ...items,
    ...(kept === 'both' && sides ? [`${sides.over} and ${sides.under} together`] : []),
  ];
  return [...named, ...(hasSteps ? [`steps of ${from}`] : [])];
}
