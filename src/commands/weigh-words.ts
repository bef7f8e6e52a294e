/** The words after `weigh 14`: figures in the order of addition, or names with their figures. */

import { isBareNumber } from '../calc/number.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { type Addition, additionNamed } from './weighing-plan.ts';

export interface Weighing {
  readonly addition: Addition;
  /** As it is written into the file: `2.03 g`. */
  readonly written: string;
  readonly grams: number;
}

export interface Figure {
  readonly written: string;
  readonly grams: number;
}

/** A mass as typed; a bare number counts in grams. */
export function readFigure(text: string): Figure | Problem {
  const typed = isBareNumber(text.trim()) ? `${text.trim()} g` : text.trim();
  const read = parseQuantity(typed, ['mass']);
  if (!read.ok)
    return { code: read.fault.code, severity: 'error', message: read.fault.message, hint: read.fault.hint };
  return { written: typed, grams: read.value.inner };
}

export function readWeighings(
  words: readonly string[],
  additions: readonly Addition[],
  isRunning: boolean,
): readonly Weighing[] {
  const startsWithFigure = /^[-+.\d(]/.test(words[0] ?? '');
  return startsWithFigure ? inOrder(words, additions, isRunning) : byName(words, additions);
}

function inOrder(
  words: readonly string[],
  additions: readonly Addition[],
  isRunning: boolean,
): readonly Weighing[] {
  const figures = figuresOf(words);
  if (figures.length > additions.length) {
    return fail(
      'too-many',
      `${figures.length} figures for ${additions.length} items`,
      `give one for each of ${additions.map((one) => one.item.name).join(', ')}`,
    );
  }
  const weighed = isRunning ? differences(figures, additions) : figures;
  return weighed.flatMap((figure, at) => {
    const addition = additions[at];
    return addition ? [{ addition, ...figure }] : [];
  });
}

function byName(words: readonly string[], additions: readonly Addition[]): readonly Weighing[] {
  const weighings: Weighing[] = [];
  for (let at = 0; at < words.length; at += 2) {
    const name = words[at] ?? '';
    const text = words[at + 1];
    const addition = additionNamed(additions, name);
    if (text === undefined)
      fail('missing', `"${name}" has no figure`, `type what the balance said: "${name}" 2.03`);
    const [figure] = figuresOf([text]);
    if (figure) weighings.push({ addition, ...figure });
  }
  return weighings;
}

function figuresOf(words: readonly string[]): readonly Figure[] {
  const read = words.map(readFigure);
  const problems = read.filter((one): one is Problem => 'code' in one);
  if (problems.length > 0) throw new ProblemError(problems);
  return read.filter((one): one is Figure => 'grams' in one);
}

/** Running readings on one tare as single weighings; each stage begins at zero again. */
function differences(figures: readonly Figure[], additions: readonly Addition[]): readonly Figure[] {
  return figures.map((figure, at) => {
    const isFirst = at === 0 || additions[at]?.stage !== additions[at - 1]?.stage;
    const before = isFirst ? 0 : (figures[at - 1]?.grams ?? 0);
    if (figure.grams < before) {
      return fail(
        'falling-reading',
        `the reading falls from ${figures[at - 1]?.written} to ${figure.written}`,
        'a running reading only grows; without --readings the figures are single weighings',
      );
    }
    const decimals = Math.max(
      decimalsTyped(figure.written),
      isFirst ? 0 : decimalsTyped(figures[at - 1]?.written ?? ''),
    );
    const grams = Number((figure.grams - before).toFixed(Math.max(decimals, 0)));
    return { grams, written: `${grams.toFixed(decimals)} g` };
  });
}

/** Decimals of a figure in grams; one in another unit counts as it falls. */
function decimalsTyped(written: string): number {
  const [, decimals = '', unit] = /^\d*(?:\.(\d+))?\s*(\S+)$/.exec(written) ?? [];
  return unit === 'g' ? decimals.length : 6;
}
