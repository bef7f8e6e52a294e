/** The offset of this bench's water and meter, from every drink in the ledger that was measured. */

import { finishedDrink } from '../calc/drink/finished-drink.ts';
import { fewestDrinks, type MeasuredPair, type Offset, offsetsOf } from '../calc/drink/offset.ts';
import { numberText } from '../calc/number-text.ts';
import type { BatchCard, TrialCard } from '../ledger/cards.ts';
import { drinkConditions } from '../ledger/drink-conditions.ts';
import { openFolder } from '../ledger/folder.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { readTrialCard } from '../ledger/read-trial.ts';
import { makeSources, resolveStages, resolveTrial, type Sources } from '../ledger/resolve.ts';
import type { Page } from '../output/view.ts';
import { fail } from '../problem.ts';
import { readingsOf, shownBy } from './drink-measured.ts';
import { bookOf } from './ledger-book.ts';
import type { Here } from './open-ledger.ts';

/** Refused where fewer than three drinks were measured. */
export async function benchOffsets(here: Here): Promise<readonly Offset[]> {
  const cardsIn = <Card>(opened: readonly { readonly card: Card | undefined }[]): readonly Card[] =>
    opened.flatMap(({ card }) => (card ? [card] : []));
  const trials = cardsIn(await openFolder(here, 'trials', readTrialCard));
  const batches = cardsIn(await openFolder(here, 'batches', readBatchCard));
  const byNumber = new Map(trials.map((trial): [number, TrialCard] => [trial.number, trial]));
  const sources = makeSources({
    book: await bookOf(here),
    bench: here.bench,
    trialOf: (number) => byNumber.get(number),
  });
  const pairs = [...trials, ...batches].flatMap((card) => pairOf(card, sources, here) ?? []);
  const offsets = offsetsOf(pairs);
  if (offsets.length > 0) return offsets;
  return fail(
    'too-few-measured',
    `--with-offset rests on ${fewestDrinks} measured drinks or more, and there ${pairs.length === 1 ? 'is' : 'are'} ${pairs.length}`,
    'measure pH, acid or Brix of more drinks: neckring observe TRIAL --ph 2.9',
  );
}

function pairOf(card: TrialCard | BatchCard, sources: Sources, here: Here): MeasuredPair | undefined {
  const measured = readingsOf(card);
  if (!card.isSound || (measured.ph ?? measured.acid ?? measured.brix) === undefined) return undefined;
  const { mixture } = card.kind === 'trial' ? resolveTrial(card, sources) : resolveStages(card, sources);
  const conditions = drinkConditions({ bench: here.bench, card });
  const reckoned = mixture && finishedDrink(mixture, conditions).ok && shownBy(mixture, conditions);
  if (!reckoned) return undefined;
  return { of: card.kind === 'trial' ? `trial ${card.number}` : `batch ${card.name}`, measured, reckoned };
}

const labels = { ph: 'pH', acid: 'acid, g/L', brix: 'Brix' } as const;
const units = { ph: '', acid: 'g/L', brix: '' } as const;

export function offsetBlocks(offsets: readonly Offset[]): Page {
  if (offsets.length === 0) return [];
  return [
    { kind: 'heading', text: 'With the offset of this bench: measured less reckoned' },
    {
      kind: 'grid',
      columns: [
        { head: '', align: 'left' },
        { head: 'offset', align: 'right' },
        { head: 'spread', align: 'right' },
        { head: 'drinks', align: 'right' },
        { head: '', align: 'left' },
      ],
      rows: offsets.map(({ reading, offset, spread, drinks, isClear }) => [
        labels[reading],
        `${offset < 0 ? '-' : '+'}${numberText(Math.abs(offset), 2)}`,
        numberText(spread, 2),
        String(drinks.length),
        `${isClear ? '' : 'not clear of chance: '}${drinks.join(', ')}`,
      ]),
    },
    {
      kind: 'text',
      text: 'pH, acid and Brix above, and the aims on them, have it added; all else is as reckoned.',
      tone: 'faint',
    },
  ];
}

export const offsetJson = (offsets: readonly Offset[]): readonly object[] =>
  offsets.map(({ reading, offset, spread, drinks, isClear }) => ({
    reading,
    offset: { value: offset, unit: units[reading] },
    spread: { value: spread, unit: units[reading] },
    count: { value: drinks.length, unit: '' },
    clear: isClear,
    drinks,
  }));
