/** Published figures for the active silicone of an antifoam in a drink, by body. For comparison only. */

import { carrierLimits } from './limits/carrier-limits.ts';
import { limitSourceWords } from './limits/limit-sources.ts';
import { bodyNames, type LimitBody } from './limits/published-figure.ts';

export interface AntifoamFigure {
  /** The word under `limits` of the bench. */
  readonly key: LimitBody;
  readonly body: string;
  readonly value: number;
  readonly unit: 'mg/kg' | 'mg/L';
  readonly scope: string;
  readonly source: string;
}

export const antifoamFigures: readonly AntifoamFigure[] = carrierLimits.flatMap((figure) => {
  const { form, kind, body: key, value, unit, food } = figure;
  if (form !== 'silicone' || kind !== 'most' || value === undefined) return [];
  if (unit !== 'mg/kg' && unit !== 'mg/L') return [];
  const scope = `dimethylpolysiloxane in ${food}`;
  return [{ key, body: bodyNames[key], value, unit, scope, source: limitSourceWords(figure) }];
});

/** Seen by practitioners; a curve of foam over the dose of antifoam was looked for and not found. */
export const moreFoamWithMore = {
  source: 'reported in practice (from memory); no published curve was found',
} as const;
