/** Checks of what names a file: numbers and names that stand twice, and numbers that differ from the file's name. */

import type { Problem } from '../problem.ts';
import { normaliseName } from '../reference/name.ts';
import type { FileCard } from './cards.ts';
import { type Check, type CheckContext, found } from './check.ts';
import { numberInName } from './single-trial.ts';
import type { Span } from './tree.ts';

interface Claim {
  readonly card: FileCard;
  readonly name: string;
  readonly span: Span;
}

/** Files that claim the same name, at each of them. */
function clashes(context: CheckContext, claims: readonly Claim[], word: string): readonly Problem[] {
  const byName = new Map<string, Claim[]>();
  for (const claim of claims) {
    const same = byName.get(normaliseName(claim.name));
    if (same) same.push(claim);
    else byName.set(normaliseName(claim.name), [claim]);
  }
  return [...byName.values()].flatMap((same) => (same.length < 2 ? [] : clash(context, same, word)));
}

const clash = (context: CheckContext, same: readonly Claim[], word: string): readonly Problem[] =>
  same.map((claim) => {
    const others = same.filter((other) => other !== claim).map(({ card }) => card.file);
    const message = `${word} ${claim.name} is ${others.join(' and ')} too`;
    const hint =
      word === 'trial'
        ? `give one of them another number: neckring renumber ${shellWord(claim.card.file)} --to ${nextNumber(context)}`
        : 'give one of them another name';
    return found(context, claim.card, { code: 'duplicate-name', message, hint }, claim.span);
  });

const shellWord = (path: string): string => (/\s/u.test(path) ? `"${path}"` : path);

/** The next free number of a trial. */
const nextNumber = ({ ledger }: CheckContext): number =>
  Math.max(0, ...ledger.trials.flatMap(({ number, file }) => [number, numberInName(file) ?? 0])) + 1;

export const checkDuplicates: Check = (context) => {
  const { trials, series, formulas, batches } = context.ledger;
  const named = [series, formulas, batches].flatMap((cards) =>
    clashes(
      context,
      cards.map((card) => ({ card, name: card.name, span: card.nameSpan })),
      cards[0]?.kind ?? '',
    ),
  );
  const numbers = trials.map((card) => ({ card, name: `${card.number}`, span: card.numberSpan }));
  return [...clashes(context, numbers, 'trial'), ...named];
};

export const checkFileNames: Check = (context) =>
  context.ledger.trials.flatMap((trial) => {
    const { file, number, numberSpan } = trial;
    const named = numberInName(file);
    if (named === number) return [];
    const message =
      named === undefined
        ? `the name of the file does not begin with its number, ${number}`
        : `the file is named ${named} and holds trial ${number}`;
    const wanted = `${String(number).padStart(4, '0')}-`;
    const hint =
      named === undefined
        ? `rename it, to begin with ${wanted}`
        : `write "trial: ${named}", or rename the file`;
    return [found(context, trial, { code: 'number-differs', message, hint }, numberSpan)];
  });
