/** What a commit changed of a record, in words short enough for a line. */

import type { DocumentDifference, EntryChange, ItemChange, StageChange } from '../calc/compare/document.ts';
import { trimmedNumber } from '../calc/number-text.ts';

/** One entry a change, the most telling first; empty where only spelling changed. */
export function changeList(difference: DocumentDifference): readonly string[] {
  const { stages, aims, facts, samples, observations, results } = difference;
  return [
    ...stages.flatMap(stageWords),
    ...aims.map(({ key, before, after }) =>
      before === undefined
        ? `aim ${key} ${after}`
        : after === undefined
          ? `aim ${key} gone`
          : `aim ${key} ${before} -> ${after}`,
    ),
    ...counted(samples, 'sample'),
    ...seenWords(observations),
    ...counted(results, 'result'),
    ...facts.map(({ key, before, after }) =>
      after === undefined
        ? `${key} gone`
        : before === undefined
          ? `${key}: ${short(after)}`
          : `${key}: ${short(before)} -> ${short(after)}`,
    ),
  ];
}

/** What a record began with. */
export function beginning({ stages, observations }: DocumentDifference): readonly string[] {
  const names = stages.map(({ name }) => name);
  return [names.length > 0 ? `begins: ${names.join(', ')}` : 'begins', ...seenWords(observations)];
}

const longestText = 40;
const short = (text: string): string =>
  text.length > longestText ? `${text.slice(0, longestText - 3).trimEnd()}...` : text;

function stageWords(stage: StageChange): readonly string[] {
  const { change, name, was, factor, items, steps, facts } = stage;
  if (change === 'same') return [];
  if (change === 'added') return [`stage ${name}`];
  if (change === 'removed') return [`stage ${name} gone`];
  const renamed = was === undefined ? [] : [`stage ${was} is now ${name}`];
  if (factor !== undefined) return [...renamed, `${name} x ${trimmedNumber(factor, 4)}`];
  const process = steps.length > 0 ? [`process of ${name}`] : [];
  const own = facts.map(({ key, before, after }) => `${name} ${key} ${before ?? '-'} -> ${after ?? 'gone'}`);
  return [...renamed, ...items.map((item) => itemWords(item)), ...own, ...process];
}

/** `polysorbate 80 12 % -> 10 %`, `water moved`, `+ sorbitan oleate 2 %` */
function itemWords({ change, name, was, facts, isMoved, fromStage }: ItemChange): string {
  const amount = facts.find(({ key }) => key === 'amount');
  if (change === 'added') return `+ ${name} ${amount?.after ?? ''}`.trimEnd();
  if (change === 'removed') return `- ${name} ${amount?.before ?? ''}`.trimEnd();
  const moved = fromStage === undefined ? (isMoved ? ' moved' : '') : ` from ${fromStage}`;
  const called = was === undefined ? name : `${was} -> ${name}`;
  const others = facts
    .filter(({ key }) => key !== 'amount')
    .map(({ key, before, after }) =>
      before === undefined
        ? ` ${key} ${short(after ?? '')}`
        : ` ${key} ${short(before)} -> ${short(after ?? 'gone')}`,
    );
  return `${called}${amount ? ` ${amount.before} -> ${amount.after}` : ''}${others.join(',')}${moved}`;
}

/** The look of what was seen, where that is all; else how many there were. */
function seenWords(observations: readonly EntryChange[]): readonly string[] {
  const added = observations.filter(({ change }) => change === 'added');
  const looks = added.map(({ heading, facts }) => {
    const look = facts.find(({ key }) => key === 'look')?.after ?? facts[0]?.after ?? '';
    return `${heading.slice(heading.indexOf(', ') + 2)} ${short(look)}`.trim();
  });
  const rest = observations.filter(({ change }) => change !== 'added');
  if (added.length > mostLooks) return [...counted(added, 'observation'), ...counted(rest, 'observation')];
  return [...looks, ...counted(rest, 'observation')];
}

const mostLooks = 2;

function counted(entries: readonly EntryChange[], what: string): readonly string[] {
  return (['added', 'removed', 'changed'] as const).flatMap((change) => {
    const count = entries.filter((one) => one.change === change).length;
    const words = { added: '', removed: ' gone', changed: ' changed' }[change];
    return count === 0 ? [] : [`${count} ${what}${count === 1 ? '' : 's'}${words}`];
  });
}
