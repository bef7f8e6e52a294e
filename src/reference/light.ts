/** Figures for how droplets scatter light, and how that is seen. */

const eyes = 'common practice, no source';

/** Where the scattering of spheres was checked against independent computations. */
export const mieRange = { lowSize: 0.001, highSize: 20_000, lowIndex: 0.01, highIndex: 20 } as const;

/** nm, in vacuum: green, where the eye sees best and white-light meters see most. */
export const usualWavelength = {
  value: 550,
  lowest: 400,
  highest: 900,
  /** Outside these the estimate of NTU says nothing. */
  meterLow: 500,
  meterHigh: 600,
  source: eyes,
} as const;

/**
 * What a white-light meter reads, NTU, for light sent to 90 degrees, 1/(m sr): 1.2e-4 of pure water at 550 nm over the
 * 0.011 NTU that is given to water free of particles.
 */
export const nephelometer = {
  value: 0.011,
  factor: 2,
  source: 'ntu-of-water',
  locator: '0.010 to 0.012 NTU; one laboratory page prints 0.016',
  fromMemory: true,
} as const;

/** tau x path up to which light is scattered once; from memory. */
export const singleScattering = { value: 0.3, source: 'bohren-huffman-1983', fromMemory: true } as const;

/** m, the path in a meter's vial. */
export const meterPath = { value: 0.025, source: eyes, fromMemory: true } as const;

/** Volume share of droplets above which they no longer scatter independently of each other. */
export const crowded = { value: 0.01, source: eyes } as const;

/** m, a beaker or a tumbler, where no width is given. */
export const usualWidth = { value: 0.05, source: eyes } as const;

/** What is seen, by NTU; each bound good to a factor of two. */
export const hazeBands = {
  unseen: 0.5,
  faint: 3,
  whiteClear: 6,
  hazy: 20,
  factor: 2,
  source: 'haze-bands',
  locator:
    'after Carrasco and Siebert 1999, Fleet and Siebert 2006, Ph. Eur. 2.2.1 and WHO 2017; a working scale, no standard',
} as const;

/** nm; beyond these sizes the droplets of a flavour emulsion are not looked for. */
export const sizesLookedFor = { low: 2, high: 5000 } as const;

/** nm; a droplet is from nothing to a millimetre. */
export const dropletLimit = { highNanometres: 1e6 } as const;
