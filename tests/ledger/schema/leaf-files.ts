/** For every place of a kind of file in which a text may stand: a small file with one text of ours in it. */

import type { Said } from '../../../src/ledger/json-schema-said.ts';
import { keysSaid } from '../../../src/ledger/json-schema-words.ts';
import { type FileKind, fileShapes } from '../../../src/ledger/schema.ts';
import type { FileShape } from '../../../src/ledger/shape-words.ts';

export interface Leaf {
  readonly kind: FileKind;
  /** `observations.0.ph` */
  readonly path: string;
  /** The file with a text as it is typed there: `2.5 g`, `"2.5 g"`. */
  readonly fileWith: (typed: string) => string;
}

const mark = '@@here@@';

/** What stands under keys that may not be left out. */
const least: Readonly<Record<string, unknown>> = {
  ledger: '1',
  trial: '14',
  series: 'a ladder',
  formula: 'a drink',
  batch: 'a batch',
  at: '2026-03-03T09:10+00:00',
  calculator: 'hlb',
  division: '0.01 g',
  drop: '0.03 g',
  stages: { emulsion: [{ water: '2 g' }] },
};

interface Place {
  readonly path: readonly string[];
  readonly value: unknown;
}

const within = (
  step: string,
  places: readonly Place[],
  wrap: (value: unknown) => unknown,
): readonly Place[] => places.map(({ path, value }) => ({ path: [step, ...path], value: wrap(value) }));

function placesIn(shape: FileShape, about: Said | undefined): readonly Place[] {
  switch (shape.is) {
    case 'text':
    case 'word':
      return [{ path: [], value: mark }];
    case 'anything':
      return [];
    case 'optional':
      return placesIn(shape.of, about);
    case 'either':
      return shape.of.flatMap((one) => placesIn(one, about));
    case 'list':
      return within('0', placesIn(shape.of, about), (value) => [value]);
    case 'names':
      return ['salt', ...Object.keys(about?.known ?? {})].flatMap((name) =>
        within(name, placesIn(shape.of, about?.known?.[name] ?? about?.each), (value) => ({ [name]: value })),
      );
    case 'keys':
      return keyPlaces(shape);
  }
}

function keyPlaces(shape: Extract<FileShape, { is: 'keys' }>): readonly Place[] {
  const about = keysSaid.get(shape) ?? {};
  const needed = Object.fromEntries(
    Object.entries(shape.keys).flatMap(([key, { is }]) => (is === 'optional' ? [] : [[key, least[key]]])),
  );
  const named = {
    ...(shape.rest?.is === 'text' ? { water: '2 g' } : {}),
    ...('process' in shape.keys ? { items: [{ water: '2 g' }] } : {}),
    ...('cycles' in shape.keys ? { stress: 'freeze-thaw' } : {}),
  };
  const known = Object.entries(shape.keys).flatMap(([key, under]) =>
    within(key, placesIn(under, about[key]), (value) => ({ ...named, ...needed, [key]: value })),
  );
  const free =
    shape.rest?.is === 'text'
      ? within('salt', placesIn(shape.rest, about['*']), (value) => ({ salt: value }))
      : [];
  return [...known, ...free];
}

const leavesIn = (kind: FileKind): readonly Leaf[] =>
  placesIn(fileShapes[kind], undefined).map(({ path, value }) => ({
    kind,
    path: path.join('.'),
    fileWith: (typed) => JSON.stringify(value).replace(JSON.stringify(mark), () => typed),
  }));

const shared = /^(?:stages|samples|observations|results)\./u;

/** Of all kinds; what trials, formulas and batches share is looked at in trials. */
export const leavesOf = (kinds: readonly FileKind[]): readonly Leaf[] =>
  kinds.flatMap((kind) => leavesIn(kind).filter(({ path }) => kind === 'trial' || !shared.test(path)));
