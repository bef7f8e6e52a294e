/** What changed in a stage, a row a line. */

import type { FactChange, ItemChange, StageChange, StepChange } from '../calc/compare/document.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { Block, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { Side } from './compare-side.ts';
import { type Comparison, lineComesTo } from './compare-sides.ts';
import { changeWords, comesToShown, comesToTexts, ordinal } from './compare-words.ts';

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
  const others = item.facts.filter(({ key }) => key !== 'amount');
  const { before, after } = lineComesTo(comparison, stage, item);
  const [amountBefore, amountAfter] = amountsOf(comparison, stage, item);
  const moved = placeText(item);
  const called =
    item.was === undefined
      ? item.name
      : item.change === 'changed'
        ? `${item.was} -> ${item.name}`
        : item.name;
  const [was, now] = comesToTexts(before, after);
  const isSame = was === now;
  const areBothSolved = comparison.before.solved !== undefined && comparison.after.solved !== undefined;
  return [
    [
      marks[item.change],
      visible(called),
      visible(amountBefore),
      visible(amountAfter),
      areBothSolved ? comesText(was, now) : '',
      isSame || !areBothSolved ? '' : changeWords(comesToShown(before, after)),
    ],
    ...(moved === '' ? [] : [['', `  ${moved}`, '', '', '', ''] as const]),
    ...others.map((fact): Row => {
      const [, line, ...rest] = factRow(fact);
      return ['', `  ${line}`, ...rest];
    }),
  ];
}

/** `0.18 -> 0.15 g/L`; one side alone where the other is not there. */
function comesText(was: string, now: string): string {
  if (was === '-' || now === '-') return was === '-' ? (now === '-' ? '' : now) : was;
  return was === now ? now : `${was.replace(/ \S+$/u, '')} -> ${now}`;
}

function amountsOf(
  { before, after }: Comparison,
  { name, was }: StageChange,
  item: ItemChange,
): readonly [string, string] {
  const of = ({ document }: Side, stage: string, place: number | undefined): string =>
    document?.stages.find((one) => one.name === stage)?.items[place ?? -1]?.amount.written ?? '-';
  return [of(before, item.fromStage ?? was ?? name, item.before), of(after, name, item.after)];
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
  return steps.length === 0 ? [] : [{ kind: 'notes', mark: '-', notes: steps.map(stepWords) }];
}

function stepWords({ change, written, was, before, after }: StepChange): string {
  const words = visible(written);
  if (change === 'changed') return `step changed: ${visible(was ?? '')} -> ${words}`;
  if (change !== 'moved') return `step ${change === 'added' ? 'new' : 'gone'}: ${words}`;
  return `step moved from ${ordinal((before ?? 0) + 1)} to ${ordinal((after ?? 0) + 1)}: ${words}`;
}
