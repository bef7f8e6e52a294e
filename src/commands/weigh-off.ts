/** What was weighed beside the plan, and what is off by more than the bench accepts. */

import { numberText } from '../calc/number-text.ts';
import { asShown } from '../calc/weighing/balance.ts';
import type { Block } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import type { AtBalance } from './weigh.ts';
import type { Weighing } from './weigh-words.ts';

/** Off by more than the bench accepts, and by more than the balance can help. */
export function isOffPlan({ here }: AtBalance, { addition, grams }: Weighing): boolean {
  const { plannedGrams, divisionGrams } = addition;
  if (plannedGrams <= 0) return false;
  const offGrams = Math.abs(grams - plannedGrams);
  const accepted = Math.max(here.bench.weighing.inner * plannedGrams, divisionGrams / 2);
  return offGrams > accepted * (1 + 1e-9);
}

/** The weighings as a table, each that is off with `!`, and one line that says what to do. */
export function weighedBlocks(at: AtBalance, weighings: readonly Weighing[]): readonly Block[] {
  if (weighings.length === 0) return [];
  const text = offText(at, weighings);
  return [
    {
      kind: 'table',
      columns: [
        { head: 'item', align: 'left' },
        { head: 'planned', align: 'point' },
        { head: 'weighed', align: 'point' },
        { head: 'off by', align: 'point' },
      ],
      rows: weighings.map((one) => weighedRow(at, one)),
    },
    ...(text === undefined
      ? []
      : [{ kind: 'notes', mark: '!', notes: [visible(text)], tone: 'warn' } as const]),
  ];
}

function weighedRow(at: AtBalance, weighing: Weighing): readonly string[] {
  const { plannedGrams, divisionGrams, item } = weighing.addition;
  const off = `${percentOff(weighing)}${isOffPlan(at, weighing) ? ' !' : ''}`;
  return [visible(item.name), `${asShown(plannedGrams, divisionGrams)} g`, weighing.written, off];
}

/** In per cent; what is only rounding noise of the arithmetic is nothing, and of nothing there is no share. */
export function percentOff({ addition, grams }: Weighing): string {
  if (addition.plannedGrams <= 0) return '-';
  const percent = (grams / addition.plannedGrams - 1) * 100;
  return `${numberText(Math.abs(percent) < 1e-9 ? 0 : percent, 2)} %`;
}

/** `off by more than 1 %: …`, and how to put it right; undefined where all is near enough. */
export function offText(at: AtBalance, weighings: readonly Weighing[]): string | undefined {
  const off = weighings.filter((one) => isOffPlan(at, one));
  if (off.length === 0) return undefined;
  const names = off.map(({ addition }) => addition.item.name).join(', ');
  return `off by more than ${at.here.bench.weighing.written}: ${names}; ${mendText(at, off)}`;
}

function mendText(at: AtBalance, off: readonly Weighing[]): string {
  const over = off
    .filter(({ addition, grams }) => grams > addition.plannedAtFirstGrams)
    .sort((one, other) => ratioOf(other) - ratioOf(one))[0];
  return over
    ? `${overpouredLine(at, over)} says what the others must become`
    : 'weigh in what is missing and type the sum with --again';
}

const ratioOf = ({ addition, grams }: Weighing): number => grams / addition.plannedAtFirstGrams;

/** The line to type; with its stage where the name stands in several. */
function overpouredLine({ trial }: AtBalance, { addition, written }: Weighing): string {
  const { item, stage } = addition;
  const twins = trial.card.stages.flatMap(({ items }) => items.filter(({ name }) => name === item.name));
  const grams = /^[\d.]+ g$/u.test(written) ? written.slice(0, -' g'.length) : `"${written}"`;
  const inStage = twins.length > 1 ? ` --stage "${stage.name}"` : '';
  return `neckring overpoured ${trial.card.number} "${item.name}" ${grams}${inStage}`;
}

export const weighingJson = (at: AtBalance, weighing: Weighing): object => ({
  stage: weighing.addition.stage.name,
  item: weighing.addition.item.name,
  planned: { value: weighing.addition.plannedGrams, unit: 'g' },
  weighed: { value: weighing.grams, unit: 'g' },
  isOff: isOffPlan(at, weighing),
});
