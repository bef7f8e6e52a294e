/** Problems on the screen: `file:line:column: what is wrong; what to do`, the line, a caret. */

import type { Problem } from '../problem.ts';
import type { Paint } from './paint.ts';
import { visible } from './visible.ts';
import { cellWidth } from './wrap.ts';

const longestExcerpt = 100;

export function problemText(problem: Problem, paint: Paint): string {
  const { place } = problem;
  const where = place ? `${visible(place.file)}:${place.line}:${place.column}: ` : '';
  const kind = problem.severity === 'warning' ? 'warning: ' : '';
  const tone = problem.severity === 'warning' ? 'warn' : 'bad';
  const hint = problem.hint === '' ? '' : `; ${visible(problem.hint)}`;
  const head = `${paint('strong', where)}${paint(tone, `${kind}${visible(problem.message)}`)}${hint}\n`;
  return place ? head + excerpt(place.lineText, place.line, place.column, place.length, paint) : head;
}

export const problemsText = (problems: readonly Problem[], paint: Paint): string =>
  problems.map((problem) => problemText(problem, paint)).join('');

/** The line with a caret under the place; of a long line only the part around it. */
function excerpt(lineText: string, line: number, column: number, length: number, paint: Paint): string {
  const from = column - 1 > longestExcerpt - 20 ? column - 1 - 40 : 0;
  const shown = lineText.slice(from, from + longestExcerpt);
  const gutter = `  ${line} | `;
  const before = visible(lineText.slice(from, column - 1));
  const carets = Math.max(
    1,
    Math.min(length, lineText.length - column + 1, from + longestExcerpt - column + 1),
  );
  const under = `${' '.repeat(gutter.length - 2)}| ${' '.repeat(cellWidth(before))}${'^'.repeat(carets)}`;
  return `${paint('faint', `${gutter}${visible(shown)}`)}\n${paint('faint', under)}\n`;
}
