/** How fast esters, sugar and emulsifier are lost in water: constants at 25 C, and where there are none to trust. */

const taft = 'taft-series';
const mabey = 'mabey-mill-1978';

export interface EsterConstants {
  /** 1/(M s), times the activity of H+. */
  readonly acid: number;
  /** 1/s; absent where it is not known. */
  readonly neutral?: number;
  /** 1/(M s), times the activity of OH-. */
  readonly base?: number;
  /** kJ/mol of the acid part, where it was measured for this ester. */
  readonly activation?: number;
  /** Either way. */
  readonly factor: number;
  readonly source: string;
  readonly locator?: string;
  readonly fromMemory: boolean;
}

/** kJ/mol, acid hydrolysis of ordinary aliphatic esters. */
export const esterActivation = {
  value: 66,
  low: 62,
  high: 71,
  source: mabey,
  locator: 'textbooks of kinetics',
  fromMemory: true,
} as const;

/** kJ/mol: more than it takes to break any bond, so that a larger figure is a slip of the unit. */
export const largestActivation = { value: 1000, source: 'common practice, no source' } as const;

const measured = (acid: number, neutral: number | undefined, base: number): EsterConstants => ({
  acid,
  ...(neutral === undefined ? {} : { neutral }),
  base,
  factor: 2,
  source: mabey,
  fromMemory: true,
});

/** ln of the acid constant against ethyl acetate follows the size of the acid: k = 1.1e-4 x 10^Es. */
const ethylEster = (steric: number, factor: number): EsterConstants => ({
  acid: 1.1e-4 * 10 ** steric,
  factor,
  source: taft,
  locator: `Es ${steric}`,
  fromMemory: true,
});

/** The acid decides: any primary alcohol's acetate as ethyl acetate, 30 % either way beside its own uncertainty. */
const acetate: EsterConstants = {
  acid: 1.1e-4,
  factor: 2,
  source: taft,
  locator: 'as ethyl acetate, 30 %',
  fromMemory: true,
};

export const esterConstants: Readonly<Record<string, EsterConstants>> = {
  'ethyl acetate': measured(1.1e-4, 1.5e-10, 0.11),
  'isopropyl acetate': measured(6e-5, undefined, 0.026),
  'tert-butyl acetate': measured(1.3e-4, undefined, 1.5e-3),
  'vinyl acetate': measured(1.4e-4, 1.1e-7, 10),
  'phenyl acetate': measured(7.8e-5, 6.6e-8, 1.4),
  'tert-butyl formate': {
    acid: 2.7e-3,
    neutral: 1e-6,
    base: 1.7,
    activation: 59,
    factor: 1.2,
    source: 'church-1999',
    fromMemory: false,
  },
  'propyl acetate': acetate,
  'butyl acetate': acetate,
  'isobutyl acetate': acetate,
  'isoamyl acetate': acetate,
  'hexyl acetate': acetate,
  'ethyl formate': ethylEster(1.24, 2),
  'ethyl propionate': ethylEster(-0.07, 2),
  'ethyl butyrate': ethylEster(-0.36, 2),
  'ethyl valerate': ethylEster(-0.39, 2),
  'ethyl hexanoate': ethylEster(-0.39, 2),
  'ethyl octanoate': ethylEster(-0.39, 2),
  'ethyl isobutyrate': ethylEster(-0.47, 3),
  'ethyl isovalerate': ethylEster(-0.93, 3),
  'ethyl 2-methylbutyrate': ethylEster(-1.13, 3),
};

/** Where the neutral and the base part are not known only the acid one is reckoned, up to this pH. */
export const acidOnlyUpTo = 4.5;
export const phRange = { low: 1, high: 8 } as const;
/** C; the properties of water and the constants are carried no further. */
export const keepingCelsius = { low: 0, high: 50 } as const;

/** log10 k (1/min) = 16.91 + log10(rho - c) - 5670/T - pH, rho and c of solution and sucrose in kg/L. */
export const sucroseInversion = {
  constant: 16.91,
  perKelvin: 5670,
  /** kJ/mol, that the equation implies; measured 108 and 109.2. */
  activation: { low: 108, high: 109.2 },
  factor: 1.5,
  /** Where the factor holds; outside it is two. */
  sure: { lowCelsius: 20, highCelsius: 40, lowPh: 2.5, highPh: 4 },
  widerFactor: 2,
  highPh: 5,
  source: 'vukov-1965',
  fromMemory: true,
} as const;

/** Polysorbate: a class estimate, only ever shown as a range. */
export const polysorbateHydrolysis = {
  acid: 4e-5,
  factor: 4,
  acidBelowPh: 3,
  source: 'polysorbate-hydrolysis',
  fromMemory: true,
} as const;

/** What is known instead of what could not be told honestly; source `losses-not-told`. */
export const notTold: Readonly<Record<string, string>> = {
  citral:
    'in acid it goes in days, not weeks: 1 to 8 days for half at pH 3 and 25 C are quoted (from memory), 18 to 25 % against 41 to 53 % lost where a liquid oil shields it',
  limonene: 'in acid it takes up water to terpineol, at a rate that no source gives for pH 2.5 to 3.5',
  'methyl anthranilate':
    'aromatic acids hold their esters 10 to 1000 times longer than ethyl acetate in acid',
  'methyl salicylate': 'aromatic acids hold their esters 10 to 1000 times longer than ethyl acetate in acid',
  'ethyl cinnamate': 'conjugated acids hold their esters 10 to 1000 times longer than ethyl acetate in acid',
  aspartame:
    'cola-type drinks lost 11 to 16 % in 8 weeks at 20 C and over half in 9 weeks at 40 C, one 72 % in 6 months at 22 C; the buffer alone changes it twofold, and it keeps best near pH 4.3',
  'ascorbic acid':
    'citrus concentrates kept 54 to 84 % over 8 weeks at 28 C and 15 to 20 % at 45 C; air rules more than warmth: half in 6 to 9 hours where it stood open',
};
