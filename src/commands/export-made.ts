/** What was seen and what was reckoned, a line each. */

import type { Quantity } from '../calc/quantity.ts';
import type { MadeCard, ObservationCard, ResultCard } from '../ledger/cards.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { madeEpoch, observationsOf } from '../ledger/sample-record.ts';
import type { TimeZone } from '../ledger/times.ts';
import type { TreeNode } from '../ledger/tree.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { normaliseName } from '../reference/name.ts';
import type { ExportColumn, ExportRow, ExportSheet } from './export-sheet.ts';

export type Made = Ledger['trials'][number] | Ledger['batches'][number];

const whoColumns: readonly ExportColumn[] = [
  { key: 'kind', head: 'kind' },
  { key: 'of', head: 'number or name' },
  { key: 'title', head: 'title' },
];

const whoOf = (card: Made): ExportRow => ({
  kind: card.kind,
  of: card.kind === 'trial' ? card.number : card.name,
  title: card.title,
});

const readingColumns: readonly ExportColumn[] = [
  { key: 'temperature', head: 'temperature', unit: 'C' },
  { key: 'turbidity', head: 'turbidity', unit: 'NTU' },
  { key: 'droplet', head: 'droplet', unit: 'nm' },
  { key: 'ph', head: 'pH', unit: '' },
  { key: 'acid', head: 'acid', unit: 'g/L' },
  { key: 'acidMoles', head: 'acid', unit: 'mol/L', isRare: true },
  { key: 'acidShare', head: 'acid', unit: '%', isRare: true },
  { key: 'brix', head: 'Brix', unit: '' },
  { key: 'density', head: 'density', unit: 'g/mL' },
  { key: 'mass', head: 'mass', unit: 'g' },
  { key: 'co2', head: 'CO2', unit: 'vol' },
  { key: 'co2PerLitre', head: 'CO2', unit: 'g/L', isRare: true },
  { key: 'head', head: 'head', unit: 'mm' },
  { key: 'headLife', head: 'head life', unit: 's' },
];

const wordColumns: readonly ExportColumn[] = [
  'smell',
  'colour',
  'viewed',
  'served',
  'against',
  'blind',
  'photo',
]
  .map((key): ExportColumn => ({ key, head: key, isRare: true }))
  .concat([
    { key: 'by', head: 'by' },
    { key: 'note', head: 'note' },
    { key: 'ended', head: 'ended' },
  ]);

interface Export {
  readonly cards: readonly Made[];
  readonly zone: TimeZone | undefined;
}

export function observationSheet({ cards, zone }: Export): ExportSheet {
  const tastes = tasteWords(cards);
  return {
    columns: [
      ...whoColumns,
      { key: 'sample', head: 'sample' },
      { key: 'stage', head: 'stage' },
      { key: 'at', head: 'at' },
      { key: 'age', head: 'age', unit: 'd' },
      { key: 'look', head: 'look' },
      ...readingColumns,
      ...tastes.map((word) => ({ key: `taste ${word}`, head: `taste ${word}`, unit: '' })),
      ...wordColumns,
    ],
    rows: cards.flatMap((card) =>
      card.samples.flatMap((sample) => {
        const made = madeEpoch(card, sample);
        return observationsOf(card, sample).map((one) => ({
          ...whoOf(card),
          sample: sample.name,
          stage: sample.of,
          at: writtenTime(one.at.epochMilliseconds, zone, hasSeconds(one)),
          age: made === undefined ? undefined : days(one.at.epochMilliseconds - made),
          ...seenIn(one),
        }));
      }),
    ),
  };
}

const hasSeconds = ({ at }: ObservationCard): boolean => at.epochMilliseconds % 60_000 !== 0;
const days = (milliseconds: number): number => Number((milliseconds / 86_400_000).toFixed(4));

