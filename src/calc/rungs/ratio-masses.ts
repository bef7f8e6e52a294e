/** What the items of a stage weigh for a wanted ratio of two things in it. */

import { type Parsed, parsed, refused } from '../../problem.ts';

/** An item of the stage as it is now. */
export interface LadderItem {
  readonly name: string;
  readonly massGrams: number;
  /** The shares of its mass that count above and below the line of the ratio, 0 to 1. */
  readonly over: number;
  readonly under: number;
  /** It makes the stage up, so its amount is not set. */
  readonly makesUp: boolean;
}

/** Which side keeps its mass; `both`: the two together keep theirs. */
export type Kept = 'over' | 'under' | 'both';

export interface RatioWanted {
  readonly items: readonly LadderItem[];
  readonly wanted: number;
  readonly kept: Kept;
  /** The words for the two sides: `oil`, `emulsifier`. */
  readonly overName: string;
  readonly underName: string;
}

interface Side {
  /** Items that bring this side and nothing of the other. */
  readonly isLever: (item: LadderItem) => boolean;
  /** g of the side in all levers, and in the other items. */
  readonly inLevers: number;
  readonly elsewhere: number;
  /** g that the levers weigh. */
  readonly leverGrams: number;
}

/**
 * The masses of all items at the wanted ratio; what takes the rest is left to the stage.
 *
 * Formula   with x and y the factors of the items that bring only the one or only the other side:
 *           O' + x O = wanted (U' + y U); y = 1 where `under` is kept, x = 1 where `over` is kept,
 *           x m_O + y m_U = m_O + m_U where both together keep their mass
 * Input     items with their masses in g and shares of both sides; the wanted ratio, g/g, above 0
 * Output    g of each item, in order
 * Refuses   sides that come with nothing of their own to vary; a ratio that would need less than nothing
 * Example   ratioMasses of oil 2 g, emulsifier 6 g to 0.5 with `under` kept -> oil 3 g, emulsifier 6 g
 */
export function ratioMasses(asked: RatioWanted): Parsed<readonly number[]> {
  const { items, kept, overName, underName } = asked;
  const over = sideOf(items, 'over', 'under');
  const under = sideOf(items, 'under', 'over');
  const stuck = [
    ...(kept !== 'over' && over.inLevers <= 0 ? [overName] : []),
    ...(kept !== 'under' && under.inLevers <= 0 ? [underName] : []),
  ][0];
  if (stuck !== undefined) {
    const other = stuck === overName ? underName : overName;
    return refused(
      'no-lever',
      `the ${stuck} has no line of its own whose amount could be varied`,
      `give it a line of its own with an amount, apart from the ${other} and from what makes the stage up`,
    );
  }
  const { x, y } = factors(asked, over, under);
  if (!(x >= 0 && y >= 0)) return outOfReach(asked);
  return parsed(items.map((item) => item.massGrams * (over.isLever(item) ? x : under.isLever(item) ? y : 1)));
}

function sideOf(items: readonly LadderItem[], own: 'over' | 'under', other: 'over' | 'under'): Side {
  const isLever = (item: LadderItem): boolean =>
    item[own] > 0 && item[other] === 0 && !item.makesUp && item.massGrams > 0;
  const grams = (some: readonly LadderItem[], share: (item: LadderItem) => number): number =>
    some.reduce((total, item) => total + item.massGrams * share(item), 0);
  const levers = items.filter(isLever);
  return {
    isLever,
    inLevers: grams(levers, (item) => item[own]),
    elsewhere: grams(
      items.filter((item) => !isLever(item)),
      (item) => item[own],
    ),
    leverGrams: grams(levers, () => 1),
  };
}

function factors({ wanted, kept }: RatioWanted, over: Side, under: Side): { x: number; y: number } {
  if (kept === 'under')
    return { x: (wanted * (under.elsewhere + under.inLevers) - over.elsewhere) / over.inLevers, y: 1 };
  if (kept === 'over')
    return { x: 1, y: ((over.elsewhere + over.inLevers) / wanted - under.elsewhere) / under.inLevers };
  const total = over.leverGrams + under.leverGrams;
  // x from the sum of the two masses, put into the ratio.
  const y =
    (over.elsewhere + (total / over.leverGrams) * over.inLevers - wanted * under.elsewhere) /
    (wanted * under.inLevers + (under.leverGrams / over.leverGrams) * over.inLevers);
  return { x: (total - y * under.leverGrams) / over.leverGrams, y };
}

function outOfReach({ wanted, overName, underName, items }: RatioWanted): Parsed<never> {
  const mixed = items.filter(({ over, under }) => over > 0 && under > 0).map(({ name }) => name);
  const why = mixed.length > 0 ? `: ${mixed.join(' and ')} brings both` : '';
  return refused(
    'out-of-reach',
    `${overName} per ${underName} of ${Number(wanted.toPrecision(4))} is out of reach${why}`,
    'choose a rung that is nearer to what the trial has',
  );
}
