import { describe, expect, it } from 'vitest';
import { type CalendarEvent, calendarText, escaped, folded, utcTime } from '../../src/output/calendar.ts';

const event = (change: Partial<CalendarEvent> = {}): CalendarEvent => ({
  uid: 'a@neckring',
  startEpoch: Date.parse('2026-03-16T11:20:00Z'),
  minutes: 10,
  summary: 'Look at 14 beaker, day 7',
  description: 'orange ladder\nneckring look 14 LOOK',
  ...change,
});

const written = Date.parse('2026-03-12T12:00:00Z');

/** RFC 5545, section 3.1: lines that begin with a space go on from the line before. */
const unfolded = (text: string): readonly string[] =>
  text
    .replace(/\r\n[ \t]/g, '')
    .split('\r\n')
    .slice(0, -1);

/** RFC 5545, section 3.3.11, backwards. */
const read = (value: string): string =>
  value.replace(/\\([\\;,nN])/g, (_, sign: string) => (/n/i.test(sign) ? '\n' : sign));

const textOf = (text: string, name: string): string =>
  read(
    unfolded(text)
      .find((line) => line.startsWith(`${name}:`))
      ?.slice(name.length + 1) ?? '',
  );

describe('a calendar', () => {
  it('published: the lines that RFC 5545 asks of a calendar and an event (sections 3.4, 3.6, 3.6.1)', () => {
    expect(unfolded(calendarText([event()], written))).toEqual([
      'BEGIN:VCALENDAR',
      'PRODID:-//neckring//schedule of looks//EN',
      'VERSION:2.0',
      'CALSCALE:GREGORIAN',
      'BEGIN:VEVENT',
      'UID:a@neckring',
      'DTSTAMP:20260312T120000Z',
      'DTSTART:20260316T112000Z',
      'DURATION:PT10M',
      'SUMMARY:Look at 14 beaker\\, day 7',
      'DESCRIPTION:orange ladder\\nneckring look 14 LOOK',
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
      'END:VCALENDAR',
    ]);
  });

  // The example of section 3.3.11: "Project XYZ Final Review\nConference Room - 3B\nCome Prepared."
  it('published: the example of RFC 5545, section 3.3.11', () => {
    expect(escaped('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    );
  });

  it('published: a time in UTC as in RFC 5545, section 3.3.5, form 2', () => {
    expect(utcTime(Date.parse('1998-01-19T07:00:00Z'))).toBe('19980119T070000Z');
  });

  const nasty = [
    'a, b; c \\ d',
    'END:VEVENT\r\nBEGIN:VALARM\r\nACTION:PROCEDURE',
    'line\nnext\rlast\r\n',
    '\u0000\u0007\u001b[31m red \u202e turned',
    'é'.repeat(200),
    '\u{1f34a}'.repeat(90),
    'x'.repeat(1000),
    '',
    '\\n is no line end',
    'half \ud83c of a sign',
  ];

  it.each(nasty)('law: %j can not drive a reader, and is read back', (text) => {
    const calendar = calendarText([event({ summary: text, description: text })], written);
    expect(calendar.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(calendar.replace(/\r\n/g, '')).not.toMatch(/[\u0000-\u001f\u007f]/);
    const lines = calendar.split('\r\n');
    for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(unfolded(calendar)).toHaveLength(14);
    if (!/[\u0000-\u0009\u000b-\u001f\u202e\ud83c]/.test(text) || text.includes('\u{1f34a}'))
      expect(textOf(calendar, 'SUMMARY')).toBe(text);
  });

  it('law: folding at every length keeps the line and cuts no sign', () => {
    for (const sign of ['x', 'é', '€', '\u{1f34a}'])
      for (let count = 1; count < 160; count += 1) {
        const line = `A${sign.repeat(count)}`;
        const text = folded(line);
        expect(text.replaceAll('\r\n ', '')).toBe(line);
        expect(text).not.toContain('\ufffd');
        for (const piece of text.split('\r\n')) expect(Buffer.byteLength(piece)).toBeLessThanOrEqual(75);
      }
  });
});
