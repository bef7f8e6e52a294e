/** How the figures of compared records, and of one record through its commits, were worked out. */

import type { WorkingLine } from '../calc/answer.ts';
import { drinkCitations, drinkWorking } from '../calc/drink/working-lines.ts';
import { numberText } from '../calc/number-text.ts';
import type { Explanation } from './command.ts';
import type { Side } from './compare-side.ts';
import { type Comparison, isMoved } from './compare-sides.ts';
import { type Figure, figureAt } from './history-figures.ts';
import type { HistoryEntry } from './history-record.ts';

const named = (prefix: string, lines: readonly WorkingLine[]): readonly WorkingLine[] =>
  lines.map(({ equation, numbers }) => ({ equation: `${prefix}: ${equation}`, numbers }));

/** How the drink of a record came about; nothing where it has none. */
const linesOf = (prefix: string, { solved }: Side): readonly WorkingLine[] =>
  solved?.drink ? named(prefix, drinkWorking(solved.drink)) : [];

const citationsOf = (sides: readonly (Side | undefined)[]): Explanation['sources'] =>
  sides.flatMap((side) => (side?.solved?.drink ? drinkCitations(side.solved.drink) : []));

export function comparisonExplanation({ before, after, properties, costs }: Comparison): Explanation {
  const changes = [...properties, ...costs].filter(isMoved).map(
    (one): WorkingLine => ({
      equation: `${one.label}: change = after / before - 1`,
      numbers:
        one.before === undefined || one.after === undefined || one.before === 0
          ? `${one.before === undefined ? 'none' : numberText(one.before, 5)} -> ${one.after === undefined ? 'none' : numberText(one.after, 5)}`
          : `${numberText(one.after, 5)} / ${numberText(one.before, 5)} - 1 = ${numberText((one.after / one.before - 1) * 100, 3)} %`,
    }),
  );
  return {
    working: [...changes, ...linesOf('before', before), ...linesOf('after', after)],
    sources: citationsOf([before, after]),
    restsOn: ['compare'],
  };
}

export function historyExplanation(
  entries: readonly HistoryEntry[],
  figures: readonly Figure[],
): Explanation {
  const solved = entries.find(({ side }) => side?.solved);
  const lines = figures.flatMap((figure): readonly WorkingLine[] => {
    const values = entries.flatMap(({ side, commit }) => {
      const value = figureAt(figure, side);
      return value === undefined
        ? []
        : [`${numberText(value, figure.digits)} (${commit?.short ?? 'not committed'})`];
    });
    const unit = figure.unit === '' ? '' : `, ${figure.unit}`;
    return values.length === 0
      ? []
      : [
          {
            equation: `${figure.label}${unit}: worked out from each commit's own files`,
            numbers: values.join(', '),
          },
        ];
  });
  return {
    working: figures.length === 0 ? [] : [...lines, ...(solved?.side ? linesOf('newest', solved.side) : [])],
    sources: figures.length === 0 ? [] : citationsOf([solved?.side]),
    restsOn: figures.length === 0 ? [] : ['history'],
  };
}
