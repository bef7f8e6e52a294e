/** The file of a series: a new one, and the decision that ends it. */

import { type Change, type Edited, edit, type Proposal, plainPage, type Refusal, refuse } from './edit.ts';
import { changedAt, isSame, plainFact, plainOf } from './edit-facts.ts';
import { columnOf, lineEnd } from './edit-lines.ts';
import { setKey } from './edit-map.ts';
import { lastOffset, type Page, readPage } from './edit-page.ts';
import { type Fact, factLines } from './fact-text.ts';
import { entryOf, type MapEntry } from './tree.ts';
import { plainOrQuoted } from './yaml-text.ts';

export interface NewSeries {
  readonly name: string;
  readonly question?: string | undefined;
  readonly varies: string;
  readonly same: readonly string[];
  readonly judge?: string | undefined;
  readonly watch: string;
  /** Numbers of trials. */
  readonly control?: number | undefined;
  readonly blank?: number | undefined;
  /** What it was made from, whose aims count. */
  readonly formula?: string | undefined;
}

/** Its text, every fact on a line of its own; what passes and how long is watched stand there to be changed. */
export function newSeriesText(series: NewSeries): string {
  const { name, question, varies, same, judge, watch, control, blank, formula } = series;
  const list = (key: string, texts: readonly string[]): readonly string[] =>
    texts.length === 0 ? [] : [`${key}:`, ...texts.map((text) => `  - ${plainOrQuoted(text, 4)}`)];
  const facts = (some: readonly (readonly [string, string | undefined])[]): readonly string[] =>
    factLines(
      some.flatMap(([key, text]): Fact[] => (text === undefined || text === '' ? [] : [[key, text]])),
      0,
    );
  return `${[
    ...facts([
      ['series', name],
      ['question', question],
      ['varies', varies],
    ]),
    ...list('same', same),
    ...facts([['judge', judge]]),
    ...list('passes', ['clear']),
    ...facts([
      ['watch', watch],
      ['control', control?.toString()],
      ['blank', blank?.toString()],
      ['formula', formula],
    ]),
  ].join('\n')}\n`;
}

export interface NewDecision {
  readonly text: string;
  /** `2026-03-09` */
  readonly date: string;
  readonly ratio?: string | undefined;
  readonly why?: string | undefined;
}

const decided = 'decided';

const decisionFacts = ({ text, date, ratio, why }: NewDecision): readonly Fact[] => [
  ['text', text],
  ['date', date],
  ...(ratio === undefined ? [] : [['ratio', ratio] as const]),
  ...(why === undefined ? [] : [['why', why] as const]),
];

/**
 * Writes a decision. One that stands there stays as a comment above the new one.
 * Input     the file's name, its text, the decision, and whether one that stands may be replaced
 * Output    the new text; the old one where it says the same, whenever that was
 * Refuses   a decision that stands, unless it may be replaced; a text that can't be read
 */
export function setDecision(file: string, text: string, decision: NewDecision, again: boolean): Edited {
  const read = readPage(file, text);
  const stands = read.ok ? entryOf(read.page.root, decided) : undefined;
  if (stands && saysSame(stands, decision)) return { ok: true, text, line: lineOf(text, stands) };
  const change: Change = (page) => {
    const there = entryOf(page.root, decided);
    if (!there || there.value.kind === 'empty') return setKey([], decided, decisionFacts(decision))(page);
    return again ? replaced(page, there, decision) : standing(page, there);
  };
  return edit(file, text, change, read);
}

const lineOf = (text: string, { key }: MapEntry): number => text.slice(0, key.start).split('\n').length;

function saysSame({ value }: MapEntry, decision: NewDecision): boolean {
  const date = entryOf(value, 'date')?.value;
  const then = { ...decision, date: date?.kind === 'text' ? date.text : '' };
  return isSame(plainOf(value), plainFact(decisionFacts(then)));
}

function standing(page: Page, { value }: MapEntry): Refusal {
  const text = entryOf(value, 'text')?.value;
  const date = entryOf(value, 'date')?.value;
  const words = text?.kind === 'text' ? `: "${text.text.replace(/\s+/gu, ' ').trim()}"` : '';
  const on = date?.kind === 'text' ? ` on ${date.text}` : '';
  return refuse(
    'decided-already',
    `${page.file} says what was decided${on}${words}`,
    '--again replaces it; the old one stays as a comment above',
  );
}

/** The lines of the old decision, each behind a `#`, and the new one below them. */
function replaced(page: Page, entry: MapEntry, decision: NewDecision): Proposal | Refusal {
  const { text, root } = page;
  if (root.flow) return refuse('key-exists', '`decided` holds something already', 'change it by hand');
  const start = entry.key.start - columnOf(text, entry.key.start);
  const end = lineEnd(text, lastOffset(page, entry.value, true));
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const column = columnOf(text, entry.key.start);
  const margin = ' '.repeat(column);
  const old = text
    .slice(start, end)
    .trimEnd()
    .split(/\r?\n/u)
    .map((line) => `${margin}# ${line.slice(Math.min(column, line.length))}`.trimEnd());
  const facts = decisionFacts(decision);
  const lines = [`${margin}# before:`, ...old, ...factLines([[decided, facts]], column)];
  return {
    ways: [{ start, end, text: lines.map((line) => line.replaceAll('\n', newline) + newline).join('') }],
    expected: changedAt(plainPage(page), [decided], () => plainFact(facts)),
  };
}

/** Adds the number of a control or a blank that was made for a series that is there. */
export const setBeside = (key: 'control' | 'blank', number: number): Change =>
  setKey([], key, String(number), [decided]);
