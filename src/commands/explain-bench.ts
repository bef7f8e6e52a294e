/** How weighings, pours, looks, costs and uses were worked out. Loaded only by `--explain`. */

import type { WorkingLine } from '../calc/answer.ts';
import type { Cost } from '../calc/cost.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import type { NewPlan } from '../calc/weighing/overpoured.ts';
import type { TimeZone } from '../ledger/times.ts';
import type { Explanation } from './command.ts';
import type { PlannedLook } from './due-samples.ts';
import { lookWords, nameOf, sampleOf, whenWords } from './due-words.ts';
import type { Use } from './uses-amounts.ts';
import type { Weighing } from './weigh-words.ts';
import type { Addition } from './weighing-plan.ts';

const grams = (value: number): string => `${trimmedNumber(value, 6)} g`;

const inBench = (purpose: string) => ({ for: purpose, source: 'given in bench.yaml', fromMemory: false });
const inBook = (purpose: string) => ({
  for: purpose,
  source: 'given in ingredients.yaml',
  fromMemory: false,
});

/** What to weigh: each item from its amount, in the order of addition. */
export const plannedExplanation = (additions: readonly Addition[]): Explanation => ({
  working: additions.map(({ stage, item, plannedGrams }) => ({
    equation: `${item.name} in ${stage.name}: grams of its amount, less what makes up is adapted to what was weighed`,
    numbers: `${item.amount.makeUp ? 'to ' : ''}${item.amount.quantity.written} = ${grams(plannedGrams)}`,
  })),
  sources: [inBench('divisions of the balances')],
  restsOn: ['weigh'],
});

export const weighedExplanation = (weighings: readonly Weighing[]): Explanation => ({
  working: weighings
    .filter(({ addition }) => addition.plannedGrams > 0)
    .map(({ addition, grams: weighed }) => ({
      equation: `${addition.item.name}: off by = weighed / planned - 1`,
      numbers: `${grams(weighed)} / ${grams(addition.plannedGrams)} - 1 = ${numberText((weighed / addition.plannedGrams - 1) * 100, 3)} %`,
    })),
  sources: [inBench('divisions of the balances')],
  restsOn: ['weigh'],
});

export interface PouredRow {
  readonly name: string;
  readonly planned: number;
  readonly weighed: number | undefined;
  readonly total: number;
}

export function pouredExplanation(rows: readonly PouredRow[], plan: NewPlan | undefined): Explanation {
  const sum = rows.reduce((all, { total }) => all + total, 0);
  const factor = plan?.factor;
  const most = rows.find(
    ({ weighed, planned }) =>
      weighed !== undefined && factor !== undefined && weighed / planned >= factor * 0.999999,
  );
  const working: readonly WorkingLine[] =
    factor === undefined
      ? rows.map((row) => ({
          equation: `${row.name}: share = its mass / all of the stage`,
          numbers: `${grams(row.total)} / ${grams(sum)} = ${numberText((100 * row.total) / sum, 4)} %`,
        }))
      : [
          {
            equation: 'k = largest of weighed / planned',
            numbers: `${most?.name ?? ''}: ${grams(most?.weighed ?? 0)} / ${grams(most?.planned ?? 0)} = ${trimmedNumber(factor, 6)}`,
          },
          ...rows.map((row) => ({
            equation: `${row.name} = k x planned; add = that less what was weighed`,
            numbers: `${trimmedNumber(factor, 6)} x ${grams(row.planned)} = ${grams(row.total)}${row.weighed === undefined ? '' : `; ${grams(row.weighed)} weighed`}`,
          })),
        ];
  return { working, sources: [], restsOn: ['overpoured'] };
}

export const usesExplanation = (uses: readonly Use[]): Explanation => ({
  working: uses.map((use) => ({
    equation: `${use.kind} ${use.name}: sum over its stages of mass x share of what is looked for`,
    numbers: [
      ...(use.massGrams === null ? [] : [grams(use.massGrams)]),
      ...(use.share === null ? [] : [`share ${trimmedNumber(use.share, 5)} by mass`]),
      ...(use.gramsPerLitre === null
        ? []
        : [`${numberText(use.gramsPerLitre, 4)} g in a litre of the drink`]),
    ].join(', '),
  })),
  sources: [inBook('what own solutions contain')],
  restsOn: ['uses'],
});

export const dueExplanation = (looks: readonly PlannedLook[], zone: TimeZone | undefined): Explanation => ({
  working: looks.map((look) => {
    const madeEpoch = look.atEpoch - look.afterSeconds * 1000;
    return {
      equation: `${nameOf(look.watched)}, ${sampleOf(look.watched)}: look = made + its day, 24 h each`,
      numbers: `${whenWords(madeEpoch, zone)} + ${lookWords(look)} = ${whenWords(look.atEpoch, zone)}`,
    };
  }),
  sources: [inBench('days of looking, watch and settling')],
  restsOn: ['due'],
});

export const costExplanation = ({ lines, totals }: Cost): Explanation => ({
  working: [
    ...lines.map(({ ingredient, grams: mass, amount, currency }) => ({
      equation: `${ingredient}: cost = mass x price`,
      numbers: `${grams(mass)} x ${numberText((amount / mass) * 1000, 5)} ${currency}/kg = ${numberText(amount, 5)} ${currency}`,
    })),
    ...totals.map(({ currency, amount }) => ({
      equation: `sum in ${currency}; nothing is converted`,
      numbers: `${numberText(amount, 5)} ${currency}`,
    })),
  ],
  sources: [inBook('prices')],
  restsOn: ['cost'],
});

export interface UsedStock {
  readonly name: string;
  readonly madeOn: string | undefined;
  readonly ageDays: number | undefined;
  readonly usedGrams: number;
}

export const stocksExplanation = (stocks: readonly UsedStock[]): Explanation => ({
  working: stocks.map(({ name, madeOn, ageDays, usedGrams }) => ({
    equation: `${name}: age = today - made; used = sum of it in trials and batches made since`,
    numbers: [
      ...(madeOn === undefined || ageDays === undefined
        ? ['not said when made']
        : [`made ${madeOn}, ${ageDays} d ago`]),
      `${grams(usedGrams)} used`,
    ].join('; '),
  })),
  sources: [inBook('strength, day of making and keeping')],
  restsOn: ['uses'],
});
