/**
 * What a ledger's files say, as records: texts read into amounts, times and numbers once, here. Each record
 * keeps the stretches that a problem could point at; `placeAt` on its file's source shows them.
 */

import type { Amount, Quantity } from '../calc/quantity.ts';
import type { Range } from '../calc/range.ts';
import type { FigureName, Role } from '../reference/ingredient.ts';
import type { StressWord } from '../reference/stress-cycles.ts';
import type { MapNode, Span } from './tree.ts';

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
  /** The tree; read again from the text when it is asked for, so that a thousand cards don't hold theirs. */
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
  readonly weighed?: Quantity | undefined;
  readonly lot?: string | undefined;
  readonly role?: Role | undefined;
  readonly note?: string | undefined;
}

export const stepWords = ['mix', 'add', 'warm', 'hold', 'cool', 'shear', 'filter', 'rest'] as const;
export type StepWord = (typeof stepWords)[number];

/** A step of the process: a plain sentence, or what was done with its figures. */
export interface StepCard {
  readonly sentence?: string | undefined;
  readonly does?: StepWord | undefined;
  readonly what?: string | undefined;
  /** Temperatures. */
  readonly to?: Quantity | undefined;
  readonly at?: Quantity | undefined;
  /** Times. */
  readonly holds?: Quantity | undefined;
  readonly over?: Quantity | undefined;
  /** A speed; where it was typed in words, `stirWords`. */
  readonly stir?: Quantity | undefined;
  readonly stirWords?: string | undefined;
  readonly with?: string | undefined;
  readonly into?: string | undefined;
  readonly by?: string | undefined;
  readonly note?: string | undefined;
  /** Where it stands. */
  readonly node: Span;
}

export interface StageCard {
  readonly name: string;
  readonly nameSpan: Span;
  readonly items: readonly ItemCard[];
  readonly process: readonly StepCard[];
  /** A mass or a volume. */
  readonly makes?: Quantity | undefined;
  readonly made?: Moment | undefined;
  readonly by?: string | undefined;
  /** Measured. */
  readonly density?: Quantity | undefined;
  /** A mass, measured when the stage was done. */
  readonly weighs?: Quantity | undefined;
  readonly keep?: Quantity | undefined;
  readonly note?: string | undefined;
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
  readonly in?: string | undefined;
  readonly cover?: string | undefined;
  readonly coverSpan?: Span | undefined;
  /** A temperature; bench temperature where left out. */
  readonly at?: Quantity | undefined;
  readonly viewed?: string | undefined;
  /** How many alike, such as bottles kept back. */
  readonly count?: number | undefined;
  /** When to look, where it is not the bench's own schedule. */
  readonly looks?: readonly Quantity[] | undefined;
  readonly watch?: Quantity | undefined;
  /** Cycles of warm and cold; looks and watch then follow their ends where the file gives none. */
  readonly stress?: StressWord | undefined;
  readonly note?: string | undefined;
}

export interface TasteScore {
  readonly word: string;
  readonly wordSpan: Span;
  /** 0 to 5. */
  readonly score: number;
}

export interface ObservationCard extends Span {
  /** Its first line, up to the end of its time. */
  readonly headSpan: Span;
  readonly at: Moment;
  /** As typed; without it the observation belongs to the first sample. */
  readonly sample?: Named | undefined;
  readonly looks: readonly Look[];
  readonly temperature?: Quantity | undefined;
  readonly turbidity?: Quantity | undefined;
  readonly droplet?: Quantity | undefined;
  readonly ph?: number | undefined;
  readonly acid?: Quantity | undefined;
  readonly brix?: number | undefined;
  readonly density?: Quantity | undefined;
  readonly mass?: Quantity | undefined;
  readonly co2?: Quantity | undefined;
  readonly head?: Quantity | undefined;
  readonly headLife?: Quantity | undefined;
  readonly taste: readonly TasteScore[];
  readonly served?: string | undefined;
  readonly against?: string | undefined;
  readonly blind?: string | undefined;
  readonly smell?: string | undefined;
  readonly colour?: string | undefined;
  readonly viewed?: Named | undefined;
  readonly photo?: Named | undefined;
  readonly by?: string | undefined;
  readonly note?: string | undefined;
  readonly ended?: string | undefined;
}

/** A calculator's answer as it stands in the file; its other keys are read from the node. */
export interface ResultCard extends Span {
  readonly at: Moment;
  readonly calculator: string;
  readonly stage?: string | undefined;
  readonly of?: string | undefined;
  readonly node: MapNode;
}

/** What a trial and a batch have in common: something was made and looked at. */
export interface MadeCard extends FileCard {
  readonly title?: string | undefined;
  readonly made?: Moment | undefined;
  readonly by?: string | undefined;
  readonly why?: string | undefined;
  readonly concluded?: string | undefined;
  readonly note?: string | undefined;
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
  readonly from?: number | undefined;
  readonly series?: Named | undefined;
  readonly batch?: Named | undefined;
}

export interface BatchCard extends MadeCard {
  readonly kind: 'batch';
  readonly name: string;
  readonly nameSpan: Span;
  /** Of what: a formula with its git revision, or a trial. */
  readonly formula?: Named | undefined;
  readonly revision?: string | undefined;
  readonly trial?: number | undefined;
  /** As it was asked for: `20 L syrup`, `500 x 330 mL`. */
  readonly scaledTo?: string | undefined;
  readonly loss?: Quantity | undefined;
  /** A mass or a volume: what there was in the end. */
  readonly yield?: Quantity | undefined;
  readonly bottles?: number | undefined;
  readonly bottle?: Quantity | undefined;
}

export interface Decision {
  readonly text?: string | undefined;
  readonly date?: Moment | undefined;
  /** What was decided on, as typed: a ratio, or the amount of what is varied. */
  readonly ratio?: string | undefined;
  readonly why?: string | undefined;
}

export interface SeriesCard extends FileCard {
  readonly kind: 'series';
  readonly name: string;
  readonly nameSpan: Span;
  readonly question?: string | undefined;
  readonly varies?: string | undefined;
  readonly same: readonly string[];
  readonly judge?: Named | undefined;
  /** `clear` where the file says nothing. */
  readonly passes: readonly Look[];
  readonly watch?: Quantity | undefined;
  readonly settle?: Quantity | undefined;
  /** Numbers of trials. */
  readonly control?: number | undefined;
  readonly blank?: number | undefined;
  readonly shape: 'edge' | 'window';
  /** Whose aims count: the head of a series over antifoam. */
  readonly formula?: Named | undefined;
  readonly note?: string | undefined;
  readonly decided?: Decision | undefined;
}

export interface AimCard {
  /** `ph`, `acid`, `brix`, `co2`, `look`, `serving` …, or a substance. */
  readonly name: string;
  readonly nameSpan: Span;
  readonly range?: Range | undefined;
  readonly looks?: readonly Look[] | undefined;
  readonly written: string;
  readonly span: Span;
}

export interface FormulaCard extends FileCard {
  readonly kind: 'formula';
  readonly name: string;
  readonly nameSpan: Span;
  readonly title?: string | undefined;
  readonly why?: string | undefined;
  readonly note?: string | undefined;
  /** The trial it was made from. */
  readonly from?: number | undefined;
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

export type AnyCard = BenchCard | IngredientsCard | TrialCard | SeriesCard | FormulaCard | BatchCard;
