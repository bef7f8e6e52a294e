/** Two series laid beside each other: the ratio of their breaks, and whether they were made alike otherwise. */

import { type BreaksCompared, compareBreaks } from '../calc/ladder/compare-breaks.ts';
import { numberText } from '../calc/number-text.ts';
import { isAlike, meantFacts } from '../calc/rungs-alike.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Problem } from '../problem.ts';
import type { ReadSeries } from './series.ts';
import { counted, figureText, valueWords } from './series-words.ts';

export interface SeriesCompared {
  readonly first: ReadSeries;
  readonly other: ReadSeries;
  readonly breaks: BreaksCompared | undefined;
  /** What was otherwise in the other series: the thing compared, and whatever else. */
  readonly otherwise: readonly { readonly what: string; readonly is: string; readonly other: string }[];
  readonly problems: readonly Problem[];
  readonly json: Readonly<Record<string, unknown>>;
}

export function compareSeries(first: ReadSeries, other: ReadSeries): SeriesCompared {
  const why = unlike(first, other);
  const breaks =
    why === undefined && first.estimate && other.estimate
      ? compareBreaks({ first: first.estimate, second: other.estimate })
      : undefined;
  const message = why ?? (breaks?.ratio == null ? oneSided(first, other) : undefined);
  const otherwise = differingFacts(first.series, other.series);
  const hint = 'compare two series that vary one and the same thing and have both held and failed';
  return {
    first,
    other,
    breaks,
    otherwise,
    problems: message
      ? [{ code: 'not-comparable', severity: 'warning', message, hint: why ? hint : 'go on with next' }]
      : [],
    json: comparedJson(other, breaks, otherwise),
  };
}

/** Why there can be no ratio of breaks at all. */
function unlike(first: ReadSeries, other: ReadSeries): string | undefined {
  const [one, two] = [first.series, other.series];
  const [a, b] = [one.scales[0], two.scales[0]];
  if (one.series.file === two.series.file) return 'a series can be compared with another one only';
  if (one.scales.length !== 1 || two.scales.length !== 1 || !a || !b)
    return 'only series that vary one thing each can be compared';
  if (!isSameName(a.text, b.text) || a.unit !== b.unit) {
    const words = [a, b].map(({ text, unit }) => (unit === '' ? text : `${text} in ${unit}`));
    return `they vary different things: ${words.join(' and ')}`;
  }
  if (one.shape === 'window' || two.shape === 'window') return 'a window has no single break to compare';
  if (first.estimate && other.estimate && first.estimate.failing !== other.estimate.failing)
    return 'the one fails upwards and the other downwards';
  return undefined;
}

function oneSided(first: ReadSeries, other: ReadSeries): string {
  const open = [first, other].filter(({ estimate }) => estimate?.side !== 'both');
  const names = open.map(({ series }) => `"${visible(series.series.name)}"`).join(' and ');
  return `no ratio of the breaks yet: ${names} has not both held and failed`;
}

/** Days aside: two series are seldom made on one. */
const aside = new Set(['day made']);

function differingFacts(first: SeriesRungs, other: SeriesRungs) {
  const [one, two] = [first, other].map(({ rungs }) =>
    meantFacts(rungs.map(({ trial, facts }) => ({ trial: trial.number, facts }))),
  );
  return (one ?? []).flatMap((fact) => {
    const beside = two?.find(({ what }) => what === fact.what);
    const empty = { ...fact, text: '', value: undefined };
    if (aside.has(fact.what) || isAlike(fact, beside ?? empty)) return [];
    return [
      { what: fact.what, is: fact.text || 'not written', other: beside?.text ? beside.text : 'not written' },
    ];
  });
}

export function againstBlocks({ first, other, breaks, otherwise }: SeriesCompared): Page {
  const names = [first, other].map(({ series }) => visible(series.series.name));
  const notes = otherwise.map((one) => visible(`${one.what}: ${one.is}; there ${one.other}`));
  return [
    { kind: 'heading', text: `Against ${names[1] ?? ''}` },
    {
      kind: 'pairs',
      areSentences: true,
      pairs: [
        ...[first, other].map((one, at) => [names[at] ?? '', breakText(one)] as const),
        ...comparedPairs(breaks, names),
        ['otherwise made alike', notes.length === 0 ? 'yes' : 'no'],
      ],
    },
    ...(notes.length > 0 ? [{ kind: 'notes', mark: '-', notes } as const] : []),
  ];
}

function breakText({ estimate, series, counts }: ReadSeries): string {
  const [scale] = series.scales;
  if (!estimate || estimate.breakPoint === null) return `no break yet (${counted(counts.beakers, 'beaker')})`;
  const { breakPoint, breakLow, breakHigh } = estimate;
  const ends = [breakLow, breakHigh].map((one) => (one === null ? 'open' : figureText(scale, one)));
  return `${valueWords(scale, breakPoint)} (${ends.join(' to ')})`;
}

function comparedPairs(
  breaks: BreaksCompared | undefined,
  [first = '', other = '']: readonly string[],
): readonly (readonly [string, string])[] {
  if (!breaks) return [];
  const { ratio, low, high, chanceFirstHigher } = breaks;
  const ends = [low, high].map((one) => (one === null ? 'open' : numberText(one, 3)));
  return [
    ...(ratio === null
      ? []
      : [['ratio of the breaks', `${numberText(ratio, 3)} (90 % interval ${ends.join(' to ')})`] as const]),
    ...(chanceFirstHigher === null ? [] : [['chance', chanceText(chanceFirstHigher, first, other)] as const]),
  ];
}

function chanceText(chance: number, first: string, other: string): string {
  const [higher, lower, part] = chance >= 0.5 ? [first, other, chance] : [other, first, 1 - chance];
  const percent = part > 0.995 ? 'over 99' : numberText(part * 100, 2);
  return `${percent} % that ${higher} breaks at more than ${lower}`;
}

const leaf = (value: number | null | undefined, unit: string) => ({ value: value ?? null, unit });

function comparedJson(
  { series, estimate }: ReadSeries,
  breaks: BreaksCompared | undefined,
  otherwise: SeriesCompared['otherwise'],
) {
  const unit = series.scales[0]?.unit ?? '';
  return {
    series: series.series.name,
    breakPoint: leaf(estimate?.breakPoint, unit),
    breakLow: leaf(estimate?.breakLow, unit),
    breakHigh: leaf(estimate?.breakHigh, unit),
    ratio: leaf(breaks?.ratio, ''),
    ratioLow: leaf(breaks?.low, ''),
    ratioHigh: leaf(breaks?.high, ''),
    chanceHigher: leaf(breaks?.chanceFirstHigher, ''),
    madeAlike: otherwise.length === 0,
    otherwise,
  };
}
