import type { Book } from '../calc/book.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { envelope } from '../output/answer-json.ts';
import { cautionBlocks, closingCaution } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import { isProblemError, type Problem } from '../problem.ts';
import { measuredBlocks, measuredJson } from './drink-measured.ts';
import { bookOf } from './ledger-book.ts';
import { measuredOf } from './measured-of.ts';
import { atRevision } from './open-at.ts';
import { isBatch, openMade } from './open-batch.ts';
import type { Here, OpenedTrial } from './open-ledger.ts';
import { outcomeJson } from './outcome-words.ts';
import { showBatch } from './show-batch.ts';
import { mixtureJson, trialJson } from './show-json.ts';
import { headBlocks, observationBlocks, resultBlocks } from './show-record.ts';
import { drinkBlocks, stageBlocks } from './show-stages.ts';
import { usedBlocks, usedJson } from './show-used.ts';
import { trialCautions } from './trial-cautions.ts';
import { trialOutcomes } from './trial-outcomes.ts';
import { pictureOf } from './trial-picture.ts';

export const runShow = atRevision(async (call, io, here) => {
  const made = await openMade(here, io, call.words[0] ?? '');
  if (isBatch(made)) return showBatch(here, io, made);
  const trial = made;
  const { mixture, book, problems } = await mixtureOf(here, trial);
  const { card } = trial;
  const around = book ? await trialCautions(here, trial, { book, mixture }) : undefined;
  const cautions = around?.cautions ?? [];
  const measured = book && (await measuredOf(here, trial, book));
  const outcomes = await trialOutcomes(here, card);
  const page: Page = [
    ...headBlocks(card, here),
    ...card.stages.flatMap((stage) => stageBlocks(stage, mixture)),
    ...usedBlocks(around?.used ?? []),
    ...drinkBlocks(mixture),
    ...observationBlocks(card, here.bench.tastes, outcomes),
    ...measuredBlocks(measured),
    ...resultBlocks(card),
    ...cautionBlocks(cautions),
    ...(card.results.length > 0 && cautions.length === 0
      ? [{ kind: 'text', text: closingCaution, tone: 'faint' } as const]
      : []),
  ];
  return {
    exitCode: 0,
    page,
    json: envelope({
      schema: 'show@1',
      given: { trial: card.number },
      found: {
        ...trialJson(trial),
        ...usedJson(around?.used ?? []),
        ...mixtureJson(mixture),
        ...measuredJson(measured),
        outcomes: [...outcomes.values()].map(outcomeJson),
      },
      cautions,
      problems,
    }),
    problems,
  };
});

/** A trial that can't be solved is still shown, with what is wrong with it. */
async function mixtureOf(here: Here, trial: OpenedTrial): Promise<Solved> {
  let book: Book | undefined;
  try {
    book = await bookOf(here);
    const { picture, warnings } = await pictureOf(here, trial, book);
    return { mixture: picture.mixture, book, problems: warnings };
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return { mixture: undefined, book, problems: thrown.problems };
  }
}

interface Solved {
  readonly mixture: Mixture | undefined;
  /** Undefined where the person's own book can't be read. */
  readonly book: Book | undefined;
  readonly problems: readonly Problem[];
}
