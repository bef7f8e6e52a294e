/** Additives of a drink beside published figures, and its aroma beside odour thresholds: as blocks of its page. */

import { type BesideFigure, besideFigures } from '../calc/drink/beside-figures.ts';
import { type Counted, countedWords } from '../calc/drink/counted-forms.ts';
import { figureNumber } from '../calc/drink/figure-cautions.ts';
import { type OdourActivity, odourActivities } from '../calc/drink/odour-activity.ts';
import type { ResolvedStage } from '../calc/mixture/picture.ts';
import { numberText } from '../calc/number-text.ts';
import { partsText } from '../output/leaf-text.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { limitSourceWords } from '../reference/limits/limit-sources.ts';
import { bodyNames, type LimitBody, type LimitFigure } from '../reference/limits/published-figure.ts';
import type { Source } from '../reference/sources.ts';
import { sourceWords } from './worded-sources.ts';

export interface Additives {
  readonly bodies: readonly LimitBody[];
  readonly beside: readonly BesideFigure[];
  readonly aroma: readonly OdourActivity[];
}

export function additivesOf(drink: ResolvedStage, limits: readonly string[]): Additives {
  const bodies = (['us', 'eu', 'codex'] as const).filter((body) => limits.includes(body));
  return { bodies, beside: besideFigures(drink, bodies), aroma: odourActivities(drink) };
}

/** One line for each thing that a figure counts; `*` marks what is from memory, `!` what the drink is above. */
export function besideBlocks({ bodies, beside }: Additives): Page {
  const shown = beside.filter(({ figure }) => figure.isDrink && figure.kind !== 'as needed');
  const rows = rowsOf(shown.filter(({ figure }) => figure.kind !== 'practice' || hasNumber(figure, shown)));
  if (rows.length === 0) return [];
  const isMarked = shown.some(({ figure }) => figure.read === 'from memory');
  const isNone = shown.some(({ figure }) => figure.kind === 'none found');
  const notes = [
    ...(isMarked ? ['* from memory, look it up'] : []),
    ...(isNone ? ['none found: in the text read'] : []),
    'foods and sources: --all',
  ];
  return [
    { kind: 'heading', text: 'Beside published figures' },
    {
      kind: 'grid',
      columns: [
        { head: '', align: 'left' },
        { head: 'mg/L', align: 'right' },
        { head: 'mg/kg', align: 'right' },
        ...bodies.map((body) => ({ head: bodyNames[body], align: 'left' }) as const),
      ],
      rows: rows.map(({ counted, figures }) => [
        visible(countedWords(counted)),
        plainNumber(counted.gramsPerLitre * 1000),
        plainNumber(counted.massFraction * 1e6),
        ...bodies.map((body) => figures.filter(({ figure }) => figure.body === body).map(cellText)[0] ?? '-'),
      ]),
    },
    { kind: 'text', text: `${notes.join('; ')}.`, tone: 'faint' },
  ];
}

const plainNumber = (value: number): string =>
  value >= 1000 ? figureNumber(Math.round(value)) : numberText(value, 3);

const hasNumber = ({ form }: LimitFigure, all: readonly BesideFigure[]): boolean =>
  all.some(({ figure }) => figure.form === form && figure.value !== undefined);

interface Row {
  readonly counted: Counted;
  readonly figures: readonly BesideFigure[];
}

/** Figures that count the same things in the same way share a line. */
function rowsOf(shown: readonly BesideFigure[]): readonly Row[] {
  const rows: { readonly counted: Counted; readonly figures: BesideFigure[] }[] = [];
  for (const one of shown) {
    const same = rows.find(
      ({ counted, figures }) =>
        isSameCount(counted, one.counted) && figures.every(({ figure }) => figure.body !== one.figure.body),
    );
    if (same) same.figures.push(one);
    else rows.push({ counted: one.counted, figures: [one] });
  }
  return rows;
}

const isSameCount = (left: Counted, right: Counted): boolean =>
  left.members.join() === right.members.join() &&
  Math.abs(left.gramsPerLitre - right.gramsPerLitre) <= 1e-9 * right.gramsPerLitre;

/** `500 mg/kg`, `! 150 mg/L`, `none found *` */
function cellText({ figure, isAbove }: BesideFigure): string {
  const { kind, value, unit = '', read } = figure;
  const memory = read === 'from memory' ? ' *' : '';
  if (value === undefined) return `${kind === 'practice' ? 'no number' : kind}${memory}`;
  const label = kind === 'label' ? 'label: ' : '';
  return `${isAbove ? '! ' : ''}${label}${figureNumber(value)} ${unit}${memory}`;
}

/** Every figure with what it is for and where it stands: for `--all`. */
export function allFiguresBlocks({ beside }: Additives): Page {
  if (beside.length === 0) return [];
  return [
    { kind: 'heading', text: 'Published figures, each with its food' },
    { kind: 'notes', mark: '-', notes: beside.map(figureWords) },
  ];
}

