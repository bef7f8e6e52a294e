/** The rungs of a series in order: what was seen of each sample day by day, and what it tasted of. */

import { trimmedNumber } from '../calc/number-text.ts';
import { dayOf, looksByDay, stripText } from '../ledger/look-strip.ts';
import type { Rung, SampleFate, SeriesRungs, Standing } from '../ledger/rungs.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Block, Column, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { cellWidth, wrapped } from '../output/wrap.ts';
import { outcomeWords, shortOutcome } from './outcome-words.ts';
import { figureText } from './series-words.ts';

/** Control and blank first, then all rungs going up. */
export function rungBlocks(series: SeriesRungs, tastes: readonly string[], width: number): Page {
  const { rungs, scales, control, blank } = series;
  const beside = [
    ...(control ? [['control', standingText(control)] as const] : []),
    ...(blank ? [['blank', standingText(blank)] as const] : []),
  ];
  return [
    ...(beside.length > 0 ? [{ kind: 'pairs', pairs: beside, areSentences: true } as const] : []),
    ...(rungs.length > 0
      ? [wrappedTable(columnsOf(series), rungs.flatMap(rowsWith(series, tastes)), width)]
      : []),
    ...remarks(scales.length > 0 ? rungs : []),
  ];
}

/** The last column goes on in more rows: forty rungs are laid out sooner than by the table library. */
function wrappedTable(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): Block {
  const last = columns.length - 1;
  const lead = columns
    .slice(0, last)
    .map(({ head }, at) => Math.max(cellWidth(head), ...rows.map((row) => cellWidth(row[at] ?? ''))));
  const room = Math.max(24, width - lead.reduce((sum, one) => sum + one + 2, 0));
  const lines = rows.flatMap((row) =>
    wrapped(row[last] ?? '', room).map((text, at) => [
      ...row.slice(0, last).map((cell) => (at === 0 ? cell : '')),
      text,
    ]),
  );
  return { kind: 'table', columns, rows: lines };
}

function standingText({ trial, judged }: Standing): string {
  if (!judged) return `trial ${trial.number}: no sample to judge it by`;
  const strip = stripText(looksByDay(trial, judged.sample));
  const outcome = outcomeWords({ card: trial, sample: judged.sample, outcome: judged.outcome });
  return visible(`trial ${trial.number}: ${outcome}${strip === '' ? '' : ` (${strip})`}`);
}

function columnsOf({ scales }: SeriesRungs): readonly Column[] {
  return [
    ...scales.flatMap(({ text, unit, isOilRatio }): readonly Column[] => [
      { head: isOilRatio ? 'ratio' : `${visible(text)}${unit ? `, ${unit}` : ''}`, align: 'right' },
      ...(isOilRatio ? [{ head: '1 oil to', align: 'right' } as const] : []),
    ]),
    { head: 'trial', align: 'right' },
    { head: 'outcome', align: 'left' },
    { head: 'looks', align: 'left' },
  ];
}

const rowsWith =
  ({ scales }: SeriesRungs, tastes: readonly string[]) =>
  (rung: Rung): readonly (readonly string[])[] => {
    const values = scales.flatMap((scale, at) => {
      const value = rung.values[at] ?? 0;
      const number = figureText({ ...scale, unit: '' }, value);
      return scale.isOilRatio ? [number, value > 0 ? trimmedNumber(1 / value, 3) : ''] : [number];
    });
    const lead = [...values, String(rung.trial.number)];
    const empty = lead.map(() => '');
    const fates = rung.judged ? [rung.judged, ...rung.others] : rung.others;
    const rows = fates.flatMap((fate, at) => {
      const name = fates.length > 1 ? `${visible(fate.sample.name)}: ` : '';
      const of = { card: rung.trial, sample: fate.sample, outcome: fate.outcome };
      const strip = visible(stripText(looksByDay(rung.trial, fate.sample)));
      const first = [...(at === 0 ? lead : empty), shortOutcome(of), `${name}${strip || 'no look yet'}`];
      return [first, ...tasteTexts(rung, fate, tastes).map((text) => [...empty, '', text])];
    });
    return rows.length > 0 ? rows : [[...lead, '', 'no sample']];
  };

/** `tasted d7: soapy 2, bright 4`, the bench's own words first. */
function tasteTexts(
  { trial }: Standing,
  { sample }: SampleFate,
  tastes: readonly string[],
): readonly string[] {
  const rank = (word: string): number => {
    const at = tastes.findIndex((known) => isSameName(known, word));
    return at === -1 ? tastes.length : at;
  };
  return observationsOf(trial, sample)
    .filter(({ taste }) => taste.length > 0)
    .map(({ taste, at }) => {
      const scores = [...taste].sort((one, other) => rank(one.word) - rank(other.word));
      const day = dayOf(trial, sample, at.epochMilliseconds);
      const when = day === undefined ? at.written.slice(0, 10) : `d${day}`;
      return visible(`tasted ${when}: ${scores.map(({ word, score }) => `${word} ${score}`).join(', ')}`);
    });
}

/** What the short outcomes don't say: late failures, recoveries, other samples that failed beside the judged one. */
function remarks(rungs: readonly Rung[]): Page {
  const notes = rungs.flatMap((rung) => [...lateNotes(rung), ...otherNotes(rung)]);
  const block: Block = { kind: 'notes', mark: '-', notes };
  return notes.length > 0 ? [block] : [];
}

function lateNotes({ trial, judged }: Rung): readonly string[] {
  if (!judged) return [];
  const { outcome, sample } = judged;
  if (outcome.outcome !== 'failed' || !(outcome.heldTheWatch || outcome.recovery)) return [];
  return [`${trial.number}: ${outcomeWords({ card: trial, sample, outcome })}; it counts as failed`];
}

function otherNotes({ trial, judged, others }: Rung): readonly string[] {
  if (!judged || judged.outcome.outcome === 'failed') return [];
  return others.flatMap(({ sample, outcome }) => {
    if (outcome.outcome !== 'failed') return [];
    const words = outcomeWords({ card: trial, sample, outcome });
    const where = sample.at ? ` (at ${sample.at.written})` : '';
    const against = judged.outcome.outcome === 'held' ? `, though its ${judged.sample.name} held` : '';
    return [visible(`${trial.number}: its ${sample.name}${where} ${words}${against}`)];
  });
}
