/** `drops` with a stock of the shelf: named by --stock, or chosen where --stock is left out. */

import { parseQuantity } from '../calc/parse-quantity.ts';
import { partsWords } from '../calc/parts-words.ts';
import type { Io } from '../io.ts';
import { fail } from '../problem.ts';
import { fewestDrops, mostDrops } from '../reference/drops.ts';
import { type Call, optionValue } from './command.ts';
import { openShelf } from './dilute-shelf.ts';

export interface TakenStock {
  readonly typed: Readonly<Record<string, readonly string[]>>;
  readonly notes: readonly string[];
}

const nothing: TakenStock = { typed: {}, notes: [] };

/** Strength and drop of the stock; nothing where a strength is typed, or no shelf is there. */
export async function stockForDrops(call: Call, io: Io): Promise<TakenStock> {
  const typed = optionValue(call, 'stock');
  if (typed !== undefined && /^[-+.\d(]/.test(typed.trim()) && parseQuantity(typed).ok) return nothing;
  const shelf = await openShelf(io);
  const stocks = shelf.stocks.flatMap((stock) => {
    const potent = stock.entry.composition.filter(({ substance }) => substance.record.potent);
    const strength = potent.reduce((sum, { massFraction }) => sum + massFraction, 0);
    const drop = stock.entry.dropGrams ?? shelf.bench?.drop?.massGrams;
    return strength > 0
      ? [{ stock, strength, drop, substances: potent.map(({ substance }) => substance.name) }]
      : [];
  });
  if (typed !== undefined) {
    const entry = shelf.book.find(typed);
    const named = stocks.find(({ stock }) => stock.entry.name === entry?.name);
    return named ? taken(named, call, shelf.expired) : nothing;
  }
  const fresh = stocks.filter(({ stock }) => !stock.isExpired);
  if (new Set(fresh.flatMap(({ substances }) => substances)).size > 1)
    fail(
      'which-stock',
      `there are stocks of several compounds: ${fresh.map(({ stock }) => stock.card.name).join(', ')}`,
      'say which with --stock NAME',
    );
  const chosen = nearestTo(fresh, call);
  return chosen ? taken(chosen, call, shelf.expired) : nothing;
}

interface Candidate {
  readonly stock: Parameters<Awaited<ReturnType<typeof openShelf>>['expired']>[0];
  readonly strength: number;
  readonly drop: number | undefined;
}

/** The one that gives a countable number of drops, most nearly ten. */
function nearestTo(candidates: readonly Candidate[], call: Call): Candidate | undefined {
  const target = parseQuantity(optionValue(call, 'target') ?? '', ['share']);
  const amount = parseQuantity(optionValue(call, 'in') ?? '', ['mass', 'volume']);
  if (!target.ok || !amount.ok) return candidates[0];
  const middle = Math.sqrt(fewestDrops.value * mostDrops.value);
  const far = ({ strength, drop = 0.03 }: Candidate): number =>
    Math.abs(Math.log((target.value.inner * amount.value.inner) / (strength * drop) / middle));
  return candidates.toSorted((one, other) => far(one) - far(other))[0];
}

function taken(
  { stock, strength, drop }: Candidate,
  call: Call,
  expired: Awaited<ReturnType<typeof openShelf>>['expired'],
): TakenStock {
  const isTyped = optionValue(call, 'drop') !== undefined;
  const dropWords = drop === undefined || isTyped ? '' : `, a drop ${Number(drop.toPrecision(6))} g`;
  return {
    typed: {
      stock: [partsWords(strength, 12)],
      ...(drop === undefined || isTyped ? {} : { drop: [`${drop} g`] }),
    },
    notes: [
      `from the shelf: ${stock.card.name}, ${partsWords(strength)}${dropWords}`,
      ...(stock.isExpired ? [expired(stock).text] : []),
    ],
  };
}
