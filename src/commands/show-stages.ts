/** The stages of a trial as blocks of its page. */

import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import type { StageCard, StepCard } from '../ledger/cards.ts';
import { partsText } from '../output/leaf-text.ts';
import type { Block, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';

export function stageBlocks(stage: StageCard, mixture: Mixture | undefined): Page {
  const resolved = mixture?.stages.find((one) => one.name === stage.name);
  const steps = stage.process.map(stepText);
  return [
    { kind: 'heading', text: stageHead(stage, resolved) },
    ...(steps.length > 0 ? [{ kind: 'notes', mark: '-', notes: steps } as const] : []),
    itemTable(stage, resolved),
  ];
}

function stageHead(stage: StageCard, resolved: ResolvedStage | undefined): string {
  const name = visible(stage.name);
  if (!resolved) return name;
  const { massGrams, volumeMillilitres, densityFrom } = resolved;
  const about = densityFrom.measured ? '' : 'about ';
  return `${name}: ${trimmedNumber(massGrams, 5)} g, ${about}${volumeText(volumeMillilitres)}`;
}

const volumeText = (millilitres: number): string =>
  millilitres >= 1000 ? `${numberText(millilitres / 1000, 4)} L` : `${numberText(millilitres, 4)} mL`;

function itemTable(stage: StageCard, resolved: ResolvedStage | undefined): Block {
  const isWeighed = stage.items.some((item) => item.weighed);
  const hasNotes = stage.items.some((item) => item.note ?? item.lot);
  return {
    kind: 'table',
    columns: [
      { head: 'item', align: 'left' },
      { head: 'planned', align: 'left' },
      ...(isWeighed ? [{ head: 'weighed', align: 'left' } as const] : []),
      { head: 'comes to', align: 'point' },
      { head: 'share', align: 'point' },
      ...(hasNotes ? [{ head: 'note', align: 'left' } as const] : []),
    ],
    rows: stage.items.map((item, at) => {
      const solved = resolved?.items[at];
      return [
        visible(item.name),
        visible(item.amount.written),
        ...(isWeighed ? [item.weighed?.written ?? '-'] : []),
        solved ? `${numberText(solved.massGrams, 4)} g` : '',
        solved && resolved ? partsText(solved.massGrams / resolved.massGrams) : '',
        ...(hasNotes
          ? [visible([item.lot ? `lot ${item.lot}` : '', item.note ?? ''].filter(Boolean).join(', '))]
          : []),
      ];
    }),
  };
}

/** `warm oil and emulsifier to 60 C, stir 400 rpm` */
export function stepText(step: StepCard): string {
  if (step.sentence !== undefined) return visible(step.sentence);
  const parts = [
    [step.does, step.what].filter(Boolean).join(' '),
    step.to && `to ${step.to.written}`,
    step.at && `at ${step.at.written}`,
    step.holds && `for ${step.holds.written}`,
    step.over && `over ${step.over.written}`,
    step.into && `into ${step.into}`,
    step.with && `with ${step.with}`,
    (step.stir?.written ?? step.stirWords) && `stir ${step.stir?.written ?? step.stirWords}`,
    step.by && `by ${step.by}`,
    step.note,
  ];
  return visible(parts.filter(Boolean).join(', ').replace(', to ', ' to '));
}

/** What every substance comes to in the finished drink, as dosed. */
export function drinkBlocks(mixture: Mixture | undefined): Page {
  const drink = mixture?.drink;
  if (!drink) return [];
  const shown = drink.substances.filter((one) => one.role !== 'water' && one.massGrams > 0);
  return [
    { kind: 'heading', text: 'In the finished drink, as dosed' },
    {
      kind: 'table',
      columns: [
        { head: 'substance', align: 'left' },
        { head: 'role', align: 'left' },
        { head: 'by mass', align: 'point' },
        { head: 'per litre', align: 'point' },
      ],
      rows: [...shown]
        .sort((left, right) => right.massGrams - left.massGrams)
        .map((one) => [
          visible(one.name),
          one.role,
          partsText(one.massFraction),
          perLitre(one.gramsPerLitre),
        ]),
    },
    ...(drink.densityFrom.measured
      ? []
      : [{ kind: 'text', text: `Volume by ${drink.densityFrom.words}.`, tone: 'faint' } as const]),
  ];
}

export function perLitre(gramsPerLitre: number): string {
  if (gramsPerLitre >= 1) return `${numberText(gramsPerLitre, 4)} g/L`;
  if (gramsPerLitre >= 1e-3) return `${numberText(gramsPerLitre * 1e3, 4)} mg/L`;
  return `${numberText(gramsPerLitre * 1e6, 4)} ug/L`;
}
