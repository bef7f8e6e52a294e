/** A planned ladder as a page and as JSON: what is kept, what each beaker weighs out to, what rounding does. */

import type { Mixture } from '../calc/mixture/picture.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { isWeighedOut } from '../calc/rungs/amount-for.ts';
import { asShown, type Scale } from '../calc/weighing/balance.ts';
import type { ItemCard } from '../ledger/cards.ts';
import type { Variation } from '../ledger/ladder-vary.ts';
import type { Varied } from '../ledger/varied.ts';
import type { Block, Column, Page } from '../output/view.ts';
import type { LadderStart, PlannedBeaker } from './ladder-plan.ts';
import { percent, roundingOf, smallestWeighing, valueText } from './ladder-words.ts';
import type { LadderFiles, NumberedBeaker } from './ladder-write.ts';
import { designWords } from './open-formula.ts';
import { counted, listed } from './series-words.ts';

export interface LadderShown {
  readonly varied: Varied;
  readonly variation: Variation;
  readonly files: LadderFiles;
  /** Label and text, above the table. */
  readonly facts: readonly (readonly [string, string])[];
  readonly cautions: readonly string[];
}

/** The weigh-out of a ladder, in the order of making. */
export function weighOutPage(shown: LadderShown): Page {
  const { files, facts, cautions } = shown;
  return [
    { kind: 'pairs', pairs: facts, areSentences: true },
    { kind: 'heading', text: 'To weigh out, in this order' },
    weighOutGrid(shown),
    ...besideText(files),
    { kind: 'text', text: roundingText(shown), tone: 'faint' },
    ...(cautions.length === 0 ? [] : [{ kind: 'notes', mark: '!', notes: cautions, tone: 'warn' } as const]),
    {
      kind: 'text',
      text: filesText(files),
      tone: 'faint',
    },
  ];
}

function filesText({ numbered, seriesFile, changes }: LadderFiles): string {
  const files = numbered.map(({ file }) => file).sort();
  const [first, last] = [files[0], files.at(-1)];
  const trials = first === last ? first : `${first} to ${last}`;
  const isSeriesWritten = changes.some((change) => 'path' in change && change.path === seriesFile);
  return `Files: ${counted(numbered.length, 'trial')}, ${trials}${isSeriesWritten ? `, and ${seriesFile}` : `; ${seriesFile} stays as it is`}.`;
}

/** Which of them is the control, and which the blank. */
function besideText({ numbered }: LadderFiles): Page {
  const words = (['control', 'blank'] as const).flatMap((role) => {
    const one = numbered.find(({ beaker }) => beaker.role === role);
    return one ? [`${one.number} is the ${role}`] : [];
  });
  return words.length === 0 ? [] : [{ kind: 'text', text: `${words.join(', ')}.` }];
}

/** The figure that is shown beside the rung, where it is none of the amounts. */
const figureHeads: Readonly<Partial<Record<Varied['kind'], string>>> = { ratio: 'ratio', 'blend hlb': 'HLB' };

function weighOutGrid({ varied, variation, files }: LadderShown): Block {
  const { stage, base } = variation;
  const figure = figureHeads[varied.kind];
  const columns: readonly Column[] = [
    { head: 'trial', align: 'right' },
    { head: 'rung', align: 'left' },
    ...(figure === undefined ? [] : [{ head: figure, align: 'right' } as const]),
    { head: 'off by', align: 'right' },
    ...stage.items.map(({ name }) => ({ head: name, align: 'right' }) as const),
  ];
  const rows = files.numbered.map(({ beaker, number }) => [
    String(number),
    beaker.role === 'blank' || beaker.value === undefined ? '-' : valueText(varied, beaker.value),
    ...(figure === undefined ? [] : [beaker.role === 'blank' ? '-' : numberText(beaker.rung.weighed, 4)]),
    offText(beaker),
    ...beaker.rung.items.map((item, at) =>
      itemCell(item, gramsAt(beaker, base.stageAt, at), base.divisionGrams),
    ),
  ]);
  return { kind: 'grid', columns, rows };
}

const gramsAt = ({ rung }: PlannedBeaker, stageAt: number, at: number): number =>
  rung.weighedMixture.stages[stageAt]?.items[at]?.massGrams ?? 0;

function offText(beaker: PlannedBeaker): string {
  if (beaker.role === 'blank') return '-';
  const off = roundingOf(beaker);
  return Math.abs(off) < 5e-5 ? '0 %' : `${off > 0 ? '+' : ''}${(off * 100).toFixed(2)} %`;
}

/** What the balance shows of an item; volumes and drops as they are measured out. */
const itemCell = ({ amount }: ItemCard, grams: number, division: number): string =>
  isWeighedOut(amount.quantity.dimension) || amount.makeUp ? `${asShown(grams, division)} g` : amount.written;

