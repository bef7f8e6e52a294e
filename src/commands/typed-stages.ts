/** The stages of a new trial as typed: each --stage takes the --item and --step that stand after it. */

import type { Book } from '../calc/book.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { fail } from '../problem.ts';
import { type Call, optionValue } from './command.ts';
import { type PlannedStage, readTypedItems } from './typed-plan.ts';

interface TypedStage {
  readonly name: string;
  readonly items: readonly string[];
  readonly steps: readonly string[];
}

/** Read in the order typed; what an earlier stage made may go into a later one. */
export function plannedStages(call: Call, book: Book): readonly PlannedStage[] {
  const stages = stagesTyped(call);
  const faulty = stages.length > 1 ? stages.find(({ items }) => items.length === 0) : undefined;
  if (faulty)
    fail(
      'missing',
      `nothing goes into "${faulty.name}"`,
      `type --item "2 g sweet orange oil" after --stage ${faulty.name}`,
    );
  const names = stages.map(({ name }) => name);
  const twice = names.find((name, at) =>
    names.some((other, before) => before < at && isSameName(other, name)),
  );
  if (twice !== undefined)
    fail(
      'given-twice',
      `--stage ${twice} is given twice`,
      'type what goes into it after the first, or rename one',
    );
  return stages.map(({ name, items, steps }, at) => ({
    name,
    items: readTypedItems(items, book, names.slice(0, at)),
    steps,
  }));
}

/** One stage holds all that is typed, wherever its name stands. */
function stagesTyped(call: Call): readonly TypedStage[] {
  const { item: items = [], step: steps = [], stage: names = [] } = call.values;
  if (names.length < 2) return [{ name: optionValue(call, 'stage') ?? 'emulsion', items, steps }];
  const stages: { name: string; items: string[]; steps: string[] }[] = [];
  for (const [option, text] of call.order ?? []) {
    const last = stages.at(-1);
    if (option === 'stage') stages.push({ name: text, items: [], steps: [] });
    if (option !== 'item' && option !== 'step') continue;
    if (!last)
      return fail(
        'usage',
        `--${option} "${text}" stands before the first --stage`,
        'type --stage NAME first, then what goes into it',
      );
    (option === 'item' ? last.items : last.steps).push(text);
  }
  return stages;
}
