/** Plans a ladder from a trial or formula, and writes it when it is told to. */

import { loadArithmetic } from '../calc/arithmetic.ts';
import type { Kept } from '../calc/rungs/ratio-masses.ts';
import type { Io } from '../io.ts';
import type { Variation } from '../ledger/ladder-vary.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { isHomogenised, namedByBook, type Varied } from '../ledger/varied.ts';
import { envelope } from '../output/answer-json.ts';
import { fail } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { controlTyped } from './ladder-control.ts';
import { finishLadder } from './ladder-finish.ts';
import { keptOf, makingTyped, orFail, type RungsAsked, rungsTyped, variedTyped } from './ladder-options.ts';
import { balanceText, beakersJson, fromText, keptText, weighOutPage } from './ladder-page.ts';
import { balanceOf, type LadderStart, openVariation, plannedBeakers, startFrom } from './ladder-plan.ts';
import { seriesToWrite } from './ladder-series.ts';
import { earlierCautions, rungCautions, weighingCautions } from './ladder-words.ts';
import type { LadderToWrite } from './ladder-write.ts';
import { bookOf } from './ledger-book.ts';
import { madeTyped } from './look-time.ts';
import { designWords, openDesign } from './open-formula.ts';
import { type Here, openHere } from './open-ledger.ts';

const kinds = ['rungs', 'range', 'control'] as const;
const hasArithmetic = (call: Call): boolean =>
  kinds.some((option) => /[*(+/]|\d\s*-\s*\d/u.test(optionValue(call, option) ?? ''));

export async function runLadder(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const design = await openDesign(here, io, call.words[0] ?? '');
  const start = await startFrom(here, design, await bookOf(here));
  const typed = variedTyped(call);
  const varied = namedByBook(typed.varied, start.book);
  const kept = keptIn(call, varied, start);
  const isStrong = isHomogenised(start.trial.stages.flatMap(({ process }) => process));
  const making = makingTyped(call) ?? (isStrong ? 'homogenised' : 'stirred');
  const asked: RungsAsked = { call, varied, isTurned: typed.isTurned, making };
  const variation = openVariation({ start, varied, kept });
  refuseGivingWay(call, variation);
  if (hasArithmetic(call)) await loadArithmetic();
  const rungs = rungsTyped(asked);
  const control = await controlTyped(start, asked, io);
  const series = await seriesToWrite({ call, start, varied, kept, variation }, io);
  const beakers = plannedBeakers(
    { start, variation, varied, values: rungs.values, control, blank: call.flags.has('blank') },
    io,
  );
  const ladder: LadderToWrite = { start, series, beakers, ...madeOf(call, here, io) };
  const cautions = [
    ...rungCautions(beakers, varied, making === 'homogenised'),
    ...earlierCautions(beakers, variation),
    ...weighingCautions(beakers, variation, here.bench.weighing.inner),
  ];
  const facts = [
    ['from', fromText(start, variation)],
    ['series', `${series.name} (${series.card ? 'added to' : 'new'})`],
    ['rungs', rungs.why],
    ['kept alike', keptText(variation, beakers)],
    ['balance', balanceText(balanceOf(here, variation))],
  ] as const;
  const pageOf = (files: Parameters<typeof weighOutPage>[0]['files']) =>
    weighOutPage({ varied, variation, files, facts, cautions });
  const { page, files, isWritten, notes } = await finishLadder({ call, io, ladder, pageOf });
  return {
    exitCode: 0,
    page,
    json: envelope({
      schema: 'ladder@1',
      given: { from: designWords(design), vary: varied.text, kept },
      found: {
        ...{ series: series.name, file: files.seriesFile, written: isWritten },
        beakers: beakersJson(files.numbered, variation, varied),
      },
      cautions: cautions.map((text) => ({ code: 'ladder', text, source: 'common practice, no source' })),
      problems: start.warnings,
    }),
    problems: start.warnings,
    notes,
    explained: async () =>
      (await import('./explain-ladder.ts')).ladderExplanation({ varied, variation, beakers, why: rungs.why }),
  };
}

const madeOf = (call: Call, here: Here, io: Io): Pick<LadderToWrite, 'made'> =>
  optionValue(call, 'made') === undefined ? {} : { made: madeTyped(call, here, io) };

/** What `--same` keeps; refused where it is neither in the trial nor a word for a side. */
function keptIn(call: Call, varied: Varied, start: LadderStart): Kept {
  const names = start.trial.stages.flatMap(({ items }) => items.map(({ name }) => name));
  return orFail('--same', keptOf(call.values['same'] ?? [], varied, names));
}

/** What is varied, and what makes room for it, can't be kept. */
function refuseGivingWay(call: Call, { stage, base, levers }: Variation): void {
  const same = (call.values['same'] ?? []).map((text) => text.trim());
  for (const [at, { name }] of stage.items.entries()) {
    const word = same.find((text) => isSameName(text, name));
    if (word === undefined || (at !== base.restAt && !levers.includes(at))) continue;
    const what = at === base.restAt ? 'takes the rest of the stage' : 'is what is varied';
    fail('unknown-kept', `--same ${word}: it ${what}, so it can't be kept`, 'leave it out');
  }
}
