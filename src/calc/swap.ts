/** How much of one ingredient stands for another: at equal moles, acidity, mass or flavour. */

import { type Parsed, parsed, refused } from '../problem.ts';
import type { WorkingLine } from './answer.ts';
import type { BookEntry } from './book.ts';
import { trimmedNumber } from './number-text.ts';

export const equals = ['moles', 'acidity', 'mass', 'flavour'] as const;
export type Equal = (typeof equals)[number];

export interface SwapFactor {
  readonly equal: Equal;
  /** g of the new one for a gram of the old one. */
  readonly factor: number;
  readonly working: WorkingLine;
}

/**
 * What is kept where nobody says it: hydrates of one substance at equal moles, acids at equal acidity, folded oils at
 * equal flavour, else mass.
 */
export function usualEqual(out: BookEntry, into: BookEntry): Equal {
  if (anhydrous(out) === anhydrous(into) && molar(out) !== undefined && molar(into) !== undefined)
    return 'moles';
  if (equivalents(out) !== undefined && equivalents(into) !== undefined) return 'acidity';
  const folds = [out, into].map(({ record }) => record.fold);
  return folds.some((fold) => fold !== undefined && fold !== 1) && folds.every((fold) => fold !== undefined)
    ? 'flavour'
    : 'mass';
}

/**
 * Grams of the new ingredient for a gram of the old one.
 *
 * Formula   moles: M_new / M_old; acidity: (M_new / n_new) / (M_old / n_old), n protons that can be titrated;
 *           mass: 1; flavour: fold_old / fold_new
 * Input     both ingredients; what is to be equal
 * Output    the factor with its working
 * Refuses   a molar mass, a number of protons or a fold that is not known
 * Source    arithmetic
 * Example   citric acid, citric acid monohydrate, moles -> 1.09377
 */
export function swapFactor(out: BookEntry, into: BookEntry, equal: Equal): Parsed<SwapFactor> {
  switch (equal) {
    case 'mass':
      return parsed({ equal, factor: 1, working: { equation: 'equal masses', numbers: '1 g for 1 g' } });
    case 'moles':
      return byFigure({
        out,
        into,
        equal,
        of: molar,
        line: 'molar mass',
        unit: 'g/mol',
        equation: 'new / old = M(new) / M(old)',
      });
    case 'acidity':
      return byFigure({
        out,
        into,
        equal,
        of: equivalentMass,
        line: 'acid equivalents',
        unit: 'g for a mole of protons',
        equation: 'new / old = (M/n of the new) / (M/n of the old)',
      });
    case 'flavour':
      return byFigure({
        out,
        into,
        equal,
        of: perFold,
        line: 'fold',
        unit: 'parts of single oil',
        equation: 'new / old = fold(old) / fold(new)',
      });
  }
}

interface ByFigure {
  readonly out: BookEntry;
  readonly into: BookEntry;
  readonly equal: Equal;
  readonly of: (entry: BookEntry) => number | undefined;
  /** What to add to the ingredient where the figure is missing. */
  readonly line: string;
  readonly unit: string;
  readonly equation: string;
}

function byFigure({ out, into, equal, of, line, unit, equation }: ByFigure): Parsed<SwapFactor> {
  const [old, fresh] = [of(out), of(into)];
  if (old === undefined || fresh === undefined) {
    const missing = old === undefined ? out : into;
    return refused(
      `no-${line.replace(' ', '-')}`,
      `equal ${equal} needs the ${line} of ${missing.name}, and it is not known`,
      `add it to ${missing.name} in ingredients.yaml (${line}: …), or say --equal mass`,
    );
  }
  const factor = fresh / old;
  const numbers = `${trimmedNumber(fresh, 6)} / ${trimmedNumber(old, 6)} = ${trimmedNumber(factor, 6)} (${unit})`;
  return parsed({ equal, factor, working: { equation, numbers } });
}

const molar = ({ record }: BookEntry): number | undefined => record.figures['molar mass']?.value;
const equivalents = ({ record }: BookEntry): number | undefined => record.figures['acid equivalents']?.value;

function equivalentMass(entry: BookEntry): number | undefined {
  const [mass, count] = [molar(entry), equivalents(entry)];
  return mass === undefined || count === undefined || !(count > 0) ? undefined : mass / count;
}

const perFold = ({ record }: BookEntry): number | undefined =>
  record.fold === undefined || !(record.fold > 0) ? undefined : 1 / record.fold;

const anhydrous = ({ name, record, like }: BookEntry): string =>
  record.hydrateOf?.name ?? like?.at(-1) ?? name;
