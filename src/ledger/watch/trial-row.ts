/** What is kept of a trial, as fields parted by tabs; what `list` and `due` ask of thousands stands first. */

import type { BenchCard, MadeCard, TrialCard } from '../cards.ts';
import { type DayLook, newestLook } from '../look-strip.ts';
import { looksOpen } from '../schedule.ts';
import { fieldOf, textOf } from './kept-text.ts';
import { openPacked, packedText } from './packed-card.ts';
import { openRules, type RulesText } from './watch-rules.ts';

/** A trial in a line. */
export interface TrialHead {
  /** From the root of the ledger, with `/`. */
  readonly file: string;
  readonly number: number;
  readonly title: string;
  /** As written. */
  readonly made: string;
  readonly series: string;
  /** The newest look of each sample. */
  readonly newest: readonly SampleLook[];
}

export interface SampleLook {
  readonly sample: string;
  readonly look?: DayLook;
}

/** What tells whether a sample is still looked at. */
export interface Judging {
  readonly bench: BenchCard;
  readonly rules: RulesText;
  /** Milliseconds since 1970. */
  readonly now: number;
}

const betweenSamples = '\u001e';
const inSample = '\u001f';

/**
 * From when on no look of it is open, whatever the time is; undefined where one is open or may be.
 *
 * Looks of the future don't count yet, so it holds from the newest look on, under the same rules.
 */
export function doneFrom(card: MadeCard, { bench, rules, now }: Judging): number | undefined {
  if (!card.isSound) return Number.NEGATIVE_INFINITY;
  const newest = card.observations.reduce(
    (most, { at }) => Math.max(most, at.epochMilliseconds),
    Number.NEGATIVE_INFINITY,
  );
  if (newest > now) return undefined;
  const isOpen = looksOpen({ card, bench, series: openRules(rules), now }).some(
    ({ open }) => open.length > 0,
  );
  return isOpen ? undefined : newest;
}

/** `judging` is absent where nobody can tell which looks are open: then none is taken for made. */
export function trialRow(card: TrialCard, judging: Judging | undefined): string {
  const { number, title, made, series, newest } = headOf(card);
  // An empty name is written as none.
  const from = judging && card.series?.text !== '' ? doneFrom(card, judging) : undefined;
  return [
    from ?? '',
    from === undefined ? '' : (judging?.rules ?? ''),
    fieldOf(series),
    number,
    fieldOf(made),
    fieldOf(title),
    newest.map(sampleField).join(betweenSamples),
    from === undefined ? packedText(card) : '',
  ].join('\t');
}

/** Whether no look of it is open, by what is kept; where that is not sure, no. */
export function isDone(row: string, rulesOf: (series: string) => RulesText, now: number): boolean {
  const [from = '', rules = '', series = ''] = row.split('\t', 3);
  return from !== '' && Number(from) <= now && rules === (series === '' ? '' : rulesOf(textOf(series)));
}

/** The trial with what looking asks of it; undefined where a row has it not. */
export function cardInRow(file: string, row: string): TrialCard | undefined {
  const packed = row.slice(row.lastIndexOf('\t') + 1);
  return packed === '' ? undefined : openPacked(file, packed);
}

export function headInRow(file: string, row: string): TrialHead {
  const [, , series = '', number = '', made = '', title = '', looks = ''] = row.split('\t', 7);
  return {
    file,
    number: Number(number),
    title: textOf(title),
    made: textOf(made),
    series: textOf(series),
    get newest() {
      return looks === '' ? [] : looks.split(betweenSamples).map(openSample);
    },
  };
}

export const headOf = (card: TrialCard): TrialHead => ({
  file: card.file,
  number: card.number,
  title: card.title ?? '',
  made: card.made?.written ?? '',
  series: card.series?.text ?? '',
  newest: card.samples.map((sample) => {
    const look = newestLook(card, sample);
    return { sample: sample.name, ...(look ? { look } : {}) };
  }),
});

const sampleField = ({ sample, look }: SampleLook): string =>
  [fieldOf(sample), ...(look ? [look.day ?? '', fieldOf(look.words)] : [])].join(inSample);

function openSample(field: string): SampleLook {
  const [sample = '', day, words] = field.split(inSample);
  return {
    sample: textOf(sample),
    ...(day === undefined || words === undefined
      ? {}
      : { look: { day: day === '' ? undefined : Number(day), words: textOf(words) } }),
  };
}
