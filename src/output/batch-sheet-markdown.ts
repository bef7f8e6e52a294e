/** A batch sheet as Markdown, to be read as it is or printed by another program. */

import { type BatchSheet, portionsText, type SheetStage } from './batch-sheet.ts';
import { visible } from './visible.ts';

const blank = '\\_\\_\\_\\_\\_\\_';

/** Signs that Markdown would take for its own. */
export const markdownText = (text: string): string =>
  visible(text).replace(/[\\`*_[\]{}<>#|~&]/gu, (sign) => `\\${sign}`);

type Cells = readonly string[];

function table(head: Cells, rows: readonly Cells[]): readonly string[] {
  const line = (cells: Cells): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line), ''];
}

const bullets = (lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [...lines.map((line) => `- ${markdownText(line)}`), ''];

export function batchSheetMarkdown(sheet: BatchSheet): string {
  const text = markdownText;
  const facts = [['batch', sheet.batch], ['revision', sheet.revision], ...sheet.facts] as const;
  const lines = [
    '<!-- neckring -->',
    '',
    `# Batch ${text(sheet.batch)}: ${text(sheet.design)}`,
    '',
    ...table(
      ['', ''],
      [...facts.map(([label, value]) => [text(label ?? ''), text(value ?? '')]), ['made on, by', blank]],
    ),
    ...bullets(sheet.remarks),
    ...(sheet.cautions.length > 0 ? ['## Take care', '', ...bullets(sheet.cautions)] : []),
    ...sheet.stocks.flatMap(({ name, lines: steps }) => [
      `## First, a stock: ${text(name)}`,
      '',
      ...table(
        ['do', 'balance', 'weighed', 'initials'],
        steps.map((step) => [text(step.text), text(step.balance), blank, blank]),
      ),
    ]),
    ...sheet.stages.flatMap((stage, at) => stageLines(stage, at + 1)),
    ...fillingLines(sheet),
    ...checkLines(sheet),
    '## Notes',
    '',
    blank,
    '',
    text(sheet.closing),
    '',
  ];
  return lines.join('\n');
}

function stageLines(stage: SheetStage, number: number): readonly string[] {
  const text = markdownText;
  const isMany = stage.subBatches > 1;
  const size = isMany
    ? `${stage.subBatches} times the same, each ${stage.total}, ${stage.volume}; in all ${stage.totalOfAll}`
    : `${stage.total}, ${stage.volume}`;
  const items = stage.items.map((item) => [
    text([item.what, ...item.notes].join('; ')),
    text(item.lot),
    text(portionsText(item)),
    text(item.balance),
    blank,
    blank,
  ]);
  const steps = stage.steps.map((step, at) => [String(at + 1), text(step), blank, blank, blank]);
  return [
    `## ${number}. ${text(stage.name)}`,
    '',
    text([size, stage.where].filter(Boolean).join(', ')),
    '',
    ...bullets(stage.notes),
    ...table(
      ['what, in this order', 'lot', isMany ? 'weigh, each time' : 'weigh', 'balance', 'weighed', 'initials'],
      [...items, ['together', '', text(stage.total), '', blank, '']],
    ),
    ...(steps.length > 0 ? table(['', 'step', 'temperature, C', 'time', 'initials'], steps) : []),
  ];
}

function fillingLines({ filling }: BatchSheet): readonly string[] {
  if (!filling) return [];
  const text = markdownText;
  return [
    '## Filling',
    '',
    text(filling.heading),
    '',
    ...table(
      ['what', 'by mass', 'by volume', 'in all', 'measured'],
      filling.parts.map((part) => [
        text(part.what),
        text(part.grams),
        text(part.millilitres),
        text(part.inAll),
        blank,
      ]),
    ),
    ...bullets(filling.notes),
  ];
}

function checkLines({ checks }: BatchSheet): readonly string[] {
  if (checks.length === 0) return [];
  const text = markdownText;
  return [
    '## Checks',
    '',
    ...table(
      ['of', 'check', 'aim', 'reckoned', 'found', 'initials'],
      checks.map((one) => [text(one.of), text(one.what), text(one.aim), text(one.reckoned), blank, blank]),
    ),
  ];
}
