/**
 * Density of sucrose in water, kg/m3 in vacuo: that of water plus five polynomials in the mass fraction w of
 * sucrose, one for each power of (t - 20 C) / 100 C. Row n holds the coefficients of w^1, w^2 and so on that go
 * with the n-th power. One of the two public copies read prints the fourth figure of the first row as -3.9646.
 */
export const sucroseDensityTable = {
  byPowerOfTemperature: [
    [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
    [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
    [59.7712, 7.2491, 12.363, -35.4791],
    [-47.2207, -21.6977, 27.6301],
    [18.3184, 12.3081],
  ],
  referenceCelsius: 20,
  unit: 'kg/m3',
  /** The field of the measurements behind the polynomial. */
  fitted: { lowCelsius: 10, highCelsius: 60, highMassFraction: 0.7 },
  /** How far published tables follow it past that field. */
  valid: { lowCelsius: 5, highCelsius: 60, highMassFraction: 0.85 },
  source: 'icumsa-sucrose-density',
  locator: 'the density polynomial',
} as const;
