/**
 * What a ledger's files say, as records: texts read into amounts, times and numbers once, here. Each record
 * keeps the node it was read from; `placeAt` on its file's source shows any stretch of it.
 */

import type { Amount, Quantity } from '../calc/quantity.ts';
import type { Range } from '../calc/range.ts';
import type { FigureName, Role } from '../reference/ingredient.ts';
import type { MapNode, Span, TextNode, TreeNode } from './tree.ts';

export const looks = [
  'clear',
  'bluish',
  'hazy',
  'cloudy',
  'specks',
  'ring',
  'sediment',
  'gel',
  'broken',
] as const;

export type Look = (typeof looks)[number];

/** A time, or a day alone (then its first instant), in the file. */
export interface Moment extends Span {
  readonly written: string;
  readonly epochMilliseconds: number;
  /** True where only a date was typed. */
  readonly isDay: boolean;
}

/** A text with its place. */
export interface Named extends Span {
  readonly text: string;
}

/** What every file's record has. */
export interface FileCard {
  /** From the root of the ledger, with `/`. */
  readonly file: string;
  readonly root: MapNode;
  /** True where nothing is wrong in the file itself, so that calculators may use it. */
  readonly isSound: boolean;
}

export interface ItemCard extends Span {
  readonly name: string;
  readonly nameSpan: Span;
  readonly amount: Amount;
  readonly amountSpan: Span;
  /** A mass: what the balance said. */
  readonly weighed?: Quantity;
  readonly lot?: string;
  readonly role?: Role;
  readonly note?: string;
  readonly node: MapNode;
}

export const stepWords = ['mix', 'add', 'warm', 'hold', 'cool', 'shear', 'filter', 'rest'] as const;
export type StepWord = (typeof stepWords)[number];

/** A step of the process: a plain sentence, or what was done with its figures. */
export interface StepCard {
  readonly sentence?: string;
  readonly does?: StepWord;
  readonly what?: string;
  /** Temperatures. */
  readonly to?: Quantity;
  readonly at?: Quantity;
  /** Times. */
  readonly holds?: Quantity;
  readonly over?: Quantity;
  /** A speed; where it was typed in words, `stirWords`. */
  readonly stir?: Quantity;
  readonly stirWords?: string;
  readonly with?: string;
  readonly into?: string;
  readonly by?: string;
  readonly note?: string;
  readonly node: TreeNode;
}

export interface StageCard {
  readonly name: string;
  readonly nameSpan: Span;
  readonly items: readonly ItemCard[];
  readonly process: readonly StepCard[];
  /** A mass or a volume. */
  readonly makes?: Quantity;
  readonly made?: Moment;
  readonly by?: string;
  /** Measured. */
  readonly density?: Quantity;
  /** A mass, measured when the stage was done. */
  readonly weighs?: Quantity;
  readonly keep?: Quantity;
  readonly note?: string;
  /** The list of items or the long form. */
  readonly node: TreeNode;
}

export interface SampleCard {
  /** As typed; of a sample that was left out, the name of its stage. */
  readonly name: string;
  readonly nameSpan: Span;
  /** True for the one sample that a file without `samples` has. */
  readonly isImplied: boolean;
  /** The name of a stage. */
  readonly of: string;
  readonly ofSpan: Span;
  readonly in?: string;
  readonly cover?: string;
  /** A temperature; bench temperature where left out. */
  readonly at?: Quantity;
  readonly viewed?: string;
  /** How many alike, such as bottles kept back. */
  readonly count?: number;
  /** When to look, where it is not the bench's own schedule. */
  readonly looks?: readonly Quantity[];
  readonly watch?: Quantity;
  readonly note?: string;
  readonly node?: MapNode;
}

export interface TasteScore {
  readonly word: string;
  readonly wordSpan: Span;
  /** 0 to 5. */
  readonly score: number;
}

export interface ObservationCard extends Span {
  readonly at: Moment;
  /** As typed; without it the observation belongs to the first sample. */
  readonly sample?: Named;
  readonly looks: readonly Look[];
  readonly temperature?: Quantity;
  readonly turbidity?: Quantity;
  readonly droplet?: Quantity;
  readonly ph?: number;
  readonly acid?: Quantity;
  readonly brix?: number;
  readonly density?: Quantity;
  readonly mass?: Quantity;
  readonly co2?: Quantity;
  readonly head?: Quantity;
  readonly headLife?: Quantity;
  readonly taste: readonly TasteScore[];
  readonly served?: string;
  readonly against?: string;
  readonly blind?: string;
  readonly smell?: string;
  readonly colour?: string;
  readonly viewed?: Named;
  readonly photo?: Named;
  readonly by?: string;
  readonly note?: string;
  readonly ended?: string;
  readonly node: MapNode;
}

/** A calculator's answer as it stands in the file; its other keys are read from the node. */
export interface ResultCard extends Span {
  readonly at: Moment;
  readonly calculator: string;
  readonly stage?: string;
  readonly of?: string;
  readonly node: MapNode;
}

