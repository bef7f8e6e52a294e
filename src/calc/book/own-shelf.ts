/** The person's own entries laid over the built-in ones, each worked out when it is first asked for. */

import { nearestNames, normaliseName } from '../../reference/name.ts';
import type { BookEntry, BookFault, ListedName, OwnEntry } from '../book.ts';
import { compositionOf } from './composition.ts';
import { type Found, notFound } from './found.ts';
import { ownParts } from './own-record.ts';
import { isPure, namesOf, pureEntry, type Shelf } from './shelf.ts';

export interface OwnShelf {
  /** By a normalised name or alias; own before built-in. */
  readonly find: (key: string) => BookEntry | undefined;
  readonly entries: () => readonly BookEntry[];
  /** Built-in entries that no own entry of the same name stands before. */
  readonly builtInEntries: () => readonly BookEntry[];
  readonly names: () => readonly ListedName[];
  /** Works out every own entry. */
  readonly faults: () => readonly BookFault[];
}

export interface OwnShelfInput {
  readonly own: readonly OwnEntry[];
  readonly shelf: Shelf;
}

export function ownShelf({ own, shelf }: OwnShelfInput): OwnShelf {
  const places = placesOf(own);
  const made = new Map<number, BookEntry>();
  const builtIn = new Map<string, BookEntry>();
  const faults: BookFault[] = [];
  /** Own entries that are being worked out, outermost first. */
  const trail: number[] = [];

  const builtInEntry = (key: string): BookEntry | undefined => {
    const record = shelf.find(key);
    if (!record) return undefined;
    const entry = builtIn.get(record.name) ?? pureEntry({ name: record.name, record, own: false });
    builtIn.set(record.name, entry);
    return entry;
  };

  const placeOf = (key: string): number | undefined => {
    const place = places.get(key);
    if (place !== undefined) return place;
    const record = shelf.find(key);
    return record && places.get(normaliseName(record.name));
  };

  const find = (key: string): BookEntry | undefined => {
    const place = placeOf(key);
    return place === undefined ? builtInEntry(key) : make(place);
  };

  /** From inside an own entry: itself by name is the built-in record that it stands before. */
  const lookUp = (name: string): Found => {
    const key = normaliseName(name);
    const place = placeOf(key);
    const opened = place === undefined ? -1 : trail.indexOf(place);
    const isSelf = opened >= 0 && opened === trail.length - 1;
    const entry = isSelf || place === undefined ? builtInEntry(key) : undefined;
    if (entry) return { kind: 'found', entry };
    if (place === undefined) return { kind: 'unknown', nearest: nearestNames(name, allNames(), 3) };
    if (opened < 0) return { kind: 'found', entry: make(place) };
    const chain = [...trail.slice(opened), place].map((one) => own[one]?.name ?? '');
    return { kind: 'loop', chain };
  };

  const make = (place: number): BookEntry => {
    const known = made.get(place);
    const typed = own[place];
    if (known) return known;
    if (!typed) throw new Error(`no own entry at ${place}`);
    trail.push(place);
    const report = (fault: Omit<BookFault, 'entry'>): void => {
      faults.push({ ...fault, entry: place });
    };
    const base = baseOf(typed, { lookUp, report, builtInEntry });
    const parts = ownParts(typed, base);
    const composition = typed.contains
      ? compositionOf({ typed, record: parts.record, lookUp, report })
      : base && !isPure(base)
        ? base.composition
        : undefined;
    const entry = composition ? { ...parts, composition } : pureEntry(parts);
    trail.pop();
    made.set(place, entry);
    return entry;
  };

  const allNames = (): readonly string[] => [
    ...own.map(({ name }) => name),
    ...shelf.names().map(({ typed }) => typed),
  ];
  const entries = (): readonly BookEntry[] => [...new Set(places.values())].map(make);
  return {
    find,
    entries,
    builtInEntries: () =>
      shelf.ingredients.flatMap(({ name }) => {
        const key = normaliseName(name);
        return places.has(key) ? [] : [builtInEntry(key)].flatMap((entry) => entry ?? []);
      }),
    names: () => entries().flatMap(({ record }) => namesOf(record)),
    faults: () => {
      entries();
      return [...twiceFaults(own), ...faults].sort((left, right) => left.entry - right.entry);
    },
  };
}

/** Places of own entries by normalised name, then by alias; the first where one stands twice. */
function placesOf(own: readonly OwnEntry[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  const put = (name: string, place: number): void => {
    const key = normaliseName(name);
    if (!places.has(key)) places.set(key, place);
  };
  for (const [place, { name }] of own.entries()) put(name, place);
  for (const [place, { aliases }] of own.entries()) for (const alias of aliases ?? []) put(alias, place);
  return places;
}

function twiceFaults(own: readonly OwnEntry[]): readonly BookFault[] {
  const first = new Map<string, string>();
  const faults: BookFault[] = [];
  for (const [entry, { name }] of own.entries()) {
    const key = normaliseName(name);
    const before = first.get(key);
    if (before === undefined) first.set(key, name);
    else {
      const message = `"${name}" stands twice, first as "${before}"`;
      faults.push({ code: 'name-twice', message, hint: 'give one of them another name', entry });
    }
  }
  return faults;
}

/** The record that an entry takes everything from: what it is `like`, or else the built-in one of its name. */
function baseOf(
  typed: OwnEntry,
  context: {
    readonly lookUp: (name: string) => Found;
    readonly report: (fault: Omit<BookFault, 'entry'>) => void;
    readonly builtInEntry: (key: string) => BookEntry | undefined;
  },
): BookEntry | undefined {
  if (typed.like === undefined) return context.builtInEntry(normaliseName(typed.name));
  const found = context.lookUp(typed.like);
  if (found.kind === 'found') return found.entry;
  context.report({ ...notFound(typed.like, found), field: 'like' });
  return undefined;
}
