/** A chain of dilutions that a person typed: what it comes to, and what the bench says against it. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { parseQuantity } from '../parse-quantity.ts';
import { partsWords } from '../parts-words.ts';
import type { Chain, ChainBench, ChainSource, ChainStep } from './chain.ts';
import { stepVariance } from './uncertainty.ts';
import { isFineEnough, leastMass, type OneWeighing, weighingOf } from './weighing.ts';

/** `0.1 g in 10 g`: so much taken, made up to so much. */
export interface TypedStep {
  readonly takeGrams: number;
  readonly totalGrams: number;
  readonly written: string;
}

/**
 * The steps of a chain.
 *
 * Input     `0.1 g in 10 g; 0.1 g in 10 g; 0.05 g in 1 kg`: in (or to) what it is made up to; `1 g + 99 g` adds
 * Output    g taken and g in all, a step each
 * Refuses   a step without two masses; more taken than there is in all
 * Example   parseChain('1 g + 99 g') -> 1 g in 100 g
 */
export function parseChain(text: string): Parsed<readonly TypedStep[]> {
  const steps: TypedStep[] = [];
  for (const part of text
    .split(/[;\n]/u)
    .map((one) => one.trim())
    .filter((one) => one !== '')) {
    const step = parseStep(part);
    if (!step.ok) return step;
    steps.push(step.value);
  }
  return steps.length > 0 ? parsed(steps) : refused('missing', 'no step is given', stepExample);
}

const stepExample = 'write "0.1 g in 10 g; 0.1 g in 10 g; 0.05 g in 1 kg": taken, and made up to';

function parseStep(written: string): Parsed<TypedStep> {
  const [, first = '', word = '', second = ''] = /^(.+?)\s*(\bin\b|\bto\b|\+)\s*(.+)$/iu.exec(written) ?? [];
  if (word === '') return refused('not-a-step', `"${written}" is not a step`, stepExample);
  const take = parseQuantity(first, ['mass']);
  if (!take.ok) return take;
  const other = parseQuantity(second, ['mass']);
  if (!other.ok) return other;
  const takeGrams = take.value.inner;
  const totalGrams = word === '+' ? takeGrams + other.value.inner : other.value.inner;
  if (takeGrams <= 0) return refused('not-positive', `"${written}" takes nothing`, stepExample);
  if (takeGrams < totalGrams) return parsed({ takeGrams, totalGrams, written });
  return refused(
    'over-batch',
    `"${written}" takes all of it or more`,
    `"in" says what it is made up to; what is added goes after a plus: "${first.trim()} + ${second.trim()}"`,
  );
}

export interface CheckedChain extends Chain {
  /** What the bench says against it, a sentence each. */
  readonly objections: readonly string[];
}

interface Typed {
  readonly of: string;
  readonly source: ChainSource;
  readonly steps: readonly TypedStep[];
  readonly bench: ChainBench;
}

/**
 * What a typed chain comes to.
 *
 * Formula   w' = w a/(a + s) a step; combined uncertainty by JCGM 100:2008, equation 10
 * Input     the source; steps in g; the bench
 * Output    as of a planned chain, and what is wrong with it: weighings too small, steps too large, more taken than made
 * Source    JCGM 100:2008; the largest step: common practice, no source
 * Example   1 % by 1 g in 100 g, five times -> 1e-12
 */
export function checkChain({ of, source, steps, bench }: Typed): CheckedChain {
  const objections: string[] = [];
  const made: ChainStep[] = [];
  let strength = source.strength;
  let thereGrams = source.leftGrams ?? Number.POSITIVE_INFINITY;
  let variance = (source.relativeUncertainty ?? 0) ** 2;
  let wasteGrams = 0;
  for (const [at, step] of steps.entries()) {
    const isLast = at === steps.length - 1;
    const take = at === 0 ? source.name : `${partsWords(strength)} ${of}`;
    const { takeGrams, totalGrams } = step;
    const solventGrams = totalGrams - takeGrams;
    const weighed = weighingOf(bench.scales, { massGrams: takeGrams });
    const solvent = weighingOf(bench.scales, { massGrams: solventGrams });
    objections.push(...objectionsTo({ step, thereGrams, isLast, bench, weighed }));
    variance += varianceOf(takeGrams, solventGrams, weighed, solvent);
    if (at > 0) wasteGrams += Math.max(0, thereGrams - takeGrams);
    strength = Number(((strength * takeGrams) / totalGrams).toPrecision(14));
    thereGrams = totalGrams;
    made.push({
      take,
      takeMassGrams: takeGrams,
      solventMassGrams: solventGrams,
      strength,
      takeDivisionGrams: weighed?.divisionGrams ?? 0,
      solventDivisionGrams: solvent?.divisionGrams ?? 0,
      solventPortions: solvent?.portions ?? 1,
    });
  }
  return {
    source,
    steps: made,
    finalStrength: strength,
    relativeUncertainty: Math.sqrt(variance),
    wasteGrams,
    objections,
  };
}

const varianceOf = (
  takeGrams: number,
  solventGrams: number,
  take: OneWeighing | undefined,
  solvent: OneWeighing | undefined,
): number =>
  stepVariance({
    takeGrams,
    takeUncertaintyGrams: take?.standardUncertaintyGrams ?? 0,
    solventGrams,
    solventUncertaintyGrams: solvent?.standardUncertaintyGrams ?? 0,
  });

interface Judging {
  readonly step: TypedStep;
  readonly thereGrams: number;
  readonly isLast: boolean;
  readonly bench: ChainBench;
  readonly weighed: OneWeighing | undefined;
}

function objectionsTo({ step, thereGrams, isLast, bench, weighed }: Judging): readonly string[] {
  const { takeGrams, totalGrams, written } = step;
  const objections: string[] = [];
  const dilution = totalGrams / takeGrams;
  if (!isLast && dilution > bench.largestDilution * (1 + 1e-9))
    objections.push(
      `"${written}" is a step of 1:${short(dilution)}, more than the bench's 1:${short(bench.largestDilution)}`,
    );
  if (takeGrams > thereGrams * (1 + 1e-9))
    objections.push(`"${written}" takes more than the ${short(thereGrams)} g that there are`);
  if (weighed && !isFineEnough(weighed, bench.weighing)) {
    const least = Math.min(...bench.scales.map((scale) => leastMass(scale, bench.weighing)));
    objections.push(
      `"${written}" is weighed to ${short(weighed.relativeError * 100)} %; within ${short(bench.weighing * 100)} % the finest balance weighs ${short(least)} g and up`,
    );
  }
  const largest = Math.max(...bench.vessels.map(({ millilitres }) => millilitres));
  if (!isLast && bench.vessels.length > 0 && totalGrams > largest)
    objections.push(`"${written}" goes into no vessel here: the largest holds ${short(largest)} mL`);
  return objections;
}

const short = (value: number): string => String(Number(value.toPrecision(3)));
