/** A warning for each recipe that does not come to here what it came to where it was given. */

import { openBookOf, sourcesOf } from '../ledger/checks.ts';
import { differingGrams } from '../ledger/give/compare-grams.ts';
import type { Gift } from '../ledger/give/read-gift.ts';
import type { TakePlan } from '../ledger/give/take-plan.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { resolveStages, resolveTrial } from '../ledger/resolve.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Problem } from '../problem.ts';
import type { Ingredient } from '../reference/ingredient.ts';
import { normaliseName } from '../reference/name.ts';

const mostShown = 3;

export function comparedWarnings(
  gift: Gift,
  { rows, names, numbers }: TakePlan,
  after: Ledger,
  builtIn: readonly Ingredient[],
): readonly Problem[] {
  const { book } = openBookOf(after, builtIn);
  const sources = sourcesOf(after, book);
  const nameOf = (name: string): string => names.get(normaliseName(name)) ?? name;
  const mixtureOf = (of: string) => {
    const number = numbers.get(Number(/^trial (\d{1,9})$/u.exec(of)?.[1] ?? 0));
    const trial = number === undefined ? undefined : sources.trialOf(number);
    if (trial) return { here: `trial ${trial.number}`, mixture: resolveTrial(trial, sources).mixture };
    const row = rows.find((one) => one.kind === 'formula' && of === `formula ${one.given}`);
    if (!row || row.how === 'mine kept') return undefined;
    const formula = after.formulas.find((one) => isSameName(one.name, row.here));
    return formula && { here: `formula "${formula.name}"`, mixture: resolveStages(formula, sources).mixture };
  };
  return [...new Set(gift.comesTo.map(({ of }) => of))].flatMap((of): readonly Problem[] => {
    const found = mixtureOf(of);
    if (!found?.mixture) return [];
    const given = gift.comesTo.filter((one) => one.of === of);
    const differing = differingGrams({ given, mixture: found.mixture, book, nameOf });
    if (differing.length === 0) return [];
    const more = differing.length > mostShown ? `, and ${differing.length - mostShown} more` : '';
    return [
      {
        code: 'comes-to-other',
        severity: 'warning',
        message: `${found.here} does not come to the same here: ${differing.slice(0, mostShown).join('; ')}${more}`,
        hint: 'figures of your own, the bench temperature or the dropper differ',
      },
    ];
  });
}
