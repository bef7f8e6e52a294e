/** `due`: which samples need a look now, what comes, and the schedule as a calendar file. */

import { parseNumber } from '../calc/number.ts';
import type { Io } from '../io.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { writeCalendar } from './due-calendar.ts';
import { lookJson } from './due-json.ts';
import { comingLooks, dueLooks, type PlannedLook, watchedSamples } from './due-samples.ts';
import { endingStocks, type KeptStock, stockBlocks } from './due-stocks.ts';
import {
  lookList,
  lookTable,
  lookWords,
  nameOf,
  overdueWords,
  sampleOf,
  typeLines,
  whenWords,
} from './due-words.ts';
import { type Here, openHere } from './open-ledger.ts';

const day = 86_400_000;
/** Ahead, for stocks, where nobody asks for more. */
const soonDays = 7;

export async function runDue(call: Call, io: Io): Promise<Outcome> {
  const until = untilOf(call, io.now());
  const here = await openHere(io);
  const now = io.now();
  const { watched, errors } = await watchedSamples(io, here);
  const due = dueLooks(watched, now);
  const coming = comingLooks(watched, now);
  const shown = coming.filter(({ atEpoch }) => atEpoch <= (until ?? now));
  const stocks = await endingStocks(here, now, until ?? now + soonDays * day);
  const typed = optionValue(call, 'ics');
  const replace = call.flags.has('replace');
  const looks = [...due, ...(until === undefined ? coming : shown)];
  const notes =
    typed === undefined ? [] : [await writeCalendar({ io, typed, looks, bench: here.bench.name, replace })];
  const asked = call.flags.has('json');
  return {
    exitCode: 0,
    page: duePage({ due, coming, shown, stocks, watched: watched.length, now, here, width: io.columns }),
    json: envelope({
      schema: 'due@1',
      found: {
        due: (asked ? due : []).map((look) => lookJson(look, now, here.settings.zone)),
        coming: (asked ? (until === undefined ? coming.slice(0, 1) : shown) : []).map((look) =>
          lookJson(look, now, here.settings.zone),
        ),
        watched: { value: watched.length, unit: '' },
        stocks: stocks.map((stock) => stockJson(stock, here)),
        calendar: looks.length > 0 ? (typed ?? '') : '',
      },
    }),
    notes: [...notes, ...errorNotes(errors)],
    explained: async () =>
      (await import('./explain-bench.ts')).dueExplanation(
        [...due, ...(shown.length > 0 ? shown : coming.slice(0, 1))],
        here.settings.zone,
      ),
  };
}

const errorNotes = (errors: number): readonly string[] =>
  errors === 0
    ? []
    : [
        `${errors} error${errors === 1 ? '' : 's'} in the files; what can't be read is left out; neckring check shows them`,
      ];

const mostDays = 36_500;

/** Until when what comes is shown; undefined where nobody asks for it. */
function untilOf(call: Call, now: number): number | undefined {
  const typed = optionValue(call, 'days');
  const isAll = call.flags.has('all');
  if (typed === undefined) return isAll ? Number.POSITIVE_INFINITY : undefined;
  if (isAll) return fail('usage', 'both --all and --days are given', 'give one of them');
  const days = parseNumber(typed.replace(/\s*d$/u, ''));
  if (!days.ok)
    return fail(days.fault.code, `--days: ${days.fault.message}`, 'give a number, such as --days 7');
  if (days.value > 0 && days.value <= mostDays) return now + days.value * day;
  return fail('out-of-range', `--days ${typed} can't be`, `give a number above 0 and at most ${mostDays}`);
}

interface DuePage {
  readonly due: readonly PlannedLook[];
  readonly coming: readonly PlannedLook[];
  readonly shown: readonly PlannedLook[];
  readonly stocks: readonly KeptStock[];
  readonly watched: number;
  readonly now: number;
  readonly here: Here;
  readonly width: number;
}

function duePage(of: DuePage): Page {
  const { due, shown, stocks, now, here, width } = of;
  const { zone } = here.settings;
  const lines = typeLines(due);
  return [
    ...(due.length === 0
      ? [{ kind: 'text', text: nothingDue(of) } as const]
      : lookTable(due, width, { head: 'overdue', text: (look) => overdueWords(look, now) })),
    ...(shown.length > 0
      ? [
          { kind: 'heading', text: 'To come' } as const,
          ...lookTable(shown, width, { head: 'when', text: ({ atEpoch }) => whenWords(atEpoch, zone) }),
        ]
      : []),
    ...stockBlocks(stocks, now),
    ...(lines.length > 0
      ? [
          { kind: 'heading', text: 'Type what you see' } as const,
          { kind: 'lines', lines: lines.map((line) => `  ${line}`) } as const,
          { kind: 'text', text: lookList, tone: 'faint' } as const,
        ]
      : []),
  ];
}

function nothingDue({ coming, watched, here }: DuePage): string {
  const [next] = coming;
  if (!next) return 'Nothing is due, and no sample is being watched.';
  const glass = `${next.watched.card.kind === 'trial' ? 'trial ' : ''}${nameOf(next.watched)}, ${sampleOf(next.watched)}`;
  const samples = watched === 1 ? 'One sample is' : `${watched} samples are`;
  return visible(
    `Nothing is due. ${samples} watched; the next look is ${glass}, ${lookWords(next)}, ${whenWords(next.atEpoch, here.settings.zone)}.`,
  );
}

const stockJson = ({ name, endEpoch, isOver }: KeptStock, here: Here) => ({
  stock: name,
  ends: writtenTime(endEpoch, here.settings.zone),
  over: isOver,
});
