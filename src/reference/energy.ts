/** Energy of what a drink holds, per g, for a nutrition panel. */

export interface EnergyFactor {
  readonly kilojoules: number;
  readonly kilocalories: number;
}

export const energyFactors = {
  carbohydrate: { kilojoules: 17, kilocalories: 4 },
  polyol: { kilojoules: 10, kilocalories: 2.4 },
  erythritol: { kilojoules: 0, kilocalories: 0 },
  fat: { kilojoules: 37, kilocalories: 9 },
  ethanol: { kilojoules: 29, kilocalories: 7 },
  'organic acid': { kilojoules: 13, kilocalories: 3 },
  protein: { kilojoules: 17, kilocalories: 4 },
  fibre: { kilojoules: 8, kilocalories: 2 },
  none: { kilojoules: 0, kilocalories: 0 },
} as const satisfies Readonly<Record<string, EnergyFactor>>;

export type EnergyKind = keyof typeof energyFactors;

export const energySource = 'Regulation (EU) 1169/2011, Annex XIV, as quoted';

/** What a substance counts as where its role does not say it. */
export const energyKinds: Readonly<Record<string, EnergyKind>> = {
  erythritol: 'erythritol',
  xylitol: 'polyol',
  sorbitol: 'polyol',
  mannitol: 'polyol',
  maltitol: 'polyol',
  isomalt: 'polyol',
  glycerol: 'polyol',
  ethanol: 'ethanol',
  aspartame: 'protein',
  'phosphoric acid': 'none',
  'gum arabic': 'fibre',
  'MCT oil': 'fat',
};

/** No factor is assigned to these; some count propylene glycol as 4 kcal/g. From memory. */
export const noEnergyFactor: readonly string[] = ['propylene glycol'];
