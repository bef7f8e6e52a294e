/** How much of what may crystallise from a drink or a syrup stays dissolved. Solubility of sucrose: `solution/sugars.ts`. */

interface SolubilityPoint {
  readonly celsius: number;
  /** In water. */
  readonly gramsPerLitre: number;
  readonly fromMemory?: true;
}

export interface SolubilityTable {
  readonly points: readonly SolubilityPoint[];
  readonly source: string;
}

const dataBook = 'food-additives-data-book';

/** As the whole acid; printed in % by mass. Of the salts the acid is counted that the pH sets free. */
export const acidSolubility = {
  benzoic: {
    points: [
      { celsius: 4, gramsPerLitre: 1.8 },
      { celsius: 18, gramsPerLitre: 2.7 },
      { celsius: 20, gramsPerLitre: 2.9 },
      { celsius: 50, gramsPerLitre: 9.5 },
    ],
    source: dataBook,
  },
  fumaric: {
    points: [
      { celsius: 20, gramsPerLitre: 5, fromMemory: true },
      { celsius: 25, gramsPerLitre: 6.3 },
      { celsius: 40, gramsPerLitre: 10.7 },
      { celsius: 60, gramsPerLitre: 24 },
    ],
    source: dataBook,
  },
} as const satisfies Readonly<Record<string, SolubilityTable>>;

/** Sorbic acid at 20 C in sucrose, % by mass; the first row stands for water too (0.15 % at pH 3.1 without sugar). */
export const sorbicInSucrose = {
  points: [
    { sucrosePercent: 10, gramsPerLitre: 1.5 },
    { sucrosePercent: 40, gramsPerLitre: 1 },
    { sucrosePercent: 60, gramsPerLitre: 0.8 },
  ],
  celsius: 20,
  source: dataBook,
} as const;

/** Salts whose ions find each other: what dissolves of the salt alone in water. */
export const saltSolubility = {
  'potassium hydrogen tartrate': {
    points: [
      { celsius: 0, gramsPerLitre: 2.25, fromMemory: true },
      { celsius: 5, gramsPerLitre: 2.66, fromMemory: true },
      { celsius: 10, gramsPerLitre: 3.42, fromMemory: true },
      { celsius: 15, gramsPerLitre: 4.17, fromMemory: true },
      { celsius: 20, gramsPerLitre: 4.92, fromMemory: true },
      { celsius: 25, gramsPerLitre: 5.8, fromMemory: true },
    ],
    source: 'berg-keefer-1958',
  },
  'calcium citrate tetrahydrate': {
    points: [
      { celsius: 18, gramsPerLitre: 0.85, fromMemory: true },
      { celsius: 25, gramsPerLitre: 0.96, fromMemory: true },
    ],
    source: 'general-knowledge',
  },
} as const satisfies Readonly<Record<string, SolubilityTable>>;

/** Taken as they are, whatever the pH; the bases dissolve better in acid. */
export const plainSolubility: Readonly<Record<string, SolubilityTable>> = {
  vanillin: { points: [{ celsius: 25, gramsPerLitre: 11 }], source: 'aqsoldb-2019' },
  caffeine: {
    points: [
      { celsius: 20, gramsPerLitre: 16, fromMemory: true },
      { celsius: 25, gramsPerLitre: 21.6, fromMemory: true },
    ],
    source: 'general-knowledge',
  },
  quinine: { points: [{ celsius: 25, gramsPerLitre: 0.5, fromMemory: true }], source: 'general-knowledge' },
  'quinine sulfate dihydrate': {
    points: [{ celsius: 25, gramsPerLitre: 1.2, fromMemory: true }],
    source: 'general-knowledge',
  },
  'quinine hydrochloride dihydrate': {
    points: [{ celsius: 25, gramsPerLitre: 60, fromMemory: true }],
    source: 'general-knowledge',
  },
};
