/** One row as the facts of a trial. */

import type { Problem } from '../../problem.ts';
import type { Plain } from '../edit-facts.ts';
import type { PlainFacts } from '../give/plain-lines.ts';
import type { SourceText } from '../places.ts';
import { readTime, type TimeZone } from '../times.ts';
import { writtenTime } from '../typed-time.ts';
import { cellText, plainCell } from './cell-text.ts';
import { type CsvCell, cellProblem } from './csv-read.ts';
import { type FactKey, factKeys, type ItemPart } from './map-path.ts';
import type { Mapped } from './read-map.ts';

export interface RowOf {
  readonly source: SourceText;
  readonly cells: readonly CsvCell[];
  /** How many columns the head line has. */
  readonly width: number;
  readonly mapped: readonly Mapped[];
  readonly zone: TimeZone | undefined;
}

export type RowRead =
  | { readonly ok: true; readonly facts: PlainFacts }
  | { readonly ok: false; readonly problems: readonly Problem[] };

interface Item {
  readonly name: string;
  readonly parts: Map<ItemPart, string>;
}

interface Stage {
  readonly items: Map<string, Item>;
  readonly steps: string[];
}

interface Gathered {
  readonly facts: Map<FactKey, string>;
  readonly stages: Map<string, Stage>;
  readonly observations: Map<number, [string, Plain][]>;
}

/** Everything but the number of the trial. */
export function rowTrial(row: RowOf): RowRead {
  const problems: Problem[] = [...tooWide(row)];
  const gathered: Gathered = { facts: new Map(), stages: new Map(), observations: new Map() };
  for (const one of row.mapped) {
    const cell = one.column === undefined ? undefined : row.cells[one.column];
    const typed = one.always ?? plainCell(cell?.text ?? '');
    if (typed === '' || one.path.kind === 'left out') continue;
    const text = cellText(typed, one.path, row.zone);
    if (text.ok) put(gathered, one, text.value);
    else
      problems.push(
        cellProblem(row.source, cell ?? firstCell(row), [
          text.fault.code,
          text.fault.message,
          text.fault.hint,
        ]),
      );
  }
  const [first] = row.cells;
  const say = (code: string, message: string, hint: string): void => {
    if (first) problems.push(cellProblem(row.source, first, [code, message, hint]));
  };
  const stages = stagePlain(gathered);
  if (stages.length === 0 && problems.length === 0)
    say('no-items', 'nothing goes into a beaker in this row', 'give an amount, or delete the row');
  if (gathered.observations.size > 0 && !gathered.facts.has('made') && problems.length === 0)
    say('no-time', 'this row has looks and does not say when it was made', 'map a column to made');
  if (row.cells.length > 0 && problems.length > 0) return { ok: false, problems };
  return { ok: true, facts: factsOf(gathered, stages, row.zone) };
}

/** A comma in a text without quotes moves every cell after it one column on. */
function tooWide({ source, cells, width }: RowOf): readonly Problem[] {
  const over = cells.slice(width).find(({ text }) => text.trim() !== '');
  if (!over) return [];
  const message = `the row has ${cells.length} cells and the head line ${width}`;
  return [
    cellProblem(source, over, ['row-too-wide', message, 'put quotes around a text that holds the separator']),
  ];
}

const firstCell = ({ cells }: RowOf): CsvCell => cells[0] ?? { text: '', start: 0, end: 0 };

function put({ facts, stages, observations }: Gathered, { path }: Mapped, text: string): void {
  if (path.kind === 'fact') facts.set(path.key, text);
  if (path.kind === 'observation') putSeen(observations, path, text);
  if (path.kind !== 'item' && path.kind !== 'step') return;
  const stage: Stage = stages.get(path.stage) ?? { items: new Map(), steps: [] };
  stages.set(path.stage, stage);
  if (path.kind === 'step') {
    const steps = text.split(/[;\n]/u).map((step) => step.trim());
    stage.steps.push(...steps.filter((step) => step !== ''));
    return;
  }
  const item: Item = stage.items.get(path.item) ?? { name: path.item, parts: new Map() };
  stage.items.set(path.item, item);
  item.parts.set(path.part, text);
}

type Observed = Extract<Mapped['path'], { readonly kind: 'observation' }>;

/** Scores of one tasting stand together under `taste`. */
function putSeen(
  observations: Gathered['observations'],
  { fact, isTaste, ageSeconds }: Observed,
  text: string,
): void {
  const seen = observations.get(ageSeconds) ?? [];
  observations.set(ageSeconds, seen);
  if (!isTaste) {
    seen.push([fact, text]);
    return;
  }
  const at = seen.findIndex(([key]) => key === 'taste');
  const tastes = seen[at]?.[1];
  const before = typeof tastes === 'object' && 'map' in tastes ? tastes.map : [];
  seen.splice(at === -1 ? seen.length : at, 1, ['taste', { map: [...before, [fact, text]] }]);
}

function stagePlain({ stages }: Gathered): PlainFacts {
  return [...stages].flatMap(([name, { items, steps }]): PlainFacts => {
    const list = [...items.values()].flatMap(itemPlain);
    if (list.length === 0) return [];
    if (steps.length === 0) return [[name, { list }]];
    return [
      [
        name,
        {
          map: [
            ['process', { list: steps }],
            ['items', { list }],
          ],
        },
      ],
    ];
  });
}

/** Where only the weighed mass is known, it is what was meant too. */
function itemPlain({ name, parts }: Item): readonly Plain[] {
  const amount = parts.get('made up') ?? parts.get('amount') ?? parts.get('weighed');
  if (amount === undefined) return [];
  const more = (['weighed', 'lot', 'note'] as const).flatMap((key): PlainFacts => {
    const text = parts.get(key);
    return text === undefined || (key === 'weighed' && text === amount) ? [] : [[key, text]];
  });
  return [{ map: [[name, amount], ...more] }];
}

const afterStages: ReadonlySet<FactKey> = new Set(['concluded', 'note']);

function factsOf(
  { facts, observations }: Gathered,
  stages: PlainFacts,
  zone: TimeZone | undefined,
): PlainFacts {
  const told = factKeys.flatMap((key): readonly (readonly [FactKey, string])[] => {
    const text = facts.get(key);
    return text === undefined ? [] : [[key, text]];
  });
  const made = readTime(facts.get('made') ?? '', zone);
  const epoch = made.ok ? made.value.epochMilliseconds : 0;
  const seen = [...observations]
    .sort(([one], [other]) => one - other)
    .map(([age, more]): Plain => ({ map: [['at', writtenTime(epoch + age * 1000, zone)], ...more] }));
  return [
    ...told.filter(([key]) => !afterStages.has(key)),
    ['stages', { map: stages }],
    ...(seen.length > 0 ? [['observations', { list: seen }] as const] : []),
    ...told.filter(([key]) => afterStages.has(key)),
  ];
}
