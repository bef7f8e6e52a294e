import type { Io } from '../io.ts';
import { openBookOf, sourcesOf } from '../ledger/checks.ts';
import { readLedger } from '../ledger/folder.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { type ShelfStock, shelfStocks } from '../ledger/stocks.ts';
import { envelope } from '../output/answer-json.ts';
import { leafText } from '../output/leaf-text.ts';
import type { Page } from '../output/view.ts';
import { fail } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { day } from './batch-words.ts';
import type { Call, Outcome } from './command.ts';
import { expiredStock } from './dilute-shelf.ts';
import { openHere, readPort } from './open-ledger.ts';
import { runStocksNew } from './stocks-new.ts';
import { usesOf } from './uses-amounts.ts';

const millisecondsInDay = 86_400_000;

/** `stocks` lists, `stocks new NAME` writes one. */
export async function runStocks(call: Call, io: Io): Promise<Outcome> {
  const [word, ...more] = call.words;
  if (word === 'new') return runStocksNew(call, io);
  if (word !== undefined)
    return fail(
      'usage',
      `"${[word, ...more].join(' ')}" is more than stocks takes`,
      `${nearestNames(word, ['new'], 1).length > 0 ? 'did you mean new? ' : ''}stocks lists them; stocks new NAME writes one`,
    );
  return listStocks(io);
}

interface ListedStock {
  readonly stock: ShelfStock;
  readonly ageDays: number | undefined;
  /** g in trials and batches made since it was made. */
  readonly usedGrams: number;
}

async function listStocks(io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const { ingredients } = await import('../reference/library.ts');
  const ledger = await readLedger(here.root, readPort(io));
  const { book } = openBookOf(ledger, ingredients);
  const now = io.now();
  const cards = ledger.ingredients?.ingredients ?? [];
  const listed = shelfStocks({ cards, book, now }).map(
    (stock): ListedStock => ({
      stock,
      ageDays:
        stock.madeEpoch === undefined ? undefined : Math.floor((now - stock.madeEpoch) / millisecondsInDay),
      usedGrams: usedSince(stock, ledger, book),
    }),
  );
  const cautions = listed
    .filter(({ stock }) => stock.isExpired)
    .map(({ stock }) => expiredStock(stock, here));
  return {
    exitCode: 0,
    page: listPage(listed, here.settings.zone),
    json: envelope({
      schema: 'stocks@1',
      found: { stocks: listed.map((one) => stockJson(one, here.settings.zone)) },
      cautions,
    }),
    explained: async () =>
      (await import('./explain-bench.ts')).stocksExplanation(
        listed.map(({ stock: { card }, ageDays, usedGrams }) => ({
          name: card.name,
          madeOn: card.made?.written.slice(0, 10),
          ageDays,
          usedGrams,
        })),
      ),
  };
}

type Zone = Awaited<ReturnType<typeof openHere>>['settings']['zone'];

const keepingWords = ({ endEpoch, isExpired, card }: ShelfStock, zone: Zone): string => {
  if (endEpoch === undefined) return card.keep ? `${card.keep.written} from an unknown day` : 'not said';
  return `${day(endEpoch, zone)}${isExpired ? ' PAST' : ''}`;
};

/** `2 ppm cassis thiol` as typed; what is the rest is left out. */
export const strengthWords = ({ card }: ShelfStock): string =>
  card.contains
    .flatMap(({ name, amount }) => (amount === 'rest' ? [] : [`${amount.written} ${name}`]))
    .join(', ');

function usedSince(
  { entry, madeEpoch }: ShelfStock,
  ledger: Ledger,
  book: ReturnType<typeof openBookOf>['book'],
): number {
  const wanted = { entries: new Set([entry.name]), lot: undefined, of: undefined };
  const made = new Map(
    [...ledger.trials, ...ledger.batches].map((card) => [card.file, card.made?.epochMilliseconds]),
  );
  return usesOf({ ledger, book, wanted, sources: sourcesOf(ledger, book) })
    .filter(
      ({ kind, file }) => (kind === 'trial' || kind === 'batch') && (made.get(file) ?? 0) >= (madeEpoch ?? 0),
    )
    .reduce((sum, { massGrams }) => sum + (massGrams ?? 0), 0);
}

function stockJson({ stock, ageDays, usedGrams }: ListedStock, zone: Zone): object {
  const { card, entry, endEpoch, isExpired, leftGrams } = stock;
  return {
    name: card.name,
    contains: entry.composition.map(({ substance, massFraction }) => ({
      substance: substance.name,
      massFraction: { value: massFraction, unit: '' },
    })),
    made: card.made?.written ?? '',
    age: { value: ageDays ?? null, unit: 'd' },
    keepsUntil: endEpoch === undefined ? '' : day(endEpoch, zone),
    keepingIs: "the owner's estimate",
    expired: isExpired,
    left: { value: leftGrams ?? null, unit: 'g' },
    used: { value: usedGrams, unit: 'g' },
  };
}

function listPage(stocks: readonly ListedStock[], zone: Zone): Page {
  if (stocks.length === 0)
    return [
      {
        kind: 'text',
        text: 'No stocks on the shelf. An ingredient that says contains, made and keep is one; neckring stocks new NAME writes it.',
      },
    ];
  const hasUse = stocks.some(({ usedGrams }) => usedGrams > 0);
  const hasLeft = stocks.some(({ stock }) => stock.card.left);
  return [
    {
      kind: 'grid',
      columns: [
        { head: 'stock', align: 'left' },
        { head: 'strength', align: 'left' },
        { head: 'made', align: 'left' },
        { head: 'age', align: 'right' },
        { head: 'keeps until', align: 'left' },
        ...(hasLeft ? [{ head: 'left', align: 'right' } as const] : []),
        ...(hasUse ? [{ head: 'used', align: 'right' } as const] : []),
      ],
      rows: stocks.map(({ stock, ageDays, usedGrams }) => [
        stock.card.name,
        strengthWords(stock),
        stock.card.made?.written.slice(0, 10) ?? '',
        ageDays === undefined ? '' : `${ageDays} d`,
        keepingWords(stock, zone),
        ...(hasLeft ? [stock.card.left?.written ?? ''] : []),
        ...(hasUse ? [usedGrams > 0 ? leafText({ value: usedGrams, unit: 'g' }, 3) : ''] : []),
      ]),
    },
    {
      kind: 'text',
      text: `The end of keeping is the owner's own estimate, counted from the day of making.${hasUse ? ' Used: in trials and batches made since.' : ''}${hasLeft ? ' Left: as written in ingredients.yaml.' : ''}`,
      tone: 'faint',
    },
  ];
}
