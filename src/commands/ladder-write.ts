/** The files of a ladder: one trial a beaker and the series, landed together or not at all. */

import { join } from 'node:path';
import type { Io } from '../io.ts';
import type { SeriesCard } from '../ledger/cards.ts';
import { copiedPlan } from '../ledger/copy-stages.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { editAll } from '../ledger/edit.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { type Change, seeFolder } from '../ledger/land.ts';
import { nameWords, newTrialText, trialFileName } from '../ledger/new-files.ts';
import { hasFileIn, withoutSchemaLine, withSchemaLine } from '../ledger/schema-files.ts';
import { newSeriesText, setBeside } from '../ledger/series-edit.ts';
import { numberInName } from '../ledger/single-trial.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { fail, ProblemError } from '../problem.ts';
import { normaliseName } from '../reference/name.ts';
import type { Call } from './command.ts';
import type { LadderStart, PlannedBeaker } from './ladder-plan.ts';
import { landHere, textNow } from './land-text.ts';

export interface SeriesToWrite {
  readonly name: string;
  /** The series that is added to; undefined for a new one. */
  readonly card: SeriesCard | undefined;
  readonly question?: string | undefined;
  readonly varies: string;
  readonly same: readonly string[];
  readonly judge?: string | undefined;
}

export interface LadderToWrite {
  readonly start: LadderStart;
  readonly series: SeriesToWrite;
  /** In the order of making. */
  readonly beakers: readonly PlannedBeaker[];
  /** When they were made, as it is written; now where it is left out. */
  readonly made?: string;
}

export interface NumberedBeaker {
  readonly beaker: PlannedBeaker;
  readonly number: number;
  readonly file: string;
  /** The very same stands there, neither weighed nor looked at: what a ladder left that was cut off. */
  readonly isThere: boolean;
  readonly text: string;
}

export interface LadderFiles {
  readonly numbered: readonly NumberedBeaker[];
  readonly seriesFile: string;
  readonly changes: readonly Change[];
}

const trials = 'trials';
const seriesFolder = 'series';

/**
 * The files as they would be written now, with the next free numbers in the order of making. A beaker that stands
 * there already as it is planned is taken, so that a ladder that was cut off is completed and never doubled.
 */
export async function ladderFiles(ladder: LadderToWrite, io: Io): Promise<LadderFiles> {
  const { start, series } = ladder;
  const { root } = start.here;
  const seen = await seeFolder(nodeDisk, root, trials);
  const numbered = numberedBeakers(ladder, seen.names, io);
  const seriesChanges = seriesChange(ladder, numbered, io);
  return {
    numbered,
    seriesFile: seriesFileOf(series),
    changes: [
      seen,
      ...(series.card ? [] : [await seeFolder(nodeDisk, root, seriesFolder)]),
      ...numbered.map(({ file, text, isThere }) => ({
        path: file,
        before: isThere ? text : undefined,
        after: text,
      })),
      ...seriesChanges,
    ],
  };
}

function numberedBeakers(ladder: LadderToWrite, names: readonly string[], io: Io): readonly NumberedBeaker[] {
  const { series, start } = ladder;
  const { here } = start;
  let last = Math.max(0, ...names.flatMap((name) => numberInName(name) ?? []));
  const taken = new Set<string>();
  return ladder.beakers.map((beaker): NumberedBeaker => {
    const textAs = (number: number): string => trialText(ladder, { beaker, number }, io);
    const tail = trialFileName(0, titleOf(series, beaker)).slice(numberDigits);
    for (const name of names.filter((one) => one.endsWith(tail) && !taken.has(one))) {
      const number = numberInName(name) ?? 0;
      const file = `${trials}/${name}`;
      if (name !== trialFileName(number, titleOf(series, beaker))) continue;
      if (here.port.sizeOf(join(here.root, file)) === undefined) continue;
      const text = textNow(here.root, file, io);
      if (madeApart(text) !== madeApart(textAs(number))) continue;
      taken.add(name);
      return { beaker, number, file, isThere: true, text };
    }
    last += 1;
    const file = `${trials}/${trialFileName(last, titleOf(series, beaker))}`;
    return { beaker, number: last, file, isThere: false, text: textAs(last) };
  });
}

