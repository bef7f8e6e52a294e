/** Ladders in words: labels of beakers, what is kept, which weighings are too small. */

import { trimmedNumber } from '../calc/number-text.ts';
import { isWeighedOut } from '../calc/rungs/amount-for.ts';
import { leastMass, readingError } from '../calc/rungs/weighing-error.ts';
import type { RungValue, Variation } from '../ledger/ladder-vary.ts';
import { isOilPerEmulsifier, type Varied } from '../ledger/varied.ts';
import type { BeakerRole, PlannedBeaker } from './ladder-plan.ts';
import { ratioCell } from './series-words.ts';

export function valueText(varied: Varied, value: RungValue): string {
  if (typeof value !== 'number') return value.written;
  return varied.kind === 'ratio' ? ratioCell(value) : trimmedNumber(value, 4);
}

/** Its title: `1 : 3`, `blend HLB 12`, `control, 1 : 8`, `blank`. */
export function labelOf(role: BeakerRole, varied: Varied, value: RungValue | undefined): string {
  if (role === 'blank' || value === undefined) return 'blank';
  const text = valueText(varied, value);
  const named = isOilPerEmulsifier(varied) ? text : `${varied.text} ${text}`;
  return role === 'control' ? `control, ${named}` : named;
}

/** By how much the balance moves what is varied, as a fraction. */
export const roundingOf = ({ rung, role }: PlannedBeaker): number =>
  role === 'blank' || rung.asked === 0 ? 0 : rung.weighed / rung.asked - 1;

interface SmallWeighing {
  readonly name: string;
  readonly grams: number;
  readonly error: number;
}

/** The smallest weighing of all beakers; undefined where nothing is weighed. */
export function smallestWeighing(
  beakers: readonly PlannedBeaker[],
  variation: Variation,
): SmallWeighing | undefined {
  const { divisionGrams, stageAt } = variation.base;
  return beakers
    .flatMap(({ rung }) =>
      rung.items.flatMap((item, at): readonly SmallWeighing[] => {
        const grams = rung.mixture.stages[stageAt]?.items[at]?.massGrams ?? 0;
        const isOut = item.amount.makeUp || !isWeighedOut(item.amount.quantity.dimension) || grams <= 0;
        return isOut ? [] : [{ name: item.name, grams, error: readingError(divisionGrams, grams) }];
      }),
    )
    .sort((one, other) => one.grams - other.grams)[0];
}

/** What must be known before the first pour. */
export function weighingCautions(
  beakers: readonly PlannedBeaker[],
  variation: Variation,
  accepted: number,
): readonly string[] {
  const smallest = smallestWeighing(beakers, variation);
  if (!smallest || smallest.error <= accepted) return [];
  const { divisionGrams, mixture, stageAt } = variation.base;
  const stage = mixture.stages[stageAt];
  const times = leastMass(divisionGrams, accepted) / smallest.grams;
  const larger = Math.ceil(((stage?.massGrams ?? 0) * times) / 5) * 5;
  return [
    `${percent(smallest.error)} of ${smallest.name} (${trimmedNumber(smallest.grams, 3)} g) may be the balance alone, and the bench accepts ${percent(accepted)}: make ${stage?.name ?? 'the stage'} ${trimmedNumber(larger, 4)} g or more, or weigh on a finer balance`,
  ];
}

export const percent = (fraction: number): string => `${trimmedNumber(fraction * 100, 2)} %`;

/** Stages made before, of which more is taken than is made. */
export function earlierCautions(
  beakers: readonly PlannedBeaker[],
  { base, stage }: Variation,
): readonly string[] {
  return stage.items.flatMap(({ name }, at) => {
    const source = base.mixture.stages[base.stageAt]?.items[at]?.source;
    if (source?.kind !== 'stage') return [];
    const made = base.mixture.stages.find((one) => one.name === source.stage)?.massGrams ?? 0;
    const most = Math.max(
      ...beakers.map(({ rung }) => rung.mixture.stages[base.stageAt]?.items[at]?.massGrams ?? 0),
    );
    if (most <= made * (1 + 1e-6)) return [];
    return [
      `${name}: ${trimmedNumber(most, 4)} g is taken and ${trimmedNumber(made, 4)} g is made; put its amounts up in the files, or in the trial before`,
    ];
  });
}

/** Ratios outside these are seldom meant: emulsifier per oil 0.5 to 10 is usual (common practice, no source). */
const usualRatios = { low: 0.1, high: 2 } as const;

/** Where a ratio may have been typed the other way up, or two rungs are one. */
export function rungCautions(
  beakers: readonly PlannedBeaker[],
  varied: Varied,
  isHomogenised: boolean,
): readonly string[] {
  const most = isHomogenised ? usualRatios.high * 2.5 : usualRatios.high;
  const odd = beakers.filter(({ value, role }) => {
    if (role === 'blank' || !isOilPerEmulsifier(varied) || typeof value !== 'number') return false;
    return value > most * (1 + 1e-9) || value < usualRatios.low * (1 - 1e-9);
  });
  const rungs = beakers.filter(({ role }) => role === 'rung');
  const twice = rungs.filter(
    ({ rung }, at) => rungs.findIndex((one) => isSame(one.rung.weighed, rung.weighed)) < at,
  );
  return [
    ...(odd.length === 0
      ? []
      : [
          `${odd.map(({ label }) => label).join(', ')}: is this meant? A ratio is typed oil first, so 1:3 is 1 part of oil to 3 of emulsifier`,
        ]),
    ...twice.map(({ label }) => `${label} comes out like another rung: two beakers alike`),
  ];
}

const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.abs(other);
