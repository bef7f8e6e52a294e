/** What is needed of the refractive index of a drink or syrup beside sugar and water: 20 C, 589 nm. */

/** Emulsifiers of which the record has no index; polysorbates as supplied. */
export const emulsifierIndex = {
  value: 1.47,
  low: 1.465,
  high: 1.475,
  source: 'general-knowledge',
  fromMemory: true,
} as const;

/** g/mL, where the record of an emulsifier has no density; that of polysorbates. */
export const emulsifierDensity = { value: 1.08, source: 'general-knowledge', fromMemory: true } as const;

/** Carriers of which the record has no index. */
export const carrierIndex = { value: 1.43, source: 'general-knowledge', fromMemory: true } as const;

/** What a dissolved substance adds to the index of water, per mass fraction, from solutions of 5 or 10 % by mass. */
export const indexIncrements: Readonly<Record<string, number>> = {
  'citric acid': 0.128,
  'citric acid monohydrate': 0.117,
  'trisodium citrate dihydrate': 0.179,
  'phosphoric acid': 0.092,
  'lactic acid': 0.1,
};

export const indexIncrementsSource = {
  source: 'crc-102',
  locator: 'index at 5 or 10 % by mass',
} as const;

/** For acids and salts beside those; between the figures above. */
export const otherIncrement = { value: 0.13, source: 'common practice, no source' } as const;
