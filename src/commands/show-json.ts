/** A trial as JSON: what is written in it, and what its stages come to. */

import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import type { Quantity } from '../calc/quantity.ts';
import type { OpenedTrial } from './open-ledger.ts';
import { resultFigures } from './show-record.ts';

const leaf = (value: number, unit: string): object => ({ value, unit });
const typed = (quantity: Quantity | undefined): object | null =>
  quantity ? leaf(quantity.value, quantity.unit) : null;

export function trialJson({ card, file }: OpenedTrial): Readonly<Record<string, unknown>> {
  return {
    file,
    title: card.title ?? '',
    made: card.made?.written ?? '',
    from: card.from ?? null,
    series: card.series?.text ?? '',
    samples: card.samples.map((one) => ({
      sample: one.name,
      of: one.of,
      in: one.in ?? '',
      cover: one.cover ?? '',
      ...(one.stress ? { stress: one.stress } : {}),
      at: typed(one.at),
    })),
    observations: card.observations.map((one) => ({
      at: one.at.written,
      sample: one.sample?.text ?? card.samples[0]?.name ?? '',
      looks: one.looks,
      taste: one.taste.map(({ word, score }) => ({ word, score: leaf(score, '') })),
      served: one.served ?? '',
      against: one.against ?? '',
      blind: one.blind ?? '',
      viewed: one.viewed?.text ?? '',
      photo: one.photo?.text ?? '',
      by: one.by ?? '',
      note: one.note ?? '',
      ended: one.ended ?? '',
    })),
    results: card.results.map((one) => ({
      at: one.at.written,
      calculator: one.calculator,
      stage: one.stage ?? '',
      of: one.of ?? '',
      figures: Object.fromEntries(resultFigures(one)),
    })),
  };
}

export function mixtureJson(mixture: Mixture | undefined): Readonly<Record<string, unknown>> {
  return { stages: (mixture?.stages ?? []).map(stageJson) };
}

function stageJson(stage: ResolvedStage): object {
  return {
    stage: stage.name,
    mass: leaf(stage.massGrams, 'g'),
    volume: leaf(stage.volumeMillilitres / 1000, 'L'),
    density: leaf(stage.densityGramsPerMillilitre, 'g/mL'),
    densityFrom: stage.densityFrom.words,
    shareInDrink: leaf(stage.shareInDrink, ''),
    items: stage.items.map((item) => ({
      item: item.name,
      role: item.role,
      mass: leaf(item.massGrams, 'g'),
      planned: leaf(item.plannedGrams, 'g'),
      weighed: item.weighed,
    })),
    substances: stage.substances.map((one) => ({
      substance: one.name,
      role: one.role,
      mass: leaf(one.massGrams, 'g'),
      massFraction: leaf(one.massFraction, ''),
      gramsPerLitre: leaf(one.gramsPerLitre, 'g/L'),
    })),
  };
}
