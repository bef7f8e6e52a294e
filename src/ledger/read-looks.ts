/** Samples, what was seen of them, and the answers that were filed. */

import { parseNumber } from '../calc/number.ts';
import { impossibleReading } from '../calc/reading-range.ts';
import { stressWords } from '../reference/stress-cycles.ts';
import {
  looks,
  type Moment,
  type ObservationCard,
  type ResultCard,
  type SampleCard,
  type StageCard,
  type TasteScore,
} from './cards.ts';
import {
  countUnder,
  find,
  momentOf,
  namedUnder,
  numberUnder,
  proseUnder,
  quantitiesUnder,
  quantityUnder,
  type Reading,
  textNodeUnder,
  textUnder,
  wordsUnder,
} from './reading.ts';
import { stressSchedule } from './stress.ts';
import { type MapEntry, type MapNode, type TreeNode, valueUnder } from './tree.ts';

/** The samples of a file; where it names none, the last stage made. */
export function readSamples(
  reading: Reading,
  root: TreeNode,
  stages: readonly StageCard[],
): readonly SampleCard[] {
  const samples = valueUnder(root, 'samples');
  const last = stages.at(-1);
  if (samples?.kind === 'map') return samples.entries.map((entry) => readSample(reading, entry, last));
  if (!last) return [];
  const { name, nameSpan } = last;
  return [{ name, nameSpan, isImplied: true, of: name, ofSpan: nameSpan }];
}

function readSample(reading: Reading, { key, value }: MapEntry, last: StageCard | undefined): SampleCard {
  const of = textNodeUnder(value, 'of');
  return {
    name: key.text,
    nameSpan: key,
    isImplied: false,
    of: of?.text ?? last?.name ?? '',
    ofSpan: of ?? key,
    in: proseUnder(reading, value, 'in'),
    cover: textUnder(value, 'cover'),
    coverSpan: textNodeUnder(value, 'cover'),
    at: quantityUnder(reading, value, 'at', ['temperature']),
    viewed: textUnder(value, 'viewed'),
    count: countUnder(reading, value, 'count'),
    looks: valueUnder(value, 'looks') && quantitiesUnder(reading, value, 'looks', ['time']),
    watch: quantityUnder(reading, value, 'watch', ['time']),
    note: proseUnder(reading, value, 'note'),
    ...readStress(reading, value),
  };
}

const mostCycles = 100;

/** A sample under stress is looked at when each cycle ends; own `looks` and `watch` go before that. */
function readStress(reading: Reading, value: TreeNode): Partial<SampleCard> {
  const stress = stressWords.find((word) => word === textUnder(value, 'stress'));
  const cycles = countUnder(reading, value, 'cycles');
  if (!stress) {
    const node = textNodeUnder(value, 'cycles');
    const hint = `add "stress: freeze-thaw" or "stress: heat-cool"`;
    if (node) find(reading, { code: 'no-stress', message: '"cycles" stands without "stress"', hint }, node);
    return {};
  }
  const node = textNodeUnder(value, 'cycles');
  if (cycles !== undefined && cycles > mostCycles && node) {
    const message = `${node.text} cycles would take for ever`;
    find(reading, { code: 'not-a-number', message, hint: `write at most ${mostCycles}` }, node);
    return { stress };
  }
  const planned = stressSchedule(stress, cycles);
  return {
    stress,
    ...(valueUnder(value, 'looks') ? {} : { looks: planned.looks }),
    ...(valueUnder(value, 'watch') ? {} : { watch: planned.watch }),
  };
}

/** In the order of the file, which need not be that of time. */
export function readObservations(reading: Reading, root: TreeNode): readonly ObservationCard[] {
  const list = valueUnder(root, 'observations');
  if (list?.kind !== 'list') return [];
  return list.items.flatMap((node) => {
    const observation = node.kind === 'map' ? readObservation(reading, node) : undefined;
    return observation ? [observation] : [];
  });
}

export const lookWords = { words: looks, code: 'unknown-look', what: 'a look' } as const;

function readObservation(reading: Reading, node: MapNode): ObservationCard | undefined {
  const at = momentOf(reading, valueUnder(node, 'at'), 'time') ?? never;
  const observation: ObservationCard = {
    at,
    headSpan: { start: node.start, end: Math.max(at.end, node.entries[0]?.key.end ?? 0) },
    sample: namedUnder(node, 'sample'),
    looks: wordsUnder(reading, node, 'look', lookWords),
    temperature: quantityUnder(reading, node, 'temperature', ['temperature']),
    turbidity: quantityUnder(reading, node, 'turbidity', ['turbidity']),
    droplet: quantityUnder(reading, node, 'droplet', ['length']),
    ph: readingUnder(reading, node, 'ph'),
    acid: quantityUnder(reading, node, 'acid', ['mass per volume', 'moles per volume', 'share']),
    brix: readingUnder(reading, node, 'brix'),
    density: quantityUnder(reading, node, 'density', ['mass per volume']),
    mass: quantityUnder(reading, node, 'mass', ['mass']),
    co2: quantityUnder(reading, node, 'co2', ['carbonation', 'mass per volume']),
    head: quantityUnder(reading, node, 'head', ['length']),
    headLife: quantityUnder(reading, node, 'head life', ['time']),
    taste: readTaste(reading, valueUnder(node, 'taste')),
    served: proseUnder(reading, node, 'served'),
    against: textUnder(node, 'against'),
    blind: textUnder(node, 'blind'),
    smell: proseUnder(reading, node, 'smell'),
    colour: proseUnder(reading, node, 'colour'),
    viewed: namedUnder(node, 'viewed'),
    photo: namedUnder(node, 'photo'),
    by: textUnder(node, 'by'),
    note: proseUnder(reading, node, 'note'),
    ended: proseUnder(reading, node, 'ended'),
    start: node.start,
    end: node.end,
  };
  return at === never ? undefined : observation;
}

/** A reading that can't be is kept as it was written and warned of: files from before may hold one. */
function readingUnder(reading: Reading, node: MapNode, key: string): number | undefined {
  const value = numberUnder(reading, node, key);
  const place = textNodeUnder(node, key);
  const fault = value === undefined ? undefined : impossibleReading(key, value);
  if (fault && place) find(reading, { ...fault, severity: 'warning' }, place);
  return value;
}

/** Stands for a time that can't be read, so that the rest of the observation is still looked at. */
const never: Moment = { written: '', epochMilliseconds: 0, isDay: false, start: 0, end: 0 };

const highestScore = 5;

function readTaste(reading: Reading, node: TreeNode | undefined): readonly TasteScore[] {
  if (node?.kind !== 'map') return [];
  return node.entries.flatMap(({ key, value }) => {
    if (value.kind !== 'text') return [];
    const score = parseNumber(value.text);
    if (score.ok && score.value <= highestScore)
      return [{ word: key.text, wordSpan: key, score: score.value }];
    const message = `"${value.text}" is not a score`;
    const hint = `write a number from 0 to ${highestScore}`;
    find(reading, { code: 'bad-score', message, hint }, value);
    return [];
  });
}

export function readResults(reading: Reading, root: TreeNode): readonly ResultCard[] {
  const list = valueUnder(root, 'results');
  if (list?.kind !== 'list') return [];
  return list.items.flatMap((node) => {
    const at = momentOf(reading, valueUnder(node, 'at'), 'time');
    const calculator = textUnder(node, 'calculator');
    if (node.kind !== 'map' || !at || calculator === undefined) return [];
    const { start, end } = node;
    return [{ at, calculator, stage: textUnder(node, 'stage'), of: textUnder(node, 'of'), node, start, end }];
  });
}
