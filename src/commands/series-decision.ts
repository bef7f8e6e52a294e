/** The decision of a series on its page, beside what the beakers say of the ratio that was decided on. */

import type { BreakPoint } from '../calc/ladder/break-point.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import { parseRungRatio } from '../calc/rungs/read-rungs.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { valueWords } from './series-words.ts';

export function decisionBlocks(series: SeriesRungs, estimate: BreakPoint | undefined): Page {
  const { decided } = series.series;
  if (!decided) return [];
  const [scale] = series.scales;
  const chance = decidedChance(series, estimate);
  const value = scale?.isOilRatio ? ratioOf(decided.ratio) : undefined;
  const pairs = [
    ['decided', decided.text],
    ['on', decided.date?.written],
    ['for', value === undefined ? decided.ratio : valueWords(scale, value)],
    [
      'chance',
      value === undefined || chance === undefined || !estimate
        ? undefined
        : chanceText(value, chance, estimate),
    ],
    ['why', decided.why],
  ].flatMap(([label, text]) =>
    label === undefined || text === undefined ? [] : [[label, visible(text)] as const],
  );
  return [
    { kind: 'heading', text: 'The decision' },
    { kind: 'pairs', pairs, areSentences: true },
  ];
}

function ratioOf(typed: string | undefined): number | undefined {
  const ratio = typed === undefined ? undefined : parseRungRatio(typed, false);
  return ratio?.ok ? ratio.value : undefined;
}

/** The chance that a new beaker holds at what was decided; only where both sides of the break are known. */
export function decidedChance(
  { series: { decided }, scales }: SeriesRungs,
  estimate: BreakPoint | undefined,
): number | undefined {
  const value = scales[0]?.isOilRatio ? ratioOf(decided?.ratio) : undefined;
  return value === undefined || estimate?.side !== 'both' ? undefined : estimate.chanceToHold(value);
}

function chanceText(value: number, chance: number, { workingPoint, failing }: BreakPoint): string {
  const isBeyond =
    workingPoint !== null &&
    (failing === 'above' ? value > workingPoint * 1.005 : value < workingPoint * 0.995);
  const words = `a new beaker at it holds with a chance of ${trimmedNumber(Math.min(0.99, chance) * 100, 2)} %`;
  return isBeyond ? `${words}; it is nearer the break than the ratio to work at` : words;
}
