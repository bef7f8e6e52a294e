/** "Is this meant?" for amounts far from where they usually are, and far from the trial that they came from. */

import type { Mixture } from '../calc/mixture/picture.ts';
import { carbonationSlip } from '../calc/slip-guard/band-question.ts';
import { bandSlips } from '../calc/slip-guard/band-slips.ts';
import { caffeineGate } from '../calc/slip-guard/caffeine.ts';
import { comparedMixture, factorSlips, slipsOfWeighing } from '../calc/slip-guard/factor-slips.ts';
import type { PlacedCaution } from '../calc/slip-guard/placed-caution.ts';
import { gramsPerLitreOfOneVolume } from '../reference/usual-bands.ts';
import { type Advice, adviceAt, adviceProblem } from './advice.ts';
import type { AnyCard, BatchCard, FormulaCard, StageCard, TrialCard } from './cards.ts';
import type { Check } from './check.ts';
import { comparedStages, differInKind } from './compared-stages.ts';
import { isPlainlyInBand } from './plainly-in-band.ts';
import { resolveStages, resolveTrial, type Sources } from './resolve.ts';
import { isSameName } from './stage-name.ts';
import type { Span } from './tree.ts';

export type StagedCard = TrialCard | FormulaCard | BatchCard;

export const checkSlips: Check = (context) => {
  const { trials, formulas, batches } = context.ledger;
  return [...trials, ...formulas, ...batches].flatMap((card) =>
    card.isSound
      ? slipAdvice(card, context.sources).map((advice) => adviceProblem(context, card, advice))
      : [],
  );
};

/** Every question about the amounts of a file. */
export function slipAdvice(card: StagedCard, sources: Sources): readonly Advice[] {
  const at = (caution: PlacedCaution): Advice => adviceAt(card.stages, caution);
  return [
    ...mixtureQuestions(card, sources).map(at),
    ...changedAmounts(card, sources).map(at),
    ...weighings(card.stages),
    ...carbonations(card),
  ];
}

export const mixtureOf = (card: StagedCard, sources: Sources): Mixture | undefined =>
  (card.kind === 'trial' ? resolveTrial(card, sources) : resolveStages(card, sources)).mixture;

function mixtureQuestions(card: StagedCard, sources: Sources): readonly PlacedCaution[] {
  const hasDrink = card.stages.some(({ name }) => isSameName(name, 'drink'));
  if (!hasDrink && isPlainlyInBand(card.stages, sources.book)) return [];
  const mixture = mixtureOf(card, sources);
  if (!mixture) return [];
  const gate = caffeineGate(mixture, servingOf(card, mixture));
  return [
    ...bandSlips(mixture),
    ...(gate ? [{ ...gate.caution, hint: 'check the amount and its unit', at: { stage: 'drink' } }] : []),
  ];
}

/** mL; a serving that is aimed at by mass goes through the density of the drink. */
export function servingOf(card: AnyCard, mixture: Mixture): number | undefined {
  const aim = card.kind === 'formula' ? card.aims.find(({ name }) => name === 'serving')?.range : undefined;
  const serving = aim?.exact ?? aim?.high ?? aim?.low;
  if (!serving) return undefined;
  return serving.dimension === 'mass'
    ? serving.inner / (mixture.drink?.densityGramsPerMillilitre ?? 1)
    : serving.inner;
}

/** Amounts beside those of the trial that it came from; as solved masses where they were typed in other units. */
function changedAmounts(card: StagedCard, sources: Sources): readonly PlacedCaution[] {
  const number = card.kind === 'batch' ? undefined : card.from;
  const earlier = number === undefined ? undefined : sources.trialOf(number);
  if (!earlier || earlier === card) return [];
  const from = `trial ${earlier.number}`;
  const { book } = sources;
  const [now, before] = [comparedStages(card.stages, book), comparedStages(earlier.stages, book)];
  const typed = factorSlips({ now, before, from });
  const others = differInKind(now, before);
  const [mixture, was] = others.length > 0 ? [mixtureOf(card, sources), mixtureOf(earlier, sources)] : [];
  if (!mixture || !was) return typed;
  const solved = factorSlips({ now: comparedMixture(mixture), before: comparedMixture(was), from });
  return [
    ...typed,
    ...solved.filter(({ at }) => others.some(({ stage, item }) => at?.stage === stage && at.item === item)),
  ];
}

function weighings(stages: readonly StageCard[]): readonly Advice[] {
  return stages.flatMap(({ name, items }) =>
    items.flatMap(({ amount, weighed, amountSpan }, item) =>
      weighed && amount.quantity.dimension === 'mass' && !amount.makeUp
        ? slipsOfWeighing(amount.quantity.inner, weighed.inner).map((caution) => ({
            caution: { ...caution, hint: 'check the decimal point and the unit', at: { stage: name, item } },
            span: amountSpan,
          }))
        : [],
    ),
  );
}

function carbonations(card: StagedCard): readonly Advice[] {
  const figures: readonly { readonly span: Span; readonly dimension: string; readonly inner: number }[] =
    card.kind === 'formula'
      ? card.aims.flatMap(({ name, range, span }) => {
          const figure = name === 'co2' ? (range?.exact ?? range?.high ?? range?.low) : undefined;
          return figure ? [{ span, dimension: figure.dimension, inner: figure.inner }] : [];
        })
      : card.observations.flatMap(({ co2, start, end }) =>
          co2 ? [{ span: { start, end }, dimension: co2.dimension, inner: co2.inner }] : [],
        );
  return figures.flatMap(({ span, dimension, inner }) => {
    const volumes = dimension === 'carbonation' ? inner : (inner * 1000) / gramsPerLitreOfOneVolume.value;
    const question = carbonationSlip(volumes);
    return question ? [{ caution: { ...question, hint: 'check the figure and its unit' }, span }] : [];
  });
}
