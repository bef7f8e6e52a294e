/** A comparison as JSON: every key with its one unit. */

import type {
  EntryChange,
  FactChange,
  ItemChange,
  StageChange,
  StepChange,
} from '../calc/compare/document.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { bodyNames } from '../reference/limits/published-figure.ts';
import type { Side } from './compare-side.ts';
import {
  type ComparedPart,
  type Comparison,
  hasAims,
  isDifferent,
  isMoved,
  lineComesTo,
  type Moved,
  type PropertyChange,
} from './compare-sides.ts';
import { relativeChange } from './compare-words.ts';

const leaf = (value: number | undefined, unit: string): object => ({ value: value ?? null, unit });

export function comparisonEnvelope(comparison: Comparison, only: ComparedPart | undefined): Envelope {
  const { before, after } = comparison;
  return envelope({
    schema: 'compare@1',
    given: { before: sideJson(before), after: sideJson(after), only: only ?? '' },
    found: comparisonJson(comparison, only),
    problems: [...before.problems, ...after.problems],
  });
}

export function comparisonJson(
  comparison: Comparison,
  only: ComparedPart | undefined,
): Readonly<Record<string, unknown>> {
  const { difference } = comparison;
  const has = (part: ComparedPart): boolean => only === undefined || only === part;
  return {
    same: !isDifferent(comparison, only),
    sameRecord: comparison.isSameRecord,
    ...(has('formula') ? formulaJson(comparison) : {}),
    ...(only === undefined ? { record: difference.facts.map(factJson) } : {}),
    ...(has('observations')
      ? {
          samples: difference.samples.map(entryJson),
          observations: difference.observations.map(entryJson),
          outcomes: comparison.outcomes,
        }
      : {}),
    ...(has('results') ? { results: difference.results.map(entryJson) } : {}),
  };
}

function sideJson({ card, file, revision }: Side): object {
  const of =
    card?.kind === 'trial'
      ? { trial: card.number }
      : card?.kind === 'batch'
        ? { batch: card.name }
        : { formula: card?.name ?? '' };
  return { ...of, file, ...(revision ? { revision: revision.typed, commit: revision.id } : {}) };
}

function formulaJson(comparison: Comparison): Readonly<Record<string, unknown>> {
  const { difference, properties, costs, substances, crossed, definitions, before, after } = comparison;
  return {
    solved: before.solved !== undefined && after.solved !== undefined,
    stages: difference.stages
      .filter(({ change }) => change !== 'same')
      .map((stage) => stageJson(comparison, stage)),
    renamed: difference.stages.flatMap(({ name, renamed }) =>
      renamed.map((one) => ({ stage: name, item: one.name, was: one.was })),
    ),
    aims: hasAims(comparison) ? difference.aims.map(factJson) : [],
    properties: Object.fromEntries(properties.map((one) => [one.key, propertyJson(one)])),
    cost: costs.map((one) => ({ currency: one.unit.replace('/L', ''), ...propertyJson(one) })),
    substances: substances.map(({ name, role, massFraction, gramsPerLitre }) => ({
      substance: name,
      role,
      massFraction: movedJson(massFraction, ''),
      gramsPerLitre: movedJson(gramsPerLitre, 'g/L'),
      change: leaf(relativeChange(massFraction), ''),
    })),
    figuresCrossed: crossed.map(({ figure: { counted, figure }, before: was, after: now, isAbove }) => ({
      substance: counted.substance,
      body: bodyNames[figure.body],
      food: figure.food,
      figure: leaf(figure.value, figure.unit ?? ''),
      before: leaf(was, figure.unit ?? ''),
      after: leaf(now, figure.unit ?? ''),
      above: isAbove,
    })),
    ingredients: definitions.map(({ ingredient, was, facts }) => ({
      ingredient,
      was: was ?? ingredient,
      facts,
    })),
  };
}

const movedJson = ({ before, after }: Moved, unit: string): object => ({
  before: leaf(before, unit),
  after: leaf(after, unit),
});

const propertyJson = (one: PropertyChange): object => ({
  ...movedJson(one, one.unit),
  change: leaf(relativeChange(one), ''),
  same: !isMoved(one),
});

const factJson = ({ key, before, after }: FactChange): object => ({
  fact: key,
  change: before === undefined ? 'added' : after === undefined ? 'removed' : 'changed',
  before: before ?? null,
  after: after ?? null,
});

function stageJson(comparison: Comparison, stage: StageChange): object {
  return {
    stage: stage.name,
    was: stage.was ?? stage.name,
    change: stage.change,
    ...(stage.factor === undefined ? {} : { factor: leaf(stage.factor, '') }),
    facts: stage.facts.map(factJson),
    items: stage.items.map((item) => itemJson(comparison, stage, item)),
    process: stage.steps.map(stepJson),
  };
}

function itemJson(comparison: Comparison, stage: StageChange, item: ItemChange): object {
  const { before, after } = lineComesTo(comparison, stage, item);
  const massFraction = { before: before?.massFraction, after: after?.massFraction };
  return {
    item: item.name,
    was: item.was ?? item.name,
    change: item.change,
    moved: item.isMoved,
    fromStage: item.fromStage ?? null,
    place: movedJson({ before: placeOf(item.before), after: placeOf(item.after) }, ''),
    facts: item.facts.map(factJson),
    comesTo: {
      in: (after ?? before)?.of ?? '',
      massFraction: movedJson(massFraction, ''),
      gramsPerLitre: movedJson({ before: before?.gramsPerLitre, after: after?.gramsPerLitre }, 'g/L'),
      change: leaf(relativeChange(massFraction), ''),
    },
  };
}

/** In the order of addition, from 1. */
const placeOf = (place: number | undefined): number | undefined =>
  place === undefined ? undefined : place + 1;

const stepJson = ({ change, written, was, facts, before, after }: StepChange): object => ({
  change,
  step: written,
  was: was ?? null,
  place: movedJson({ before: placeOf(before), after: placeOf(after) }, ''),
  facts: facts.map(factJson),
});

const entryJson = ({ change, heading, facts }: EntryChange): object => ({
  entry: heading,
  change,
  facts: facts.map(factJson),
});
