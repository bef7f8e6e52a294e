/** What must be said beside the figures of `lasts`. */

import { acidOnlyUpTo } from '../../reference/kinetics.ts';
import type { LastsGiven } from '../calculators/lasts.ts';
import type { Working } from '../working.ts';
import type { Law } from './law.ts';
import type { Conditions } from './rate.ts';

interface Said {
  readonly law: Law;
  readonly here: Conditions;
  readonly given: LastsGiven;
}

export function sayLastsCautions(working: Working, { law, given }: Said): void {
  if (law.kind === 'ester') {
    working.caution(
      'upper-bound',
      'Only what is dissolved in water reacts: oil droplets and micelles shield it, so the loss is at most this. Metals speed it.',
      'mei-2010',
    );
    working.caution(
      'order-of-rate',
      'Two times either way for esters of straight acids, three for branched ones: trust the comparison more than the days.',
      'taft-series',
    );
  }
  if (law.kind === 'ester' && given.stage.some(({ ph = 0 }) => ph > acidOnlyUpTo))
    working.caution(
      'hardly-acid',
      'With too little acid to count an ester lasts years: of ethyl acetate half is left after about 2 years at pH 7 and 25 C.',
      'mabey-mill-1978',
    );
  if (law.kind === 'sucrose')
    working.caution(
      'inversion-and-haze',
      'Good to 1.5 times from 20 to 40 C and pH 2.5 to 4, else two; 0.05 of pH alone is 12 %. It makes no haze: refractive index and density hardly change, the sweetness does.',
      'vukov-1965',
    );
  if (law.kind === 'polysorbate')
    working.caution(
      'polysorbate-range',
      'An estimate from molecules of its kind, each alone in water, four times either way; in micelles it is slower. Near neutral half was gone in 5 months at 40 C. Light, warmth and copper let it go rancid, and its cloud point falls.',
      'polysorbate-hydrolysis',
    );
  if (law.kind === 'own')
    working.caution(
      'own-figures',
      'Carried from your own figures, two times either way: they hold for that drink, at that pH, and as long as nothing but warmth changes.',
      'common practice, no source',
    );
  if (given.plan.length > 0 || given.after)
    working.caution(
      'no-shelf-life',
      'What reacts away is one thing of many: this is no shelf life.',
      'common practice, no source',
    );
}
