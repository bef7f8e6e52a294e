/** An answer as the facts that are written under `results`: one a line, six significant digits. */

import type { Answer, Entry, Facts, Row } from '../calc/answer.ts';
import type { Calculator, Readings } from '../calc/calculator.ts';
import { optionName } from '../calc/calculator.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';

export type TextFact = readonly [label: string, text: string];

const writtenDigits = 6;

/** The figures that were found, by their labels, units behind them. */
export function figureFacts(answer: Answer, readings: Readings): readonly TextFact[] {
  const facts = Object.entries(readings).flatMap(([key, reading]): readonly TextFact[] => {
    const found = answer.found[key];
    if (found === undefined) return [];
    if (!isList(found)) return entryFact(reading.label, found);
    return found.filter(isRow).flatMap((row) => rowFacts(row, reading.columns ?? {}));
  });
  return distinct(facts);
}

/** What was given: items by their names, the rest by the words of its option. */
export function givenFacts(answer: Answer, calculator: Calculator): readonly TextFact[] {
  const facts = Object.keys(calculator.fields).flatMap((key): readonly TextFact[] => {
    const given = answer.given[key];
    if (given === undefined) return [];
    const label = optionName(key).replace(/-/g, ' ');
    if (!isList(given)) return entryFact(label, given, true);
    return given.flatMap((one) =>
      typeof one === 'string' ? [[label, one] as const] : isRow(one) ? itemFact(one) : [],
    );
  });
  return distinct(facts);
}

function itemFact(row: Row): readonly TextFact[] {
  const { item, amount, value } = row;
  if (typeof item !== 'string' || amount === undefined) return [];
  const at = value === undefined ? '' : ` @ ${entryText(value, true)}`;
  return [[item, `${entryText(amount, true)}${at}`]];
}

/** A row of a list: its name, then each number under the name and the label of the column. */
function rowFacts(row: Row, columns: Readings): readonly TextFact[] {
  const name = Object.values(row).find((cell) => typeof cell === 'string');
  return Object.entries(columns).flatMap(([key, column]) => {
    const cell = row[key];
    if (cell === undefined || typeof cell === 'string') return [];
    return entryFact(`${typeof name === 'string' ? `${name}, ` : ''}${column.label}`, cell);
  });
}

function entryFact(label: string, entry: Entry, isGiven = false): readonly TextFact[] {
  if (typeof entry === 'object' && entry.value === null) return [];
  return [[label, entryText(entry, isGiven)]];
}

function entryText(entry: Entry, isGiven: boolean): string {
  if (typeof entry === 'string') return entry;
  if (typeof entry === 'boolean') return entry ? 'yes' : 'no';
  const number = isGiven
    ? trimmedNumber(entry.value ?? 0, writtenDigits)
    : numberText(entry.value ?? 0, writtenDigits);
  return entry.unit === '' ? number : `${number} ${entry.unit}`;
}

/** A label that stands twice gets a number, since a key of a file may stand once. */
function distinct(facts: readonly TextFact[]): readonly TextFact[] {
  const seen = new Map<string, number>();
  return facts.map(([label, text]) => {
    const count = (seen.get(label) ?? 0) + 1;
    seen.set(label, count);
    return [count === 1 ? label : `${label} (${count})`, text];
  });
}

const isList = (fact: Facts[string]): fact is Exclude<Facts[string], Entry> => Array.isArray(fact);
const isRow = (one: unknown): one is Row =>
  typeof one === 'object' && one !== null && !('unit' in one && 'value' in one);
