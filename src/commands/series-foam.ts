/** Foam over the dose of antifoam: heads as poured, the smallest dose in the wanted band, published figures. */

import type { Caution } from '../calc/answer.ts';
import {
  type HeadBand,
  type HeadStep,
  headSteps,
  placeOf,
  type Rise,
  rises,
  smallestInBand,
} from '../calc/foam/head-band.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { Range } from '../calc/range.ts';
import type { BenchCard } from '../ledger/cards.ts';
import { type NotedHead, notedHeads } from '../ledger/head-pours.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Page } from '../output/view.ts';
import { type ActiveAtDose, activeAtDoses, foamCautions } from './series-foam-active.ts';
import type { WantedHead } from './series-foam-wanted.ts';
import { bandText, foamNotes, foamTestText, headText, wantedText } from './series-foam-words.ts';
import { figureText } from './series-words.ts';

export { isFoamSeries } from '../ledger/head-pours.ts';

export interface FoamOf {
  readonly series: SeriesRungs;
  readonly bench: BenchCard;
  readonly wanted?: WantedHead | undefined;
}

export interface Foam {
  readonly heads: readonly NotedHead[];
  readonly steps: readonly HeadStep[];
  readonly active: readonly ActiveAtDose[];
  readonly rises: readonly Rise[];
  readonly band: HeadBand | undefined;
  readonly smallest: HeadStep | undefined;
  readonly everyPour: HeadStep | undefined;
  readonly cautions: readonly Caution[];
}

const bandOf = (range: Range | undefined): HeadBand | undefined =>
  range && {
    ...(range.low ? { lowMetres: range.low.inner } : {}),
    ...(range.high ? { highMetres: range.high.inner } : {}),
  };

export function foamOf({ series, bench, wanted }: FoamOf): Foam {
  const heads = notedHeads(series);
  const steps = headSteps(heads);
  const band = bandOf(wanted?.range);
  const found = band ? smallestInBand(steps, band) : { smallest: undefined, everyPour: undefined };
  const active = activeAtDoses(series, steps);
  return {
    heads,
    steps,
    active,
    rises: rises(steps),
    band,
    ...found,
    cautions: foamCautions({ series, active, bench }),
  };
}

export function foamBlocks(of: FoamOf): Page {
  const foam = foamOf(of);
  const { series, bench } = of;
  return [
    { kind: 'heading', text: 'Foam' },
    { kind: 'text', text: foamTestText(bench) },
    ...(of.wanted ? [{ kind: 'text', text: wantedText(of.wanted) } as const] : []),
    ...(foam.steps.length > 0 ? [headTable(foam, series)] : []),
    ...(foam.steps.length > 0 ? [{ kind: 'text', text: bandText(foam, series) } as const] : []),
    ...noteBlock(foamNotes({ foam, series, bench })),
    ...cautionBlocks(foam.cautions),
  ];
}

const noteBlock = (notes: readonly string[]): Page =>
  notes.length === 0 ? [] : [{ kind: 'notes', mark: '!', notes, tone: 'warn' }];

function headTable({ steps, active, band }: Foam, series: SeriesRungs): Page[number] {
  const [scale] = series.scales;
  const hasActive = active.some(({ inDrink }) => inDrink !== undefined);
  const hasLife = steps.some(({ lifeSeconds }) => lifeSeconds !== undefined);
  return {
    kind: 'table',
    columns: [
      { head: 'dose', align: 'point' },
      ...(hasActive ? [{ head: 'active in drink', align: 'point' } as const] : []),
      { head: 'pours', align: 'right' },
      { head: 'head', align: 'point' },
      { head: 'from - to', align: 'left' },
      ...(hasLife ? [{ head: 'gone after', align: 'point' } as const] : []),
      ...(band ? [{ head: 'band', align: 'left' } as const] : []),
    ],
    rows: steps.map((step, at) => [
      step.dose === 0 ? 'none' : figureText(scale, step.dose),
      ...(hasActive ? [activeText(active[at])] : []),
      String(step.pours),
      headText(step.meanMetres),
      step.pours > 1 ? `${headText(step.lowMetres)} - ${headText(step.highMetres)}` : 'one pour',
      ...(hasLife ? [step.lifeSeconds === undefined ? '' : `${trimmedNumber(step.lifeSeconds, 3)} s`] : []),
      ...(band ? [placeOf(step.meanMetres, band)] : []),
    ]),
  };
}

const activeText = (active: ActiveAtDose | undefined): string =>
  active?.inDrink ? `${trimmedNumber(active.inDrink.milligramsPerKilogram, 3)} mg/kg` : '';

const leaf = (value: number | null | undefined, unit: string) => ({ value: value ?? null, unit });
const millimetres = (metres: number | undefined) => leaf(metres === undefined ? null : metres * 1000, 'mm');

/** Under the key `foam`. */
export function foamJson(of: FoamOf): Readonly<Record<string, unknown>> {
  const { steps, active, band, smallest, everyPour, ...foam } = foamOf(of);
  const unit = of.series.scales[0]?.unit ?? '';
  return {
    bandLow: millimetres(band?.lowMetres),
    bandHigh: millimetres(band?.highMetres),
    smallestDose: leaf(smallest?.dose, unit),
    everyPourDose: leaf(everyPour?.dose, unit),
    doses: steps.map((step, at) => ({
      dose: leaf(step.dose, unit),
      pours: leaf(step.pours, ''),
      head: millimetres(step.meanMetres),
      headLow: millimetres(step.lowMetres),
      headHigh: millimetres(step.highMetres),
      headLife: leaf(step.lifeSeconds, 's'),
      activeInDrink: leaf(active[at]?.inDrink?.milligramsPerKilogram, 'mg/kg'),
      inBand: band ? placeOf(step.meanMetres, band) === 'in' : false,
    })),
    rises: foam.rises.map(({ from, to, isClear }) => ({
      from: leaf(from.dose, unit),
      to: leaf(to.dose, unit),
      clear: isClear,
    })),
  };
}
