/** The shape of a sourced ingredient record. Data only; no arithmetic. */

export const roles = [
  'oil',
  'emulsifier',
  'carrier',
  'acid',
  'salt',
  'sugar',
  'sweetener',
  'preservative',
  'aroma',
  'antifoam',
  'colour',
  'water',
  'other',
] as const;

export type Role = (typeof roles)[number];

/**
 * The figures a record may carry, by the words that a person types in `ingredients.yaml` and sees on the
 * screen, each with the unit in which it is kept.
 */
export const figureUnits = {
  density: 'g/mL',
  'molar mass': 'g/mol',
  hlb: '',
  'required hlb': '',
  'refractive index': '',
  'saponification number': 'mg KOH/g',
  'acid number': 'mg KOH/g',
  viscosity: 'mPa s',
  'flash point': 'C',
  'log p': '',
  'water solubility': 'mg/L',
  'surface tension': 'mN/m',
  'odour threshold': 'ug/kg',
  'use level': 'mg/kg',
  'critical micelle concentration': 'mmol/L',
  'cloud point': 'C',
  'optical rotation': 'deg',
  'relative sweetness': '',
  'acid equivalents': 'mol/mol',
  'apparent density': 'g/mL',
} as const;

export type FigureName = keyof typeof figureUnits;

export interface Figure {
  readonly value: number;
  /** Where the source gives a range. `value` is then the figure chosen from it. */
  readonly low?: number;
  readonly high?: number;
  readonly temperatureCelsius?: number;
  /** Key into `sources`. */
  readonly source: string;
  /** Table, page or entry, good enough to open the place. */
  readonly locator?: string;
  /** True where no source could be read; shown wherever the figure is shown. */
  readonly fromMemory?: boolean;
  readonly note?: string;
  /** Other published values for the same thing; the one above is the one that is used. */
  readonly others?: readonly Figure[];
}

/** A body that has withdrawn or prohibited a substance as an addition to food. */
export interface Withdrawal {
  readonly by: string;
  /** What it did, after its name: `prohibits it as an addition to food`. */
  readonly what: string;
  readonly source: string;
  /** True where another body gives a figure for it, or only the synthetic form is meant: it is said, and may be dosed. */
  readonly partly?: true;
}

export interface Ingredient {
  /** The plain trade name, lower case: `sweet orange oil`, `polysorbate 80`. */
  readonly name: string;
  readonly role: Role;
  /** Other plain names that a person may type; matched like the name itself, never printed first. */
  readonly aliases?: readonly string[];
  /** Brand words, accepted when searching and never printed. */
  readonly searchWords?: readonly string[];
  readonly cas?: string;
  readonly eNumber?: string;
  /** Molecular formula of a pure substance; a dot sets off the water of a hydrate: `C6H8O7.H2O`. */
  readonly formula?: string;
  /** Folded oils: 5 for a fivefold oil. */
  readonly fold?: number;
  /** True for gum arabic and its like: HLB means nothing for a polymer. */
  readonly polymer?: boolean;
  /** True for compounds that work at parts per billion and are handled as stock dilutions. */
  readonly potent?: boolean;
  /** A hydrate names the anhydrous substance and how much of it a gram holds. */
  readonly hydrateOf?: { readonly name: string; readonly waterPerMolecule: number };
  /** Named where it stands in a stage; no dose of it is worked out, but for what is only partly withdrawn. */
  readonly withdrawn?: readonly Withdrawal[];
  readonly figures: Readonly<Partial<Record<FigureName, Figure>>>;
  readonly notes?: readonly string[];
}
