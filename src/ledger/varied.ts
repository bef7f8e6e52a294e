/** What a series varies, as it is typed under `varies`, and what it comes to in one trial. */

import type { Book, BookEntry } from '../calc/book.ts';
import type { FailingSide } from '../calc/ladder/direction.ts';
import { meetingStage } from '../calc/mixture/meeting-stage.ts';
import type { Mixture, ResolvedItem, ResolvedStage } from '../calc/mixture/picture.ts';
import type { Quantity } from '../calc/quantity.ts';
import { type Role, roles } from '../reference/ingredient.ts';
import { lookUp } from '../reference/look-up.ts';
import { normaliseName } from '../reference/name.ts';
import type { StepCard, TrialCard } from './cards.ts';
import type { Finding } from './places.ts';
import { isSameName } from './stage-name.ts';

export type Varied = { readonly text: string } & (
  | { readonly kind: 'ratio'; readonly over: string; readonly under: string }
  | { readonly kind: 'amount'; readonly of: string }
  | { readonly kind: 'blend hlb' | 'temperature' | 'stirring' }
);

/** What one trial says of it: the figure, and how its amount was typed where it is an item's. */
export interface VariedFigure {
  /** In g for an amount; else in the unit of the kind. */
  readonly value: number;
  /** The stage that holds it. */
  readonly stage: ResolvedStage | undefined;
  readonly drink?: ResolvedStage | undefined;
  readonly typed: readonly TypedAmount[];
}

export interface TypedAmount {
  readonly quantity: Quantity;
  readonly inDrink: boolean;
}

export type Found = VariedFigure | { readonly lacks: Finding };

const plain: Readonly<Record<string, 'blend hlb' | 'temperature' | 'stirring'>> = {
  hlb: 'blend hlb',
  'blend hlb': 'blend hlb',
  'blended hlb': 'blend hlb',
  temperature: 'temperature',
  stirring: 'stirring',
};

/**
 * Input     the text of `varies`: `oil per emulsifier`, `blend HLB`, `temperature`, `stirring`, an ingredient, a role,
 *           or one of these per another; two with a comma between them
 * Output    one entry each, in order; none for an empty text
 */
export const readVaried = (text: string | undefined): readonly Varied[] =>
  (text ?? '')
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map(readOne);

function readOne(text: string): Varied {
  const kind = lookUp(plain, normaliseName(text));
  if (kind) return { text, kind };
  const [over, under] = text.split(/\s+per\s+/iu);
  if (over === undefined || under === undefined) return { text, kind: 'amount', of: text };
  if (normaliseName(over) === 'emulsifier' && normaliseName(under) === 'oil')
    return { text: 'oil per emulsifier', kind: 'ratio', over: 'oil', under: 'emulsifier' };
  return { text, kind: 'ratio', over, under };
}

/** The same with every other name of an ingredient as the book gives it. */
export function namedByBook(varied: Varied, book: Book): Varied {
  const named = (name: string): string => (roleWord(name) ? name : (book.find(name)?.name ?? name));
  if (varied.kind === 'amount') return { ...varied, of: named(varied.of) };
  if (varied.kind === 'ratio') return { ...varied, over: named(varied.over), under: named(varied.under) };
  return varied;
}

export const isOilPerEmulsifier = (varied: Varied | undefined): boolean =>
  varied?.kind === 'ratio' &&
  normaliseName(varied.over) === 'oil' &&
  normaliseName(varied.under) === 'emulsifier';

/** What is varied has an optimum rather than an edge. */
export function hasOptimum(varied: Varied, roleOf: (name: string) => Role | undefined): boolean {
  if (varied.kind === 'blend hlb' || varied.kind === 'temperature') return true;
  if (varied.kind !== 'amount') return false;
  const role = roleWord(varied.of) ?? roleOf(varied.of);
  return role === 'carrier' || role === 'antifoam';
}

/**
 * On which side beakers fail, as far as the trade knows: too much oil breaks, too little emulsifier or carrier does.
 * Of a ratio what stands above the line tells, and what stands below it the other way round.
 */
export function usualFailingSide(
  varied: Varied,
  roleOf: (name: string) => Role | undefined,
): FailingSide | undefined {
  const sideOf = (name: string): FailingSide | undefined => sideOfRole(roleWord(name) ?? roleOf(name));
  if (varied.kind === 'amount') return sideOf(varied.of);
  if (varied.kind === 'stirring') return 'below';
  if (varied.kind !== 'ratio') return undefined;
  const under = sideOf(varied.under);
  return sideOf(varied.over) ?? (under && (under === 'above' ? 'below' : 'above'));
}

function sideOfRole(role: Role | undefined): FailingSide | undefined {
  if (role === 'oil') return 'above';
  return role === 'emulsifier' || role === 'carrier' ? 'below' : undefined;
}

const roleWord = (text: string): Role | undefined => roles.find((role) => role === normaliseName(text));

interface Within {
  readonly trial: TrialCard;
  readonly mixture: Mixture;
}

/** The figure of a trial, weighed amounts where they stand. */
export function variedIn(varied: Varied, within: Within): Found {
  switch (varied.kind) {
    case 'ratio':
      return ratioIn(varied, within);
    case 'amount':
      return amountIn(varied.of, within);
    case 'blend hlb':
      return blendIn(within);
    case 'temperature':
      return highestOf(within, 'temperature');
    case 'stirring':
      return highestOf(within, 'stirring');
  }
}

