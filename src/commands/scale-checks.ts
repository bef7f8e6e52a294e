/** What is measured in a batch, with what is aimed at and what it should come to. */

import { aimFigure, aimRangeText, aimWords } from '../calc/drink/aims.ts';
import { finishedDrink } from '../calc/drink/finished-drink.ts';
import { stageFigures } from '../calc/drink/stage-figures.ts';
import { numberText } from '../calc/number-text.ts';
import type { BatchPlan, PlannedStage } from '../calc/scaling/batch-plan.ts';
import { aimReports } from '../ledger/check-aims.ts';
import type { BatchDesign } from './scale-design.ts';

export interface BatchCheck {
  readonly of: string;
  readonly what: string;
  readonly aim: string;
  readonly reckoned: string;
}

export function batchChecks(made: BatchDesign, plan: BatchPlan): readonly BatchCheck[] {
  const written = new Set(made.asWritten.stages.map(({ name }) => name));
  const own = plan.stages.filter(
    ({ scaled: { stage } }) =>
      stage.name !== 'drink' && (written.has(stage.name) || stage.ofTrial !== undefined),
  );
  return [...own.flatMap((stage) => stageChecks(stage, made)), ...drinkChecks(made, plan)];
}

function stageChecks({ scaled }: PlannedStage, made: BatchDesign): readonly BatchCheck[] {
  const { resolved } = scaled;
  const figures = stageFigures(resolved, made.conditions);
  const check = (what: string, reckoned: string, aim = ''): BatchCheck => ({
    of: resolved.name,
    what,
    aim,
    reckoned,
  });
  const isEmulsion = (['oil', 'emulsifier'] as const).every((role) =>
    scaled.items.some(
      ({ item }) =>
        item.source.kind === 'ingredient' && (item.role ?? item.source.entry.record.role) === role,
    ),
  );
  const { hasAcids, acidity } = figures;
  return [
    ...(isEmulsion ? [check('look', '', lookAim(made))] : []),
    ...(figures.brix > 1 ? [check('Brix, by mass of sugar', figures.brix.toFixed(1))] : []),
    ...(hasAcids && acidity.ok ? [check('pH', acidity.value.ph.toFixed(2))] : []),
    ...(isEmulsion ? [] : [check('density, g/mL', numberText(resolved.densityGramsPerMillilitre, 4))]),
  ];
}

function lookAim({ design: { card } }: BatchDesign): string {
  return card.kind === 'formula' ? (card.aims.find(({ name }) => name === 'look')?.written ?? '') : '';
}

/** The aims of a formula; of what has none, what is measured of any drink. */
function drinkChecks(made: BatchDesign, plan: BatchPlan): readonly BatchCheck[] {
  const { card } = made.design;
  if (!made.mixture.drink || !plan.stages.some(({ scaled }) => scaled.stage.name === 'drink')) return [];
  const drink = finishedDrink(made.mixture, made.conditions);
  const of = 'drink';
  const aims =
    drink.ok && card.kind === 'formula'
      ? aimReports(card, drink.value, made.sources).filter(({ judged }) => judged.state !== 'given')
      : [];
  const aimed = aims.map(
    ({ card: aim, judged }): BatchCheck => ({
      of,
      what: aimWords(judged.name),
      aim: judged.tolerance === undefined ? aim.written : aimRangeText(judged),
      reckoned: judged.value === undefined ? '' : aimFigure(judged, judged.value),
    }),
  );
  if (!drink.ok) return aimed;
  const { acidity, brix, conditions } = drink.value;
  const usual: readonly BatchCheck[] = [
    ...(acidity ? [{ of, what: 'pH', aim: '', reckoned: acidity.ph.toFixed(2) }] : []),
    ...(acidity
      ? [
          {
            of,
            what: 'acid',
            aim: '',
            reckoned: `${numberText(acidity.titratableAsCitric, 3)} g/L as citric`,
          },
        ]
      : []),
    { of, what: 'Brix', aim: '', reckoned: brix.toFixed(1) },
    ...(conditions.carbonDioxideVolumes
      ? [{ of, what: 'CO2', aim: `${numberText(conditions.carbonDioxideVolumes, 2)} vol`, reckoned: '' }]
      : []),
    { of, what: 'look', aim: '', reckoned: '' },
    { of, what: 'taste, beside the control', aim: '', reckoned: '' },
  ];
  return [...aimed, ...usual.filter(({ what }) => !aimed.some((one) => one.what === what))];
}
