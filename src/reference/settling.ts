/** Figures for droplets that rise or sink. */

/** J/K, J/(mol K) and m/s2: the exact SI and standard values (from memory). */
export const boltzmann = 1.380649e-23;
export const gasConstant = 8.314462618;
export const standardGravity = 9.80665;

/**
 * Viscosity of water, mPa s: log10(eta/eta20) = (20 - t)/(t + 96) [1.2364 - 1.37e-3 (20 - t) + 5.7e-6 (20 - t)^2],
 * eta20 = 1.0016 mPa s, t in C.
 */
export const waterViscosity = {
  at20: 1.0016,
  shift: 96,
  coefficients: [1.2364, -1.37e-3, 5.7e-6],
  valid: { lowCelsius: 0, highCelsius: 50 },
  source: 'kestin-1978',
  fromMemory: true,
} as const;

/** Mass fraction of sugar by which the difference between that and the sugar equation at no sugar has faded out. */
export const fadesBySugar = 0.2;

/** g/(mL K): how citrus oils expand, after d-limonene, 0.8429 at 20 and 0.8390 at 25 C. */
export const oilExpansion = { value: 0.00078, source: 'melinder-2010', locator: 'd-limonene' } as const;

/** Exponent of hindered rising, v = v0 (1 - phi)^n, up to a share of 0.3. */
export const hindered = {
  value: 4.65,
  highest: 0.3,
  source: 'richardson-zaki-1954',
  fromMemory: true,
} as const;

/** m/day; slower creaming is counted as stable. */
export const countsAsStable = { millimetresPerDay: 1, source: 'dickinson-1992' } as const;

/** What droplets of different sizes and a look at the glass leave of a time; both ways. */
export const riseFactor = { value: 2, source: 'common practice, no source' } as const;

/** mm, the height of liquid in a 100 mL beaker or a small jar, where none is given. */
export const usualHeight = { millimetres: 50, source: 'common practice, no source' } as const;

/** Share of the oil phase by mass, on each side, within which a reckoned density match is good. */
export const matchAccuracy = { value: 0.05, source: 'chanamai-mcclements-2000' } as const;

/** Share of an insoluble oil, of the oil phase by mass, that stopped ripening in published systems. */
export const ripeningStop = {
  low: 0.05,
  high: 0.2,
  molesLow: 0.01,
  molesHigh: 0.03,
  source: 'ripening-stop',
} as const;

/** Limonene: molar volume m3/mol; tension against polysorbate, N/m. */
export const limonene = {
  molarVolume: 1.618e-4,
  tension: 0.005,
  source: 'general-knowledge',
  fromMemory: true,
} as const;

/** g, multiples of gravity in a centrifuge: 1.118e-5 x r (cm) x rpm^2. */
export const centrifugeFactor = { value: 1.118e-5, source: 'arithmetic' } as const;
