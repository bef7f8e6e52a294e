/** Items whose use in food a body has withdrawn or prohibited. */

import type { PlacedCaution } from '../calc/slip-guard/placed-caution.ts';
import { type Advice, adviceAt, adviceProblem } from './advice.ts';
import type { Check } from './check.ts';
import type { Sources, StagesOf } from './resolve.ts';

export const checkWithdrawn: Check = (context) => {
  const { trials, formulas, batches } = context.ledger;
  return [...trials, ...formulas, ...batches].flatMap((card) =>
    card.isSound
      ? withdrawnAdvice(card, context.sources).map((advice) => adviceProblem(context, card, advice))
      : [],
  );
};

/** An advice at each such item, with who did what and when; the citation alone, never a dose. */
export function withdrawnAdvice({ stages }: StagesOf, { book }: Sources): readonly Advice[] {
  return stages.flatMap((stage) =>
    stage.items.flatMap(({ name }, item) =>
      (book.find(name)?.record.withdrawn ?? []).map(({ by, what, source }) => {
        const short = `${name}: ${by} ${what}`;
        const hint = 'ask a qualified person before anything is made of it';
        const at = { stage: stage.name, item };
        const caution: PlacedCaution = {
          code: 'withdrawn',
          short,
          text: `${short}; ${hint}.`,
          hint,
          source,
          at,
        };
        return adviceAt(stages, caution);
      }),
    ),
  );
}
