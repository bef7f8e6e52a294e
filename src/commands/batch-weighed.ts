/** The figures after `batch record FORMULA`: what the balance said, in the order of addition or by name. */

import type { Book } from '../calc/book.ts';
import { numberText } from '../calc/number-text.ts';
import { asShown } from '../calc/weighing/balance.ts';
import type { ItemFact } from '../ledger/edit-item.ts';
import { makeSources, resolveStages } from '../ledger/resolve.ts';
import { openTrialsUsedBy } from '../ledger/single-trial.ts';
import type { Block } from '../output/view.ts';
import { fail } from '../problem.ts';
import type { BatchPlanText } from './batch-plan-text.ts';
import type { Call } from './command.ts';
import type { OpenedBatch } from './open-batch.ts';
import type { Here } from './open-ledger.ts';
import { slips } from './weigh.ts';
import { readWeighings, type Weighing } from './weigh-words.ts';
import { additionsOf } from './weighing-plan.ts';

export interface BatchWeighings {
  readonly facts: readonly {
    readonly stage: string;
    readonly index: number;
    readonly key: ItemFact;
    readonly value: string;
  }[];
  readonly blocks: readonly Block[];
}

interface WeighedInput {
  readonly call: Call;
  readonly here: Here;
  readonly book: Book;
  readonly plan: BatchPlanText;
  readonly batch: OpenedBatch;
  readonly figures: readonly string[];
}

export async function weighedInto(input: WeighedInput): Promise<BatchWeighings> {
  const { call, here, book, plan, batch, figures } = input;
  if (figures.length === 0) return { facts: [], blocks: [] };
  const mixture = await mixtureOfBatch(here, batch, book);
  const stages = batch.card.stages.filter(({ name }) => plan.made.includes(name));
  const additions = additionsOf({ stages, number: 0 }, mixture, here.bench, undefined);
  const weighings = readWeighings(figures, additions, call.flags.has('readings'));
  refuseOtherSize(weighings, call);
  const warnings = slips(weighings);
  return {
    facts: weighings.map(({ addition, written }) => ({
      stage: addition.stage.name,
      index: addition.index,
      key: 'weighed',
      value: written,
    })),
    blocks: [
      ...(warnings.length > 0 ? [{ kind: 'notes', mark: '!', notes: warnings, tone: 'warn' } as const] : []),
      weighedTable(weighings),
    ],
  };
}

async function mixtureOfBatch(here: Here, { card }: OpenedBatch, book: Book) {
  const used = await openTrialsUsedBy(here, card);
  const sources = makeSources({ book, bench: here.bench, trialOf: (number) => used.get(number)?.card });
  const { mixture, found } = resolveStages(card, sources);
  return (
    mixture ??
    fail(found[0]?.finding.code ?? 'unsolved', found[0]?.finding.message ?? '', found[0]?.finding.hint ?? '')
  );
}

/** All figures so many times the plan are no slips. Common practice, no source. */
const otherSize = 1.8;

/** Figures of 20 litres beside a plan of one: the size was not said. */
function refuseOtherSize(weighings: readonly Weighing[], call: Call): void {
  if (call.values['to'] || weighings.length < 2) return;
  const ratios = weighings.flatMap(({ addition, grams }) =>
    addition.plannedGrams > 0 ? [grams / addition.plannedGrams] : [],
  );
  const [least, most] = [Math.min(...ratios), Math.max(...ratios)];
  if (least < otherSize && most > 1 / otherSize) return;
  fail(
    'other-size',
    `the figures are ${numberText(least, 2)} to ${numberText(most, 2)} times the plan`,
    'say how much was made: --to "20 L syrup"',
  );
}

const weighedTable = (weighings: readonly Weighing[]): Block => ({
  kind: 'table',
  columns: [
    { head: 'stage', align: 'left' },
    { head: 'item', align: 'left' },
    { head: 'planned', align: 'point' },
    { head: 'weighed', align: 'point' },
    { head: 'off by', align: 'point' },
  ],
  rows: weighings.map(({ addition, grams, written }) => {
    const off = addition.plannedGrams > 0 ? (grams / addition.plannedGrams - 1) * 100 : 0;
    return [
      addition.stage.name,
      addition.item.name,
      `${asShown(addition.plannedGrams, addition.divisionGrams)} g`,
      written,
      `${numberText(Math.abs(off) < 1e-9 ? 0 : off, 2)} %`,
    ];
  }),
});
