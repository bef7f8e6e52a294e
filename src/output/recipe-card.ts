/** A recipe on one Markdown card, to be read by a person; every figure a text. */

import { markdownText } from './batch-sheet-markdown.ts';

export interface CardStage {
  readonly name: string;
  /** `50.00 g, about 49.85 mL` */
  readonly makes: string;
  readonly notes: readonly string[];
  readonly items: readonly (readonly [what: string, typed: string, weigh: string, share: string])[];
  readonly steps: readonly string[];
}

export interface CardList {
  readonly heading: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface RecipeCard {
  readonly title: string;
  readonly remarks: readonly string[];
  /** The batch for which the masses stand. */
  readonly batch: string;
  readonly stages: readonly CardStage[];
  readonly lists: readonly CardList[];
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
  readonly closing: string;
}

const text = markdownText;

function table(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => text(cell.replace(/\s+/gu, ' '))).join(' | ')} |`;
  return [line(head), `| ${head.map(() => '---').join(' | ')} |`, ...rows.map(line), ''];
}

const bullets = (lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [...lines.map((line) => `- ${text(line.replace(/\s+/gu, ' '))}`), ''];

export function recipeCardMarkdown(card: RecipeCard): string {
  const { title, remarks, batch, stages, lists, cautions, sources, closing } = card;
  return [
    '<!-- neckring -->',
    '',
    `# ${text(title)}`,
    '',
    ...remarks.flatMap((remark) => [text(remark.replace(/\s+/gu, ' ')), '']),
    text(batch),
    '',
    ...(cautions.length > 0 ? ['## Take care', '', ...bullets(cautions)] : []),
    ...stages.flatMap(stageLines),
    ...lists.flatMap(({ heading, head, rows }) =>
      rows.length === 0 ? [] : [`## ${text(heading)}`, '', ...table(head, rows)],
    ),
    ...(sources.length > 0 ? ['## Sources', '', ...bullets(sources)] : []),
    text(closing),
    '',
  ].join('\n');
}

function stageLines(stage: CardStage, at: number): readonly string[] {
  return [
    `## ${at + 1}. ${text(stage.name)}`,
    '',
    text(stage.makes),
    '',
    ...bullets(stage.notes),
    ...table(['what, in this order', 'as typed', 'weigh', 'share by mass'], stage.items),
    ...(stage.steps.length > 0
      ? [...stage.steps.map((step, number) => `${number + 1}. ${text(step.replace(/\s+/gu, ' '))}`), '']
      : []),
  ];
}
