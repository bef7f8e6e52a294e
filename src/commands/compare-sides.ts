/** Two records laid beside each other: what is typed, and what follows from it. */

import { type ComesTo, comesTo } from '../calc/compare/comes-to.ts';
import { areStagesSame, documentDifference } from '../calc/compare/difference.ts';
import type { DocumentDifference, ItemChange, StageChange } from '../calc/compare/document.ts';
import type { Property } from '../calc/compare/properties.ts';
import type { CostTotal } from '../calc/cost.ts';
import type { BesideFigure } from '../calc/drink/beside-figures.ts';
import type { Mixture, ResolvedStage } from '../calc/mixture/picture.ts';
import { rootName } from '../ledger/compared-document.ts';
import { fail, ProblemError } from '../problem.ts';
import { normaliseName } from '../reference/name.ts';
import { type DefinitionChange, definitionChanges } from './compare-ingredients.ts';
import type { Side } from './compare-side.ts';

export const comparedParts = ['formula', 'observations', 'results'] as const;
export type ComparedPart = (typeof comparedParts)[number];

/** A figure before and after; a side is undefined where it does not exist. */
export interface Moved {
  readonly before: number | undefined;
  readonly after: number | undefined;
}

export interface PropertyChange extends Omit<Property, 'value'>, Moved {}

export interface SubstanceChange {
  readonly name: string;
  readonly role: string;
  readonly massFraction: Moved;
  readonly gramsPerLitre: Moved;
}

export interface CrossedFigure {
  readonly figure: BesideFigure;
  readonly before: number | undefined;
  readonly after: number | undefined;
  readonly isAbove: boolean;
}

export interface Comparison {
  readonly before: Side;
  readonly after: Side;
  /** The same file at two times. */
  readonly isSameRecord: boolean;
  readonly difference: DocumentDifference;
  /** All of them; `isMoved` says which are not what they were. */
  readonly properties: readonly PropertyChange[];
  /** Of the drink, those that changed. */
  readonly substances: readonly SubstanceChange[];
  readonly crossed: readonly CrossedFigure[];
  /** Of a litre, by currency. */
  readonly costs: readonly PropertyChange[];
  readonly outcomes: readonly OutcomeChange[];
  readonly definitions: readonly DefinitionChange[];
}

export interface OutcomeChange {
  readonly sample: string;
  readonly before: string;
  readonly after: string;
}

/** Figures nearer than this are the same: what is left is the density of another lot, or the noise of the arithmetic. */
const sameWithin = 1e-5;

export function isMoved({ before, after }: Moved): boolean {
  if (before === undefined || after === undefined) return before !== after;
  return Math.abs(after - before) > sameWithin * Math.max(Math.abs(before), Math.abs(after), 1e-12);
}

/** Refuses where one of the two can't be read at all. */
export function comparisonOf(before: Side, after: Side): Comparison {
  const unread = [before, after].filter(({ document }) => !document);
  if (!before.document || !after.document) {
    throw new ProblemError(
      unread.flatMap(({ problems, label }) => [
        ...problems.map((one) => ({ ...one, severity: 'error' as const })),
        {
          code: 'unreadable-side',
          severity: 'error' as const,
          message: `${label} can't be read, so nothing of it can be compared`,
          hint: 'mend the file, or name another revision',
        },
      ]),
    );
  }
  const solved = before.solved && after.solved ? { before: before.solved, after: after.solved } : undefined;
  return {
    before,
    after,
    isSameRecord: isSameRecord(before, after),
    difference: documentDifference(before.document, after.document),
    properties: solved ? propertyChanges(solved.before.properties, solved.after.properties) : [],
    substances: solved ? substanceChanges(solved.before.mixture.drink, solved.after.mixture.drink) : [],
    crossed: solved ? crossedFigures(solved.before.beside, solved.after.beside) : [],
    costs: solved ? costChanges(solved.before.cost?.totals ?? [], solved.after.cost?.totals ?? []) : [],
    outcomes: outcomeChanges(before, after),
    definitions: definitionChanges(before, after),
  };
}

function isSameRecord({ card: one }: Side, { card: other }: Side): boolean {
  if (one?.kind === 'trial') return other?.kind === 'trial' && one.number === other.number;
  if (one === undefined || one.kind !== other?.kind || !('name' in other)) return false;
  return isNamed(one.name, other.name) || one.file === other.file;
}

const isNamed = (one: string, other: string): boolean => normaliseName(one) === normaliseName(other);

function propertyChanges(before: readonly Property[], after: readonly Property[]): readonly PropertyChange[] {
  return after.flatMap(({ value, ...rest }) => {
    const was = before.find(({ key }) => key === rest.key)?.value;
    return was === undefined && value === undefined ? [] : [{ ...rest, before: was, after: value }];
  });
}

function costChanges(before: readonly CostTotal[], after: readonly CostTotal[]): readonly PropertyChange[] {
  const currencies = new Set([...before, ...after].map(({ currency }) => currency));
  const of = (totals: readonly CostTotal[], currency: string): number | undefined =>
    totals.find((one) => one.currency === currency)?.amount;
  return [...currencies].map((currency) => ({
    key: 'cost',
    label: 'cost of what is weighed in',
    unit: `${currency}/L`,
    digits: 3,
    before: of(before, currency),
    after: of(after, currency),
  }));
}

interface Amounts {
  readonly name: string;
  readonly role: string;
  massFraction: number;
  gramsPerLitre: number;
}

