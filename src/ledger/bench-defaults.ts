/** What a bench is taken to be where its file says nothing. Common practice, no source. */

import type { Quantity } from '../calc/quantity.ts';

const day = 86_400;
const days = (value: number): Quantity => ({
  value,
  unit: 'd',
  dimension: 'time',
  inner: value * day,
  written: `${value} d`,
});
const percent = (value: number): Quantity => ({
  value,
  unit: '%',
  dimension: 'share',
  inner: value / 100,
  written: `${value} %`,
});

export const benchDefaults = {
  weighing: percent(1),
  temperature: { value: 20, unit: 'C', dimension: 'temperature', inner: 293.15, written: '20 C' },
  settle: days(1),
  watch: days(7),
  looks: [days(1), days(2), days(4), days(7)],
  longWatch: [days(30), days(90)],
  margin: percent(10),
  limits: ['us', 'eu', 'codex'],
} as const satisfies Readonly<Record<string, Quantity | readonly Quantity[] | readonly string[]>>;
