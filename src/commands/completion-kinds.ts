/** What a word on the command line names, so that Tab can offer what there is. */

/** What completion knows how to list. */
export type Kind =
  | 'item'
  | 'ingredient'
  | 'lot'
  | 'trial'
  | 'trials'
  | 'series'
  | 'formula'
  | 'batch'
  | 'stage'
  | 'sample'
  | 'look'
  | 'taste'
  | 'taste word'
  | 'file'
  | 'folder';

/** What the word or value of a declaration is. */
export interface Declared {
  readonly placeholder: string;
  readonly help: string;
  /** Where its placeholder does not tell, or there is more that it may be; the likeliest first. */
  readonly takes?: readonly Kind[];
  /** The only words that it may be, the likeliest first. */
  readonly choices?: readonly string[];
}

export interface Wanted {
  readonly kinds: readonly Kind[];
  readonly choices: readonly string[];
}

const kindsOf: Readonly<Record<string, readonly Kind[]>> = {
  AFTER: ['formula', 'batch', 'trial'],
  BASE: ['file'],
  BATCH: ['batch', 'trial'],
  BEFORE: ['formula', 'batch', 'trial'],
  COMPOUND: ['ingredient'],
  DESIGN: ['formula', 'batch', 'trial'],
  FILE: ['file'],
  FOLDER: ['folder'],
  INGREDIENT: ['ingredient'],
  ITEM: ['item'],
  ITEMS: ['item'],
  LOOK: ['look'],
  OIL: ['item'],
  OURS: ['file'],
  PATH: ['file'],
  PATHS: ['file'],
  RECORD: ['formula', 'batch', 'trial'],
  SAMPLE: ['sample'],
  SERIES: ['series'],
  STAGE: ['stage'],
  STOCK: ['ingredient'],
  THEIRS: ['file'],
  TRIAL: ['trial'],
  TRIALS: ['trials'],
  'TRIALS-AND-LOOKS': ['trials', 'look'],
  'WORD=SCORE': ['taste'],
};

/** Figures, amounts, times and texts: what the person alone knows. */
const ownWords: ReadonlySet<string> = new Set(
  (
    '1+N 1:N A:B ACID ACIDITY ALKALINITY AMOUNT BALANCE BRANCH BRIX CONCENTRATION CONDITIONS COUNT DAY DENSITY ENDS ' +
    'FIGURE FIGURES HEIGHT INDEX K KJ LABEL LENGTH LIST LOAD LOSS MASS MASS/DROPS MPAS N NTU NUMBER ' +
    'OIL:EMULSIFIER PDI PH PLAN PRESSURE RADIUS RANGE RATIO READING SHARE SIZE SPEED STEP STEPS STRENGTH TARGET TEMP ' +
    'TEXT TIME TIMES VERSIONS VESSEL VOLUME VOLUMES WHO WHY WIDTH X ZONE'
  ).split(' '),
);

/** The words of a placeholder such as `yes|no`, or a word that is typed as it stands: `record`. */
function spelledOut(placeholder: string): readonly string[] {
  return /^[a-z]+(?:\|[a-z]+)*$/.test(placeholder) ? placeholder.split('|') : [];
}

export function wantedOf({ placeholder, takes, choices }: Declared): Wanted {
  const only = choices ?? spelledOut(placeholder);
  if (only.length > 0) return { kinds: [], choices: only };
  return { kinds: takes ?? kindsOf[placeholder] ?? [], choices: [] };
}

/** False where nothing says what it is: neither its placeholder, nor its kinds or choices. */
export const isTold = (declared: Declared): boolean => {
  const { kinds, choices } = wantedOf(declared);
  return kinds.length > 0 || choices.length > 0 || ownWords.has(declared.placeholder);
};