function roundingText({ files, variation }: LadderShown): string {
  const beakers = files.numbered.map(({ beaker }) => beaker);
  const most = Math.max(0, ...beakers.map((beaker) => Math.abs(roundingOf(beaker))));
  const smallest = smallestWeighing(beakers, variation);
  const rounding =
    most < 5e-5
      ? 'Rounding to the balance moves nothing.'
      : `Rounding to the balance moves no rung by more than ${percent(most)}.`;
  if (!smallest) return rounding;
  const { divisionGrams } = variation.base;
  return `${rounding} Half a division (${trimmedNumber(divisionGrams / 2, 3)} g) is ${percent(smallest.error)} of the smallest weighing, ${trimmedNumber(smallest.grams, 3)} g of ${smallest.name}.`;
}

/** What is copied besides: the steps, and stages that are made after or before. */
export function fromText({ design, trial }: LadderStart, { stage }: Variation): string {
  const steps = stage.process.length > 0 ? ', made by the same steps' : '';
  const others = trial.stages.filter(({ name }) => name !== stage.name).map(({ name }) => name);
  return `${designWords(design)}${steps}${others.length > 0 ? `; ${others.join(' and ')} as there` : ''}`;
}

export const balanceText = (balance: Scale | undefined): string =>
  balance
    ? `to ${trimmedNumber(balance.divisionGrams, 3)} g${balance.limitGrams === undefined ? '' : `, up to ${trimmedNumber(balance.limitGrams, 6)} g`}`
    : 'none in bench.yaml; taken as 0.01 g';

/** The items that every beaker has alike, and what takes the rest. */
export function keptText({ base, stage, levers }: Variation, beakers: readonly PlannedBeaker[]): string {
  const rungs = beakers.filter(({ role }) => role !== 'blank');
  const now = base.mixture.stages[base.stageAt];
  const alike = stage.items.flatMap((item, at) => {
    if (at === base.restAt || levers.includes(at)) return [];
    const grams = now?.items[at]?.massGrams ?? 0;
    const isKept = rungs.every(({ rung }) => {
      const there = rung.mixture.stages[base.stageAt]?.items[at]?.massGrams ?? 0;
      return Math.abs(there - grams) <= keptWithin * grams;
    });
    return [`${item.name} ${trimmedNumber(grams, 4)} g${isKept ? '' : ' (not quite: see the table)'}`];
  });
  const rest = base.restAt === undefined ? undefined : stage.items[base.restAt];
  const whole = `${trimmedNumber(now?.massGrams ?? 0, 4)} g`;
  const room = rest
    ? `${rest.name} takes the rest of ${whole}`
    : `nothing takes the rest, so beakers differ from ${whole}`;
  return [...togetherText({ base, stage, levers }, rungs), ...alike, room].join('; ');
}

/** Of several that are varied against each other, what they weigh together where that stays. */
function togetherText(
  { base, stage, levers }: Pick<Variation, 'base' | 'stage' | 'levers'>,
  rungs: readonly PlannedBeaker[],
): readonly string[] {
  const gramsIn = (mixture: Mixture): number =>
    levers.reduce((sum, at) => sum + (mixture.stages[base.stageAt]?.items[at]?.massGrams ?? 0), 0);
  const grams = gramsIn(base.mixture);
  const isKept = rungs.every(({ rung }) => Math.abs(gramsIn(rung.mixture) - grams) <= keptWithin * grams);
  if (levers.length < 2 || !isKept) return [];
  const names = levers.flatMap((at) => stage.items[at]?.name ?? []);
  return [`${listed(names)} ${trimmedNumber(grams, 4)} g together`];
}

const keptWithin = 0.01;

/** The beakers as JSON, in the order of making. */
export const beakersJson = (
  numbered: readonly NumberedBeaker[],
  { base }: Variation,
  varied: Varied,
): readonly object[] =>
  numbered.map(({ beaker, number, file }, at) => ({
    trial: number,
    order: { value: at + 1, unit: '' },
    role: beaker.role,
    ...asked(beaker, varied),
    rounding: { value: beaker.role === 'blank' ? null : roundingOf(beaker), unit: '' },
    file,
    items: beaker.rung.items.map((item, place) => ({
      item: item.name,
      amount: item.amount.written,
      mass: { value: gramsAt(beaker, base.stageAt, place), unit: 'g' },
    })),
  }));

function asked({ role, value, rung }: PlannedBeaker, varied: Varied): object {
  if (role === 'blank') return { value: { value: null, unit: '' }, asWeighed: { value: null, unit: '' } };
  if (typeof value === 'number' || value === undefined)
    return { value: { value: value ?? rung.asked, unit: '' }, asWeighed: { value: rung.weighed, unit: '' } };
  const unit = varied.kind === 'amount' ? 'g' : '';
  return { value: { value: rung.asked, unit }, asWeighed: { value: rung.weighed, unit } };
}
