/** The plan of a batch as the lines of its file: what is made as masses, what is only told as in the design. */

import { answered } from '../calc/answered.ts';
import { massOf } from '../calc/scaling/batch-stages.ts';
import { scaleStages } from '../calc/scaling/scale-stages.ts';
import { parseTarget } from '../calc/scaling/target.ts';
import { asShown, balanceFor } from '../calc/weighing/balance.ts';
import type { BatchStageText } from '../ledger/batch-text.ts';
import type { BenchCard } from '../ledger/cards.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail } from '../problem.ts';
import { quantityOption } from './batch-options.ts';
import { type Call, optionValue } from './command.ts';
import type { OpenedDesign } from './open-formula.ts';
import { batchDesign } from './scale-design.ts';
import { scaleRequest } from './scale-request.ts';
import { scalesOf } from './weighing-plan.ts';

export interface BatchPlanText {
  readonly stages: readonly BatchStageText[];
  /** Names of the stages that are really made. */
  readonly made: readonly string[];
  /** The stage that is asked for in the end: what stands in the tank. */
  readonly tank: string;
}

type DesignInput = Parameters<typeof batchDesign>;

/** Scaled where `--to` says how much; else as the design is written. */
export async function batchPlanText(
  call: Call,
  {
    here,
    design,
    book,
  }: { readonly here: DesignInput[0]; readonly design: OpenedDesign; readonly book: DesignInput[2]['book'] },
): Promise<BatchPlanText> {
  const typed = optionValue(call, 'to');
  if (typed === undefined) return asWritten(call, design);
  const strength = call.values['strength'];
  const request = scaleRequest({
    ...call,
    values: { to: [typed], ...(strength ? { strength } : {}) },
    flags: new Set(),
  });
  const { stages, mixture, stronger } = await batchDesign(here, design, {
    book,
    request,
  });
  const target = parseTarget(typed);
  if (!target.ok) return fail(target.fault.code, `--to: ${target.fault.message}`, target.fault.hint);
  const loss = quantityOption(call, 'loss', ['share'])?.inner ?? 0;
  const scaled = answered(scaleStages({ stages, mixture, target: target.value, loss }));
  const made = new Map(scaled.stages.map((one) => [one.stage.name, one]));
  return {
    stages: stages.map(({ name, items }) => ({
      name,
      items:
        made.get(name)?.items.map(({ item, exactGrams }) => ({
          name: item.name,
          amount: `${massOn(here.bench, exactGrams)} g`,
        })) ??
        items.map((item) => ({
          name: item.name,
          amount: stronger ? `${Number(massOf(item).toPrecision(6))} g` : item.about.typed,
        })),
    })),
    made: [...made.keys()],
    tank: scaled.target.stage.name,
  };
}

function asWritten(call: Call, { card }: OpenedDesign): BatchPlanText {
  if (call.values['strength'])
    return fail('missing', '--strength needs --to', 'say how much was made: --to "20 L syrup"');
  const stages = card.stages.map(({ name, items }) => ({
    name,
    items: items.map((item) => ({ name: item.name, amount: item.amount.written })),
  }));
  const drink = stages.find(({ name }) => isSameName(name, 'drink'));
  return { stages, made: stages.map(({ name }) => name), tank: (drink ?? stages.at(-1))?.name ?? '' };
}

/** To the division of the balance that takes it; finer where that would leave nothing. */
function massOn(bench: BenchCard, grams: number): string {
  const division = balanceFor(scalesOf(bench), grams)?.divisionGrams ?? 0.01;
  return grams >= 20 * division ? asShown(grams, division) : String(Number(grams.toPrecision(4)));
}
