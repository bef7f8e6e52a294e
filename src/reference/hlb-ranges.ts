/** What a blend of a given HLB is fit for, by the ranges that its originator published. */

export const hlbRanges = [
  { low: 3, high: 6, use: 'water-in-oil emulsions' },
  { low: 7, high: 9, use: 'wetting' },
  { low: 8, high: 18, use: 'oil-in-water emulsions' },
  { low: 13, high: 15, use: 'washing' },
  { low: 15, high: 18, use: 'solubilising' },
] as const;

export const hlbRangesCite = {
  source: 'griffin-1949',
  locator: 'table of HLB ranges and their application',
  fromMemory: true,
} as const;
