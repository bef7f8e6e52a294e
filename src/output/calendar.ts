/** A schedule as iCalendar text (RFC 5545), which every calendar takes in. */

import { visible } from './visible.ts';

export interface CalendarEvent {
  /** The same for the same thing in every file, so that a calendar moves it instead of adding it again. */
  readonly uid: string;
  /** Milliseconds since 1970. */
  readonly startEpoch: number;
  readonly minutes: number;
  readonly summary: string;
  readonly description: string;
}

/** Who wrote the file; by it a file of ours is known. */
export const calendarMark = 'PRODID:-//neckring//';

/**
 * The text of a calendar.
 *
 * Input     events; the time of writing, in ms since 1970
 * Output    lines of at most 75 octets, ended by CR LF; times in UTC
 * Source    RFC 5545, sections 3.1 (folding), 3.3.5 (times), 3.3.11 (escapes), 3.6 (components)
 */
export function calendarText(events: readonly CalendarEvent[], writtenEpoch: number): string {
  const lines = [
    'BEGIN:VCALENDAR',
    `${calendarMark}schedule of looks//EN`,
    'VERSION:2.0',
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => [
      'BEGIN:VEVENT',
      `UID:${escaped(event.uid)}`,
      `DTSTAMP:${utcTime(writtenEpoch)}`,
      `DTSTART:${utcTime(event.startEpoch)}`,
      `DURATION:PT${event.minutes}M`,
      `SUMMARY:${escaped(event.summary)}`,
      `DESCRIPTION:${escaped(event.description)}`,
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/**
 * `20260316T112000Z`
 *
 * Example   utcTime(1773660000000) -> 20260316T112000Z
 */
export const utcTime = (epochMilliseconds: number): string =>
  `${new Date(epochMilliseconds).toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;

/**
 * Text as a value: backslash, comma, semicolon and line end escaped, everything else that could drive a reader
 * made visible, halves of signs replaced.
 *
 * Example   escaped('hazy, a ring') -> hazy\, a ring
 */
export const escaped = (text: string): string =>
  text
    .replace(/\p{Cs}/gu, '\ufffd')
    .split(/\r\n|\r|\n/)
    .map((line) => visible(line).replace(/[\\,;]/g, (sign) => `\\${sign}`))
    .join('\\n');

const mostOctets = 75;

/** A line broken so that no piece is longer than 75 octets and no sign is cut; what goes on begins with a space. */
export function folded(line: string): string {
  const encoder = new TextEncoder();
  let text = '';
  let octets = 0;
  for (const sign of line) {
    const size = encoder.encode(sign).length;
    if (octets + size > mostOctets) {
      text += '\r\n ';
      octets = 1;
    }
    text += sign;
    octets += size;
  }
  return text;
}
