/** What goes into a new trial, typed on the command line: items as `2 g sweet orange oil`, steps as sentences. */

import type { Book } from '../calc/book.ts';
import { parseItemText } from '../calc/item-text.ts';
import { unknownName } from '../calc/known-name.ts';
import { parseAmount } from '../calc/parse-amount.ts';
import { entryLines } from '../ledger/fact-text.ts';
import { isSameName, otherStageOf } from '../ledger/stage-name.ts';
import { keyText, plainOrQuoted } from '../ledger/yaml-text.ts';
import { type Fault, type Problem, ProblemError } from '../problem.ts';

export interface TypedItem {
  readonly name: string;
  readonly amount: string;
}

export interface PlannedStage {
  readonly name: string;
  readonly items: readonly TypedItem[];
  readonly steps: readonly string[];
}

/** Items as typed: amount first, `to 50 g water` for what is made up to; the stages that may go in by name. */
export function readTypedItems(
  texts: readonly string[],
  book: Book,
  stages: readonly string[] = [],
): readonly TypedItem[] {
  const read = texts.map((text) => readItem(text, book, stages));
  const problems = read.filter((one): one is Problem => 'code' in one);
  if (problems.length > 0) throw new ProblemError(problems);
  return read.filter((one): one is TypedItem => 'name' in one);
}

function readItem(text: string, book: Book, stages: readonly string[]): TypedItem | Problem {
  const words = text.trim().split(/\s+/);
  for (let count = words.length - 1; count > 0; count--) {
    const amount = words.slice(0, count).join(' ');
    const name = words.slice(count).join(' ');
    const read = parseAmount(amount);
    if (!read.ok && read.fault.code === 'arithmetic-not-loaded')
      throw new ProblemError([{ ...read.fault, severity: 'error' }]);
    if (!read.ok) continue;
    const known =
      stages.find((stage) => isSameName(stage, name)) ??
      book.find(name)?.name ??
      (otherStageOf(name) ? name : undefined);
    if (known !== undefined) return { name: known, amount };
    const refused = unknownName(name, book);
    const { message, hint } = refused.ok ? { message: name, hint: '' } : refused.fault;
    return { code: 'unknown-ingredient', severity: 'error', message: `--item: ${message}`, hint };
  }
  const { code, message, hint } = itemFault(text.trim(), book);
  return { code, severity: 'error', message: `--item: ${message}`, hint };
}

/** What is wrong with an item of which no beginning is an amount with a name after it. */
function itemFault(text: string, book: Book): Fault {
  const amount = parseAmount(text);
  if (amount.ok) {
    const name = amount.value.makeUp ? 'water' : 'sweet orange oil';
    return {
      code: 'no-name',
      message: `"${text}" names no ingredient`,
      hint: `type it after the amount: "${text} ${name}"`,
    };
  }
  const read = parseItemText(text.replace(/^to\s+/iu, ''), (name) => book.find(name) !== undefined);
  if (!read.ok && /^(?:to\s+)?[-+.\d]/iu.test(text)) return read.fault;
  return {
    code: 'no-amount',
    message: `"${text}" does not begin with an amount`,
    hint: 'type the amount first: "2 g sweet orange oil", "to 50 g water"',
  };
}

/** The `stages` of a new file: of each its steps as sentences, its items in the order typed. */
export const typedStages = (stages: readonly PlannedStage[]): string =>
  ['stages:', ...stages.flatMap(stageLines), ''].join('\n');

function stageLines({ name, items, steps }: PlannedStage): readonly string[] {
  const process = steps.map((step) => `      - ${plainOrQuoted(step, 8)}`);
  return [
    `  ${keyText(name)}:`,
    ...(process.length > 0 ? ['    process:', ...process] : []),
    '    items:',
    ...items.flatMap((item) => entryLines([[item.name, item.amount]], 6)),
  ];
}
