/** Stocks on the shelf whose keeping has ended or soon will, by their owner's own estimate. */

import { endOfKeeping } from '../ledger/stocks.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { openIngredients } from './ledger-book.ts';
import type { Here } from './open-ledger.ts';

const day = 86_400_000;

export interface KeptStock {
  readonly name: string;
  readonly endEpoch: number;
  readonly isOver: boolean;
}

/** Those that end before `until`, the first first; what is used up does not count. */
export async function endingStocks(here: Here, now: number, until: number): Promise<readonly KeptStock[]> {
  const card = (await openIngredients(here))?.card;
  return (card?.ingredients ?? [])
    .flatMap((one) => {
      const endEpoch = endOfKeeping(one);
      if (endEpoch === undefined || endEpoch > until || one.left?.inner === 0) return [];
      return [{ name: one.name, endEpoch, isOver: endEpoch < now }];
    })
    .sort((left, right) => left.endEpoch - right.endEpoch);
}

export function stockBlocks(stocks: readonly KeptStock[], now: number): Page {
  if (stocks.length === 0) return [];
  return [
    { kind: 'heading', text: 'Keeping, by your own estimate' },
    {
      kind: 'lines',
      lines: stocks.map(({ name, endEpoch, isOver }) => {
        const days = Math.floor(Math.abs(endEpoch - now) / day);
        const when = days === 0 ? 'today' : isOver ? `${days} d ago` : `in ${days} d`;
        return `${visible(name)}: ${isOver ? 'ended' : 'ends'} ${when}`;
      }),
    },
  ];
}