const numberDigits = 4;

/** A trial's text without the line for editors and the time at which it was made. */
const madeApart = (text: string): string => withoutSchemaLine(text).replace(/^made: .*$/mu, 'made:');

/** `orange ladder, 1 to 3`; what the name of the series says already is not said again. */
function titleOf({ name, varies }: SeriesToWrite, { label }: PlannedBeaker): string {
  const says = normaliseName(name).includes(normaliseName(varies));
  return `${name}, ${says ? label.replace(`${varies} `, '') : label}`.replaceAll(' : ', ' to ');
}

const seriesFileOf = ({ card, name }: SeriesToWrite): string =>
  card?.file ?? `${seriesFolder}/${nameWords(name) || 'series'}.yaml`;

const whyOf = {
  rung: undefined,
  control: 'control, what is known to hold, remade beside the rungs',
  blank: 'blank, everything but the oil',
} as const;

function trialText(
  { start, series, made }: LadderToWrite,
  { beaker, number }: { readonly beaker: PlannedBeaker; readonly number: number },
  io: Io,
): string {
  const { design, here } = start;
  const { card } = design;
  const why = whyOf[beaker.role];
  const facts: readonly Fact[] = [
    ['title', titleOf(series, beaker)],
    ['made', made ?? writtenTime(io.now(), here.settings.zone)],
    ...(card.kind === 'trial' ? [['from', String(card.number)] as const] : []),
    ...(why === undefined ? [] : [['why', why] as const]),
    ['series', series.name],
    ...(card.kind === 'formula' ? [['note', `from formula ${card.name}`] as const] : []),
  ];
  const plain = newTrialText({ number, facts, copied: copiedPlan(card, design.document.source.text) });
  const text = withSchemaLine(hasFileIn(here), 'trial', plain);
  const edited = editAll(trials, text, beaker.rung.edits);
  if (!edited.ok) throw new ProblemError(edited.problems);
  return edited.text;
}

function seriesChange(
  { start, series }: LadderToWrite,
  numbered: readonly NumberedBeaker[],
  io: Io,
): readonly Change[] {
  const { here } = start;
  const path = seriesFileOf(series);
  const numberOf = (role: 'control' | 'blank'): number | undefined =>
    numbered.find(({ beaker }) => beaker.role === role)?.number;
  const [control, blank] = [numberOf('control'), numberOf('blank')];
  if (!series.card) {
    if (here.port.sizeOf(join(here.root, path)) !== undefined)
      fail('file-there', `${path} is there already`, 'give the series another name with --series');
    const { name, question, varies, same, judge } = series;
    const watch = here.bench.watch.written;
    const { card } = start.design;
    const formula = card.kind === 'formula' ? card.name : undefined;
    const text = newSeriesText({ name, question, varies, same, judge, watch, control, blank, formula });
    return [{ path, before: undefined, after: withSchemaLine(hasFileIn(here), 'series', text) }];
  }
  if (control === undefined && blank === undefined) return [];
  const before = textNow(here.root, path, io);
  const edited = editAll(path, before, [
    ...(control === undefined ? [] : [setBeside('control', control)]),
    ...(blank === undefined ? [] : [setBeside('blank', blank)]),
  ]);
  if (!edited.ok) throw new ProblemError(edited.problems);
  return [{ path, before, after: edited.text }];
}

/** Lands the ladder; where another program took a number meanwhile, the next free ones are taken. */
export async function writeLadder(ladder: LadderToWrite, call: Call, io: Io): Promise<LadderFiles> {
  let files: LadderFiles | undefined;
  await landHere(ladder.start.here.root, call, io, async () => {
    files = await ladderFiles(ladder, io);
    return files.changes;
  });
  return files ?? fail('not-written', 'nothing was written', 'type it again');
}
