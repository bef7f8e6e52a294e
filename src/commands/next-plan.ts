/** The trials of the beakers to make next, from the newest one of the series. */

import type { NextBeakers } from '../calc/ladder/next-beakers.ts';
import { numberText } from '../calc/number-text.ts';
import { parseAmount } from '../calc/parse-amount.ts';
import type { Io } from '../io.ts';
import type { RungValue, Variation } from '../ledger/ladder-vary.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { namedByBook, readVaried, type Varied } from '../ledger/varied.ts';
import { fail } from '../problem.ts';
import { keptOf, orFail } from './ladder-options.ts';
import { balanceText, fromText, keptText } from './ladder-page.ts';
import { balanceOf, openVariation, plannedBeakers, startFrom } from './ladder-plan.ts';
import { earlierCautions, weighingCautions } from './ladder-words.ts';
import type { LadderToWrite } from './ladder-write.ts';
import type { NextAsked } from './next.ts';
import { openTrialNamed } from './open-ledger.ts';

export interface NextPlan {
  readonly ladder: LadderToWrite;
  readonly variation: Variation;
  readonly varied: Varied;
  readonly facts: readonly (readonly [string, string])[];
  readonly cautions: readonly string[];
}

/** What tells most, and the same up to a highest value. */
interface Choice {
  readonly chosen: NextBeakers;
  readonly choose: (highRatio: number) => NextBeakers;
}

export async function planNext(
  asked: NextAsked,
  choice: Choice,
  io: Io,
): Promise<{ readonly plan: NextPlan; readonly next: NextBeakers }> {
  const { here, opened, rungs, book } = asked;
  const { card } = opened;
  const newest = Math.max(...rungs.rungs.map(({ trial }) => trial.number));
  const trial = await openTrialNamed(here, io, String(newest));
  const start = await startFrom(here, trial, book);
  const varied = namedByBook(readVaried(card.varies)[0] ?? nothing(), start.book);
  const names = trial.card.stages.flatMap(({ items }) => items.map(({ name }) => name));
  const known = [...names, 'oil', 'emulsifier', 'batch'];
  const same = card.same.filter((text) => known.some((name) => isSameName(name, text)));
  const kept = orFail(card.file, keptOf(same, varied, names));
  const variation = openVariation({ start, varied, kept });
  const next = withinReach(choice, variation, (value) => rungValue(asked, varied, value));
  const values = next.ratios.map((value) => rungValue(asked, varied, value));
  const beakers = plannedBeakers({ start, variation, varied, values }, io);
  const series = { name: card.name, card, varies: varied.text, same: card.same };
  return {
    next,
    plan: {
      ladder: { start, series, beakers },
      variation,
      varied,
      facts: [
        ['from', `${fromText(start, variation)}; the newest of the series`],
        ['kept alike', keptText(variation, beakers)],
        ['balance', balanceText(balanceOf(here, variation))],
      ],
      cautions: [
        ...earlierCautions(beakers, variation),
        ...weighingCautions(beakers, variation, here.bench.weighing.inner),
      ],
    },
  };
}

const nothing = (): never => fail('nothing-varied', 'the series does not say what it varies', 'add "varies"');

/** A figure in the unit of the series as it goes into a trial. */
function rungValue({ rungs }: NextAsked, { kind }: Varied, value: number): RungValue {
  if (kind !== 'amount') return value;
  const text = `${Number(numberText(value, 3))} ${rungs.scales[0]?.unit || 'g'}`;
  return orFail('next', parseAmount(text));
}

const bisections = 14;

/** Where the stage has no room for the highest of them, only what there is room for is chosen from. */
function withinReach(
  { chosen: next, choose }: Choice,
  variation: Variation,
  valueFor: (value: number) => RungValue,
): NextBeakers {
  const fits = (value: number): boolean => variation.rungAt(valueFor(value)).ok;
  const tooHigh = next.ratios.find((value) => !fits(value));
  const last = next.ratios.filter((value) => value < (tooHigh ?? 0) && fits(value)).at(-1);
  let low = last ?? variation.now;
  if (tooHigh === undefined || !(low > 0) || low >= tooHigh || !fits(low)) return next;
  let high = tooHigh;
  for (let step = 0; step < bisections; step += 1) {
    const middle = Math.sqrt(low * high);
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return choose(low);
}
