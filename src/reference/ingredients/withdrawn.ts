/** Substances whose use in food a body has withdrawn or prohibited: known by name so that they are named, never dosed. */

import type { Ingredient, Withdrawal } from '../ingredient.ts';

const bvo: Withdrawal = {
  by: 'US FDA',
  what: 'withdrew it from food on 2 August 2024',
  source: '89 FR 55040, 3 July 2024',
};
const us = (section: string): Withdrawal => ({
  by: 'US FDA',
  what: 'prohibits it as an addition to food',
  source: `US FDA, 21 CFR ${section}`,
});
const asSuch: Withdrawal = {
  by: 'EU',
  what: 'does not let it be added to food as such',
  source: 'Regulation (EC) 1334/2008, Annex III Part A',
};
const synthetic: Withdrawal = {
  by: 'US FDA',
  what: 'withdrew the synthetic substance as a flavouring in October 2018; what an oil holds by nature is not touched',
  source: '83 FR 50490, October 2018',
};

const named = (
  name: string,
  withdrawn: readonly Withdrawal[],
  rest: Pick<Ingredient, 'aliases'> & { readonly role?: Ingredient['role'] } = {},
): Ingredient => ({
  name,
  role: 'aroma',
  figures: {},
  ...rest,
  withdrawn,
  notes: withdrawn.map(({ by, what, source }) => `${by} ${what} [${source}]`),
});

export const withdrawnSubstances: readonly Ingredient[] = [
  named('brominated vegetable oil', [bvo], { role: 'oil', aliases: ['BVO'] }),
  named('safrole', [us('189.180'), asSuch]),
  named('isosafrole', [us('189.180')]),
  named('dihydrosafrole', [us('189.180')]),
  named('sassafras oil', [us('189.180')], { role: 'oil', aliases: ['oil of sassafras'] }),
  named('calamus oil', [us('189.110')], { role: 'oil', aliases: ['calamus', 'calamus extract'] }),
  named('coumarin', [us('189.130'), asSuch]),
  named('tonka extract', [us('189.130')], { aliases: ['tonka', 'tonka bean', 'tonka bean extract'] }),
  ...['agaric acid', 'aloin', 'capsaicin', 'hypericine', 'beta-asarone', 'estragole', 'hydrocyanic acid'].map(
    (name) => named(name, [asSuch]),
  ),
  ...['menthofuran', 'quassin', 'teucrin A', 'thujone'].map((name) => named(name, [asSuch])),
  named('methyleugenol', [asSuch, synthetic], { aliases: ['methyl eugenol'] }),
  named('pulegone', [asSuch, synthetic]),
  ...['benzophenone', 'ethyl acrylate', 'pyridine', 'styrene'].map((name) => named(name, [synthetic])),
];

/** Of a sweetener that other bodies give figures for. */
export const cyclamateInUs: readonly Withdrawal[] = [{ ...us('189.135 (title read)'), partly: true }];

/** Of a terpene that oils hold by nature. */
export const syntheticOnly: readonly Withdrawal[] = [{ ...synthetic, partly: true }];
