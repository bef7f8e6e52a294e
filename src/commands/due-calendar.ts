/** The schedule of looks as a calendar file. */

import { createHash } from 'node:crypto';
import type { Io } from '../io.ts';
import { type CalendarEvent, calendarMark, calendarText } from '../output/calendar.ts';
import { normaliseName } from '../reference/name.ts';
import type { PlannedLook } from './due-samples.ts';
import { batchLine, lookWords, nameOf, quoted, sampleOf, subjectOf } from './due-words.ts';
import { writeOut } from './write-out.ts';

const minutesOfLook = 10;

export interface CalendarOf {
  readonly io: Io;
  /** As typed after `--ics`. */
  readonly typed: string;
  readonly looks: readonly PlannedLook[];
  /** Tells the benches of one person apart. */
  readonly bench: string | undefined;
  readonly replace: boolean;
}

/** Output    what was written, for a note; a calendar with nothing in it is none by the standard, and not written */
export async function writeCalendar({ io, typed, looks, bench, replace }: CalendarOf): Promise<string> {
  if (looks.length === 0) return `no look is planned, so ${typed} was not written`;
  const events = looks.map((look) => eventOf(look, bench));
  const text = calendarText(events, io.now());
  const wrote = await writeOut({ io, typed, text, mark: calendarMark, markLines: 3, replace });
  return `${wrote}, ${looks.length} ${looks.length === 1 ? 'look' : 'looks'}`;
}

function eventOf(look: PlannedLook, bench: string | undefined): CalendarEvent {
  const { watched, atEpoch } = look;
  const { card, sample } = watched;
  const command =
    card.kind === 'trial'
      ? `neckring look ${card.number} LOOK${card.samples.length > 1 ? ` --sample ${quoted(sample.name)}` : ''}`
      : batchLine(card, sample);
  const place = [subjectOf(watched), sample.in, sample.at && `at ${sample.at.written}`]
    .filter(Boolean)
    .join(', ');
  return {
    uid: uidOf(look, bench),
    startEpoch: atEpoch,
    minutes: minutesOfLook,
    summary: `Look at ${nameOf(watched)} ${sampleOf(watched)}, ${lookWords(look)}`,
    description: [place, command].filter(Boolean).join('\n'),
  };
}

/** From what makes it this look of this sample, and not from when it is or what is in it. */
function uidOf({ watched: { card, sample }, afterSeconds }: PlannedLook, bench: string | undefined): string {
  const parts = [
    bench ?? '',
    card.kind,
    card.kind === 'trial' ? String(card.number) : normaliseName(card.name),
    normaliseName(sample.name),
    String(afterSeconds),
  ];
  const hex = createHash('sha256').update(JSON.stringify(parts)).digest('hex');
  return `${hex.slice(0, 32)}@neckring`;
}