function figureWords({ counted, figure, here }: BesideFigure): string {
  const { kind, value, unit = '', body, food, note, read } = figure;
  const number = value === undefined ? kindWords[kind] : `${figureNumber(value)} ${unit}`;
  const own = here === undefined ? '' : `; here ${numberText(here, 3)} ${unit}`;
  const rest = [note, counted.but].filter((one) => one !== undefined).map((one) => `; ${one}`);
  return `${countedWords(counted)}, ${bodyNames[body]}: ${number} for ${food}${own}${rest.join('')} [${limitSourceWords(figure)}; ${readWords[read]}]`;
}

const kindWords: Readonly<Record<LimitFigure['kind'], string>> = {
  most: '',
  label: '',
  'no number': 'named without a number',
  practice: 'good manufacturing practice, no number',
  'as needed': 'quantum satis, no number',
  'none found': 'no listing found in the text read',
};
const readWords: Readonly<Record<LimitFigure['read'], string>> = {
  text: 'text read',
  'in part': 'read in part, the rest from memory',
  abstract: 'abstract read',
  'elsewhere quoted': 'as quoted elsewhere',
  'from memory': 'from memory',
};

/** A line for each compound, by its name and how much of it there is. */
export function aromaBlocks({ aroma }: Additives, isAll: boolean): Page {
  if (aroma.length === 0) return [];
  const shown = isAll ? aroma : aroma.slice(0, MOST_AROMAS);
  const left = aroma.length - shown.length;
  const rest = left > 0 ? ` ${left} more: --all.` : '';
  return [
    { kind: 'heading', text: 'Aroma, as dosed' },
    { kind: 'notes', mark: '-', notes: shown.map((one) => aromaWords(one, isAll)) },
    {
      kind: 'text',
      text: `Thresholds differ by up to thousands: this ranks, and says nothing of taste.${rest}`,
      tone: 'faint',
    },
  ];
}

const MOST_AROMAS = 4;

/** `cassis thiol: 0.5 ppb, 24,000 times its odour threshold in water of 0.00002 ppb` */
function aromaWords(
  { substance, partsPerBillion, thresholds, times, fromMemory }: OdourActivity,
  isAll: boolean,
): string {
  const dosed = `${visible(substance)}: ${partsText(Number((partsPerBillion / 1e9).toPrecision(3)))}`;
  if (!times) return `${dosed}; no odour threshold found`;
  const low = Math.min(...thresholds.map((one) => one.low));
  const high = Math.max(...thresholds.map((one) => one.high));
  const each = isAll && thresholds.length > 1 ? `; ${thresholds.map(thresholdWords).join(', ')}` : '';
  return `${dosed}, ${rangeText(times)} times its odour threshold of ${rangeText({ low, high })} ppb${fromMemory ? ' *' : ''}${each}`;
}

const thresholdWords = ({ low, high, note, fromMemory }: OdourActivity['thresholds'][number]): string =>
  `${rangeText({ low, high })}${note === undefined ? '' : ` (${note})`}${fromMemory ? ' *' : ''}`;

function rangeText({ low, high }: { readonly low: number; readonly high: number }): string {
  const text = (value: number): string => figureNumber(Number(value.toPrecision(2)));
  return low === high ? text(low) : `${text(low)} to ${text(high)}`;
}

const leaf = (value: number | undefined, unit: string): object => ({ value: value ?? null, unit });

export function additivesJson(
  { beside, aroma }: Additives,
  bibliography: Readonly<Record<string, Source>>,
): Readonly<Record<string, unknown>> {
  return {
    publishedFigures: beside.map(({ counted, figure, here, isAbove }) => ({
      substance: counted.substance,
      as: counted.as ?? '',
      counted: counted.members,
      body: bodyNames[figure.body],
      kind: figure.kind,
      food: figure.food,
      forSuchDrinks: figure.isDrink,
      figure: leaf(figure.value, figure.unit ?? ''),
      here: leaf(here, figure.unit ?? ''),
      milligramsPerLitre: leaf(counted.gramsPerLitre * 1000, 'mg/L'),
      partsPerMillion: leaf(counted.massFraction * 1e6, 'mg/kg'),
      above: isAbove,
      source: limitSourceWords(figure),
      fromMemory: figure.read === 'from memory',
      note: [figure.note, counted.but].filter((one) => one !== undefined).join('; '),
    })),
    aroma: aroma.map((one) => ({
      substance: one.substance,
      potent: one.isPotent,
      asDosed: leaf(one.partsPerBillion, 'ug/kg'),
      odourActivityLow: leaf(one.times?.low, ''),
      odourActivityHigh: leaf(one.times?.high, ''),
      thresholds: one.thresholds.map(({ low, high, source, fromMemory, note }) => ({
        low: leaf(low, 'ug/kg'),
        high: leaf(high, 'ug/kg'),
        source: sourceWords(source, bibliography),
        fromMemory,
        note: note ?? '',
      })),
    })),
  };
}
