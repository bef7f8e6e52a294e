/** How far a potent aroma compound is diluted in one step, where the bench says nothing. */
export const largestDilution = { value: 100, source: 'common practice, no source' } as const;
