/**
 * What of a record is passed on. Only keys that are named here go along, and comments never do: what a file says
 * about the person, the shelf and the purse stays at home unless it is asked for.
 */

import { type Plain, plainOf } from '../edit-facts.ts';
import { aimNames } from '../read-formula.ts';
import { entryOf, type TreeNode } from '../tree.ts';
import { asIs, byRules, type Giving, type Rules } from './giving.ts';
import type { PlainFacts } from './plain-lines.ts';

const itemRules: Rules = {
  weighed: 'as is',
  lot: ['lots', 'as is'],
  role: 'as is',
  note: ['notes', 'prose'],
};

const stepRules: Rules = {
  do: 'as is',
  what: 'prose',
  to: 'as is',
  at: 'as is',
  for: 'as is',
  over: 'as is',
  stir: 'as is',
  with: 'prose',
  into: 'prose',
  by: ['names', 'as is'],
  note: 'prose',
};

const stageRules: Rules = {
  makes: 'as is',
  made: ['looks', 'time'],
  by: ['names', 'as is'],
  density: 'as is',
  weighs: 'as is',
  keep: 'as is',
  note: 'prose',
};

const sampleRules: Rules = { note: ['notes', 'prose'] };

const observationRules: Rules = {
  at: 'time',
  by: ['names', 'as is'],
  note: 'prose',
};

const proseFact = (node: TreeNode, key: string, giving: Giving): PlainFacts => {
  const value = entryOf(node, key)?.value;
  return value?.kind === 'text' ? [[key, giving.proseOf(value.text)]] : [];
};

const textFact = (node: TreeNode, key: string, change: (text: string) => string | undefined): PlainFacts => {
  const value = entryOf(node, key)?.value;
  const text = value?.kind === 'text' ? change(value.text) : undefined;
  return text === undefined ? [] : [[key, text]];
};

const fromFact = (node: TreeNode, giving: Giving): PlainFacts =>
  textFact(node, 'from', (text) => giving.numberOf(Number(text))?.toString());

/** `trial` or `formula` with the recipe, and what was seen where that is asked for. */
export function givenTrial(node: TreeNode, number: number, giving: Giving): PlainFacts {
  const isSeen = giving.with.has('looks');
  return [
    ['trial', String(number)],
    ...proseFact(node, 'title', giving),
    ...(isSeen ? textFact(node, 'made', giving.timeOf) : []),
    ...(giving.with.has('names') ? textFact(node, 'by', (text) => text) : []),
    ...fromFact(node, giving),
    ...proseFact(node, 'why', giving),
    ...givenStages(node, giving),
    ...(isSeen ? givenLooks(node, giving) : []),
    ...proseFact(node, 'concluded', giving),
    ...proseFact(node, 'note', giving),
  ];
}

/** A trial that is only given along: no more than the stages that are used. */
export const givenAlong = (node: TreeNode, number: number, giving: Giving): PlainFacts => [
  ['trial', String(number)],
  ...proseFact(node, 'title', giving),
  ...givenStages(node, giving),
];

export function givenFormula(node: TreeNode, name: string, giving: Giving): PlainFacts {
  const aim = entryOf(node, 'aim')?.value;
  const aims = aim?.kind === 'map' ? aim.entries : [];
  return [
    ['formula', name],
    ...proseFact(node, 'title', giving),
    ...fromFact(node, giving),
    ...proseFact(node, 'why', giving),
    ...givenStages(node, giving),
    ...(aims.length > 0
      ? [
          [
            'aim',
            { map: aims.map(({ key, value }) => [aimName(key.text, giving), plainOf(value)] as const) },
          ] as const,
        ]
      : []),
    ...proseFact(node, 'note', giving),
  ];
}

const aimName = (name: string, giving: Giving): string =>
  aimNames.includes(name) ? name : giving.nameOf(name);

function givenStages(node: TreeNode, giving: Giving): PlainFacts {
  const stages = entryOf(node, 'stages')?.value;
  if (stages?.kind !== 'map') return [];
  const own = new Set(stages.entries.map(({ key }) => key.text));
  const kept = stages.entries.filter(({ key }) => giving.hasStage?.(key.text) ?? true);
  return [
    [
      'stages',
      {
        map: kept.map(
          ({ key, value }) => [key.text, givenStage(key.text, value, { ...giving, own })] as const,
        ),
      },
    ],
  ];
}

interface InStage extends Giving {
  readonly own: ReadonlySet<string>;
}

function givenStage(stage: string, node: TreeNode, giving: InStage): Plain {
  if (node.kind === 'list') return givenItems(stage, node, giving);
  return {
    map: byRules(node, stageRules, giving, (key, value) => {
      if (key === 'items') return [key, givenItems(stage, value, giving)];
      if (key !== 'process' || value.kind !== 'list') return undefined;
      return [key, { list: value.items.map((step) => givenStep(step, giving)) }];
    }),
  };
}

function givenItems(stage: string, node: TreeNode, giving: InStage): Plain {
  const items = node.kind === 'list' ? node.items : [];
  return {
    list: items.map((item, at) => ({
      map: byRules(item, itemRules, giving, (name, amount) => [
        giving.own.has(name) ? name : giving.nameOf(name),
        giving.amountOf?.(stage, at) ?? plainOf(amount),
      ]),
    })),
  };
}

const givenStep = (step: TreeNode, giving: Giving): Plain =>
  step.kind === 'text' ? giving.proseOf(step.text) : { map: byRules(step, stepRules, giving) };

/** Samples and what was seen of them; photos stay, since the file alone is passed on. */
function givenLooks(node: TreeNode, giving: Giving): PlainFacts {
  const samples = entryOf(node, 'samples')?.value;
  const observations = entryOf(node, 'observations')?.value;
  const named: PlainFacts =
    samples?.kind === 'map'
      ? samples.entries.map(({ key, value }) => [
          key.text,
          { map: byRules(value, sampleRules, giving, asIs) },
        ])
      : [];
  const seen =
    observations?.kind === 'list'
      ? observations.items.map(
          (one): Plain => ({ map: byRules(one, observationRules, giving, seenFact(giving)) }),
        )
      : [];
  return [
    ...(named.length > 0 ? [['samples', { map: named }] as const] : []),
    ...(seen.length > 0 ? [['observations', { list: seen }] as const] : []),
  ];
}

const seenFact =
  (giving: Giving) =>
  (key: string, value: TreeNode): readonly [string, Plain] | undefined => {
    if (key === 'photo') return undefined;
    if (key !== 'against' || value.kind !== 'text') return asIs(key, value);
    const [, trial, digits] = /^(trial )?(\d{1,9})$/iu.exec(value.text) ?? [];
    if (digits === undefined) return [key, value.text];
    const number = giving.numberOf(Number(digits));
    return number === undefined ? undefined : [key, `${trial ?? ''}${number}`];
  };
