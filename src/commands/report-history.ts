/** The figures of a record through the commits that changed it. */

import { numberText } from '../calc/number-text.ts';
import type { Io } from '../io.ts';
import type { Part, Table } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';
import { isProblemError } from '../problem.ts';
import { type Figure, figureAt, figuresAsked } from './history-figures.ts';
import { type HistoryEntry, historyOf } from './history-record.ts';
import type { Here } from './open-ledger.ts';

const followed = figuresAsked(['ph,acid,brix,oil,emulsifier,oil per emulsifier,hlb,co2']);

/** Nothing where the file is in no commit, or the ledger in no repository. */
export async function historyParts(io: Io, here: Here, file: string): Promise<readonly Part[]> {
  const entries = await entriesOf(io, here, file);
  if (!entries.some(({ commit }) => commit)) return [];
  const moved = followed.filter((figure) => isMoved(figure, entries));
  if (moved.length === 0) return [{ kind: 'grid', ...tableOf(entries, []) }];
  const [first, last] = [whenText(entries[0]), whenText(entries.at(-1))];
  return [
    {
      kind: 'chart',
      chart: {
        draws: 'course',
        of: {
          id: 'history-drawing',
          title: 'Figures through time',
          about: `${moved.map(({ label }) => label).join(', ')}, from ${first} to ${last}; the table has the figures.`,
          strips: moved.map((figure) => ({
            label: figure.unit === '' ? figure.label : `${figure.label}, ${figure.unit}`,
            values: entries.map(({ side }) => figureAt(figure, side)),
            textOf: (value) => numberText(value, figure.digits),
          })),
          ends: [first, last],
        },
      },
      table: tableOf(entries, moved),
    },
  ];
}

async function entriesOf(io: Io, here: Here, file: string): Promise<readonly HistoryEntry[]> {
  try {
    const text = new TextDecoder().decode(here.port.read(`${here.root}/${file}`));
    return (await historyOf({ io, here, file, text, withFigures: true })).entries;
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return [];
  }
}

function isMoved(figure: Figure, entries: readonly HistoryEntry[]): boolean {
  const texts = entries.flatMap(({ side }) => {
    const value = figureAt(figure, side);
    return value === undefined ? [] : [numberText(value, figure.digits)];
  });
  return new Set(texts).size > 1;
}

const whenText = (entry: HistoryEntry | undefined): string =>
  entry?.commit ? entry.commit.at.slice(0, 10) : 'not committed';

function tableOf(entries: readonly HistoryEntry[], figures: readonly Figure[]): Table {
  return {
    caption: '',
    columns: [
      { head: 'when', align: 'left' },
      ...figures.map(({ label }) => ({ head: label, align: 'right' }) as const),
      { head: 'what changed', align: 'left' },
    ],
    rows: entries.map((entry) => [
      whenText(entry),
      ...figures.map((figure) => {
        const value = figureAt(figure, entry.side);
        return value === undefined ? '-' : numberText(value, figure.digits);
      }),
      visible(entry.words.join('; ')),
    ]),
  };
}
