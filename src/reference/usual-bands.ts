/** What a figure usually is, so that one far outside can be asked about. Never a limit. */

export interface UsualBand {
  /** In the words of the question, after a figure: `flavour oil`. */
  readonly label: string;
  /** Left out where there is no usual least. */
  readonly low?: number;
  readonly high: number;
  readonly unit: 'mg/L' | 'g/L' | 'mg/kg' | 'vol' | 'g/g';
  readonly source: string;
  readonly fromMemory?: true;
}

/** In the finished drink. None at all is never asked about: the drink may be a test without it. */
export const usualBands = {
  'flavour-oil': {
    label: 'flavour oil',
    low: 10,
    high: 200,
    unit: 'mg/L',
    source:
      'early survey of use levels, as carried by handbooks; citrus-industry handbook, Taylor and Francis, chapters 20 and 28, abstracts',
    fromMemory: true,
  },
  acid: {
    label: 'acid, as citric',
    low: 1,
    high: 7,
    unit: 'g/L',
    source: 'trade pages on acid in soft drinks; Smith and Hong-Shum 2003, Food Additives Data Book',
  },
  sugar: { label: 'sugar', low: 20, high: 140, unit: 'g/L', source: 'common practice, no source' },
  co2: {
    label: 'carbon dioxide',
    low: 1,
    high: 5,
    unit: 'vol',
    source: 'teaching pages on carbonation: soft drinks at 1.5 to 4, and 2.5 to 4.5 volumes',
  },
  'propylene-glycol': {
    label: 'propylene glycol',
    high: 1,
    unit: 'g/L',
    source: 'European Union, Regulation 1333/2008, Annex III: drinks, from all sources',
    fromMemory: true,
  },
  antifoam: {
    label: 'active antifoam',
    high: 10,
    unit: 'mg/kg',
    source: 'US FDA, 21 CFR 173.340, dimethylpolysiloxane in food as ready to consume',
  },
  caffeine: { label: 'caffeine', high: 320, unit: 'mg/kg', source: 'common practice, no source' },
  quinine: {
    label: 'quinine, as the base',
    high: 83,
    unit: 'mg/kg',
    source: 'US FDA, 21 CFR 172.575, quinine in carbonated drinks',
  },
} as const satisfies Readonly<Record<string, UsualBand>>;

export type BandName = keyof typeof usualBands;

/** g of emulsifier for a gram of oil, in the stage where they meet. */
export const emulsifierPerOilBand = {
  label: 'emulsifier per oil',
  low: 0.5,
  high: 10,
  unit: 'g/g',
  source: 'common practice, no source',
} as const satisfies UsualBand;

/** A potent aroma compound is asked about beyond its use level times or over this. */
export const aroundUseLevel = { value: 10, source: 'common practice, no source' } as const;

/** A figure of the finished drink is asked about beyond its band times or over this. */
export const farOutside = { value: 3, source: 'common practice, no source' } as const;

/** How near to 10, 100 or 1000 two amounts must lie to look like a slip. */
export const slipFactors = {
  factors: [10, 100, 1000],
  within: 0.05,
  source: 'common practice, no source',
} as const;

/** Mass fractions of a compound that is counted in drops, where its use level is not known. */
export const droppedTargets = { low: 1e-12, high: 1e-6, source: 'common practice, no source' } as const;

/** g of active silicone in a gram of antifoam emulsion, where nobody wrote what theirs contains. */
export const activeInAntifoamEmulsion = { value: 0.1, source: 'common practice, no source' } as const;

/** g of the base in a gram of a salt of quinine, by molar masses: 324.42 and 396.91, 2 x 324.42 and 782.95 g/mol. */
export const quinineBase: Readonly<Record<string, number>> = {
  quinine: 1,
  'quinine hydrochloride dihydrate': 0.81736,
  'quinine sulfate dihydrate': 0.82871,
};

/** g/L of carbon dioxide that make one volume: 44.01 g/mol over 22.26 L/mol, the real gas at 0 C and 1 atm. */
export const gramsPerLitreOfOneVolume = {
  value: 1.977,
  source: 'beverage definition of a volume of carbon dioxide',
} as const;
