/** `next`: the beakers of a series to make next, chosen to tell most of where its break lies. */

import type { Book } from '../calc/book.ts';
import { type NextBeakers, nextBeakers } from '../calc/ladder/next-beakers.ts';
import type { Io } from '../io.ts';
import { problemAt } from '../ledger/places.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { entryOf } from '../ledger/tree.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { fail, isProblemError, type Problem, ProblemError } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { finishLadder } from './ladder-finish.ts';
import { beakersJson, weighOutPage } from './ladder-page.ts';
import { bookOf } from './ledger-book.ts';
import { askedAgain } from './next-again.ts';
import { countTyped, withinTyped } from './next-options.ts';
import { type NextPlan, planNext } from './next-plan.ts';
import { attention, nextPage } from './next-words.ts';
import { type Here, openHere } from './open-ledger.ts';
import { failingSide, seriesPriors } from './series-estimate.ts';
import { type OpenedSeries, openRungs, openSeriesNamed } from './series-open.ts';

export interface NextAsked {
  readonly here: Here;
  readonly opened: OpenedSeries;
  readonly book: Book;
  readonly rungs: SeriesRungs;
  readonly count: number;
  readonly within: number;
}

export async function runNext(call: Call, io: Io): Promise<Outcome> {
  const [count, within] = [countTyped(call), withinTyped(call)];
  const here = await openHere(io);
  const opened = await openSeriesNamed(here, io, call.words.join(' ').trim());
  const book = await bookOf(here);
  const rungs = await openRungs(here, opened.card, book);
  const now: NextAsked = { here, opened, book, rungs, count, within };
  refuseWithoutEdge(now);
  const again = call.flags.has('write')
    ? await askedAgain(now, (one) => plannedNext(one, call, io), io)
    : undefined;
  const asked = again?.asked ?? now;
  const { plan, next, problems } = again?.planned ?? (await plannedNext(now, call, io));
  const notes = attention(asked);
  const found = foundJson(next, asked.rungs);
  const given = { series: opened.card.name, beakers: count, within: { value: within, unit: '' } };
  const head = nextPage({ ...asked, next, notes });
  const isWrong = notes.length > 0 || rungs.problems.some(({ severity }) => severity === 'error');
  const exitCode = isWrong ? 1 : 0;
  const all = [...rungs.problems, ...problems];
  const json = (more: Readonly<Record<string, unknown>>) =>
    envelope({ schema: 'next@1', given, found: { ...found, ...more }, problems: [...all, ...notes] });
  const explained = async () =>
    (await import('./explain-ladder.ts')).nextExplanation({
      ...asked,
      next,
      planned: plan && { varied: plan.varied, variation: plan.variation, beakers: plan.ladder.beakers },
    });
  if (!plan) return { exitCode, page: head, json: json({ written: false }), problems: all, explained };
  const { ladder, variation, varied, facts, cautions } = plan;
  const pageOf = (files: Parameters<typeof weighOutPage>[0]['files']): Page => [
    ...head,
    ...weighOutPage({ varied, variation, files, facts, cautions }),
  ];
  const done = await finishLadder({ call, io, ladder, pageOf });
  const trials = beakersJson(done.files.numbered, variation, varied);
  return {
    exitCode,
    page: done.page,
    json: json({ written: done.isWritten, trials }),
    problems: all,
    notes: done.notes,
    explained,
  };
}

const foundJson = (next: NextBeakers, { scales }: SeriesRungs) => ({
  ratios: next.ratios.map((value) => ({ value, unit: scales[0]?.unit ?? '' })),
  enough: next.enough,
  expectedBeakersLeft: { value: next.expectedBeakersLeft, unit: '' },
  precisionNow: { value: next.precisionNow, unit: '' },
  precisionAfter: { value: next.precisionAfter, unit: '' },
});

/** What has no edge, or no beaker, can't be planned. */
function refuseWithoutEdge({ opened, rungs }: NextAsked): void {
  const { card, document } = opened;
  const [scale, second] = rungs.scales;
  const place = entryOf(card.root, 'varies')?.key ?? card.nameSpan;
  const refuse = (code: string, message: string, hint: string): never => {
    throw new ProblemError([problemAt(document.source, { code, message, hint }, place)]);
  };
  if (!scale)
    refuse('nothing-varied', 'the series does not say what it varies', 'add "varies: oil per emulsifier"');
  if (second)
    refuse(
      'two-varied',
      'the series varies two things, and next looks for one edge',
      'neckring series shows the grid of looks; neckring ladder adds rungs',
    );
  if (rungs.shape === 'window')
    refuse(
      'window',
      `${scale?.text ?? ''} has an optimum rather than an edge, so there is no break to look for`,
      `add rungs where they held: neckring ladder TRIAL --vary "${scale?.text ?? ''}" --series "${card.name}"`,
    );
  if (rungs.beakers.length === 0) {
    const errors = rungs.problems.filter(({ severity }) => severity === 'error');
    if (errors.length > 0) throw new ProblemError(errors);
    fail(
      'no-rungs',
      `no trial with a value to count says "series: ${card.name}"`,
      `begin it: neckring ladder TRIAL --series "${card.name}" --write`,
    );
  }
}

export interface Planned {
  readonly plan: NextPlan | undefined;
  readonly next: NextBeakers;
  readonly problems: readonly Problem[];
}

/** The ratios, and their trials where the newest trial of the series lets itself be varied. */
async function plannedNext(asked: NextAsked, call: Call, io: Io): Promise<Planned> {
  const priors = seriesPriors(asked.rungs);
  if (!priors) throw new Error('a series with beakers has priors');
  const { beakers } = asked.rungs;
  const failing = failingSide(asked.rungs);
  const choose = (highRatio?: number): NextBeakers =>
    nextBeakers({
      ...{ beakers, priors, failing, count: asked.count, withinFraction: asked.within },
      ...(highRatio === undefined ? {} : { reach: { lowRatio: priors.lowRatio / 10, highRatio } }),
    });
  const chosen = choose();
  if (chosen.enough && !call.flags.has('write')) return { plan: undefined, next: chosen, problems: [] };
  try {
    const { plan, next } = await planNext(asked, { chosen, choose }, io);
    return { plan, next, problems: [] };
  } catch (thrown) {
    if (!isProblemError(thrown) || call.flags.has('write')) throw thrown;
    const problems = thrown.problems.map((one): Problem => ({ ...one, severity: 'warning' }));
    return { plan: undefined, next: chosen, problems };
  }
}
