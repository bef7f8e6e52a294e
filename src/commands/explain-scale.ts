/** How a batch was worked out. Loaded only by `--explain`. */

import type { WorkingLine } from '../calc/answer.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { minimumWeightRule } from '../reference/weighing.ts';
import type { Explanation } from './command.ts';
import type { BatchReport } from './scale-report.ts';
import { gramsText, percent } from './scale-words.ts';

/** At most 0.10 %, so no less than 2000 s, and s no less than 0.41 d. */
const pharmacyDivisions =
  (minimumWeightRule.factor * minimumWeightRule.leastDivisions) / minimumWeightRule.rule;

export function scaleExplanation(report: BatchReport): Explanation {
  const { plan, here, request, filling } = report;
  const { resolved, neededGrams } = plan.target;
  return {
    working: [
      {
        equation: 'mass of the target = its volume x its density, or as typed',
        numbers: `${numberText(neededGrams / resolved.densityGramsPerMillilitre, 6)} mL x ${numberText(resolved.densityGramsPerMillilitre, 6)} g/mL = ${numberText(neededGrams, 6)} g of ${resolved.name}`,
      },
      {
        equation: 'made = needed / (1 - loss); needed of a stage = what the stages after it take',
        numbers: `loss ${percent(request.loss, 4)}: ${trimmedNumber(neededGrams, 7)} g / ${trimmedNumber(1 - request.loss, 4)} = ${trimmedNumber(neededGrams / (1 - request.loss), 7)} g`,
      },
      {
        equation: 'an item = its share of the stage x what is made of it',
        numbers: `the stage as written times ${plan.exact.map(({ stage, factor }) => `${trimmedNumber(factor, 6)} (${stage.name})`).join(', ')}`,
      },
      {
        equation:
          'reading error = half a division / mass; what makes up gets what the others were rounded by',
        numbers: `accepted ${here.bench.weighing.written} (the bench)`,
      },
      ...finestLines(report),
    ],
    sources: [
      {
        for: 'the 0.10 % rule of the pharmacopoeia, shown beside the figure of the bench',
        source: `${minimumWeightRule.source}#${minimumWeightRule.locator}`,
        fromMemory: false,
        range: 'a balance whose readings repeat to less than 0.41 of a division counts as 0.41',
      },
      {
        for: 'reading error of half a division, a pilot beyond ten times',
        source: 'common practice, no source',
        fromMemory: false,
      },
      { for: 'density of sugar solutions', source: 'icumsa-sucrose-density', fromMemory: false },
      { for: 'density of water', source: 'kell-1975#the density equation', fromMemory: false },
      ...(filling?.gas
        ? [
            { for: 'solubility of CO2', source: 'weiss-1974', fromMemory: false },
            { for: 'solubility of CO2, second equation', source: 'carroll-1991', fromMemory: false },
          ]
        : []),
    ],
    restsOn: ['scale'],
  };
}

/** Weighings for which the balance is coarser than a pharmacy would take. */
const finestLines = ({ plan }: BatchReport): readonly WorkingLine[] =>
  plan.stages.flatMap(({ items, scaled }) =>
    items
      .filter(({ portionGrams, divisionGrams }) => portionGrams < pharmacyDivisions * divisionGrams)
      .map(
        (item): WorkingLine => ({
          equation: `${item.name} in ${scaled.stage.name}: reading error = half a division / mass`,
          numbers: `${trimmedNumber(item.divisionGrams / 2)} g / ${gramsText(item.portionGrams, item.divisionGrams)} = ${percent(item.choice.relativeError)}; 0.10 % would need ${trimmedNumber(pharmacyDivisions * item.divisionGrams, 3)} g on this balance`,
        }),
      ),
  );
