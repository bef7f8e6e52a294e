/** Every published figure for a flavoured drink. Loaded late: only the finished drink asks for it. */

import { carrierLimits } from './carrier-limits.ts';
import { emulsifierLimits } from './emulsifier-limits.ts';
import { preservativeLimits } from './preservative-limits.ts';
import type { LimitFigure } from './published-figure.ts';
import { natureLimits, sweetenerLimits } from './sweetener-limits.ts';

export const limits: readonly LimitFigure[] = [
  ...emulsifierLimits,
  ...carrierLimits,
  ...preservativeLimits,
  ...sweetenerLimits,
  ...natureLimits,
];
