/** Water activity of solutions. */

/**
 * Norrish: ln a = ln X + K X_s^2, X and X_s mole fractions of water and solute, 25 C. `term` c makes it
 * K X_s^2 (1 + c X_s): ours, fitted for glycerol to the table it is tested with; without it the published constant is
 * 0.035 low at a = 0.5.
 */
export interface NorrishConstant {
  readonly k: number;
  readonly term?: number;
  readonly source: string;
  readonly fromMemory?: true;
}

export const norrishConstants: Readonly<Record<string, NorrishConstant>> = {
  sucrose: { k: -6.47, source: 'chirife-constants' },
  glucose: { k: -2.25, source: 'chirife-constants' },
  fructose: { k: -2.15, source: 'chirife-constants' },
  'invert sugar': { k: -2.2, source: 'chirife-constants' },
  maltose: { k: -4.54, source: 'chirife-constants' },
  lactose: { k: -10.2, source: 'chirife-constants', fromMemory: true },
  glycerol: { k: -1.16, term: -0.7, source: 'chirife-constants' },
  sorbitol: { k: -1.65, source: 'polyol-constants' },
  xylitol: { k: -1.66, source: 'polyol-constants' },
  erythritol: { k: -1.34, source: 'polyol-constants' },
  mannitol: { k: -0.91, source: 'polyol-constants' },
  // From its freezing points at 15 to 50 % by mass, each at its own temperature; at 25 C nearer to 0.
  'propylene glycol': { k: -3, source: 'chirife-constants', fromMemory: true },
  // From freezing points of 1 to 10 % and 1 to 30 % by mass in the CRC Handbook.
  ethanol: { k: -0.5, source: 'crc-102' },
  citric: { k: -1.2, source: 'crc-102' },
};

/** Osmotic coefficients at mol/kg: sodium chloride, and trisodium citrate from its freezing points. */
export const osmoticCoefficients = {
  twoIons: {
    points: [
      [0, 1],
      [0.1, 0.9313],
      [0.5, 0.9207],
      [2, 0.9833],
      [5, 1.1916],
    ],
    source: 'robinson-stokes-1959',
    fromMemory: true,
  },
  fourIons: {
    points: [
      [0, 1],
      [0.204, 0.642],
      [0.969, 0.61],
    ],
    source: 'crc-102',
  },
} as const;

/** Norrish's constants hold for about 25 C and are carried to others as an energy over R T. */
export const norrishValid = {
  referenceKelvin: 298.15,
  lowKelvin: 258.15,
  highKelvin: 323.15,
  /** The strongest solution that any of them was compared with. */
  lowWaterActivity: 0.49,
} as const;

/** The law of one solute, and the product that a mixture is compared with. */
export const mixtureLaws = {
  norrish: { source: 'norrish-1966' },
  ross: { source: 'ross-1975' },
} as const;
