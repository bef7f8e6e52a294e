/** Where a drink has more than a published figure says, in words that leave the judging to the reader. */

import { limitSourceWords } from '../../reference/limits/limit-sources.ts';
import { bodyNames } from '../../reference/limits/published-figure.ts';
import type { Caution } from '../answer.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { BesideFigure } from './beside-figures.ts';
import { countedWords } from './counted-forms.ts';

export function figureCautions(beside: readonly BesideFigure[]): readonly Caution[] {
  return beside.filter(({ isAbove }) => isAbove).map(aboveCaution);
}

/** `polysorbates come to 620 mg/kg, above the figure of 500 mg/kg that Codex gives for water-based flavoured drinks` */
function aboveCaution({ counted, figure, here = 0 }: BesideFigure): Caution {
  const { value = 0, unit = '', body, food, kind, read } = figure;
  const own = `${countedWords(counted)}: ${numberText(here, 3)} ${unit}`;
  const what = kind === 'label' ? 'above the line' : 'above the figure';
  const memory = read === 'from memory' ? '; from memory, look it up before you rely on it' : '';
  const but = counted.but === undefined ? '' : ` (${counted.but})`;
  return {
    code: 'above-figure',
    text: `${own}${but}, ${what} of ${figureNumber(value)} ${unit} that ${bodyNames[body]} gives for ${food}${memory}.`,
    source: limitSourceWords(figure),
  };
}

/** `20,000` */
export const figureNumber = (value: number): string =>
  trimmedNumber(value, 6).replace(/(?<!\..*)\B(?=(\d{3})+(?!\d))/g, ',');
