/** How a ladder, the next beakers and a decision were worked out. Loaded only by `--explain`. */

import type { WorkingLine } from '../calc/answer.ts';
import type { NextBeakers } from '../calc/ladder/next-beakers.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { readingError } from '../calc/rungs/weighing-error.ts';
import type { Variation } from '../ledger/ladder-vary.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import type { Varied } from '../ledger/varied.ts';
import type { Explanation } from './command.ts';
import type { PlannedBeaker } from './ladder-plan.ts';
import { percent, smallestWeighing, valueText } from './ladder-words.ts';
import type { Here } from './open-ledger.ts';
import { seriesBreak } from './series-estimate.ts';
import { explainSources, seriesExplanation } from './series-explain.ts';
import { figureText, ratioCell, valueWords } from './series-words.ts';

interface Laddered {
  readonly varied: Varied;
  readonly variation: Variation;
  readonly beakers: readonly PlannedBeaker[];
  /** Why the rungs stand where they do. */
  readonly why?: string;
}

export function ladderExplanation(ladder: Laddered): Explanation {
  const { why } = ladder;
  return {
    working: [
      ...(why === undefined ? [] : [{ equation: 'where the rungs stand', numbers: why }]),
      ...beakerLines(ladder),
    ],
    sources: [
      { for: 'divisions of the balances', source: 'given in bench.yaml', fromMemory: false },
      { for: 'reading error of half a division', source: 'common practice, no source', fromMemory: false },
    ],
    restsOn: ['ladder'],
  };
}

/** Each beaker: what it was asked for, and what the balance makes of it. */
function beakerLines({ varied, variation, beakers }: Laddered): readonly WorkingLine[] {
  const { divisionGrams, stageAt } = variation.base;
  const lines = beakers
    .filter(({ value }) => value !== undefined)
    .map(({ label, value, rung }): WorkingLine => {
      const masses = rung.items.map(
        (item, at) =>
          `${item.name} ${trimmedNumber(rung.mixture.stages[stageAt]?.items[at]?.massGrams ?? 0, 5)} g`,
      );
      return {
        equation: `${label}: masses solved for ${varied.text} ${value === undefined ? '' : valueText(varied, value)}, rounded to the balance`,
        numbers: `${masses.join(', ')}: ${trimmedNumber(rung.weighed, 5)} for ${trimmedNumber(rung.asked, 5)}`,
      };
    });
  const smallest = smallestWeighing(beakers, variation);
  if (!smallest) return lines;
  return [
    ...lines,
    {
      equation: 'reading error = half a division / mass, of the smallest weighing',
      numbers: `${trimmedNumber(divisionGrams / 2)} g / ${trimmedNumber(smallest.grams, 4)} g of ${smallest.name} = ${percent(readingError(divisionGrams, smallest.grams))}`,
    },
  ];
}

interface Nexted {
  readonly rungs: SeriesRungs;
  readonly next: NextBeakers;
  readonly within: number;
  readonly here: Here;
  readonly planned: Laddered | undefined;
}

export function nextExplanation({ rungs, next, within, here, planned }: Nexted): Explanation {
  const estimate = seriesBreak(rungs, here.bench);
  const known = seriesExplanation(rungs, estimate);
  const [scale] = rungs.scales;
  return {
    ...known,
    working: [
      ...known.working,
      {
        equation:
          'known within = least w so that the break lies within exp(w) - 1 of its middle with 90 % chance',
        numbers: `${percent(next.precisionNow)} now, ${percent(within)} wanted`,
      },
      {
        equation: 'beakers chosen together so that the variance of ln break is expected to be least',
        numbers: `${next.ratios.map((value) => figureText(scale, value)).join(', ')}: ${percent(next.precisionAfter)} expected after them`,
      },
      {
        equation:
          'beakers left = those that bring the variance down to what is wanted, one round after another',
        numbers: numberText(next.expectedBeakersLeft, 3),
      },
      ...(planned ? beakerLines(planned) : []),
    ],
    sources: explainSources(rungs),
    restsOn: ['next'],
  };
}

interface Decided {
  readonly rungs: SeriesRungs;
  readonly here: Here;
  readonly value: number | undefined;
  readonly most: number | undefined;
}

export function decideExplanation({ rungs, here, value, most }: Decided): Explanation {
  const estimate = seriesBreak(rungs, here.bench);
  const known = seriesExplanation(rungs, estimate);
  if (value === undefined) return { ...known, restsOn: ['decide'] };
  const [scale] = rungs.scales;
  return {
    ...known,
    working: [
      ...known.working,
      ...(estimate
        ? [
            {
              equation: 'chance that a new beaker at the decided value holds = 1 - P(fails)',
              numbers: `${valueWords(scale, value)}: ${percent(estimate.chanceToHold(value))}`,
            },
          ]
        : []),
      ...(most === undefined
        ? []
        : [
            {
              equation: 'decided, beside the highest that held before one failed',
              numbers: `${ratioCell(value)} beside ${ratioCell(most)}`,
            },
          ]),
    ],
    restsOn: ['decide'],
  };
}
