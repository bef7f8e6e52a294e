/** A stock that was used after the time that it keeps. */

import { type Advice, adviceAt, adviceProblem } from './advice.ts';
import type { Check } from './check.ts';
import type { Sources, StagesOf } from './resolve.ts';
import { readTime } from './times.ts';

/** Of trials and batches; a formula is used on no day. */
export const checkKept: Check = (context) =>
  [...context.ledger.trials, ...context.ledger.batches].flatMap((card) =>
    card.isSound
      ? keptAdvice(card, context.sources).map((advice) => adviceProblem(context, card, advice))
      : [],
  );

/**
 * Formula   used - made > keep, by the day
 * Input     stages with the time they were made; the book, whose entries say `made` and `keep`
 * Output    an advice for each item of which that is so
 */
export function keptAdvice(of: StagesOf, sources: Sources): readonly Advice[] {
  return of.stages.flatMap((stage) => {
    const used = (stage.made ?? of.made)?.epochMilliseconds;
    if (used === undefined) return [];
    return stage.items.flatMap(({ name }, item): readonly Advice[] => {
      const entry = sources.book.find(name);
      if (!entry?.made || !entry.keep) return [];
      const made = readTime(entry.made.slice(0, DAY_LENGTH), undefined);
      const until = made.ok ? made.value.epochMilliseconds + entry.keep.inner * 1000 : used;
      const over = Math.floor((used - until) / 86_400_000);
      if (over < 1) return [];
      const short = `"${name}" was made ${entry.made} and keeps ${entry.keep.written}: over by ${over} day${over === 1 ? '' : 's'}`;
      const hint = 'smell it against a fresh one, or make it new';
      const caution = {
        code: 'past-keep',
        short,
        text: `${short}; ${hint}.`,
        hint,
        source,
        at: { stage: stage.name, item },
      };
      return [adviceAt(of.stages, caution)];
    });
  });
}

const source = 'what its own entry says';

/** Of `2026-03-09`: the hour does not matter. */
const DAY_LENGTH = 10;
