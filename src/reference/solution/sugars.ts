/** Sugars in water: index, other sugars beside sucrose, viscosity, solubility. */

/**
 * Refractive index of sucrose in water at 20 C, 589 nm, against air: coefficients of w^0 to w^4, w mass fraction.
 * Fitted to the five-decimal table of 1974, which it follows within 0.00002.
 */
export const sucroseIndex = {
  byPowerOfMassFraction: [1.33298, 0.14312, 0.0510073, 0.0252531, -0.00569977],
  temperatureCelsius: 20,
  highMassFraction: 0.85,
  source: 'icumsa-1974',
} as const;

/** Temperatures for which the index is answered; checked with the correction table from 5 to 15 C and with water. */
export const indexValid = { lowCelsius: 5, highCelsius: 40 } as const;

/**
 * Refractive index of water against vacuum (589.3 nm taken): A = (n^2 - 1)/(n^2 + 2) = d (a0 + a1 d + a2 q + a3 L^2 q
 * + a4/L^2 + a5/(L^2 - u^2) + a6/(L^2 - i^2) + a7 d^2), d = rho in g/cm3, q = T/273.15 K, L = wavelength/589 nm.
 */
export const waterIndex = {
  coefficients: [
    0.244257733, 9.74634476e-3, -3.73234996e-3, 2.68678472e-4, 1.5892057e-3, 2.45934259e-3, 0.90070492,
    -1.66626219e-2,
  ],
  ultraviolet: 0.229202,
  infrared: 5.432937,
  wavelength: 589.3 / 589,
  source: 'iapws-r9-97',
} as const;

/**
 * What other sugars differ from sucrose in water at the same mass fraction w and 20 C: d1 w + d2 w^2 + d3 w^3 in
 * g/mL and in index. Fitted to densities and indices of four decimals; the change with temperature is taken from sucrose.
 */
export const besideSucrose = {
  glucose: {
    density: [-0.00258, -0.025035, 0.015006],
    index: [-0.000232, -0.008433, 0.002976],
    highMassFraction: 0.6,
  },
  fructose: {
    density: [0.005932, -0.015424, 0.006174],
    index: [-0.000871, -0.007026, 0.001961],
    highMassFraction: 0.5,
  },
  source: 'crc-102',
} as const;

/**
 * Viscosity: log10 eta = 22.46 N - 0.114 + f (1.1 + 43.1 N^1.25), N = x/(1900 - 18 x), f = (30 - t)/(91 + t), x in
 * % by mass, t in C, eta in mPa s. Below 30 C the equation runs above the tables, by 4 % at 15 C and 8 % at 5 C
 * (40 %); it is divided by 1 + k x (30 - t)^2, k fitted here to the tables.
 */
export const sucroseViscosity = {
  slope: 22.46,
  constant: -0.114,
  thermal: [1.1, 43.1],
  power: 1.25,
  correction: 2.8e-6,
  correctedBelowCelsius: 30,
  valid: { lowCelsius: 0, highCelsius: 50, highMassFraction: 0.75 },
  source: 'genotelle-1978',
} as const;

/** Sucrose in a saturated solution, % by mass: s0 + s1 t + s2 t^2; it gives every printed row to 0.005. */
export const sucroseSolubility = {
  byPowerOfCelsius: [64.18, 0.1348, 0.000531],
  valid: { lowCelsius: 0, highCelsius: 100 },
  source: 'crc-sucrose-solubility',
} as const;

/** What citric acid adds to the Brix that a refractometer shows, degrees per % by mass. */
export const acidOnBrix = {
  value: 0.2,
  highPercent: 5,
  source: 'stevens-baier-1939',
  fromMemory: true,
} as const;
