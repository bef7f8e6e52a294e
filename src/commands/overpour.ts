import { numberText } from '../calc/number-text.ts';
import { inUnit } from '../calc/unit.ts';
import { decimalsOf } from '../calc/weighing/balance.ts';
import { keepRatios, type NewPlan } from '../calc/weighing/overpoured.ts';
import type { Io } from '../io.ts';
import type { TrialCard } from '../ledger/cards.ts';
import { type Change, editAll } from '../ledger/edit.ts';
import { addItemFact, setItemAmount } from '../ledger/edit-item.ts';
import { envelope } from '../output/answer-json.ts';
import { visible } from '../output/visible.ts';
import { fail, ProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { type AtBalance, atBalance } from './weigh.ts';
import { type Figure, readFigure } from './weigh-words.ts';
import { type Addition, additionNamed } from './weighing-plan.ts';

export async function runOverpoured(call: Call, io: Io): Promise<Outcome> {
  const [typed = '', name = '', figureText = ''] = call.words;
  const at = await atBalance(typed, call, io);
  const addition = additionNamed(at.additions, name);
  const figure = readFigure(figureText);
  if ('code' in figure) throw new ProblemError([figure]);
  const isSaid = saysSo(addition, figure);
  if (!isSaid && figure.grams <= addition.plannedAtFirstGrams) {
    fail(
      'not-over',
      `${figure.written} of ${addition.item.name} is not more than the planned ${numberText(addition.plannedAtFirstGrams, 4)} g`,
      `write it down with neckring weigh ${typed} "${name}" ${figureText}`,
    );
  }
  const same = optionValue(call, 'same');
  if (same !== undefined && same !== 'batch' && same !== 'ratios') {
    fail(
      'usage',
      `--same: "${same}" can't be kept`,
      'say --same ratios (a larger stage) or --same batch (nothing is added)',
    );
  }
  const poured = at.additions
    .filter((one) => one.stage === addition.stage)
    .map((one) => ({
      addition: one,
      weighedGrams: one === addition ? figure.grams : one.item.weighed?.inner,
    }));
  const plan = same === 'batch' ? undefined : newPlan(poured);
  const changes = isSaid ? [] : changesFor(addition, figure.written, plan, poured);
  const notes = await writePlan({ at, call, io, changes });
  return { ...outcome(at, addition, figure.grams, poured, plan), notes };
}

interface Poured {
  readonly addition: Addition;
  readonly weighedGrams: number | undefined;
}

function newPlan(poured: readonly Poured[]): NewPlan | undefined {
  return keepRatios(
    poured.map(({ addition, weighedGrams }) => ({
      name: addition.item.name,
      plannedGrams: addition.plannedAtFirstGrams,
      weighedGrams,
    })),
  );
}

/** The plan was made larger for this very weighing before; amounts are written to the division of the balance. */
function saysSo({ item, stage, plannedAtFirstGrams, divisionGrams }: Addition, figure: Figure): boolean {
  const over = figure.grams - plannedAtFirstGrams;
  return item.weighed?.written === figure.written && over <= divisionGrams * stage.items.length;
}

/**
 * The overpoured item is weighed, and the whole plan gets larger, each amount in the unit it is typed in: what was
 * weighed before keeps its weighing, and shows what is still to be added.
 */
function changesFor(
  addition: Addition,
  written: string,
  plan: NewPlan | undefined,
  poured: readonly Poured[],
): readonly Change[] {
  const path = ['stages', addition.stage.name];
  const weighed = addItemFact(path, addition.index, 'weighed', written);
  if (!plan) return [weighed];
  const amounts = poured.flatMap(({ addition: one }) => {
    const { quantity, makeUp } = one.item.amount;
    const isInGrams = one === addition && !makeUp && quantity.dimension === 'mass';
    const text = isInGrams ? written : grown(one, plan.factor);
    return text === undefined ? [] : [setItemAmount(path, one.index, text)];
  });
  return [weighed, ...amounts];
}

/** An amount made larger; shares and concentrations grow with the stage by themselves. */
function grown({ item, divisionGrams }: Addition, factor: number): string | undefined {
  const { quantity, makeUp } = item.amount;
  if (!['mass', 'volume', 'drops'].includes(quantity.dimension)) return undefined;
  const stepInUnit =
    quantity.dimension === 'mass'
      ? inUnit(divisionGrams, quantity.unit)
      : quantity.dimension === 'drops'
        ? 1
        : quantity.value / 1000;
  const value = (quantity.value * factor).toFixed(decimalsOf(stepInUnit));
  return `${makeUp ? 'to ' : ''}${value} ${quantity.unit}`;
}

interface Writing {
  readonly at: AtBalance;
  readonly call: Call;
  readonly io: Io;
  readonly changes: readonly Change[];
}

async function writePlan({ at, call, io, changes }: Writing): Promise<readonly string[]> {
  const { here, trial } = at;
  if (!call.flags.has('write')) return ['nothing written; --write puts this into the trial'];
  let count = 0;
  await landHere(here.root, call, io, async () => {
    const before = textNow(here.root, trial.file, io);
    const edited = editAll(trial.file, before, changes);
    if (!edited.ok) throw new ProblemError(edited.problems);
    count = changedLines(before, edited.text).length;
    return edited.text === before ? [] : [{ path: trial.file, before, after: edited.text }];
  });
  return [count === 0 ? `${trial.file} says so already; nothing written` : `wrote ${trial.file}`];
}

function outcome(
  at: AtBalance,
  addition: Addition,
  grams: number,
  poured: readonly Poured[],
  plan: NewPlan | undefined,
): Outcome {
  const { card }: { readonly card: TrialCard } = at.trial;
  const rows = poured.map(({ addition: one, weighedGrams }, index) => {
    const total = plan?.items[index]?.totalGrams ?? weighedGrams ?? one.plannedGrams;
    const add = plan?.items[index]?.addGrams ?? 0;
    return {
      name: one.item.name,
      planned: one.plannedAtFirstGrams,
      weighed: weighedGrams,
      total,
      add,
      share: total,
    };
  });
  const sum = rows.reduce((total, row) => total + row.total, 0);
  const lead = plan
    ? `To keep every ratio, ${visible(addition.stage.name)} becomes ${numberText(plan.factor, 4)} times as large: ${numberText(sum, 4)} g.`
    : `If nothing is added, ${visible(addition.stage.name)} comes to ${numberText(sum, 4)} g and its shares change:`;
  return {
    exitCode: 0,
    explained: async () => (await import('./explain-bench.ts')).pouredExplanation(rows, plan),
    page: [
      { kind: 'text', text: lead, tone: 'strong' },
      {
        kind: 'table',
        columns: [
          { head: 'item', align: 'left' },
          { head: 'planned', align: 'point' },
          { head: 'weighed', align: 'point' },
          { head: plan ? 'must come to' : 'comes to', align: 'point' },
          { head: plan ? 'add' : 'share', align: 'point' },
        ],
        rows: rows.map((row) => [
          visible(row.name),
          `${numberText(row.planned, 4)} g`,
          row.weighed === undefined ? '' : `${numberText(row.weighed, 4)} g`,
          `${numberText(row.total, 4)} g`,
          plan
            ? row.add > 1e-9
              ? `${numberText(row.add, 4)} g`
              : ''
            : `${numberText((100 * row.total) / sum, 4)} %`,
        ]),
      },
    ],
    json: envelope({
      schema: 'overpoured@1',
      given: { trial: card.number, item: addition.item.name, weighed: { value: grams, unit: 'g' } },
      found: {
        factor: { value: plan?.factor ?? 1, unit: '' },
        stageMass: { value: sum, unit: 'g' },
        items: rows.map((row) => ({
          item: row.name,
          planned: { value: row.planned, unit: 'g' },
          total: { value: row.total, unit: 'g' },
          add: { value: row.add, unit: 'g' },
        })),
      },
    }),
  };
}
