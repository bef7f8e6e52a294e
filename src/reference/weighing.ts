/** The rule by which pharmacopoeias judge a weighing. */

/** 2 s over the net mass at most 0.10 per cent; s below 0.41 of a division counts as that. */
export const minimumWeightRule = {
  factor: 2,
  rule: 0.001,
  leastDivisions: 0.41,
  source: 'usp-41',
  locator: 'repeatability at most 0.10 per cent',
} as const;
