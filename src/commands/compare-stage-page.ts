/** What changed in a stage, a row a line. */

import type { FactChange, ItemChange, StageChange, StepChange } from '../calc/compare/document.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { Block, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { type Comparison, lineComesTo } from './compare-sides.ts';
import { changeWords, comesToTexts, ordinal } from './compare-words.ts';

type Row = readonly [
  mark: string,
  line: string,
  before: string,
  after: string,
  comes: string,
  change: string,
];

export function stageBlocks(comparison: Comparison, stage: StageChange): Page {
  const { change, name, was, factor } = stage;
  if (change === 'same') return [];
  const title = was === undefined ? name : `${was} -> ${name}`;
  const note = change === 'added' ? ' (new stage)' : change === 'removed' ? ' (stage gone)' : '';
  const heading: Block = { kind: 'heading', text: `${visible(title)}${note}` };
  if (factor !== undefined)
    return [
      heading,
      { kind: 'text', text: `Every weight and volume is ${trimmedNumber(factor, 4)} times what it was.` },
      ...stepBlocks(stage.steps),
    ];
  const rows = [
    ...stage.facts.map(factRow),
    ...stage.items.flatMap((item) => itemRows(comparison, stage, item)),
  ];
  return [
    heading,
    ...(rows.length > 0 ? [tableOf(rows, placeWords(comparison, stage))] : []),
    ...stepBlocks(stage.steps),
  ];
}

/** Where the last but one column counts: the drink, or the stage that stays out of it. */
function placeWords(comparison: Comparison, stage: StageChange): string {
  for (const item of stage.items) {
    const { before, after } = lineComesTo(comparison, stage, item);
    const of = (after ?? before)?.of;
    if (of !== undefined) return `in the ${visible(of)}`;
  }
  return '';
}

function tableOf(rows: readonly Row[], place: string): Block {
  return {
    kind: 'table',
    columns: [
      { head: '', align: 'left' },
      { head: '', align: 'left' },
      { head: 'before', align: 'left' },
      { head: 'after', align: 'left' },
      { head: place, align: 'left' },
      { head: '', align: 'right' },
    ],
    rows,
  };
}

const marks = { added: '+', removed: '-', changed: '~', moved: '>' } as const;

const factRow = ({ key, before, after }: FactChange): Row => [
  before === undefined ? '+' : after === undefined ? '-' : '~',
  visible(key),
  visible(before ?? '-'),
  visible(after ?? '-'),
  '',
  '',
];

/** The line itself, then what else is known of it. */
function itemRows(comparison: Comparison, stage: StageChange, item: ItemChange): readonly Row[] {
  const amount = item.facts.find(({ key }) => key === 'amount');
  const others = item.facts.filter(({ key }) => key !== 'amount');
  const { before, after } = lineComesTo(comparison, stage, item);
  const sameAmount = amountIn(comparison, stage, item);
  const moved = placeText(item);
  const called =
    item.was === undefined
      ? item.name
      : item.change === 'changed'
        ? `${item.was} -> ${item.name}`
        : item.name;
  const [was, now] = comesToTexts(before, after);
  const isSame = was === now;
  return [
    [
      marks[item.change],
      visible(called),
      visible(amount ? (amount.before ?? '-') : sameAmount),
      visible(amount ? (amount.after ?? '-') : sameAmount),
      comparison.before.solved && comparison.after.solved
        ? isSame
          ? now
          : `${unitOnce(was)} -> ${now}`
        : '',
      isSame ? '' : changeWords({ before: before?.massFraction, after: after?.massFraction }),
    ],
    ...(moved === '' ? [] : [['', `  ${moved}`, '', '', '', ''] as const]),
    ...others.map((fact): Row => {
      const [, line, ...rest] = factRow(fact);
      return ['', `  ${line}`, ...rest];
    }),
  ];
}

/** `0.18` of `0.18 g/L`: the unit stands behind the other side. */
const unitOnce = (text: string): string => text.replace(/ \S+$/u, '');

function amountIn({ after }: Comparison, { name }: StageChange, item: ItemChange): string {
  const stage = after.document?.stages.find((one) => one.name === name);
  return stage?.items[item.after ?? -1]?.amount.written ?? '';
}

/** `moved from 5th to 2nd`, `moved here from syrup` */
function placeText({ isMoved, fromStage, before, after }: ItemChange): string {
  if (!isMoved) return '';
  if (fromStage !== undefined) return `moved here from ${visible(fromStage)}`;
  if (before === undefined || after === undefined) return '';
  return before === after
    ? 'moved in the order of addition'
    : `moved from ${ordinal(before + 1)} to ${ordinal(after + 1)}`;
}

function stepBlocks(steps: readonly StepChange[]): Page {
  return steps.map(
    (step): Block => ({
      kind: 'notes',
      mark: marks[step.change],
      notes: [stepWords(step)],
    }),
  );
}

function stepWords({ change, written, was, before, after }: StepChange): string {
  const words = visible(written);
  if (change === 'changed') return `step: ${visible(was ?? '')} -> ${words}`;
  if (change !== 'moved') return `step: ${words}`;
  return `step moved from ${ordinal((before ?? 0) + 1)} to ${ordinal((after ?? 0) + 1)}: ${words}`;
}
