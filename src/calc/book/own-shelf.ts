/** The person's own entries laid over the built-in ones, each worked out when it is first asked for. */

import { nearestNames, normaliseName } from '../../reference/name.ts';
import type { BookEntry, BookFault, ListedName, OwnEntry } from '../book.ts';
import { compositionOf } from './composition.ts';
import { type Found, notFound } from './found.ts';
import { ownParts } from './own-record.ts';
import { isPure, namesOf, pureEntry, type Shelf } from './shelf.ts';

export interface OwnShelf {
  /** By a normalised name or alias; own before built-in. */
  find(key: string): BookEntry | undefined;
  entries(): readonly BookEntry[];
  /** Built-in entries that no own entry of the same name stands before. */
  builtInEntries(): readonly BookEntry[];
  names(): readonly ListedName[];
  /** Works out every own entry. */
  faults(): readonly BookFault[];
}

export interface OwnShelfInput {
  readonly own: readonly OwnEntry[];
  readonly shelf: Shelf;
}

export const ownShelf = (input: OwnShelfInput): OwnShelf => new LaidShelf(input);

class LaidShelf implements OwnShelf {
  readonly #own: readonly OwnEntry[];
  readonly #shelf: Shelf;
  readonly #places: ReadonlyMap<string, number>;
  readonly #made = new Map<number, BookEntry>();
  readonly #builtIn = new Map<string, BookEntry>();
  readonly #faults: BookFault[] = [];
  /** Own entries that are being worked out, outermost first. */
  readonly #trail: number[] = [];

  constructor({ own, shelf }: OwnShelfInput) {
    this.#own = own;
    this.#shelf = shelf;
    this.#places = placesOf(own);
  }

  find(key: string): BookEntry | undefined {
    const place = this.#placeOf(key);
    return place === undefined ? this.#builtInEntry(key) : this.#make(place);
  }

  entries(): readonly BookEntry[] {
    return [...new Set(this.#places.values())].map((place) => this.#make(place));
  }

  builtInEntries(): readonly BookEntry[] {
    const keys = this.#shelf.all().map(({ name }) => normaliseName(name));
    return keys
      .filter((key) => !this.#places.has(key))
      .flatMap((key) => {
        const entry = this.#builtInEntry(key);
        return entry ? [entry] : [];
      });
  }

  names(): readonly ListedName[] {
    return this.entries().flatMap(({ record }) => namesOf(record));
  }

  faults(): readonly BookFault[] {
    this.entries();
    return [...twiceFaults(this.#own), ...this.#faults].sort((left, right) => left.entry - right.entry);
  }

  #builtInEntry(key: string): BookEntry | undefined {
    const record = this.#shelf.find(key);
    if (!record) return undefined;
    const entry = this.#builtIn.get(record.name) ?? pureEntry({ name: record.name, record, own: false });
    this.#builtIn.set(record.name, entry);
    return entry;
  }

  /** An alias of a built-in record leads to the own entry that stands before that record. */
  #placeOf(key: string): number | undefined {
    const place = this.#places.get(key);
    if (place !== undefined) return place;
    const record = this.#shelf.find(key);
    return record && this.#places.get(normaliseName(record.name));
  }

  /** From inside an own entry: itself by name is the built-in record that it stands before. */
  #lookUp(name: string): Found {
    const key = normaliseName(name);
    const place = this.#placeOf(key);
    const opened = place === undefined ? -1 : this.#trail.indexOf(place);
    const isSelf = opened >= 0 && opened === this.#trail.length - 1;
    const entry = isSelf || place === undefined ? this.#builtInEntry(key) : undefined;
    if (entry) return { kind: 'found', entry };
    if (place === undefined) return { kind: 'unknown', nearest: nearestNames(name, this.#typedNames(), 3) };
    if (opened < 0) return { kind: 'found', entry: this.#make(place) };
    const chain = [...this.#trail.slice(opened), place].map((one) => this.#own[one]?.name ?? '');
    return { kind: 'loop', chain };
  }

  #typedNames(): readonly string[] {
    return [...this.#own.map(({ name }) => name), ...this.#shelf.names().map(({ typed }) => typed)];
  }

  #make(place: number): BookEntry {
    const known = this.#made.get(place);
    if (known) return known;
    const typed = this.#own[place];
    if (!typed) throw new Error(`no own entry at ${place}`);
    this.#trail.push(place);
    const entry = this.#worked(typed, (fault) => this.#faults.push({ ...fault, entry: place }));
    this.#trail.pop();
    this.#made.set(place, entry);
    return entry;
  }

  #worked(typed: OwnEntry, report: (fault: Omit<BookFault, 'entry'>) => void): BookEntry {
    const base = this.#baseOf(typed, report);
    const parts = ownParts(typed, base);
    const lookUp = (name: string): Found => this.#lookUp(name);
    const inherited = base && !isPure(base) ? base.composition : undefined;
    const composition = typed.contains
      ? compositionOf({ typed, record: parts.record, lookUp, report })
      : inherited;
    return composition ? { ...parts, composition } : pureEntry(parts);
  }

  /** The record that an entry takes everything from: what it is `like`, or else the built-in one of its name. */
  #baseOf(typed: OwnEntry, report: (fault: Omit<BookFault, 'entry'>) => void): BookEntry | undefined {
    if (typed.like === undefined) return this.#builtInEntry(normaliseName(typed.name));
    const found = this.#lookUp(typed.like);
    if (found.kind === 'found') return found.entry;
    report({ ...notFound(typed.like, found), field: 'like' });
    return undefined;
  }
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
