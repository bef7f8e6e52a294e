/** `why`: what the look of a sample can mean, from what is known of it. */

import { causesOf } from '../calc/causes/causes-of.ts';
import { parseNumber } from '../calc/number.ts';
import type { Io } from '../io.ts';
import type { ObservationCard, SampleCard, TrialCard } from '../ledger/cards.ts';
import { dayOf } from '../ledger/look-strip.ts';
import { outcomeOf, watchRules } from '../ledger/outcome.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { fail, isProblemError, ProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { bookOf } from './ledger-book.ts';
import { problemOf } from './look-entry.ts';
import { chooseSample } from './look-sample.ts';
import { resolveDesign } from './open-formula.ts';
import { type Here, openHere, openTrialNamed } from './open-ledger.ts';
import { openRungs, openSeriesNamed } from './series-open.ts';
import { hazeRows } from './why-compared.ts';
import { knownOf } from './why-facts.ts';
import { ownMeter } from './why-meter.ts';
import { whyJson, whyPage } from './why-page.ts';

export async function runWhy(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const trial = await openTrialNamed(here, io, call.words[0] ?? '');
  const { card } = trial;
  const day = dayTyped(optionValue(call, 'at'));
  const series = await seriesOf(here, io, card);
  const { sample, observation } = lookOf({ card, here, series, named: optionValue(call, 'sample'), day });
  const book = await bookOf(here);
  const { mixture, warnings } = await resolveDesign(here, trial, book);
  const meter = await ownMeter(here, book);
  const known = knownOf({ here, book, card, sample, observation, mixture, series, meter });
  const seenOn = dayOf(card, sample, observation.at.epochMilliseconds);
  const explained = {
    trial: card.number,
    sample: sample.name,
    day: seenOn,
    askedDay: day !== undefined && seenOn !== undefined && Math.floor(day) > seenOn ? day : undefined,
    known,
    causes: causesOf(known),
    rows: hazeRows({ card, mixture, bench: here.bench, meter }).filter((row) => row.sample === sample.name),
  };
  return {
    exitCode: 0,
    page: whyPage(explained),
    json: whyJson(explained),
    problems: warnings,
    explained: async () => (await import('./explain-why.ts')).whyExplanation(explained),
  };
}

/** The series of the trial with its control and blank; a series that can't be read tells nothing here. */
async function seriesOf(here: Here, io: Io, { series }: TrialCard): Promise<SeriesRungs | undefined> {
  if (!series) return undefined;
  try {
    const { card } = await openSeriesNamed(here, io, series.text);
    return await openRungs(here, card);
  } catch (thrown) {
    if (isProblemError(thrown)) return undefined;
    throw thrown;
  }
}

function dayTyped(typed: string | undefined): number | undefined {
  if (typed === undefined) return undefined;
  const day = parseNumber(
    typed
      .trim()
      .replace(/^(?:day|d)\s*/iu, '')
      .replace(/\s*d$/iu, ''),
  );
  return day.ok
    ? day.value
    : fail(day.fault.code, `--at: ${day.fault.message}`, 'give the day, such as --at 4');
}

interface LookFrom {
  readonly card: TrialCard;
  readonly here: Here;
  readonly series: SeriesRungs | undefined;
  readonly named: string | undefined;
  readonly day: number | undefined;
}

/**
 * The sample and the look that are asked about: of the day named the last look up to it; else the look at which a
 * sample failed, else its newest.
 */
function lookOf(from: LookFrom): { readonly sample: SampleCard; readonly observation: ObservationCard } {
  const { card, named, day } = from;
  const chosen = named === undefined && card.samples.length > 1 ? undefined : chooseSample(card, named);
  if (chosen && !chosen.ok) throw new ProblemError([problemOf(chosen.fault)]);
  const samples = chosen ? [chosen.value] : card.samples;
  const looked = samples.flatMap((sample) => {
    const seen = observationsOf(card, sample).filter(({ looks }) => looks.length > 0);
    const until = seen.filter((one) => {
      const at = dayOf(card, sample, one.at.epochMilliseconds);
      return day === undefined || at === undefined || at <= day;
    });
    const last = until.at(-1);
    return last ? [{ sample, last, failed: failedAt(from, sample) }] : [];
  });
  const worst = day === undefined ? looked.find(({ failed }) => failed) : undefined;
  if (worst?.failed) return { sample: worst.sample, observation: worst.failed };
  const unclear = looked.find(({ last }) => last.looks.some((look) => look !== 'clear'));
  const first = unclear ?? looked[0];
  if (first) return { sample: first.sample, observation: first.last };
  return fail(
    'no-look',
    `nothing was seen yet of ${named === undefined ? `trial ${card.number}` : `"${named}"`}${day === undefined ? '' : ` up to day ${day}`}`,
    `write down what is seen first: neckring observe ${card.number} --look hazy`,
  );
}

function failedAt({ card, here, series }: LookFrom, sample: SampleCard): ObservationCard | undefined {
  const rules = watchRules({ sample, bench: here.bench, series: series?.series });
  return outcomeOf({ card, sample, rules }).firstFail;
}
