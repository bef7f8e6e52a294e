/** A batch as JSON: every key with its one unit. */

import type { Cost } from '../calc/cost.ts';
import type { PlannedStage } from '../calc/scaling/batch-plan.ts';
import { revisionWords } from '../ledger/git-revision.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { leftOut } from './scale-left-out.ts';
import type { BatchReport } from './scale-report.ts';
import { madeFor, remarksOf } from './scale-words.ts';

const leaf = (value: number | undefined, unit: string): object => ({ value: value ?? null, unit });

export function scaleEnvelope(report: BatchReport, batch: string): Envelope {
  const { plan, request, cautions, warnings, filling } = report;
  return envelope({
    schema: 'scale@1',
    given: {
      ...designJson(report),
      to: madeFor(report),
      loss: leaf(request.loss, ''),
      ...(request.strength === undefined ? {} : { strength: leaf(request.strength, '') }),
    },
    found: {
      batch,
      revision: revisionWords(report.revision),
      stages: plan.stages.map(stageJson),
      stocks: plan.stocks.map(({ stage, of, name, solvent, steps }) => ({
        stage,
        of,
        name,
        solvent,
        steps: steps.map((step) => ({
          take: step.take,
          takeMass: leaf(step.takeGrams, 'g'),
          solventMass: leaf(step.solventGrams, 'g'),
          strength: leaf(step.strength, ''),
        })),
      })),
      drinkDeviation: leaf(plan.deviation?.relative, ''),
      ...(plan.deviation?.substance ? { drinkDeviationOf: plan.deviation.substance } : {}),
      ratioError: leaf(plan.ratio?.relative, ''),
      cost: costJson(report),
      ...(filling ? { filling: fillingJson(report) } : {}),
      ...(report.pilot
        ? {
            pilot: {
              to: report.pilot.to,
              mass: leaf(report.pilot.grams, 'g'),
              times: leaf(report.pilot.times, ''),
            },
          }
        : {}),
      ...leftOutJson(report),
      checks: report.checks,
      remarks: remarksOf(report),
    },
    cautions,
    sources: [],
    problems: warnings,
  });
}

function leftOutJson({ made, plan }: BatchReport): object {
  const left = leftOut(made, plan);
  if (!left) return {};
  const items = left.items.map(({ name, grams }) => ({ ingredient: name, mass: leaf(grams, 'g') }));
  return { notInThis: { stage: left.stage, drink: leaf(left.litres, 'L'), items } };
}

export const designJson = ({ made: { design } }: BatchReport): object =>
  design.card.kind === 'trial' ? { trial: design.card.number } : { formula: design.card.name };

function stageJson(stage: PlannedStage): object {
  const { scaled, totalGrams, subBatches, vessel, items } = stage;
  return {
    stage: scaled.stage.name,
    mass: leaf(totalGrams, 'g'),
    volume: leaf(totalGrams / scaled.resolved.densityGramsPerMillilitre / 1000, 'L'),
    exactMass: leaf(scaled.exactGrams, 'g'),
    subBatches: leaf(subBatches, ''),
    ...(vessel?.name ? { vessel: vessel.name } : {}),
    inBottle: stage.isInBottle,
    items: items.map((item) => ({
      ingredient: item.name,
      exact: leaf(item.exactGrams, 'g'),
      weigh: leaf(item.weighGrams, 'g'),
      balance: leaf(item.divisionGrams, 'g'),
      deviation: leaf(item.deviation, ''),
      portions: leaf(item.portions * subBatches, ''),
      portion: leaf(item.portionGrams, 'g'),
      readingError: leaf(item.choice.relativeError, ''),
    })),
  };
}

function fillingJson({ filling, bottles, request }: BatchReport): object {
  const gas = filling?.gas;
  return {
    into: request.isKeg ? 'keg' : 'bottle',
    count: leaf(bottles, ''),
    volume: leaf(filling?.millilitres, 'mL'),
    parts: (filling?.parts ?? []).map((part) => ({
      ingredient: part.name,
      mass: leaf(part.grams, 'g'),
      volume: leaf(part.millilitres, 'mL'),
      carbonated: part.isWater && gas !== undefined,
    })),
    carbonation: leaf(gas?.drinkVolumes, 'vol'),
    waterCarbonation: leaf(gas?.water.volumes, 'vol'),
    waterCarbonDioxide: leaf(gas?.water.gramsPerLitre, 'g/L'),
    waterPressure: leaf(gas && gas.water.gaugePressurePascal / 1e5, 'bar'),
    drinkPressure: leaf(gas && gas.drink.gaugePressurePascal / 1e5, 'bar'),
    temperature: leaf(gas && gas.temperatureKelvin - 273.15, 'C'),
  };
}

export function costJson({ cost, litres, bottles }: BatchReport): object {
  return {
    totals: cost.totals.map(({ currency, amount }) => ({
      currency,
      batch: leaf(amount, currency),
      perLitre: leaf(amount / litres, `${currency}/L`),
      perBottle: leaf(bottles ? amount / bottles : undefined, currency),
    })),
    lines: linesJson(cost),
    unpriced: cost.unpriced.map(({ ingredient }) => ingredient),
  };
}

const linesJson = ({ lines }: Cost): readonly object[] =>
  lines.map(({ ingredient, grams, amount, currency }) => ({
    ingredient,
    mass: leaf(grams, 'g'),
    amount: leaf(amount, currency),
  }));