/** What a trial and a batch have in common: something was made and looked at. */
export interface MadeCard extends FileCard {
  readonly title?: string;
  readonly made?: Moment;
  readonly by?: string;
  readonly why?: string;
  readonly concluded?: string;
  readonly note?: string;
  readonly stages: readonly StageCard[];
  /** Never empty where there are stages: the implied one stands here too. */
  readonly samples: readonly SampleCard[];
  readonly observations: readonly ObservationCard[];
  readonly results: readonly ResultCard[];
}

export interface TrialCard extends MadeCard {
  readonly kind: 'trial';
  readonly number: number;
  readonly numberSpan: Span;
  /** The trial it was changed from. */
  readonly from?: number;
  readonly series?: Named;
  readonly batch?: Named;
}

export interface BatchCard extends MadeCard {
  readonly kind: 'batch';
  readonly name: string;
  readonly nameSpan: Span;
  /** Of what: a formula with its git revision, or a trial. */
  readonly formula?: Named;
  readonly revision?: string;
  readonly trial?: number;
  /** As it was asked for: `20 L syrup`, `500 x 330 mL`. */
  readonly scaledTo?: string;
  readonly loss?: Quantity;
  /** A mass or a volume: what there was in the end. */
  readonly yield?: Quantity;
  readonly bottles?: number;
  readonly bottle?: Quantity;
}

export interface Decision {
  readonly text?: string;
  readonly date?: Moment;
  /** What was decided on, as typed: a ratio, or the amount of what is varied. */
  readonly ratio?: string;
  readonly why?: string;
}

export interface SeriesCard extends FileCard {
  readonly kind: 'series';
  readonly name: string;
  readonly nameSpan: Span;
  readonly question?: string;
  readonly varies?: string;
  readonly same: readonly string[];
  readonly judge?: Named;
  /** `clear` where the file says nothing. */
  readonly passes: readonly Look[];
  readonly watch?: Quantity;
  readonly settle?: Quantity;
  /** Numbers of trials. */
  readonly control?: number;
  readonly blank?: number;
  readonly shape: 'edge' | 'window';
  readonly note?: string;
  readonly decided?: Decision;
}

export interface AimCard {
  /** `ph`, `acid`, `brix`, `co2`, `look`, `serving` …, or a substance. */
  readonly name: string;
  readonly nameSpan: Span;
  readonly range?: Range;
  readonly looks?: readonly Look[];
  readonly written: string;
  readonly span: Span;
}

export interface FormulaCard extends FileCard {
  readonly kind: 'formula';
  readonly name: string;
  readonly nameSpan: Span;
  readonly title?: string;
  readonly why?: string;
  readonly note?: string;
  /** The trial it was made from. */
  readonly from?: number;
  readonly stages: readonly StageCard[];
  readonly aims: readonly AimCard[];
}

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
  readonly standardDeviationGrams?: number;
  readonly liquid?: string;
  readonly temperature?: Quantity;
  readonly weighings?: number;
}

export interface IngredientCard {
  readonly name: string;
  readonly nameSpan: Span;
  readonly like?: Named;
  readonly role?: Role;
  readonly figures: readonly OwnFigure[];
  readonly fold?: number;
  readonly contains: readonly ContentCard[];
  readonly aliases: readonly string[];
  readonly lot?: string;
  readonly opened?: Moment;
  readonly made?: Moment;
  readonly keep?: Quantity;
  readonly price?: Quantity;
  readonly drop?: DropCard;
  /** What is left, a mass or a volume. */
  readonly left?: Quantity;
  readonly source?: string;
  readonly note?: string;
  readonly node: MapNode;
}

export interface IngredientsCard extends FileCard {
  readonly kind: 'ingredients';
  readonly ingredients: readonly IngredientCard[];
}

export interface Balance {
  readonly division: Quantity;
  readonly limit?: Quantity;
  readonly name?: string;
}

export interface Vessel {
  readonly name?: string;
  readonly volume?: Quantity;
  readonly mass?: Quantity;
  readonly count?: number;
}

/** The bench's own water. */
export interface BenchWater {
  readonly alkalinity?: Quantity;
  readonly hardness?: Quantity;
  readonly chlorine?: Quantity;
  readonly iron?: Quantity;
  readonly sodium?: Quantity;
  readonly ph?: number;
}

export interface FoamTest {
  readonly glass?: string;
  readonly volume?: Quantity;
  readonly temperature?: Quantity;
  readonly pour?: Quantity;
}

/** Everything with a default has it filled in. */
export interface BenchCard extends FileCard {
  readonly kind: 'bench';
  readonly name?: string;
  readonly timeZone?: string;
  readonly balances: readonly Balance[];
  readonly vessels: readonly Vessel[];
  readonly weighing: Quantity;
  readonly drop?: DropCard;
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
  readonly largestDilution?: number;
  readonly water: BenchWater;
  readonly foamTest?: FoamTest;
  readonly limits: readonly string[];
}

export type AnyCard = BenchCard | IngredientsCard | TrialCard | SeriesCard | FormulaCard | BatchCard;

/** The text of a node as `Named`. */
export const namedOf = ({ text, start, end }: TextNode): Named => ({ text, start, end });
