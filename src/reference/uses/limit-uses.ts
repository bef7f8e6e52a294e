/** Published figures for additives and daily intakes: which text each is from, and for which food it is meant. */

import { dailyIntakes, noIntakeNumbers } from '../limits/daily-intakes.ts';
import { type FormName, forms } from '../limits/forms.ts';
import { limits } from '../limits/index.ts';
import { bodyNames, type HowRead } from '../limits/published-figure.ts';
import type { Use } from './use.ts';

/** `benzoates, as benzoic acid` */
function formWords(name: FormName): string {
  const form = forms[name];
  return 'as' in form ? `${form.substance}, as ${form.as}` : form.substance;
}

interface Cited {
  readonly source: string;
  readonly at: string;
  readonly read: HowRead;
}

const cited = ({ source, at, read }: Cited) => ({
  source,
  fromMemory: read === 'from memory',
  ...(at === '' ? {} : { locator: at }),
});

export const limitUses = (): readonly Use[] => [
  ...limits.map(
    (one): Use => ({
      ...cited(one),
      what: `${bodyNames[one.body]} on ${formWords(one.form)}`,
      range: one.food,
      by: ['drink', 'compare', 'scale', 'check', 'give'],
    }),
  ),
  ...[...dailyIntakes, ...noIntakeNumbers].map(
    (one): Use => ({
      ...cited(one),
      what: `${one.by} on a day of ${formWords(one.form)}`,
      range: 'people' in one && one.people ? one.people : 'all food of a day, over a life',
      by: ['intake'],
    }),
  ),
];
