import { numberText } from '../calc/number-text.ts';
import type { ItemSensitivity } from '../ledger/sensitivity.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';

/** What moves what: for `--all`. */
export function sensitivityBlocks(rows: readonly ItemSensitivity[]): Page {
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: 'For 1 % more of an item' },
    {
      kind: 'table',
      columns: [
        { head: '', align: 'left' },
        { head: 'pH', align: 'point' },
        { head: 'acid, g/L', align: 'point' },
        { head: 'Brix', align: 'point' },
        { head: 'density, g/mL', align: 'point' },
      ],
      rows: rows.map(({ item, ph, acid, brix, density }) => [
        visible(item),
        ...[ph, acid, brix, density].map(changeText),
      ]),
    },
  ];
}

/** Too small to measure is a dash. */
const changeText = (value: number): string => {
  if (Math.abs(value) < 1e-6) return '-';
  return `${value < 0 ? '-' : '+'}${numberText(Math.abs(value), 2)}`;
};

const units = { ph: '', acid: 'g/L', brix: '', density: 'g/mL', waterActivity: '' } as const;

export const sensitivityJson = (rows: readonly ItemSensitivity[]): readonly object[] =>
  rows.map(({ stage, item, ...changes }) => ({
    stage,
    item,
    ...Object.fromEntries(
      Object.entries(changes).map(([key, value]) => [
        key,
        { value, unit: Object.entries(units).find(([name]) => name === key)?.[1] ?? '' },
      ]),
    ),
  }));
