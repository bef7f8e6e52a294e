import type { Citation } from '../calc/answer.ts';
import { countedWords } from '../calc/drink/counted-forms.ts';
import { drinkCitations } from '../calc/drink/working-lines.ts';
import { limitSourceWords } from '../reference/limits/limit-sources.ts';
import { bodyNames } from '../reference/limits/published-figure.ts';
import type { DrinkReport } from './drink-report.ts';
import { sourceWords } from './worded-sources.ts';

/** Where every figure of a drink is from, in words. */
export function drinkSources({
  drink,
  additives,
  bibliography,
}: Pick<DrinkReport, 'drink' | 'additives' | 'bibliography'>): readonly Citation[] {
  const figures = additives.beside.map(
    ({ counted, figure }): Citation => ({
      for: `${bodyNames[figure.body]} on ${countedWords(counted)}`,
      source: limitSourceWords(figure),
      fromMemory: figure.read === 'from memory',
      range: figure.food,
    }),
  );
  const thresholds = additives.aroma.flatMap((one) =>
    one.thresholds.map(
      ({ source, fromMemory }): Citation => ({
        for: `odour threshold of ${one.substance}`,
        source: sourceWords(source, bibliography),
        fromMemory,
      }),
    ),
  );
  const all = [
    ...drinkCitations(drink).map((one) => ({ ...one, source: sourceWords(one.source, bibliography) })),
    ...figures,
    ...thresholds,
  ];
  return all.filter(
    (one, at) => all.findIndex((other) => other.for === one.for && other.source === one.source) === at,
  );
}
