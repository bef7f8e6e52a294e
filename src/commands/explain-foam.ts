/** How the heads of a foam series were counted. Loaded only by `--explain`. */

import type { WorkingLine } from '../calc/answer.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { activeInAntifoamEmulsion } from '../reference/usual-bands.ts';
import type { Explanation } from './command.ts';
import type { Foam } from './series-foam.ts';
import { headText } from './series-foam-words.ts';
import { figureText } from './series-words.ts';

export function foamExplanation(
  { scales }: SeriesRungs,
  { steps, active, heads }: Foam,
  edge: Explanation,
): Explanation {
  const doseOf = (dose: number): string => (dose === 0 ? 'none' : figureText(scales[0], dose));
  const means = steps.map(
    (step): WorkingLine => ({
      equation: `dose ${doseOf(step.dose)}: head = mean of its pours`,
      numbers: `${step.pours} of ${heads.length} pours: ${headText(step.meanMetres)}`,
    }),
  );
  const actives = active.flatMap(({ dose, inDrink }): readonly WorkingLine[] =>
    inDrink
      ? [
          {
            equation: `dose ${doseOf(dose)}: active = antifoam x its active share / drink`,
            numbers: `${trimmedNumber(inDrink.milligramsPerKilogram, 4)} mg/kg`,
          },
        ]
      : [],
  );
  const isAssumed = active.some(({ inDrink }) => inDrink?.isAssumed);
  return {
    ...edge,
    working: [...means, ...actives, ...edge.working],
    sources: [
      { for: 'heads', source: 'given by the pours of this series', fromMemory: false },
      ...(isAssumed
        ? [
            {
              for: 'silicone in an antifoam emulsion',
              source: activeInAntifoamEmulsion.source,
              fromMemory: false,
            },
          ]
        : []),
      ...edge.sources,
    ],
  };
}