/** By the record at the end of `like`, so that another lot is the same substance. */
function amountsIn(drink: ResolvedStage | undefined): ReadonlyMap<string, Amounts> {
  const all = new Map<string, Amounts>();
  for (const { name, role, entry, massFraction, gramsPerLitre } of drink?.substances ?? []) {
    const key = `${normaliseName(rootName(entry))} ${role}`;
    const known = all.get(key);
    if (!known) all.set(key, { name, role, massFraction, gramsPerLitre });
    else {
      known.massFraction += massFraction;
      known.gramsPerLitre += gramsPerLitre;
    }
  }
  return all;
}

function substanceChanges(
  before: ResolvedStage | undefined,
  after: ResolvedStage | undefined,
): readonly SubstanceChange[] {
  if (!before || !after) return [];
  const [was, now] = [amountsIn(before), amountsIn(after)];
  return [...new Set([...was.keys(), ...now.keys()])].flatMap((key) => {
    const [one, other] = [was.get(key), now.get(key)];
    const change: SubstanceChange = {
      name: (other ?? one)?.name ?? '',
      role: (other ?? one)?.role ?? '',
      massFraction: { before: one?.massFraction, after: other?.massFraction },
      gramsPerLitre: { before: one?.gramsPerLitre, after: other?.gramsPerLitre },
    };
    const isThere = (one?.massFraction ?? 0) > 0 || (other?.massFraction ?? 0) > 0;
    return isThere && isMoved(change.massFraction) ? [change] : [];
  });
}

/** Published figures that one of the two is above, and the other is not. */
function crossedFigures(
  before: readonly BesideFigure[],
  after: readonly BesideFigure[],
): readonly CrossedFigure[] {
  const keyOf = ({ figure, counted }: BesideFigure): string =>
    [figure.body, figure.form, figure.food, figure.value, counted.as].join('|');
  const was = new Map(before.map((one): [string, BesideFigure] => [keyOf(one), one]));
  const now = new Map(after.map((one): [string, BesideFigure] => [keyOf(one), one]));
  return [...new Set([...was.keys(), ...now.keys()])].flatMap((key) => {
    const [one, other] = [was.get(key), now.get(key)];
    const figure = other ?? one;
    if (!figure || (one?.isAbove ?? false) === (other?.isAbove ?? false)) return [];
    return [{ figure, before: one?.here, after: other?.here, isAbove: other?.isAbove ?? false }];
  });
}

function outcomeChanges(before: Side, after: Side): readonly OutcomeChange[] {
  const samples = new Set([...before.outcomes, ...after.outcomes].map(({ sample }) => sample));
  const of = (side: Side, sample: string): string =>
    side.outcomes.find((one) => isNamed(one.sample, sample))?.words ?? '';
  return [...samples]
    .map((sample) => ({ sample, before: of(before, sample), after: of(after, sample) }))
    .filter((one) => one.before !== one.after);
}

/** What a line comes to before and after. */
export function lineComesTo(
  { before, after }: Comparison,
  stage: StageChange,
  item: Pick<ItemChange, 'before' | 'after' | 'fromStage'>,
): { readonly before: ComesTo | undefined; readonly after: ComesTo | undefined } {
  const from = item.fromStage ?? stage.was ?? stage.name;
  const [was, now] = [before.solved?.mixture, after.solved?.mixture];
  const inItsStage = goesInto(was, stage.was ?? stage.name) !== goesInto(now, stage.name);
  const isOneSided = stage.change === 'added' || stage.change === 'removed';
  return {
    before: was && comesTo(was, from, item.before, inItsStage && !isOneSided),
    after: now && comesTo(now, stage.name, item.after, inItsStage && !isOneSided),
  };
}

/** Whether a stage goes into the drink. */
function goesInto(mixture: Mixture | undefined, name: string): boolean {
  const stage = mixture?.stages.find((one) => one.name === name);
  return stage !== undefined && (stage === mixture?.drink || stage.shareInDrink > 0);
}

/** Whether the two differ in a part. Prices don't count, nor do names, times and remarks of two records. */
export function isDifferent(comparison: Comparison, only: ComparedPart | undefined): boolean {
  const { difference, properties, substances, crossed, isSameRecord: isSame, outcomes } = comparison;
  const isFormulaOther =
    !areStagesSame(difference) ||
    (hasAims(comparison) && difference.aims.length > 0) ||
    properties.some(isMoved) ||
    substances.length + crossed.length > 0;
  const hasBoth = comparison.before.card?.kind !== 'formula' && comparison.after.card?.kind !== 'formula';
  const isSeenOther =
    hasBoth && difference.samples.length + difference.observations.length + outcomes.length > 0;
  const areResultsOther = hasBoth && difference.results.length > 0;
  if (only === 'formula') return isFormulaOther;
  if (only === 'observations') return isSeenOther;
  if (only === 'results') return areResultsOther;
  return isFormulaOther || isSeenOther || areResultsOther || (isSame && difference.facts.length > 0);
}

export const hasAims = ({ before, after }: Comparison): boolean =>
  before.card?.kind === 'formula' && after.card?.kind === 'formula';

export function partOf(typed: string | undefined): ComparedPart | undefined {
  const part = comparedParts.find((one) => one === typed);
  if (typed === undefined || part) return part;
  return fail('unknown-part', `--only: "${typed}" is no part`, `write ${comparedParts.join(', ')}`);
}
