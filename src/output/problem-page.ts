/** Problems on the screen: `file:line:column: what is wrong; what to do`, the line, a caret. */

import type { Problem } from '../problem.ts';
import type { Paint } from './paint.ts';
import type { Tone } from './view.ts';
import { visible } from './visible.ts';
import { cellWidth } from './wrap.ts';

const longestExcerpt = 100;

/** One problem; its first line is broken between words where it is wider than `width`. */
export function problemText(problem: Problem, paint: Paint, width = Number.POSITIVE_INFINITY): string {
  const { place } = problem;
  const where = place ? `${visible(place.file)}:${place.line}:${place.column}:` : '';
  const kind = problem.severity === 'warning' ? 'warning: ' : '';
  const hint = problem.hint === '' ? '' : `; ${visible(problem.hint)}`;
  const runs: readonly Run[] = [
    ['strong', where],
    [problem.severity === 'warning' ? 'warn' : 'bad', `${kind}${visible(problem.message)}`],
    ['plain', hint],
  ];
  const head = `${brokenRuns(runs, paint, width).join('\n  ')}\n`;
  return place ? head + excerpt(place.lineText, place.line, place.column, place.length, paint) : head;
}

export const problemsText = (problems: readonly Problem[], paint: Paint, width?: number): string =>
  problems.map((problem) => problemText(problem, paint, width)).join('');

type Run = readonly [tone: Tone, text: string];

/** Texts one after the other in lines of at most the width, each painted as a whole on each line. */
function brokenRuns(runs: readonly Run[], paint: Paint, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  let cells = 0;
  for (const [tone, text] of runs) {
    let part = '';
    for (const word of text.split(/(?= )/)) {
      const isFirst = line === '' && part === '';
      const joint = isFirst || word.startsWith(' ') || word.startsWith(';') ? '' : ' ';
      if (!isFirst && cells + cellWidth(joint + word) > width) {
        lines.push(line + paint(tone, part));
        line = '';
        part = word.trimStart();
        cells = 2 + cellWidth(part);
      } else {
        part += joint + word;
        cells += cellWidth(joint + word);
      }
    }
    line += paint(tone, part);
  }
  return [...lines, line];
}

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
