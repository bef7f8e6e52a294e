/** Looks that are due, in words: which glass, which look, and nothing of what is in it. */

import { trimmedNumber } from '../calc/number-text.ts';
import { type BatchCard, looks, type SampleCard } from '../ledger/cards.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { TimeZone } from '../ledger/times.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { cellWidth } from '../output/wrap.ts';
import type { PlannedLook, Watched } from './due-samples.ts';

const hour = 3_600_000;
const day = 24 * hour;

/** `14`, `batch orange 12` */
export const nameOf = ({ card }: Watched): string =>
  card.kind === 'trial' ? String(card.number) : `batch ${card.name}`;

/**
 * What it belongs to: its series, since a title often tells the ratio and would lead the eye; else its title.
 */
export const subjectOf = ({ card }: Watched): string =>
  (card.kind === 'trial' ? card.series?.text : undefined) ?? card.title ?? '';

/** `beaker`, `retained (6)` */
export const sampleOf = ({ sample: { name, count } }: Watched): string =>
  count === undefined || count === 1 ? name : `${name} (${count})`;

/** `day 7, watch ends`, `after 2 h` */
export function lookWords({ afterSeconds, watched }: Pick<PlannedLook, 'afterSeconds' | 'watched'>): string {
  const days = afterSeconds / 86_400;
  const when =
    days >= 1 ? `day ${trimmedNumber(days, 4)}` : `after ${trimmedNumber(afterSeconds / 3600, 3)} h`;
  return afterSeconds === watched.watchSeconds ? `${when}, watch ends` : when;
}

/** `3 d`, `5 h`, `now`; what is due a few hours early is due now. */
export function overdueWords({ sinceEpoch }: PlannedLook, now: number): string {
  const late = now - sinceEpoch;
  if (late < hour) return 'now';
  return late < 2 * day ? `${Math.floor(late / hour)} h` : `${Math.floor(late / day)} d`;
}

export const whenWords = (epochMilliseconds: number, zone: TimeZone | undefined): string =>
  writtenTime(epochMilliseconds, zone).slice(0, 16).replace('T', ' ');

/** One line each; the subject gives way where the line would be too long. */
export function lookTable(
  planned: readonly PlannedLook[],
  width: number,
  last: { readonly head: string; readonly text: (look: PlannedLook) => string },
): Page {
  if (planned.length === 0) return [];
  const cells = planned.map((look) => ({
    name: visible(nameOf(look.watched)),
    sample: visible(sampleOf(look.watched)),
    subject: visible(subjectOf(look.watched)),
    look: lookWords(look),
    last: last.text(look),
  }));
  const widest = (texts: readonly string[]): number => Math.max(...texts.map(cellWidth));
  const taken =
    widest(['trial', ...cells.map(({ name }) => name)]) +
    widest(['sample', ...cells.map(({ sample }) => sample)]) +
    widest(['look', ...cells.map(({ look }) => look)]) +
    widest([last.head, ...cells.map((one) => one.last)]);
  const room = Math.max(12, Math.min(40, width - taken - 8));
  return [
    {
      kind: 'table',
      columns: [
        { head: 'trial', align: 'right' },
        { head: 'sample', align: 'left' },
        { head: 'of', align: 'left' },
        { head: 'look', align: 'left' },
        { head: last.head, align: 'right' },
      ],
      rows: cells.map((one) => [one.name, one.sample, shortened(one.subject, room), one.look, one.last]),
    },
  ];
}

/** Whole signs, with three dots where some are left off. */
function shortened(text: string, cells: number): string {
  if (cellWidth(text) <= cells) return text;
  const kept: string[] = [];
  for (const sign of text) {
    if (cellWidth([...kept, sign].join('')) > cells - 3) break;
    kept.push(sign);
  }
  return `${kept.join('').trimEnd()}...`;
}

/** What to type, for trials with one sample at once, for others sample by sample; each batch by itself. */
export function typeLines(due: readonly PlannedLook[]): readonly string[] {
  const trials = due.flatMap(({ watched: { card, sample } }) =>
    card.kind === 'trial' ? [{ card, sample }] : [],
  );
  const alone = trials.filter(({ card }) => card.samples.length === 1).map(({ card }) => card.number);
  const named = new Map<string, number[]>();
  for (const { card, sample } of trials.filter((one) => one.card.samples.length > 1)) {
    const key = [...named.keys()].find((name) => isSameName(name, sample.name)) ?? sample.name;
    named.set(key, [...(named.get(key) ?? []), card.number]);
  }
  const batches = due.flatMap(({ watched: { card, sample } }) =>
    card.kind === 'batch' ? [batchLine(card, sample)] : [],
  );
  return [
    ...(alone.length > 0 ? [`neckring look ${ranges(alone)} LOOK`] : []),
    ...[...named].map(([name, numbers]) => `neckring look ${ranges(numbers)} LOOK --sample ${quoted(name)}`),
    ...new Set(batches),
  ];
}

/** By its name; by its file where the name could be the number of a trial, or an option. */
export function batchLine({ name, file, samples }: BatchCard, sample: SampleCard): string {
  const isOther = /^(?:-|\d+(?:[-,]\d+)*$)/u.test(name) && !/^\d{4}-\d{2}-\d{2}/u.test(name);
  const which = samples.length > 1 ? ` --sample ${quoted(sample.name)}` : '';
  return `neckring look ${quoted(isOther ? file : name)} LOOK${which}`;
}

export const lookList = `LOOK is what you see: ${looks.join(', ')}. On a terminal neckring look alone asks for one after the other, shuffled.`;

/** The most that `look` takes in one range. */
const longestRange = 500;

/** `11-13 15` */
export function ranges(numbers: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const number of [...new Set(numbers)].sort((left, right) => left - right)) {
    const run = runs.at(-1);
    if (run?.to === number - 1 && number - run.from < longestRange) run.to = number;
    else runs.push({ from: number, to: number });
  }
  return runs
    .map(({ from, to }) => (from === to ? `${from}` : to === from + 1 ? `${from} ${to}` : `${from}-${to}`))
    .join(' ');
}

/** A word as a shell takes it, whatever stands in it. */
export function quoted(text: string): string {
  const shown = visible(text);
  if (/^[\p{L}\p{N}_./-]+$/u.test(shown)) return shown;
  return /^[\p{L}\p{N} _.,()-]+$/u.test(shown) ? `"${shown}"` : `'${shown.replaceAll("'", `'\\''`)}'`;
}
