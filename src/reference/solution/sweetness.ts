/** Sweetness against sucrose. */

/**
 * Intense sweeteners weaken with level: R = Rm C/(K + C), R in % sucrose, C in mg/L. Rm is published; K follows from
 * published potencies: aspartame 200 times at 4.3 % and 130 times at 10 % (K 586 and 462, the mean taken); saccharin
 * 30 to 40 mg of the sodium salt for 10 g of sucrose in 240 mL (K 180 to 230).
 */
export const sweetnessCurves = {
  aspartame: { highest: 16, half: 524, lowHalf: 462, highHalf: 586, source: 'dubois-1991' },
  saccharin: { highest: 10.1, half: 203, lowHalf: 174, highHalf: 232, source: 'dubois-1991' },
} as const;

/** One factor by mass where no curve was found, with the level for which it is given, % sucrose. */
export interface SweetnessFactor {
  readonly factor: number;
  readonly low?: number;
  readonly high?: number;
  readonly levelPercent?: number;
  readonly source: string;
}

export const sweetnessFactors: Readonly<Record<string, SweetnessFactor>> = {
  sucrose: { factor: 1, source: 'sweetener-review' },
  glucose: { factor: 0.8, low: 0.74, high: 0.8, source: 'sweetener-review' },
  fructose: { factor: 1.7, low: 1.1, high: 1.73, source: 'sweetener-review' },
  'invert sugar': { factor: 1, source: 'sweetener-review' },
  lactose: { factor: 0.2, low: 0.16, high: 0.2, source: 'sweetener-review' },
  maltose: { factor: 0.4, low: 0.33, high: 0.5, source: 'sweetener-review' },
  erythritol: { factor: 0.7, source: 'sweetener-review' },
  xylitol: { factor: 1, source: 'sweetener-review' },
  sorbitol: { factor: 0.6, source: 'sweetener-review' },
  mannitol: { factor: 0.6, source: 'sweetener-review' },
  maltitol: { factor: 0.9, source: 'sweetener-review' },
  isomalt: { factor: 0.5, source: 'sweetener-review' },
  'acesulfame potassium': {
    factor: 190,
    low: 170,
    high: 200,
    levelPercent: 4.2,
    source: 'alternative-sweeteners',
  },
  'sodium cyclamate': { factor: 55, low: 50, high: 67, levelPercent: 4.2, source: 'alternative-sweeteners' },
  sucralose: { factor: 750, low: 670, high: 830, levelPercent: 4.2, source: 'alternative-sweeteners' },
  'steviol glycosides': { factor: 300, source: 'sweetener-review' },
  'rebaudioside m': { factor: 275, low: 200, high: 350, source: 'prakash-2014' },
};

/** Words for the same. */
export const sweetenerAliases: Readonly<Record<string, string>> = {
  'acesulfame-k': 'acesulfame potassium',
  'acesulfame k': 'acesulfame potassium',
  cyclamate: 'sodium cyclamate',
  'sodium saccharin': 'saccharin',
  dextrose: 'glucose',
  sugar: 'sucrose',
};
