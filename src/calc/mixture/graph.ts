/** Which stage uses which: faults of order, and whether a stage reaches the finished drink. */

import type { Fault } from '../../problem.ts';
import type { ItemInput, StageInput } from './picture.ts';

export const DRINK = 'drink';

export interface StageOrder {
  readonly stages: readonly StageInput[];
  readonly placeOfStage: (name: string) => number | undefined;
}

/** Places of stages by name; the first where a name stands twice. */
export function stageOrder(stages: readonly StageInput[]): StageOrder {
  const places = new Map<string, number>();
  for (const [index, { name }] of stages.entries()) if (!places.has(name)) places.set(name, index);
  return { stages, placeOfStage: (name) => places.get(name) };
}

/** A stage is made from stages above it, never from itself or from what comes after it. */
export function sourceFault({ source }: ItemInput, stageAt: number, order: StageOrder): Fault | undefined {
  if (source.kind !== 'stage') return undefined;
  const place = order.placeOfStage(source.stage);
  const user = order.stages[stageAt]?.name ?? '';
  if (place === undefined) {
    return {
      code: 'unknown-stage',
      message: `there is no stage named ${source.stage}`,
      hint: `use one of ${
        order.stages
          .slice(0, stageAt)
          .map(({ name }) => name)
          .join(', ') || 'the ingredients'
      }`,
    };
  }
  if (place === stageAt) {
    const message = `${user} uses itself`;
    return { code: 'own-stage', message, hint: 'use an earlier stage, or an ingredient' };
  }
  if (place < stageAt) return undefined;
  return {
    code: 'later-stage',
    message: `${user} uses ${source.stage}, which is made after it`,
    hint: `move ${source.stage} above ${user}`,
  };
}

/** An amount `in drink` needs a stage named `drink` that its own stage goes into. */
export function drinkFault(
  { name, amount }: ItemInput,
  stageAt: number,
  order: StageOrder,
): Fault | undefined {
  if (!amount.inDrink) return undefined;
  const drinkAt = order.placeOfStage(DRINK);
  const written = `"${name}: ${amount.written}"`;
  if (drinkAt === undefined) {
    return {
      code: 'no-drink',
      message: `${written} counts in the drink, and there is no stage named drink`,
      hint: 'add a stage named drink, or leave out "in drink"',
    };
  }
  if (reaches(stageAt, drinkAt, order)) return undefined;
  const stage = order.stages[stageAt]?.name ?? '';
  return {
    code: 'not-in-drink',
    message: `${written} counts in the drink, and ${stage} does not go into the drink`,
    hint: `add ${stage} to the items of drink, or leave out "in drink"`,
  };
}

/** True where a stage is the drink, or goes into it by way of the stages between. */
function reaches(stageAt: number, drinkAt: number, order: StageOrder): boolean {
  const reached = new Set([drinkAt]);
  for (let user = drinkAt; user > stageAt; user -= 1) {
    if (!reached.has(user)) continue;
    for (const { source } of order.stages[user]?.items ?? []) {
      const place = source.kind === 'stage' ? order.placeOfStage(source.stage) : undefined;
      if (place !== undefined && place < user) reached.add(place);
    }
  }
  return reached.has(stageAt);
}