/** Words of tastes, each once, however it is written. */
function tasteWords(cards: readonly MadeCard[]): readonly string[] {
  const words = cards.flatMap(({ observations }) =>
    observations.flatMap(({ taste }) => taste.map(({ word }) => word)),
  );
  return [
    ...new Map(words.map((word): [string, string] => [normaliseName(word), normaliseName(word)])).values(),
  ];
}

const inUnit = (
  quantity: Quantity | undefined,
  factor: number,
  dimension?: Quantity['dimension'],
): number | undefined =>
  quantity === undefined || (dimension !== undefined && quantity.dimension !== dimension)
    ? undefined
    : Number((quantity.inner * factor).toPrecision(12));

function seenIn(one: ObservationCard): ExportRow {
  const tastes = one.taste.map(({ word, score }): [string, number] => [
    `taste ${normaliseName(word)}`,
    score,
  ]);
  return {
    look: one.looks.length > 0 ? one.looks.join(', ') : undefined,
    temperature: one.temperature && Number((one.temperature.inner - 273.15).toFixed(6)),
    turbidity: inUnit(one.turbidity, 1),
    droplet: inUnit(one.droplet, 1e9),
    ph: one.ph,
    acid: inUnit(one.acid, 1000, 'mass per volume'),
    acidMoles: inUnit(one.acid, 1000, 'moles per volume'),
    acidShare: inUnit(one.acid, 100, 'share'),
    brix: one.brix,
    density: inUnit(one.density, 1),
    mass: inUnit(one.mass, 1),
    co2: inUnit(one.co2, 1, 'carbonation'),
    co2PerLitre: inUnit(one.co2, 1000, 'mass per volume'),
    head: inUnit(one.head, 1000),
    headLife: inUnit(one.headLife, 1),
    ...Object.fromEntries(tastes),
    smell: one.smell,
    colour: one.colour,
    viewed: one.viewed?.text,
    served: one.served,
    against: one.against,
    blind: one.blind,
    photo: one.photo?.text,
    by: one.by,
    note: one.note,
    ended: one.ended,
  };
}

/** One figure a line: what it is, its number and unit, or its text. */
export function resultSheet({ cards, zone }: Export): ExportSheet {
  return {
    columns: [
      ...whoColumns,
      { key: 'at', head: 'at' },
      { key: 'calculator', head: 'calculator' },
      { key: 'stage', head: 'stage' },
      { key: 'mark', head: 'of' },
      { key: 'figure', head: 'figure' },
      { key: 'value', head: 'value', unit: '' },
      { key: 'unit', head: 'unit' },
      { key: 'text', head: 'text' },
    ],
    rows: cards.flatMap((card) =>
      card.results.flatMap((result) =>
        figuresOf(result).map((figure) => ({
          ...whoOf(card),
          at: writtenTime(result.at.epochMilliseconds, zone, true),
          calculator: result.calculator,
          stage: result.stage,
          mark: result.of,
          ...figure,
        })),
      ),
    ),
  };
}

const headKeys: ReadonlySet<string> = new Set(['at', 'calculator', 'stage', 'of']);

const figuresOf = ({ node }: ResultCard): readonly ExportRow[] =>
  node.entries.flatMap(({ key, value }) => (headKeys.has(key.text) ? [] : textsIn([key.text], value)));

function textsIn(path: readonly string[], node: TreeNode): readonly ExportRow[] {
  if (node.kind === 'text') return [figureRow(path.join(', '), node.text)];
  if (node.kind === 'list') return node.items.flatMap((item, at) => textsIn([...path, String(at + 1)], item));
  if (node.kind === 'map')
    return node.entries.flatMap(({ key, value }) => textsIn([...path, key.text], value));
  return [];
}

function figureRow(figure: string, text: string): ExportRow {
  const [, number, unit] = /^(-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?)(?: (\S.{0,30}))?$/u.exec(text) ?? [];
  return number === undefined ? { figure, text } : { figure, value: Number(number), unit };
}
