/** Emulsifier on droplets: how much covers them, what a ratio makes of them, and the systems that this was found for. */

/** mg/m2 of polysorbate at an oil and water surface. */
export const surfaceLoad = {
  value: 2,
  low: 1,
  high: 2,
  factor: 2,
  source: 'food-emulsions',
  locator: 'tables of surface load, small-molecule emulsifiers 1 to 2 mg/m2',
  fromMemory: true,
} as const;

/**
 * Micelle with oil in its core: R = 3 (v_tail + n v_oil)/a, d = 2 (R + shell). a nm2 at the core, from the core of
 * polysorbate 40 (2.25 nm); shell nm of 20 oxyethylene units; tail volume 0.0274 + 0.0269 n nm3.
 */
export const swollenMicelle = {
  area: 0.574,
  shell: 2.5,
  tailBase: 0.0274,
  tailPerCarbon: 0.0269,
  factor: 1.5,
  source: 'swollen-micelle',
  fromMemory: true,
} as const;

/** Carbons of the tail beside the carboxyl, and nominal molar mass, g/mol. */
export const polysorbateTails: Readonly<
  Record<string, { readonly carbons: number; readonly molarMass: number }>
> = {
  'polysorbate 20': { carbons: 11, molarMass: 1228 },
  'polysorbate 40': { carbons: 15, molarMass: 1284 },
  'polysorbate 60': { carbons: 17, molarMass: 1312 },
  'polysorbate 80': { carbons: 17, molarMass: 1310 },
};

/** Limonene, which stands for the terpenes of citrus oils: g/mol, nm3 a molecule. */
export const limoneneMolecule = { molarMass: 136.23, volume: 0.269 } as const;

/** Parts of emulsifier to one of oil at which the published map changes, each good to 30 %. */
export const ratioMap = {
  nano: 1,
  micro: 2,
  accuracy: 0.3,
  systems:
    'lemon oil and polysorbate 80 in water, heated to 90 C for 30 minutes; orange-type oils with heat and stirring are near it, tea tree oil was quoted at 4',
  source: 'ratio-map',
} as const;
