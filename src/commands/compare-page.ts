/** A comparison on the screen. */

import type { StageChange } from '../calc/compare/document.ts';
import { countedWords } from '../calc/drink/counted-forms.ts';
import { figureNumber } from '../calc/drink/figure-cautions.ts';
import { numberText } from '../calc/number-text.ts';
import type { Block, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { bodyNames } from '../reference/limits/published-figure.ts';
import { factBlocks, isSameKind, resultsBlocks, seenBlocks } from './compare-record-page.ts';
import {
  type ComparedPart,
  type Comparison,
  hasAims,
  isDifferent,
  type PropertyChange,
} from './compare-sides.ts';
import { stageBlocks } from './compare-stage-page.ts';
import { bothTexts, changeWords, propertyTexts, shareTexts, shownShare } from './compare-words.ts';

export function comparisonPage(comparison: Comparison, only?: ComparedPart): Page {
  const { before, after } = comparison;
  const has = (part: ComparedPart): boolean => only === undefined || only === part;
  return [
    { kind: 'heading', text: visible(after.label) },
    { kind: 'text', text: `compared with ${visible(before.label)}`, tone: 'faint' },
    ...(isDifferent(comparison, only) ? [] : [sameBlock(comparison, only)]),
    ...(has('formula') ? formulaBlocks(comparison) : []),
    ...(only === undefined && isSameKind(comparison) ? recordBlocks(comparison) : []),
    ...(has('observations') ? seenBlocks(comparison) : []),
    ...(has('results') ? resultsBlocks(comparison) : []),
  ];
}

function sameBlock({ costs }: Comparison, only: ComparedPart | undefined): Block {
  const part = only === undefined ? '' : ` in the ${only}`;
  const isDearer = (only === undefined || only === 'formula') && costs.some(isShown);
  return { kind: 'text', text: `No change${part}${isDearer ? ', but in what it costs' : ''}.`, tone: 'good' };
}

function formulaBlocks(comparison: Comparison): Page {
  const { difference, before, after } = comparison;
  const unsolved = [before, after].filter(({ solved, card }) => !solved && (card?.stages.length ?? 0) > 0);
  return [
    ...difference.stages.flatMap((stage) => stageBlocks(comparison, stage)),
    ...renamedBlocks(difference.stages),
    ...(hasAims(comparison) ? factBlocks('Aims', difference.aims) : []),
    ...unsolved.map(
      ({ label }): Block => ({
        kind: 'text',
        text: `What follows is left out: ${visible(label)} can't be worked out.`,
        tone: 'warn',
      }),
    ),
    ...substanceBlocks(comparison),
    ...propertyBlocks(comparison),
    ...crossedBlocks(comparison),
    ...definitionBlocks(comparison),
  ];
}

function renamedBlocks(stages: readonly StageChange[]): Page {
  const pairs = new Set(
    stages.flatMap(({ renamed }) => renamed.map(({ was, name }) => `${visible(was)} -> ${visible(name)}`)),
  );
  return pairs.size === 0
    ? []
    : [{ kind: 'text', text: `Another name, the same ingredient: ${[...pairs].join('; ')}.`, tone: 'faint' }];
}

const columns = [
  { head: '', align: 'left' },
  { head: 'before', align: 'point' },
  { head: 'after', align: 'point' },
  { head: 'change', align: 'right' },
] as const;

function substanceBlocks({ substances }: Comparison): Page {
  const rows = substances
    .filter((one) => Math.abs(relative(shownShare(one))) >= SHOWN)
    .map((one) => [visible(one.name), ...shareTexts(one), changeWords(shownShare(one))]);
  const left = substances.length - rows.length;
  if (substances.length === 0) return [];
  return [
    { kind: 'heading', text: 'In the finished drink' },
    ...(rows.length > 0 ? [{ kind: 'table', columns, rows } as const] : []),
    ...(left > 0 ? [{ kind: 'text', text: `${left} more by less than 0.1 %.`, tone: 'faint' } as const] : []),
  ];
}

const SHOWN = 0.001;

function relative({
  before = 0,
  after = 0,
}: {
  readonly before?: number | undefined;
  readonly after?: number | undefined;
}): number {
  return before === 0 ? Number.POSITIVE_INFINITY : after / before - 1;
}

/** A step too small for the digits that a figure is worth is none. */
const isShown = (one: PropertyChange): boolean => {
  const [before, after] = propertyTexts(one);
  return before !== after;
};

function propertyBlocks(comparison: Comparison): Page {
  const { properties, costs } = comparison;
  const all = [...properties, ...costs];
  const rows = all.filter(isShown).map((one) => [one.label, ...propertyTexts(one), propertyChange(one)]);
  const same = all.filter((one) => !isShown(one)).map((one) => `${one.label} ${propertyTexts(one)[1]}`);
  return [
    ...(rows.length > 0
      ? ([
          { kind: 'heading', text: 'What follows' },
          { kind: 'table', columns, rows },
        ] as const)
      : []),
    ...(rows.length > 0 && same.length > 0
      ? [{ kind: 'text', text: `As before: ${same.join(', ')}.`, tone: 'faint' } as const]
      : []),
    ...(costs.some(isShown) ? unpricedBlock(comparison) : []),
  ];
}

function unpricedBlock({ before, after }: Comparison): Page {
  const names = new Set(
    [before, after].flatMap(({ solved }) =>
      (solved?.cost?.unpriced ?? []).map(({ ingredient }) => ingredient),
    ),
  );
  const told = [...names].filter((name) => !/\bwater$/u.test(name));
  return told.length === 0
    ? []
    : [
        {
          kind: 'text',
          text: `The cost leaves out what has no price: ${visible(told.join(', '))}.`,
          tone: 'faint',
        },
      ];
}

/** Of a pH the step itself, of all else per cent. */
function propertyChange(one: PropertyChange): string {
  if (one.key !== 'ph' || one.before === undefined || one.after === undefined) return changeWords(one);
  const step = one.after - one.before;
  return `${step < 0 ? '-' : '+'}${numberText(Math.abs(step), 2)}`;
}

function crossedBlocks({ crossed }: Comparison): Page {
  const notes = crossed.map(({ figure: { counted, figure }, before, after, isAbove }) => {
    const [was, now] = bothTexts({ before, after }, 3, figure.unit ?? '');
    const limit = `${figureNumber(figure.value ?? 0)} ${figure.unit ?? ''}`;
    return `${visible(countedWords(counted))} ${was} -> ${now} is ${isAbove ? 'now above' : 'no longer above'} the ${limit} that ${bodyNames[figure.body]} gives for ${figure.food}`;
  });
  return notes.length === 0
    ? []
    : [
        { kind: 'heading', text: 'Published figures crossed' },
        { kind: 'notes', mark: '!', notes, tone: 'warn' },
        {
          kind: 'text',
          text: 'Figures differ by food and country: local food law and a qualified person decide.',
          tone: 'faint',
        },
      ];
}

function definitionBlocks({ definitions }: Comparison): Page {
  const notes = definitions.map(({ ingredient, was, facts }) => {
    const all = facts.map(({ fact, before, after }) => `${fact} ${before || '-'} -> ${after || '-'}`);
    return visible(`${ingredient}${was === undefined ? '' : ` (${was})`}: ${all.join(', ')}`);
  });
  return notes.length === 0
    ? []
    : [
        { kind: 'heading', text: 'What it rests on says something else' },
        { kind: 'notes', mark: '-', notes },
      ];
}

function recordBlocks({ difference }: Comparison): Page {
  return factBlocks('The record', difference.facts);
}
