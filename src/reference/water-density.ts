/** Density of air-free water at 101.325 kPa, kg/m3, with the temperature t in C (ITS-90). */
export const waterDensity = {
  /** Coefficients of t^0 to t^5 above the line. */
  over: [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12],
  /** Coefficient of t below the line, where the constant term is 1. */
  under: 16.887236e-3,
  unit: 'kg/m3',
  valid: { lowCelsius: 0, highCelsius: 100 },
  source: 'kell-1975',
  locator: 'the density equation',
} as const;
