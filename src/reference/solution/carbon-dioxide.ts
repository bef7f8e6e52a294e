/** Carbon dioxide in water and above it. */

/** ln K0 = a1 + a2 (100/T) + a3 ln(T/100), mol/(kg atm), T in K. */
export const weissSolubility = {
  coefficients: [-60.2409, 93.4517, 23.3585],
  unit: 'mol/(kg atm)',
  valid: { lowCelsius: -1, highCelsius: 40 },
  source: 'weiss-1974',
} as const;

/** ln(H/MPa) = h0 + h1/T + h2/T^2 + h3/T^3, H = fugacity over mole fraction. */
export const carrollHenry = {
  byInverseTemperature: [-6.8346, 1.2817e4, -3.7668e6, 2.997e8],
  unit: 'MPa',
  valid: { lowCelsius: 0, highCelsius: 160 },
  source: 'carroll-1991',
} as const;

/**
 * The two differ by 2 % either way (Weiss is 2.3 % above at 0 C and 2 % below at 25 C), and so do the measurements
 * behind them. Their geometric mean is used from 5 to 40 C. At 0 C they part most; there Weiss counts 0.65, chosen so
 * that tables made from either stay within 1.5 %, falling to one half at 5 C. Above 40 C, where Weiss ends, the mean
 * goes over to Carroll's in a straight line to 50 C. The weights are ours, not published.
 */
export const solubilityMean = {
  weissAtZero: 0.65,
  weissFromHalf: 0.5,
  halfFromCelsius: 5,
  wholeToCelsius: 40,
  noneFromCelsius: 50,
} as const;

/** B = b0 + b1 T + b2 T^2 + b3 T^3, cm3/mol. */
export const secondVirial = {
  byPowerOfTemperature: [-1636.75, 12.0408, -3.27957e-2, 3.16528e-5],
  valid: { lowKelvin: 265, highKelvin: 320 },
  source: 'weiss-1974',
} as const;

/**
 * Above the range of the polynomial: B Pc/(R Tc) = 0.083 - 0.422/Tr^1.6 + w (0.139 - 0.172/Tr^4.2). At 320 K it is
 * within 0.2 cm3/mol of the polynomial.
 */
export const generalVirial = {
  criticalKelvin: 304.13,
  criticalPascal: 7.377e6,
  acentricFactor: 0.2239,
  source: 'abbott-virial',
  fromMemory: true,
} as const;

/** Partial molal volume of CO2 in water, cm3/mol. */
export const dissolvedVolume = { value: 32.3, unit: 'cm3/mol', source: 'weiss-1974' } as const;

/** Litres that a mole of CO2 gas takes at 0 C and 1 atm: a volume of CO2 is this gas, 1.977 g/L. */
export const gasMolarVolume = { value: 22.26, unit: 'L/mol', source: 'weiss-1974' } as const;

/** The bottled pressures that the equations were compared with end at 29 bar absolute. */
export const carbonationValid = { lowCelsius: 0, highCelsius: 60, highAbsolutePascal: 3e6 } as const;

/**
 * ln(p/pc) = (Tc/T)(a1 u + a2 u^1.5 + a3 u^3 + a4 u^3.5 + a5 u^4 + a6 u^7.5), u = 1 - T/Tc: water vapour over water.
 */
export const waterVapour = {
  criticalKelvin: 647.096,
  criticalPascal: 22.064e6,
  terms: [
    [-7.85951783, 1],
    [1.84408259, 1.5],
    [-11.7866497, 3],
    [22.6807411, 3.5],
    [-15.9618719, 4],
    [1.80122502, 7.5],
  ],
  source: 'wagner-pruss-1993',
} as const;

/**
 * Sucrose drives CO2 out: share lost per g of sugar in a mL of solution, from four Ostwald coefficients at 25 C
 * (0.817, 0.801, 0.776, 0.762 at 2.63, 5.16, 9.68, 12.33 g/100 mL against 0.825 in water). From memory.
 */
export const sugarOnCarbonDioxide = {
  value: 0.62,
  unit: 'mL/g',
  highest: 0.13,
  source: 'findlay-1910',
  fromMemory: true,
} as const;
