/** What a bare figure of an aim allows on both sides; common practice, no source. */

export const aimTolerances = {
  ph: { absolute: 0.1, words: '0.1' },
  acid: { relative: 0.03, words: '3 %' },
  brix: { absolute: 0.2, words: '0.2' },
  co2: { absolute: 0.2, words: '0.2 volumes' },
  'brix acid ratio': { relative: 0.05, words: '5 %' },
  density: { absolute: 0.001, words: '0.001 g/mL' },
  'water activity': { absolute: 0.01, words: '0.01' },
  alcohol: { absolute: 0.001, words: '0.1 % v/v' },
  /** Anything else: a substance. */
  substance: { relative: 0.1, words: '10 %' },
} as const;

/** How far a measurement may lie from what is reckoned before it says anything. */
export const measuredTolerances = {
  ph: {
    value: 0.2,
    words: 'pH within 0.2: what is reckoned, for a real drink',
    source: 'common practice, no source',
  },
  acid: { value: 0.03, words: '3 % of the acid: a titration by hand', source: 'common practice, no source' },
  brix: { value: 0.2, words: '0.2 Brix: a hand refractometer', source: 'common practice, no source' },
  density: { value: 0.001, words: '0.001 g/mL: a hydrometer', source: 'common practice, no source' },
  co2: { value: 0.2, words: '0.2 volumes: a gauge', source: 'common practice, no source' },
} as const;
