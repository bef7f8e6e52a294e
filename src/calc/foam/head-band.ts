/** Heads of foam over the dose of antifoam: what was poured, and nothing between or beyond it. */

/** One pour of the bench's foam test. */
export interface Pour {
  /** In any one unit. */
  readonly dose: number;
  readonly headMetres: number;
  /** Until the head is gone. */
  readonly lifeSeconds: number | undefined;
}

export interface HeadStep {
  readonly dose: number;
  readonly pours: number;
  readonly meanMetres: number;
  readonly lowMetres: number;
  readonly highMetres: number;
  /** The mean of those that were timed. */
  readonly lifeSeconds: number | undefined;
}

/** A side that is open is absent. */
export interface HeadBand {
  readonly lowMetres?: number;
  readonly highMetres?: number;
}

/** Doses that differ by less than this share are one: weighing is no finer. */
const oneDose = 0.02;

/**
 * The pours of each dose drawn together.
 *
 * Formula   mean, least and greatest head; doses within 2 % of the first of their group are one
 * Input     pours; dose in any one unit, head in m, life in s
 * Output    one step a dose, going up
 */
export function headSteps(pours: readonly Pour[]): readonly HeadStep[] {
  const groups: Pour[][] = [];
  for (const pour of [...pours].sort((one, other) => one.dose - other.dose)) {
    const group = groups.at(-1);
    const first = group?.[0];
    if (group && first && pour.dose - first.dose <= oneDose * first.dose) group.push(pour);
    else groups.push([pour]);
  }
  return groups.map((group) => {
    const heads = group.map(({ headMetres }) => headMetres);
    const lives = group.flatMap(({ lifeSeconds }) => (lifeSeconds === undefined ? [] : [lifeSeconds]));
    return {
      dose: group[0]?.dose ?? 0,
      pours: group.length,
      meanMetres: mean(heads),
      lowMetres: Math.min(...heads),
      highMetres: Math.max(...heads),
      lifeSeconds: lives.length > 0 ? mean(lives) : undefined,
    };
  });
}

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((total, one) => total + one, 0) / numbers.length;

/** Where a head lies: within the band, sides included, or on which side of it. */
export function placeOf(headMetres: number, { lowMetres, highMetres }: HeadBand): 'in' | 'under' | 'over' {
  if (lowMetres !== undefined && headMetres < lowMetres * (1 - edge)) return 'under';
  if (highMetres !== undefined && headMetres > highMetres * (1 + edge)) return 'over';
  return 'in';
}

/** So that 15 mm is not above 15 mm by the last bit. */
const edge = 1e-9;

export interface InBand {
  /** The smallest dose whose mean head lies in the band. */
  readonly smallest: HeadStep | undefined;
  /** The smallest dose of which every pour does. */
  readonly everyPour: HeadStep | undefined;
}

/**
 * The smallest dose tried that brings the head into the band. Nothing is read between doses: no curve is known.
 *
 * Formula   the first step, going up, whose mean (whose every pour) lies in the band
 */
export function smallestInBand(steps: readonly HeadStep[], band: HeadBand): InBand {
  const isIn = (head: number): boolean => placeOf(head, band) === 'in';
  return {
    smallest: steps.find(({ meanMetres }) => isIn(meanMetres)),
    everyPour: steps.find(({ lowMetres, highMetres }) => isIn(lowMetres) && isIn(highMetres)),
  };
}

export interface Rise {
  readonly from: HeadStep;
  readonly to: HeadStep;
  /** Every pour of the greater dose stood higher than every pour of the lesser. */
  readonly isClear: boolean;
}

/**
 * Where more antifoam gave more foam: neighbouring doses whose mean head goes up.
 * Output    each with whether the pours of the two overlap
 */
export const rises = (steps: readonly HeadStep[]): readonly Rise[] =>
  steps.slice(1).flatMap((to, at) => {
    const from = steps[at];
    if (!from || to.meanMetres <= from.meanMetres * (1 + edge)) return [];
    return [{ from, to, isClear: to.lowMetres > from.highMetres }];
  });
