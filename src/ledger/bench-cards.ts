/** What the bench has: its own ingredients, balances, vessels, times and water. */

import type { Amount, Quantity } from '../calc/quantity.ts';
import type { FigureName, Role } from '../reference/ingredient.ts';
import type { FileCard, Moment, Named } from './card-basics.ts';
import type { MapNode, Span } from './tree.ts';

/** A part of a solution: its share, or the rest. */
export interface ContentCard {
  readonly name: string;
  readonly nameSpan: Span;
  readonly amount: Amount | 'rest';
}

/** A figure of the person's own, in the unit of `figureUnits`. */
export interface OwnFigure {
  readonly name: FigureName;
  readonly value: number;
  readonly written: string;
}

export interface DropCard {
  readonly massGrams: number;
  readonly standardDeviationGrams?: number | undefined;
  readonly liquid?: string | undefined;
  readonly temperature?: Quantity | undefined;
  readonly weighings?: number | undefined;
  /** Drops in all of them. */
  readonly drops?: number | undefined;
}

export interface IngredientCard {
  readonly name: string;
  readonly nameSpan: Span;
  readonly like?: Named | undefined;
  readonly role?: Role | undefined;
  readonly figures: readonly OwnFigure[];
  readonly fold?: number | undefined;
  readonly contains: readonly ContentCard[];
  readonly aliases: readonly string[];
  readonly lot?: string | undefined;
  readonly opened?: Moment | undefined;
  readonly made?: Moment | undefined;
  readonly keep?: Quantity | undefined;
  readonly price?: Quantity | undefined;
  readonly drop?: DropCard | undefined;
  /** What is left, a mass or a volume. */
  readonly left?: Quantity | undefined;
  readonly source?: string | undefined;
  readonly note?: string | undefined;
  readonly node: MapNode;
}

export interface IngredientsCard extends FileCard {
  readonly kind: 'ingredients';
  readonly ingredients: readonly IngredientCard[];
}

export interface Balance {
  readonly division: Quantity;
  readonly limit?: Quantity | undefined;
  readonly name?: string | undefined;
}

export interface Vessel {
  readonly name?: string | undefined;
  readonly volume?: Quantity | undefined;
  readonly mass?: Quantity | undefined;
  readonly count?: number | undefined;
}

/** The bench's own water. */
export interface BenchWater {
  readonly alkalinity?: Quantity | undefined;
  readonly hardness?: Quantity | undefined;
  readonly chlorine?: Quantity | undefined;
  readonly iron?: Quantity | undefined;
  readonly sodium?: Quantity | undefined;
  readonly ph?: number | undefined;
}

export interface FoamTest {
  readonly glass?: string | undefined;
  readonly volume?: Quantity | undefined;
  readonly temperature?: Quantity | undefined;
  readonly pour?: Quantity | undefined;
}

/** Everything with a default has it filled in. */
export interface BenchCard extends FileCard {
  readonly kind: 'bench';
  readonly name?: string | undefined;
  readonly timeZone?: string | undefined;
  readonly balances: readonly Balance[];
  readonly vessels: readonly Vessel[];
  readonly weighing: Quantity;
  readonly drop?: DropCard | undefined;
  readonly temperature: Quantity;
  /** Ways of viewing; the first is the usual one. */
  readonly viewed: readonly string[];
  readonly covers: readonly string[];
  readonly settle: Quantity;
  readonly watch: Quantity;
  readonly looks: readonly Quantity[];
  readonly longWatch: readonly Quantity[];
  readonly tastes: readonly string[];
  readonly margin: Quantity;
  /** The largest dilution in one step, such as 100 for 1:100. */
  readonly largestDilution?: number | undefined;
  readonly water: BenchWater;
  readonly foamTest?: FoamTest | undefined;
  readonly limits: readonly string[];
}