const lacks = (code: string, message: string, hint: string): Found => ({ lacks: { code, message, hint } });

function ratioIn({ over, under }: { readonly over: string; readonly under: string }, within: Within): Found {
  const stages = allStages(within.mixture);
  const both = stages.find((stage) => gramsOf(over, stage) > 0 && gramsOf(under, stage) > 0);
  if (both) return { value: gramsOf(over, both) / gramsOf(under, both), stage: both, typed: [] };
  const missing = stages.some((stage) => gramsOf(over, stage) > 0) ? under : over;
  const other = missing === over ? under : over;
  return lacks(
    'rung-without',
    `trial ${within.trial.number} has no ${missing} in the stage with its ${other}`,
    `add the line of the ${missing}, or take "series" out of this file`,
  );
}

/** The stages in order; one of another trial stands before the stage that it goes into. */
const allStages = ({ stages }: Mixture): readonly ResolvedStage[] =>
  stages.flatMap((stage) => [
    ...stage.items.flatMap(({ source }) => (source.kind === 'other trial' ? [source.stage] : [])),
    stage,
  ]);

function amountIn(name: string, within: Within): Found {
  for (const stage of allStages(within.mixture)) {
    const items = itemsOf(name, stage);
    const value = items.length > 0 ? sum(items.map((item) => item.massGrams)) : gramsOf(name, stage);
    if (items.length === 0 && value === 0) continue;
    return { value, stage, drink: within.mixture.drink, typed: typedIn(within.trial, stage, items) };
  }
  return lacks(
    'rung-without',
    `trial ${within.trial.number} has no ${name}`,
    `add a line with it (0 g, where there is none), or take "series" out of this file`,
  );
}

/** By its own name, or by that of the record that it is like. */
const isCalled = ({ name, like }: BookEntry, wanted: string): boolean =>
  [name, ...(like ?? [])].some((one) => isSameName(one, wanted));

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

const itemsOf = (name: string, stage: ResolvedStage): readonly ResolvedItem[] =>
  stage.items.filter(({ name: typed, source, role }) =>
    roleWord(name)
      ? role === roleWord(name)
      : isSameName(typed, name) || (source.kind === 'ingredient' && isCalled(source.entry, name)),
  );

/** By role or by name: of the items where they are called so, else of the pure substances. */
function gramsOf(name: string, stage: ResolvedStage): number {
  const role = roleWord(name);
  const items = role ? [] : itemsOf(name, stage);
  if (items.length > 0) return sum(items.map((item) => item.massGrams));
  const isMeant = (one: ResolvedStage['substances'][number]): boolean =>
    role ? one.role === role : isCalled(one.entry, name);
  return sum(stage.substances.filter(isMeant).map((one) => one.massGrams));
}

function typedIn(
  trial: TrialCard,
  stage: ResolvedStage,
  items: readonly ResolvedItem[],
): readonly TypedAmount[] {
  const card = trial.stages.find((one) => one.name === stage.name);
  return (card?.items ?? [])
    .filter((item) => items.some(({ name }) => name === item.name))
    .map(({ amount }) => ({ quantity: amount.quantity, inDrink: amount.inDrink }));
}

function blendIn({ trial, mixture }: Within): Found {
  const meeting = meetingStage(mixture);
  if (!meeting) {
    const message = `trial ${trial.number} has no stage with both an oil and an emulsifier`;
    return lacks('rung-without', message, 'add the line that is missing');
  }
  const values = meeting.emulsifiers.map((one) => one.entry?.record.figures.hlb?.value);
  const at = values.indexOf(undefined);
  if (at !== -1) {
    const message = `${meeting.emulsifiers[at]?.name ?? 'an emulsifier'} of trial ${trial.number} has no HLB`;
    return lacks('no-hlb', message, 'give it one in ingredients.yaml: "hlb: 15"');
  }
  const weighted = sum(meeting.emulsifiers.map((one, index) => one.quantity.inner * (values[index] ?? 0)));
  return { value: weighted / meeting.emulsifierGrams, stage: meeting.stage, typed: [] };
}

const zeroCelsius = 273.15;

/** The hottest or fastest step, in C or rpm. */
function highestOf({ trial }: Within, what: 'temperature' | 'stirring'): Found {
  const steps = trial.stages.flatMap(({ process }) => process);
  const figures = steps.flatMap((step) => (what === 'stirring' ? [step.stir] : [step.to, step.at]));
  const values = figures.flatMap((one) => (one ? [one.inner] : []));
  if (values.length > 0) {
    const highest = Math.max(...values);
    return { value: what === 'stirring' ? highest : highest - zeroCelsius, stage: undefined, typed: [] };
  }
  const step = what === 'stirring' ? '"stir: 400 rpm"' : '"to: 60 C"';
  const message = `no step of trial ${trial.number} says its ${what}`;
  return lacks('rung-without', message, `write ${step} under a step of its process`);
}

/** Whether it was made with more than a stirrer: from its steps. */
export const isHomogenised = (steps: readonly StepCard[]): boolean =>
  steps.some(({ does, sentence, what, stirWords, with: tool }) =>
    [sentence, what, stirWords, tool].some((text) => shearing.test(text ?? '')) ? true : does === 'shear',
  );

const shearing = /homogeni|high[- ]shear|rotor|ultrasound|ultrasonic|sonicat/iu;
