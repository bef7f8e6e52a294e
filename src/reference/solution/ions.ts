/** Ions that take no part in any equilibrium here, and the atomic weights of everything weighed in. */

/** Charge of each. */
export const ionCharges = {
  sodium: 1,
  potassium: 1,
  calcium: 2,
  magnesium: 2,
  chloride: -1,
  hydroxide: -1,
} as const;

export type IonName = keyof typeof ionCharges;

/** Standard atomic weights, g/mol (conventional value where the IUPAC gives an interval). Source iupac-atomic-weights. */
export const atomicWeights: Readonly<Record<string, number>> = {
  H: 1.008,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  P: 30.974,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
};
