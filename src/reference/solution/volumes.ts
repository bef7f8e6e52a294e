/**
 * The room that a dissolved substance takes in water at 20 C, mL per g (apparent specific volume), from the
 * densities of its solutions at 5 % by mass. Good for what a drink carries; +-0.1 mL/g where it is an estimate.
 */

export const apparentVolumes: Readonly<Record<string, number>> = {
  citric: 0.595,
  phosphoric: 0.47,
  lactic: 0.795,
  acetic: 0.862,
  ethanol: 1.182,
  glycerol: 0.774,
  'propylene glycol': 0.93,
  'sodium chloride': 0.29,
  'trisodium citrate': 0.32,
};

export const apparentVolumesSource = { source: 'crc-102', locator: 'density at 5 % by mass' } as const;

/** Where nothing was read; common practice, no source. */
export const estimatedVolumes = { acid: 0.6, salt: 0.4, other: 0.65 } as const;

/** Substances that dissolve and leave the pH to others: molar mass, g/mol, and what kind they are. */
export const neutralSubstances = {
  sucrose: { formula: 'C12H22O11', kind: 'sugar' },
  glucose: { formula: 'C6H12O6', kind: 'sugar' },
  'glucose monohydrate': { formula: 'C6H12O6.H2O', kind: 'sugar' },
  fructose: { formula: 'C6H12O6', kind: 'sugar' },
  'invert sugar': { formula: 'C6H12O6', kind: 'sugar' },
  maltose: { formula: 'C12H22O11', kind: 'sugar' },
  lactose: { formula: 'C12H22O11', kind: 'sugar' },
  glycerol: { formula: 'C3H8O3', kind: 'other' },
  'propylene glycol': { formula: 'C3H8O2', kind: 'other' },
  ethanol: { formula: 'C2H6O', kind: 'other' },
  sorbitol: { formula: 'C6H14O6', kind: 'sugar' },
  xylitol: { formula: 'C5H12O5', kind: 'sugar' },
  erythritol: { formula: 'C4H10O4', kind: 'sugar' },
  mannitol: { formula: 'C6H14O6', kind: 'sugar' },
  water: { formula: 'H2O', kind: 'water' },
} as const satisfies Record<string, { readonly formula: string; readonly kind: 'sugar' | 'other' | 'water' }>;

export const neutralAliases: Readonly<Record<string, string>> = {
  sugar: 'sucrose',
  saccharose: 'sucrose',
  dextrose: 'glucose',
  'dextrose monohydrate': 'glucose monohydrate',
  laevulose: 'fructose',
  glycerine: 'glycerol',
  alcohol: 'ethanol',
  'deionised water': 'water',
};
