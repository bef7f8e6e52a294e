/** What a stage must become when too much of one item went in. */

export interface PouredItem {
  readonly name: string;
  readonly plannedGrams: number;
  readonly weighedGrams: number | undefined;
}

export interface NewPlan {
  /** How much larger the stage becomes. */
  readonly factor: number;
  readonly items: readonly {
    readonly name: string;
    /** What it must come to in all. */
    readonly totalGrams: number;
    /** What is still to be added: all of it where it was not weighed, the difference where too little was. */
    readonly addGrams: number;
  }[];
}

/**
 * The smallest stage that keeps every ratio of the plan and needs nothing taken out.
 *
 * Formula   k = largest of weighed / planned;  total_i = k planned_i;  add_i = total_i - weighed_i
 * Input     planned and weighed masses in g
 * Output    factor k, and for every item the total and what is still to add, in g
 * Refuses   nothing weighed
 * Source    conservation of mass
 * Example   planned 2, 6 (weighed 6.6), 42 g -> factor 1.1, totals 2.2, 6.6, 46.2
 */
export function keepRatios(items: readonly PouredItem[]): NewPlan | undefined {
  const factors = items.flatMap((item) =>
    item.weighedGrams === undefined || item.plannedGrams <= 0 ? [] : [item.weighedGrams / item.plannedGrams],
  );
  if (factors.length === 0) return undefined;
  const factor = Math.max(...factors);
  return {
    factor,
    items: items.map((item) => {
      const totalGrams = item.plannedGrams * factor;
      return { name: item.name, totalGrams, addGrams: Math.max(0, totalGrams - (item.weighedGrams ?? 0)) };
    }),
  };
}
