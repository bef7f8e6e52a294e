/** What a batch came to: the drink as weighed, its aims, and what was read beside what is reckoned. */

import type { Caution } from '../calc/answer.ts';
import type { Book } from '../calc/book.ts';
import { type FinishedDrink, finishedDrink } from '../calc/drink/finished-drink.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { numberText } from '../calc/number-text.ts';
import { adviceCaution } from '../ledger/advice.ts';
import type { BatchCard } from '../ledger/cards.ts';
import { type AimReport, aimReports } from '../ledger/check-aims.ts';
import { keptAdvice } from '../ledger/check-kept.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import { makeSources } from '../ledger/resolve.ts';
import { openTrialsUsedBy } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import type { Problem } from '../problem.ts';
import { drinkJson } from './drink-json.ts';
import { type MeasuredDrink, measuredBlocks, measuredJson } from './drink-measured.ts';
import { aimBlocks, figureBlocks } from './drink-page.ts';
import type { OpenedBatch } from './open-batch.ts';
import type { OpenedDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { comparedTank, mixtureOfMade, readingsOfStage } from './tank.ts';
import { usedCautions } from './used-cautions.ts';

export interface BatchReport {
  readonly card: BatchCard;
  readonly mixture: Mixture;
  readonly drink: FinishedDrink | undefined;
  readonly aims: readonly AimReport[];
  readonly changes: readonly Change[];
  readonly measured: MeasuredDrink | undefined;
  /** The stage that was read. */
  readonly tank: string | undefined;
  readonly isMissed: boolean;
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Problem[];
}

/** A substance of the drink that came out otherwise than planned. */
interface Change {
  readonly name: string;
  /** Relative. */
  readonly change: number;
}

interface ReportInput {
  readonly book: Book;
  /** What it is a batch of, where that is there. */
  readonly design: OpenedDesign | undefined;
}

export async function batchReportOf(
  here: Here,
  batch: OpenedBatch,
  { book, design }: ReportInput,
): Promise<BatchReport> {
  const { card } = batch;
  const { mixture, planned, warnings } = await mixtureOfMade(here, batch, book);
  const formula = design?.card.kind === 'formula' ? design.card : undefined;
  const conditions = drinkConditions({ bench: here.bench, card, ...(formula ? { formula } : {}) });
  const made = finishedDrink(mixture, conditions);
  const drink = made.ok ? made.value : undefined;
  const [first] = card.samples;
  const stage = mixture.stages.find(({ name }) => first !== undefined && isSameName(name, first.of));
  const measured =
    stage && comparedTank({ stage, mixture, readings: readingsOfStage(card, stage.name), conditions });
  const trials = await openTrialsUsedBy(here, card);
  const sources = makeSources({ book, bench: here.bench, trialOf: (number) => trials.get(number)?.card });
  const used = await usedCautions(here, card, sources);
  const aims = formula && drink ? aimReports(formula, drink, sources) : [];
  return {
    card,
    mixture,
    drink,
    aims,
    changes: changesOf(mixture, planned),
    measured,
    tank: stage?.name,
    isMissed: aims.some(({ judged }) => judged.state === 'missed'),
    cautions: [...used.map(({ caution }) => caution), ...keptAdvice(card, sources).map(adviceCaution)],
    warnings,
  };
}

const WORTH_A_WORD = 1e-3;

/** Substances of the drink by how far they are off the plan, the largest first. */
function changesOf(mixture: Mixture, planned: Mixture): readonly Change[] {
  const should = planned.drink?.substances ?? [];
  return (mixture.drink?.substances ?? [])
    .flatMap(({ name, role, massFraction }) => {
      const plan = should.find((one) => one.name === name && one.role === role)?.massFraction ?? 0;
      return plan > 0 && role !== 'water' ? [{ name, change: massFraction / plan - 1 }] : [];
    })
    .filter(({ change }) => Math.abs(change) > WORTH_A_WORD)
    .sort((one, other) => Math.abs(other.change) - Math.abs(one.change));
}

export function reportBlocks(report: BatchReport): Page {
  const { card, drink, aims, changes, measured, tank, cautions } = report;
  const isOff = measured?.compared.some(({ agrees }) => !agrees) ?? false;
  return [
    ...(drink ? figureBlocks(drink, `Batch ${card.name}`) : []),
    ...aimBlocks(aims),
    ...(changes.length > 0
      ? [
          { kind: 'heading', text: 'In the drink, beside the plan' } as const,
          {
            kind: 'table',
            columns: [
              { head: '', align: 'left' },
              { head: '', align: 'point' },
            ],
            rows: changes.map(({ name, change }) => [name, `${numberText(change * 100, 2)} %`]),
          } as const,
        ]
      : []),
    ...(measured && tank ? [{ kind: 'text', text: `Read of ${tank}:` } as const] : []),
    ...measuredBlocks(measured),
    ...(isOff
      ? [
          {
            kind: 'text',
            text: `neckring correct ${quoted(card.name)} says what to add to the tank.`,
          } as const,
        ]
      : []),
    ...cautionBlocks(cautions),
  ];
}

export const quoted = (name: string): string => (/^[\w.-]+$/.test(name) ? name : `"${name}"`);

export function reportJson(report: BatchReport): Readonly<Record<string, unknown>> {
  const { card, drink, aims, changes, measured, tank } = report;
  return {
    yield: card.yield ? { value: card.yield.value, unit: card.yield.unit } : { value: null, unit: 'g' },
    bottles: { value: card.bottles ?? null, unit: '' },
    retained: { value: card.samples.find(({ name }) => name === 'retained')?.count ?? null, unit: '' },
    ...(drink ? { drink: drinkJson({ drink, aims, label: [] }) } : {}),
    changes: changes.map(({ name, change }) => ({ substance: name, change: { value: change, unit: '' } })),
    readOf: tank ?? '',
    ...measuredJson(measured),
  };
}
