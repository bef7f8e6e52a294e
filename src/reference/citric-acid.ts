/** Citric acid as the measure of titratable acidity: other acids are counted as so much of it. */

/** g/mol, anhydrous; summed from the standard atomic weights (C 12.011, H 1.008, O 15.999). */
export const citricAcidMolarMass = {
  value: 192.124,
  source: 'iupac-atomic-weights',
  locator: 'C6H8O7',
} as const;

export const citricAcidEquivalents = { value: 3, source: 'citrus-titration' } as const;
