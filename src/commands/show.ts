import type { Mixture } from '../calc/mixture/picture.ts';
import type { Io } from '../io.ts';
import { envelope } from '../output/answer-json.ts';
import { closingCaution } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import { isProblemError, type Problem } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { bookOf } from './ledger-book.ts';
import { type Here, type OpenedTrial, openHere, openTrialNamed } from './open-ledger.ts';
import { mixtureJson, trialJson } from './show-json.ts';
import { headBlocks, observationBlocks, resultBlocks } from './show-record.ts';
import { drinkBlocks, stageBlocks } from './show-stages.ts';
import { pictureOf } from './trial-picture.ts';

export async function runShow(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const trial = await openTrialNamed(here, io, call.words[0] ?? '');
  const { mixture, problems } = await mixtureOf(here, trial);
  const { card } = trial;
  const page: Page = [
    ...headBlocks(card, here),
    ...card.stages.flatMap((stage) => stageBlocks(stage, mixture)),
    ...drinkBlocks(mixture),
    ...observationBlocks(card),
    ...resultBlocks(card),
    ...(card.results.length > 0 ? [{ kind: 'text', text: closingCaution, tone: 'faint' } as const] : []),
  ];
  return {
    exitCode: 0,
    page,
    json: envelope({
      schema: 'show@1',
      given: { trial: card.number },
      found: { ...trialJson(trial), ...mixtureJson(mixture) },
      problems,
    }),
    problems,
  };
}

/** A trial that can't be solved is still shown, with what is wrong with it. */
async function mixtureOf(
  here: Here,
  trial: OpenedTrial,
): Promise<{ readonly mixture: Mixture | undefined; readonly problems: readonly Problem[] }> {
  try {
    const { picture, warnings } = await pictureOf(here, trial, await bookOf(here));
    return { mixture: picture.mixture, problems: warnings };
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return { mixture: undefined, problems: thrown.problems };
  }
}
