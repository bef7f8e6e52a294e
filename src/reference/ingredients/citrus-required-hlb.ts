/** The required HLB of citrus oils, on which published figures disagree. */

import type { Figure } from '../ingredient.ts';
import { between } from './figure-makers.ts';

/** No value was published for orange oil; these are the ones that stand nearest to it. */
export const citrusRequiredHlb: Figure = {
  value: 14.9,
  source: 'vaughan-rice-1990',
  note: 'worked out for limonene, its main constituent, from the solubility parameter; nothing published for this oil itself, and the emulsions of lemon oil were best near 12',
  others: [
    { value: 12, source: 'niczinger-2015', note: 'lemon oil, droplet size and turbidity' },
    { value: 12, source: 'santos-2023', note: 'lemon oil: ripening below, coalescence above' },
    between(14.75, 14.9, { source: 'lee-yoon-2020', note: 'fruit oil of another citrus' }),
    between(15.35, 15.4, { source: 'lee-yoon-2020', note: 'peel oil of another citrus' }),
  ],
};

export const lemonRequiredHlb: Figure = {
  value: 12,
  source: 'niczinger-2015',
  note: 'two independent studies of lemon oil itself; other citrus oils and a calculation for limonene give more',
  others: [
    { value: 12, source: 'santos-2023', note: 'ripening below, coalescence above' },
    { value: 12.1, source: 'orafidiya-2002', fromMemory: true },
    between(14.75, 14.9, { source: 'lee-yoon-2020', note: 'fruit oil of another citrus' }),
    between(15.35, 15.4, { source: 'lee-yoon-2020', note: 'peel oil of another citrus' }),
    { value: 14.9, source: 'vaughan-rice-1990', note: 'worked out for limonene' },
  ],
};
